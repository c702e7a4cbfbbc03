package publish

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"

	"closingside/site"
	"closingside/site/html"
	"closingside/site/page"
	"closingside/tutor/text"
)

// Folder is a folder ready to be published: its files by name, and the
// version that its service worker keeps.
type Folder struct {
	Files   map[string][]byte // without the compressed copies
	Version string
	kept    []string // what the service worker loads ahead, besides the page
	sets    []string // codes of the sets on the home screen
}

// Build makes the folder around an engine (see Engine), with the codes of the
// sets that its home screen lists. It fails when the page's files name a
// sentence or a file that does not exist.
func Build(engine Built, sets ...string) (*Folder, error) {
	f := &Folder{Files: map[string][]byte{}, sets: sets}
	names := map[string]string{} // plain name → hashed name
	add := func(name string, content []byte) {
		ext := path.Ext(name)
		names[name] = strings.TrimSuffix(name, ext) + "." + hash(content)[:12] + ext
		f.Files[names[name]] = content
		f.kept = append(f.kept, names[name])
	}
	add("engine.wasm", engine.Wasm)
	script, err := join("early.js", engine.Exec, "log.js", "loader.js", "copy.js", "sketch.js")
	if err != nil {
		return nil, err
	}
	add("page.js", script)
	style, err := join("page.css", "figure.css", "sketch.css")
	if err != nil {
		return nil, err
	}
	add("page.css", style)
	add("icon.svg", iconSVG())
	for _, icon := range icons {
		content, err := icon.png()
		if err != nil {
			return nil, err
		}
		add(icon.name, content)
	}
	add("closingside.webmanifest", manifest(names))
	return f, f.addShell(names)
}

// join puts files of the page, and content given as bytes, into one file: one
// request each costs a slow phone more than anything in them.
func join(parts ...any) ([]byte, error) {
	var b bytes.Buffer
	for _, p := range parts {
		if name, ok := p.(string); ok {
			content, err := fs.ReadFile(page.Files, name)
			if err != nil {
				return nil, err
			}
			p = content
		}
		b.Write(p.([]byte))
		b.WriteByte('\n')
	}
	return b.Bytes(), nil
}

// addShell adds the page and its service worker. The version is the hash of
// everything they are made of, taken before it is written into them.
func (f *Folder) addShell(names map[string]string) error {
	index, err := fill("index.html", names)
	if err != nil {
		return err
	}
	worker, err := fill("sw.js", names)
	if err != nil {
		return err
	}
	slices.Sort(f.kept)
	start := site.Form{{Name: "do", Value: "start"}, {Name: "hash"}, {Name: "sets", Value: strings.Join(f.sets, " ")}, {Name: "at", Value: "0"}}
	first := string(site.Handle([]byte(start.Line())))
	var rows []string
	for _, name := range f.kept {
		sum := sha256.Sum256(f.Files[name])
		rows = append(rows, fmt.Sprintf(`["%s", "sha256-%s"]`, name, base64.StdEncoding.EncodeToString(sum[:])))
	}
	list := strings.Join(rows, ",\n  ")
	f.Version = hash([]byte(index), []byte(worker), []byte(first), []byte(list))[:12]
	rest := strings.NewReplacer("{{version}}", f.Version, "{{files}}", list, "{{main}}", first, "{{mark}}", markSVG(),
		"{{sets}}", html.Escape(strings.Join(f.sets, " ")))
	for name, content := range map[string]string{"index.html": index, "sw.js": worker} {
		content = rest.Replace(content)
		if gap := hole.FindString(content); gap != "" {
			return fmt.Errorf("publish: %s: nothing fills %s", name, gap)
		}
		f.Files[name] = []byte(content)
	}
	return nil
}

var hole = regexp.MustCompile(`\{\{[a-z:_.0-9-]+\}\}`)

// fill reads a file of the page and puts in sentences ({{shell.title}}) and
// hashed names ({{file:page.css}}); the other holes are left for addShell.
func fill(name string, names map[string]string) (string, error) {
	content, err := fs.ReadFile(page.Files, name)
	if err != nil {
		return "", err
	}
	var gap error
	filled := hole.ReplaceAllStringFunc(string(content), func(h string) string {
		key := strings.Trim(h, "{}")
		switch file, isFile := strings.CutPrefix(key, "file:"); {
		case isFile && names[file] != "":
			return names[file]
		case isFile:
			gap = fmt.Errorf("publish: %s: no file %s", name, file)
		case strings.Contains(key, "."):
			if !text.Has(key) {
				gap = fmt.Errorf("publish: %s: no sentence %s", name, key)
			}
			return html.Escape(text.Say(key))
		}
		return h
	})
	return filled, gap
}

// manifest is the web app manifest. Its links are relative to itself.
func manifest(names map[string]string) []byte {
	type icon struct {
		Src     string `json:"src"`
		Sizes   string `json:"sizes"`
		Type    string `json:"type"`
		Purpose string `json:"purpose"`
	}
	list := []icon{{names["icon.svg"], "any", "image/svg+xml", "any"}}
	for _, i := range icons {
		purpose := "any"
		if i.maskable {
			purpose = "maskable"
		}
		list = append(list, icon{names[i.name], fmt.Sprintf("%dx%d", i.size, i.size), "image/png", purpose})
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	_ = e.Encode(map[string]any{ // strings, and structs of strings: cannot fail
		"name": text.Say("shell.title"), "short_name": text.Say("shell.short-name"),
		"description": text.Say("shell.description"), "lang": "en", "id": "./", "start_url": "./", "scope": "./",
		"display": "standalone", "background_color": "#f4f1e6", "theme_color": "#f4f1e6", "icons": list,
	})
	return b.Bytes()
}

// hash is the SHA-256 of the parts, each with its length before it, in hexadecimal.
func hash(parts ...[]byte) string {
	h := sha256.New()
	for _, p := range parts {
		fmt.Fprintf(h, "%d:", len(p))
		h.Write(p)
	}
	return hex.EncodeToString(h.Sum(nil))
}
