package tutor

import (
	"cmp"
	"slices"
	"strings"
	"sync"
)

// What an explanation accuses of is a list of ids of slips, those of one value
// together; two slips together are one id.

// carriedIDs stands for the ids of what holds no slip.
var carriedIDs = []string{""}

// miscopied is the row of a given read as another value.
var miscopied = []string{"given-miscopied"}

// joined is the id of two slips together, in order; b alone where a is "".
func joined(a, b string) string {
	switch {
	case a == "":
		return b
	case a > b:
		a, b = b, a
	}
	return jointIDs.of([2]string{a, b})
}

// jointIDs keeps the ids of two slips together, which are asked for over and over.
var jointIDs = jointNames{all: map[[2]string]string{}}

type jointNames struct {
	mu  sync.Mutex
	all map[[2]string]string
}

func (p *jointNames) of(two [2]string) string {
	p.mu.Lock()
	defer p.mu.Unlock()
	id, ok := p.all[two]
	if !ok {
		id = two[0] + "+" + two[1]
		p.all[two] = id
	}
	return id
}

// crossed joins every id of one list with every other of another.
func crossed(firsts, seconds []string) []string {
	var ids []string
	for _, a := range firsts {
		for _, b := range seconds {
			if id := joined(a, b); a != b && !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	slices.Sort(ids)
	return ids
}

// bothIDs is the ids of two lists in order: single slips, then two together.
func bothIDs(a, b []string) []string {
	ids := slices.Concat(a, b)
	slices.SortFunc(ids, singlesFirst)
	return slices.Compact(ids)
}

func singlesFirst(a, b string) int {
	return cmp.Or(strings.Count(a, "+")-strings.Count(b, "+"), strings.Compare(a, b))
}

// share tells whether two lists have an id in common.
func share(a, b []string) bool {
	return slices.ContainsFunc(a, func(id string) bool { return slices.Contains(b, id) })
}

// among tells whether every id of some is one of all.
func among(some, all []string) bool {
	return !slices.ContainsFunc(some, func(id string) bool { return !slices.Contains(all, id) })
}
