package publish

import (
	"bytes"
	"io/fs"
	"net/http"
	"path"
	"regexp"
	"strings"
	"time"
)

// Reader is where Handler finds the files: a Folder, or os.DirFS.
type Reader interface {
	ReadFile(name string) ([]byte, error)
}

// ReadFile is the content of one file, so that a folder can be served
// without writing it.
func (f *Folder) ReadFile(name string) ([]byte, error) {
	content, ok := f.Files[name]
	if !ok {
		return nil, &fs.PathError{Op: "read", Path: name, Err: fs.ErrNotExist}
	}
	return content, nil
}

var types = map[string]string{
	".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
	".wasm": "application/wasm", ".svg": "image/svg+xml", ".png": "image/png", ".txt": "text/plain; charset=utf-8",
	".webmanifest": "application/manifest+json",
}

// hashed matches names that change with their content.
var hashed = regexp.MustCompile(`\.[0-9a-f]{12}\.[a-z]+$`)

// Handler serves a published folder as a good static host would: right
// types, compressed copies where there are any, names with a hash for ever,
// the others asked for anew each time.
func Handler(files Reader) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "only GET and HEAD", http.StatusMethodNotAllowed)
			return
		}
		name := strings.TrimPrefix(path.Clean("/"+r.URL.Path), "/")
		if name == "" {
			name = "index.html"
		}
		content, err := files.ReadFile(name)
		if err != nil {
			http.NotFound(w, r)
			return
		}
		h := w.Header()
		if t := types[path.Ext(name)]; t != "" {
			h.Set("Content-Type", t)
		}
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cache-Control", "no-cache")
		if hashed.MatchString(name) {
			h.Set("Cache-Control", "public, max-age=31536000, immutable")
		}
		for _, c := range []struct{ coding, ext string }{{"br", ".br"}, {"gzip", ".gz"}} {
			packed, err := files.ReadFile(name + c.ext)
			if err != nil {
				continue
			}
			h.Set("Vary", "Accept-Encoding")
			if accepts(r.Header.Get("Accept-Encoding"), c.coding) {
				h.Set("Content-Encoding", c.coding)
				content = packed
				break
			}
		}
		http.ServeContent(w, r, name, time.Time{}, bytes.NewReader(content))
	})
}

// accepts reads an Accept-Encoding header; a coding of quality 0 is refused.
func accepts(header, coding string) bool {
	for item := range strings.SplitSeq(header, ",") {
		name, q, _ := strings.Cut(strings.TrimSpace(item), ";")
		if strings.TrimSpace(name) == coding {
			q = strings.ReplaceAll(q, " ", "")
			return q != "q=0" && !strings.HasPrefix(q, "q=0.0")
		}
	}
	return false
}
