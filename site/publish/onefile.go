package publish

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// oneFileMark begins a page that is one file, behind its document type; it
// marks the file as ours.
const oneFileMark = "<!doctype html>\n<!-- closingside, one file -->\n"

// ErrFileNotOurs is why WriteFile leaves a file alone.
var ErrFileNotOurs = errors.New("closingside did not write this file")

// OneFile is the whole page as one HTML file that works when opened from a
// disk: style, scripts, icon and engine are inside. What needs a server, the
// service worker and the manifest, is left out.
func (f *Folder) OneFile() ([]byte, error) {
	style, err := f.named("page", ".css")
	if err != nil {
		return nil, err
	}
	script, err := f.named("page", ".js")
	if err != nil {
		return nil, err
	}
	engine, err := f.named("engine", ".wasm")
	if err != nil {
		return nil, err
	}
	if bytes.Contains(script, []byte("</script")) || bytes.Contains(script, []byte("<!--")) || bytes.Contains(style, []byte("</style")) {
		return nil, errors.New("publish: a script or style would end before its end")
	}
	packed, err := Gzip(engine)
	if err != nil {
		return nil, err
	}
	page := string(f.Files["index.html"])
	for _, change := range []struct{ old, new string }{
		{`^<!doctype html>\n`, oneFileMark},
		{`<meta http-equiv="Content-Security-Policy"[^>]*>`, `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src ` + allow(script) +
			` 'wasm-unsafe-eval'; style-src ` + allow(style) + `; img-src data:; base-uri 'none'; form-action 'none'">`},
		{`<script src="[^"]*" data-engine="[^"]*"></script>`, "<script>" + string(script) + "</script>"},
		{`<link rel="stylesheet"[^>]*>`, "<style>" + string(style) + "</style>"},
		{`<link rel="icon"[^>]*>`, `<link rel="icon" type="image/svg+xml" href="data:image/svg+xml;base64,` + base64.StdEncoding.EncodeToString(iconSVG()) + `">`},
		{`<link rel="apple-touch-icon"[^>]*>\n`, ""},
		{`<link rel="manifest"[^>]*>\n`, ""},
		{`<body `, `<body data-whole `},
		{`</body>`, `<script id="engine" type="text/plain">` + base64.StdEncoding.EncodeToString(packed) + "</script>\n</body>"},
	} {
		at := regexp.MustCompile(change.old).FindStringIndex(page)
		if at == nil {
			return nil, fmt.Errorf("publish: index.html has no %s", change.old)
		}
		page = page[:at[0]] + change.new + page[at[1]:]
	}
	return []byte(page), nil
}

// named is the file whose name, without its hash, is name and ext.
func (f *Folder) named(name, ext string) ([]byte, error) {
	for full, content := range f.Files {
		if strings.HasPrefix(full, name+".") && strings.HasSuffix(full, ext) {
			return content, nil
		}
	}
	return nil, fmt.Errorf("publish: no file %s%s", name, ext)
}

// allow is a script or style that stands in the page, as its policy names it.
func allow(content []byte) string {
	sum := sha256.Sum256(content)
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// WriteFile puts the page as one file at path, by a temporary name beside it
// and a renaming. A file that is there already and not ours is refused
// (ErrFileNotOurs).
func (f *Folder) WriteFile(path string) error {
	old, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return err
	case !bytes.HasPrefix(old, []byte(oneFileMark)):
		return fmt.Errorf("%s: %w", path, ErrFileNotOurs)
	}
	return f.WriteFileOver(path)
}

// WriteFileOver is WriteFile over whatever file is there.
func (f *Folder) WriteFileOver(path string) error {
	page, err := f.OneFile()
	if err != nil {
		return err
	}
	dir := filepath.Dir(path)
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	temp, err := os.CreateTemp(dir, tempName)
	if err != nil {
		return err
	}
	defer os.Remove(temp.Name()) // gone already where all went well
	_, err = temp.Write(page)
	if err := errors.Join(err, temp.Close(), os.Chmod(temp.Name(), 0o644)); err != nil {
		return err
	}
	return os.Rename(temp.Name(), path)
}
