package report

import (
	"cmp"
	"slices"
)

// Alike are two logs with the same entries at the same moments: copies of one
// another, or two copies of one student's.
type Alike struct {
	A       string `json:"a"`
	B       string `json:"b"`
	Entries int    `json:"entries"`
}

// alike lists the pairs of such logs, those that share most entries first.
func alike(logs []*Log) []Alike {
	first := map[string]int{} // line → the log it was seen in first
	shared := map[[2]int]int{}
	for i, l := range logs {
		for _, f := range l.lines {
			if f.Get("do") != "enter" {
				continue
			}
			line := f.Line()
			if j, seen := first[line]; !seen {
				first[line] = i
			} else if j != i {
				shared[[2]int{j, i}]++
			}
		}
	}
	all := []Alike{}
	for pair, n := range shared {
		all = append(all, Alike{logs[pair[0]].Name, logs[pair[1]].Name, n})
	}
	slices.SortFunc(all, func(a, b Alike) int {
		return cmp.Or(cmp.Compare(b.Entries, a.Entries), cmp.Compare(a.A, b.A), cmp.Compare(a.B, b.B))
	})
	return all
}
