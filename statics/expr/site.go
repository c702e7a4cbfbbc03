package expr

import (
	"slices"
	"strconv"
)

// A site is a place in a tree: the pre-order index of the node that stands
// there, the root's being 0. In a + cos b the sites are + 0, a 1, cos 2, b 3.

// Size is the number of sites in n.
func Size(n Node) int {
	switch n := n.(type) {
	case Num, Ang, Pi, Sym:
		return 1
	case Neg:
		return 1 + Size(n.X)
	case Bin:
		return 1 + Size(n.L) + Size(n.R)
	case Fn:
		return 1 + Size(n.X)
	}
	panic("expr: unknown node")
}

// At is the node at a site of n. It panics unless 0 ≤ site < Size(n).
func At(n Node, site int) Node {
	for rest := site; rest >= 0; {
		if rest == 0 {
			return n
		}
		rest--
		switch t := n.(type) {
		case Neg:
			n = t.X
		case Fn:
			n = t.X
		case Bin:
			if left := Size(t.L); rest < left {
				n = t.L
			} else {
				n, rest = t.R, rest-left
			}
		default:
			rest = -1
		}
	}
	panic(noSite(site))
}

// Replace is n with the node at a site replaced. It panics unless
// 0 ≤ site < Size(n).
func Replace(n Node, site int, with Node) Node {
	if site == 0 {
		return with
	}
	if site > 0 {
		switch t := n.(type) {
		case Neg:
			t.X = Replace(t.X, site-1, with)
			return t
		case Fn:
			t.X = Replace(t.X, site-1, with)
			return t
		case Bin:
			if left := Size(t.L); site <= left {
				t.L = Replace(t.L, site-1, with)
			} else {
				t.R = Replace(t.R, site-1-left, with)
			}
			return t
		}
	}
	panic(noSite(site))
}

func noSite(site int) string { return "expr: no site " + strconv.Itoa(site) + " in this tree" }

// RewriteAll offers every node of n to rule, those below before those above
// (which see what has become of the ones below), and puts in place whatever
// rule returns with true. The result is false when rule never did.
func RewriteAll(n Node, rule func(Node) (Node, bool)) (Node, bool) {
	var below bool
	switch t := n.(type) {
	case Neg:
		if t.X, below = RewriteAll(t.X, rule); below {
			n = t
		}
	case Fn:
		if t.X, below = RewriteAll(t.X, rule); below {
			n = t
		}
	case Bin:
		var inL, inR bool
		t.L, inL = RewriteAll(t.L, rule)
		t.R, inR = RewriteAll(t.R, rule)
		if below = inL || inR; below {
			n = t
		}
	}
	if with, here := rule(n); here {
		return with, true
	}
	return n, below
}

// Walk visits every node of n with its site, in pre-order.
func Walk(n Node, visit func(site int, n Node)) { walk(n, visit, 0) }

func walk(n Node, visit func(int, Node), site int) int {
	visit(site, n)
	next := site + 1
	switch n := n.(type) {
	case Neg:
		return walk(n.X, visit, next)
	case Fn:
		return walk(n.X, visit, next)
	case Bin:
		return walk(n.R, visit, walk(n.L, visit, next))
	}
	return next
}

// Symbols are the names of the symbols in n, each once, in the order in which
// they are first read.
func Symbols(n Node) []string {
	var names []string
	Walk(n, func(_ int, n Node) {
		if s, ok := n.(Sym); ok && !slices.Contains(names, s.Name) {
			names = append(names, s.Name)
		}
	})
	return names
}

// Substitute puts a tree in the place of every symbol for which f has one.
// What is put in place is not searched again.
func Substitute(n Node, f func(name string) (Node, bool)) Node {
	n, _ = RewriteAll(n, func(n Node) (Node, bool) {
		if s, ok := n.(Sym); ok {
			return f(s.Name)
		}
		return n, false
	})
	return n
}
