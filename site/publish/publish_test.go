package publish

import (
	"bytes"
	"compress/gzip"
	"context"
	"encoding/base64"
	"encoding/json"
	"image/png"
	"io"
	"maps"
	"net/http"
	"net/http/httptest"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"closingside/site/html"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// small stands for an engine where a test is not about it.
var small = Built{Wasm: bytes.Repeat([]byte("\x00asm"), 500), Exec: []byte("// go\n")}

func build(t *testing.T, b Built) *Folder {
	t.Helper()
	f, err := Build(b)
	require.NoError(t, err)
	return f
}

func TestNames(t *testing.T) {
	f := build(t, small)
	for name, content := range f.Files {
		if name == "index.html" || name == "sw.js" {
			continue
		}
		assert.Regexp(t, `^[a-z0-9_-]+\.[0-9a-f]{12}\.[a-z]+$`, name)
		assert.Contains(t, name, hash(content)[:12])
	}
	again := build(t, small)
	assert.Equal(t, f, again, "the same source gives the same folder")
	other := build(t, Built{Wasm: []byte("\x00asm2"), Exec: small.Exec})
	assert.NotEqual(t, f.Version, other.Version)
}

// Every link of the page, the worker and the manifest is relative and leads
// to a file of the folder; every file is reached by one.
func TestLinks(t *testing.T) {
	f := build(t, small)
	index, worker := string(f.Files["index.html"]), string(f.Files["sw.js"])
	reached := map[string]bool{"index.html": true, "sw.js": true}
	for _, m := range regexp.MustCompile(`(?:href|src)="([^"#][^"]*)"|data-engine="([^"]*\.wasm)"`).FindAllStringSubmatch(index, -1) {
		reached[m[1]+m[2]] = true
	}
	for name, content := range f.Files {
		if path.Ext(name) != ".webmanifest" {
			continue
		}
		var m struct {
			Start string `json:"start_url"`
			Scope string
			Icons []struct{ Src string }
		}
		require.NoError(t, json.Unmarshal(content, &m))
		assert.Equal(t, "./", m.Start)
		assert.Equal(t, "./", m.Scope)
		for _, i := range m.Icons {
			reached[i.Src] = true
		}
	}
	assert.Equal(t, slices.Sorted(maps.Keys(f.Files)), slices.Sorted(maps.Keys(reached)), "every link leads to a file, every file has a link")
	for name, content := range f.Files {
		if name != "index.html" && name != "sw.js" {
			assert.Contains(t, worker, `"`+name+`"`, "the worker keeps it")
		}
		if ext := path.Ext(name); ext == ".html" || ext == ".css" || ext == ".webmanifest" || name == "sw.js" {
			assert.NotRegexp(t, `(https?:)?//[a-z]`, strings.ReplaceAll(string(content), "http://www.w3.org/", ""), "%s asks no other host", name)
		}
	}
	assert.Contains(t, worker, `"`+f.Version+`"`)
	assert.Contains(t, index, f.Version)
}

func TestPageIsStrictAndComplete(t *testing.T) {
	index := string(build(t, small).Files["index.html"])
	assert.Contains(t, index, `script-src 'self' 'wasm-unsafe-eval'`)
	assert.NotContains(t, index, "unsafe-inline")
	assert.NotContains(t, index, "{{")
	assert.NotRegexp(t, `<[^>]* (on[a-z]+|style)=`, index)
	assert.NotRegexp(t, `<script(?:[^>]*)>[^<]`, index)
	assert.Contains(t, index, `<main id="main"`)
	assert.Contains(t, index, "local codes and a licensed engineer")
}

func TestFillNamesItsGaps(t *testing.T) {
	_, err := fill("index.html", map[string]string{})
	assert.ErrorContains(t, err, "no file")
	_, err = fill("nothing.html", nil)
	assert.Error(t, err)
}

func TestIcons(t *testing.T) {
	for _, icon := range icons {
		t.Run(icon.name, func(t *testing.T) {
			content, err := icon.png()
			require.NoError(t, err)
			img, err := png.Decode(bytes.NewReader(content))
			require.NoError(t, err)
			assert.Equal(t, icon.size, img.Bounds().Dx())
			assert.Equal(t, icon.size, img.Bounds().Dy())
			counts := map[uint32]int{}
			for y := range icon.size {
				for x := range icon.size {
					r, g, b, a := img.At(x, y).RGBA()
					if a == 0xffff {
						counts[r>>8<<16|g>>8<<8|b>>8]++
					}
				}
			}
			assert.Greater(t, counts[0xffb480], counts[0xe9f1ec], "the closing side is the heavy one")
			assert.Greater(t, counts[0xe9f1ec], icon.size*icon.size/100)
			_, _, _, corner := img.At(0, 0).RGBA()
			assert.Equal(t, icon.maskable, corner == 0xffff, "only a maskable icon fills its corners")
		})
	}
}

// The two drawings of the mark show the same: SVG and PNG name one geometry.
func TestMarkCloses(t *testing.T) {
	assert.Equal(t, strips[0].to, strips[1].from, "head to tail")
	assert.Equal(t, strips[0].from, strips[2].from)
	assert.Equal(t, strips[1].to, strips[2].to, "the closing side goes from the first tail to the last head")
	assert.Equal(t, 6, strings.Count(string(iconSVG()), "<path"))
	assert.Equal(t, 6, strings.Count(markSVG(), "<path"))
}

func TestHandler(t *testing.T) {
	f := build(t, small)
	dir := filepath.Join(t.TempDir(), "site")
	require.NoError(t, f.Write(dir))
	var wasm, css string
	for name := range f.Files {
		switch path.Ext(name) {
		case ".wasm":
			wasm = name
		case ".css":
			css = name
		}
	}
	forever, anew := "public, max-age=31536000, immutable", "no-cache"
	rows := []struct {
		name, method, path, accept     string
		status                         int
		contentType, coding, freshness string
	}{
		{"root", "GET", "/", "", 200, "text/html; charset=utf-8", "", anew},
		{"page", "GET", "/index.html", "", 200, "text/html; charset=utf-8", "", anew},
		{"worker", "GET", "/sw.js", "gzip", 200, "text/javascript; charset=utf-8", "gzip", anew},
		{"engine plain", "GET", "/" + wasm, "", 200, "application/wasm", "", forever},
		{"engine brotli", "GET", "/" + wasm, "gzip, deflate, br", 200, "application/wasm", "br", forever},
		{"brotli refused", "GET", "/" + css, "br;q=0, gzip;q=0.5", 200, "text/css; charset=utf-8", "gzip", forever},
		{"head", "HEAD", "/" + css, "", 200, "text/css; charset=utf-8", "", forever},
		{"nothing there", "GET", "/nothing", "", 404, "text/plain; charset=utf-8", "", ""},
		{"no way out", "GET", "/../publish_test.go", "", 404, "text/plain; charset=utf-8", "", ""},
		{"no writing", "POST", "/", "", 405, "text/plain; charset=utf-8", "", ""},
	}
	handler := Handler(os.DirFS(dir).(Reader))
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			req := httptest.NewRequest(r.method, "/", nil)
			req.URL.Path = r.path
			req.Header.Set("Accept-Encoding", r.accept)
			w := httptest.NewRecorder()
			handler.ServeHTTP(w, req)
			assert.Equal(t, r.status, w.Code)
			assert.Equal(t, r.contentType, w.Header().Get("Content-Type"))
			assert.Equal(t, r.coding, w.Header().Get("Content-Encoding"))
			assert.Equal(t, r.freshness, w.Header().Get("Cache-Control"))
			if r.status == http.StatusOK {
				assert.Equal(t, "nosniff", w.Header().Get("X-Content-Type-Options"))
			}
		})
	}
}

func TestEngineBuilds(t *testing.T) {
	b, err := Engine(context.Background(), ".")
	require.NoError(t, err)
	assert.True(t, bytes.HasPrefix(b.Wasm, []byte("\x00asm\x01\x00\x00\x00")))
	assert.Contains(t, string(b.Exec), "globalThis.Go = class")
	wd, err := os.Getwd()
	require.NoError(t, err)
	assert.False(t, bytes.Contains(b.Wasm, []byte(filepath.Dir(filepath.Dir(wd)))), "no path of this machine is in it")

	_, err = Compile(context.Background(), ".", "closingside/nothing")
	assert.ErrorContains(t, err, "building the engine")
}

// The page as one file asks for nothing outside itself, runs nothing but what
// stands in it, and holds the engine whole.
func TestOneFile(t *testing.T) {
	f, err := Build(small, "s1+T+1+++d1;two-forces++0000")
	require.NoError(t, err)
	content, err := f.OneFile()
	require.NoError(t, err)
	page := string(content)
	assert.NotRegexp(t, `(?:src|href)="(?:[^"#d]|d[^a])`, page, "links lead nowhere else")
	assert.NotContains(t, page, "unsafe-inline")
	assert.NotContains(t, page, `data-engine="engine`)
	assert.Contains(t, page, `data-sets="s1+T+1+++d1;two-forces++0000"`)
	for _, tag := range []string{"script", "style"} {
		m := regexp.MustCompile("(?s)<" + tag + ">(.*?)</" + tag + ">").FindStringSubmatch(page)
		require.Len(t, m, 2, tag)
		assert.Contains(t, page, tag+"-src "+allow([]byte(m[1])))
	}
	packed := regexp.MustCompile(`<script id="engine" type="text/plain">([^<]*)</script>`).FindStringSubmatch(page)
	require.Len(t, packed, 2)
	raw, err := base64.StdEncoding.DecodeString(packed[1])
	require.NoError(t, err)
	r, err := gzip.NewReader(bytes.NewReader(raw))
	require.NoError(t, err)
	engine, err := io.ReadAll(r)
	require.NoError(t, err)
	assert.Equal(t, small.Wasm, engine)
}

// Sets are on the home screen before the engine is there, and given to it.
func TestSetsOnTheHomeScreen(t *testing.T) {
	src := func(key, text string, kids ...lesson.Source) lesson.Source {
		return lesson.Source{Key: key, Text: text, Kids: kids}
	}
	set, err := sets.Read(src("", "", src("title", "Tugs & buoys"), src("problems", "", src("", "", src("generate", "two-forces")))))
	require.NoError(t, err)
	f, err := Build(small, set.Code(""))
	require.NoError(t, err)
	index := string(f.Files["index.html"])
	assert.Contains(t, index, "Tugs &amp; buoys")
	assert.Contains(t, index, `data-sets="`+html.Escape(set.Code(""))+`"`)
	assert.NotEqual(t, build(t, small).Version, f.Version)
	assert.Contains(t, string(build(t, small).Files["index.html"]), `data-sets=""`)
}
