package main

import (
	"encoding/json"
	"regexp"
	"strings"

	"closingside/tutor/lesson"
)

// problemLines is a problem as YAML, one line a string, without indentation.
func problemLines(p *lesson.Problem) []string {
	lines := []string{"kind: " + p.Kind.Name}
	if p.Story != "" {
		lines = append(lines, "story: "+scalar(p.Story))
	}
	for _, g := range p.Kind.Groups {
		items := p.Group(g.Key)
		if len(items) == 0 {
			continue
		}
		lines = append(lines, g.Key+":")
		for _, it := range items {
			var fields []string
			for _, f := range it.Fields {
				if f.Given() {
					fields = append(fields, f.Key+": "+scalar(f.Written))
				}
			}
			lines = append(lines, "  - {"+strings.Join(fields, ", ")+"}")
		}
	}
	if check := p.Settings.Source(); len(check.Kids) > 0 {
		lines = append(lines, lesson.CheckKey+":")
		for _, kid := range check.Kids {
			lines = append(lines, "  "+kid.Key+": "+scalar(kid.Text))
		}
	}
	return lines
}

// bareText matches texts that mean the same in YAML without quotes, in a list too.
var bareText = regexp.MustCompile(`^[A-Za-z0-9°./'-]([A-Za-z0-9°./' -]*[A-Za-z0-9°./'])?$`)

// scalar is s as YAML: in quotes where it could be read as anything else.
func scalar(s string) string {
	switch strings.ToLower(s) {
	case "null", "true", "false", "yes", "no", "on", "off", "-", "---", "...":
		return `"` + s + `"`
	}
	if bareText.MatchString(s) && s[0] != '\'' && !strings.HasPrefix(s, "- ") {
		return s
	}
	quoted, _ := json.Marshal(s) // a string: cannot fail; JSON's strings are YAML's
	return string(quoted)
}
