package main

import (
	"bytes"
	"errors"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/lexer"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	"closingside/tutor/lesson"
)

// Limits of a problem file. The parser's time grows with the square of the
// tokens and it recurses over nesting; within these it takes a fraction of a
// second, and no problem comes near them.
const (
	maxBytes  = 1 << 20
	maxTokens = 10_000
	maxDepth  = 50
)

// readSource reads a problem file: YAML 1.2, hence JSON too. Of YAML only what
// a statement needs is taken: keys, texts and lists. Every key and list item
// carries its place. An error is a *tutor.SourceError.
func readSource(file []byte) (lesson.Source, error) {
	var src lesson.Source
	file = bytes.TrimPrefix(file, []byte("\ufeff"))
	if at := firstBadByte(file); at >= 0 {
		line := 1 + bytes.Count(file[:at], []byte("\n"))
		return src, fault(&token.Position{Line: line}, "this is not UTF-8 text; save the file as UTF-8")
	}
	tree, err := parseYAML(string(file))
	if err != nil {
		return src, err
	}
	body, err := onlyDocument(tree)
	if err != nil {
		return src, err
	}
	src, err = convert("", body, 0)
	if src.Line == 0 {
		src.Line, src.Col = 1, 1
	}
	return src, err
}

// parseYAML is the library's parser within the limits. A text that makes it
// panic must not take the command down.
func parseYAML(text string) (tree *ast.File, err error) {
	defer func() {
		if r := recover(); r != nil {
			tree, err = nil, notYAML(nil, "its structure is not clear")
		}
	}()
	const long = "this is far longer than a problem; keep one problem in a file"
	if at := nth(text, "[]{},:-?", 4*maxTokens); at >= 0 { // the lexer takes seconds over a megabyte of these
		return nil, fault(&token.Position{Line: 1 + strings.Count(text[:at], "\n")}, long)
	}
	tokens := lexer.Tokenize(text)
	if len(tokens) > maxTokens {
		return nil, fault(tokens[maxTokens].Position, long)
	}
	tree, err = parser.Parse(tokens, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		return nil, syntaxError(err)
	}
	return tree, nil
}

// nth is where text has the nth of any of the given characters, or -1.
func nth(text, of string, n int) int {
	for at := range len(text) {
		if strings.IndexByte(of, text[at]) >= 0 {
			if n--; n == 0 {
				return at
			}
		}
	}
	return -1
}

// firstBadByte is where file stops being UTF-8, or -1.
func firstBadByte(file []byte) int {
	for at := 0; at < len(file); {
		r, size := utf8.DecodeRune(file[at:])
		if r == utf8.RuneError && size <= 1 {
			return at
		}
		at += size
	}
	return -1
}

func fault(at *token.Position, message string) *lesson.SourceError {
	e := &lesson.SourceError{Message: message}
	if at != nil {
		e.Line, e.Col = at.Line, at.Column
	}
	return e
}

func notYAML(at *token.Position, why string) *lesson.SourceError {
	return fault(at, "this cannot be read as YAML: "+why+"; write one “key: value” to a line, and a text with special characters in quotes")
}

func syntaxError(err error) error {
	var at yaml.Error
	if !errors.As(err, &at) {
		return notYAML(nil, "its structure is not clear")
	}
	var pos *token.Position
	if tk := at.GetToken(); tk != nil {
		pos = tk.Position
	}
	if strings.Contains(at.GetMessage(), "character '\t'") {
		return fault(pos, "a tab cannot indent YAML; use spaces")
	}
	return notYAML(pos, at.GetMessage())
}

// onlyDocument is the body of the one document in a file.
func onlyDocument(file *ast.File) (ast.Node, error) {
	var body ast.Node
	for _, d := range file.Docs {
		if d.Body == nil || d.Body.Type() == ast.DirectiveType {
			continue
		}
		if body != nil {
			return nil, fault(place(d.Body), "a second problem begins here; keep one problem in a file")
		}
		body = d.Body
	}
	if body == nil {
		return nil, fault(&token.Position{Line: 1}, "the file is empty; begin with a line such as “kind: two-forces”, or “title: Barges, week 5” in a set")
	}
	return body, nil
}

// convert turns the value of key into a Source that stands where n stands.
func convert(key string, n ast.Node, depth int) (lesson.Source, error) {
	src := lesson.Source{Key: key}
	if at := place(n); at != nil {
		src.Line, src.Col = at.Line, at.Column
	}
	if depth > maxDepth {
		return src, fault(place(n), "this is nested too deeply for a problem")
	}
	switch v := n.(type) {
	case *ast.MappingNode:
		return src, convertPairs(&src, v.Values, depth)
	case *ast.MappingValueNode:
		return src, convertPairs(&src, []*ast.MappingValueNode{v}, depth)
	case *ast.SequenceNode:
		for _, item := range v.Values {
			kid, err := convert("", item, depth+1)
			if err != nil {
				return src, err
			}
			src.Kids = append(src.Kids, kid)
		}
	case *ast.LiteralNode:
		src.Text = v.Value.Value
	case *ast.StringNode:
		src.Text = v.Value
	case *ast.NullNode: // nothing written
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.InfinityNode, *ast.NanNode:
		src.Text = n.GetToken().Value
	case *ast.AnchorNode, *ast.AliasNode:
		return src, fault(place(n), "anchors and aliases (& and *) are not used in problems; write the value out, or put it in quotes")
	case *ast.TagNode:
		return src, fault(place(n), "tags (!) are not used in problems; write the value alone, or put it in quotes")
	default:
		return src, fault(place(n), "this has no place in a problem; write “key: value”")
	}
	return src, nil
}

func convertPairs(src *lesson.Source, pairs []*ast.MappingValueNode, depth int) error {
	seen := map[string]bool{}
	for _, pair := range pairs {
		key, ok := pair.Key.(ast.ScalarNode)
		if pair.Key.Type() == ast.MergeKeyType || !ok {
			return fault(place(pair), "a key must be a plain word, as in “kind: two-forces”")
		}
		name := key.GetToken().Value
		if seen[name] {
			return fault(place(pair), "“"+name+"” is given twice; keep one")
		}
		seen[name] = true
		kid, err := convert(name, pair.Value, depth+1)
		if err != nil {
			return err
		}
		if at := place(pair); at != nil {
			kid.Line, kid.Col = at.Line, at.Column
		}
		src.Kids = append(src.Kids, kid)
	}
	return nil
}

// place is where a node begins: a mapping at its first key.
func place(n ast.Node) *token.Position {
	switch v := n.(type) {
	case nil:
		return nil
	case *ast.MappingNode:
		if !v.IsFlowStyle && len(v.Values) > 0 {
			return place(v.Values[0])
		}
	case *ast.MappingValueNode:
		return v.Key.GetToken().Position
	}
	if tk := n.GetToken(); tk != nil {
		return tk.Position
	}
	return nil
}
