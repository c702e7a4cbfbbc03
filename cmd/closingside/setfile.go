package main

import (
	"path/filepath"
	"slices"

	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// openSet reads the set file at path, and the problem files that it names,
// which are sought beside it. Every error is an inputError with its place.
func openSet(path string) (*sets.Set, error) {
	src, err := openSource(path, "name a set file such as week3.yaml")
	if err != nil {
		return nil, err
	}
	if !isSet(src) && hasKey(src, "kind") {
		return nil, wrongInput("%s: this is a problem, and a set is wanted here; a set names it with “problems: [{file: barge.yaml}]”", path)
	}
	for i := range src.Kids {
		if src.Kids[i].Key == "problems" {
			if err := inline(filepath.Dir(path), path, &src.Kids[i]); err != nil {
				return nil, err
			}
		}
	}
	set, err := sets.Read(src)
	if err != nil {
		return nil, located(path, err)
	}
	return set, nil
}

// openSource reads one YAML file.
func openSource(path, example string) (lesson.Source, error) {
	file, err := readNamed(path, example, "a problem is a few lines, and a set at most 40 problems")
	if err != nil {
		return lesson.Source{}, err
	}
	src, err := readSource(file)
	if err != nil {
		return src, located(path, err)
	}
	return src, nil
}

// inline puts the problems that a set names by file in the place of the names.
func inline(dir, path string, list *lesson.Source) error {
	for i := range list.Kids {
		item := &list.Kids[i]
		at := slices.IndexFunc(item.Kids, func(k lesson.Source) bool { return k.Key == "file" })
		if at < 0 {
			continue
		}
		named := item.Kids[at]
		file := filepath.FromSlash(named.Text)
		if named.Text == "" {
			return located(path, &lesson.SourceError{Line: named.Line, Col: named.Col, Message: "“file” names no file; write it like “file: barge.yaml”"})
		}
		if !filepath.IsAbs(file) {
			file = filepath.Join(dir, file)
		}
		if _, err := openLesson(file); err != nil {
			return err
		}
		problem, err := openSource(file, "name a problem file such as barge.yaml")
		if err != nil {
			return err
		}
		kids := slices.Delete(slices.Clone(item.Kids), at, at+1)
		for _, kid := range problem.Kids {
			kid.Line, kid.Col = item.Line, item.Col
			kids = append(kids, kid)
		}
		item.Kids = kids
	}
	return nil
}
