package publish

import (
	"bytes"
	"compress/gzip"
	"maps"
	"path"

	"github.com/andybalholm/brotli"
)

// packed is the folder's files with their compressed copies.
func (f *Folder) packed() (map[string][]byte, error) {
	files := maps.Clone(f.Files)
	for name, content := range f.Files {
		if err := compress(files, name, content); err != nil {
			return nil, err
		}
	}
	return files, nil
}

// compress adds name.gz and name.br for what gains by it. PNG does not.
func compress(files map[string][]byte, name string, content []byte) error {
	if path.Ext(name) == ".png" {
		return nil
	}
	gz, err := Gzip(content)
	if err != nil {
		return err
	}
	files[name+".gz"] = gz
	var b bytes.Buffer
	w := brotli.NewWriterLevel(&b, 9) // 11 takes five times as long for 3 % less
	if _, err := w.Write(content); err != nil {
		return err
	}
	if err := w.Close(); err != nil {
		return err
	}
	files[name+".br"] = b.Bytes()
	return nil
}

// Gzip is content at the highest level, without a name or time.
func Gzip(content []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(content); err != nil {
		return nil, err
	}
	err = w.Close()
	return b.Bytes(), err
}
