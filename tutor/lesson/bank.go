package lesson

import (
	"slices"
	"sync"
)

// banks holds the problems of each kind, read once.
var banks sync.Map // *Kind → []Problem

// InBank tells whether the problem of a code is one of the kind's Bank.
func (k *Kind) InBank(code string) bool {
	return slices.ContainsFunc(k.BankProblems(), func(p *Problem) bool { return p.Code() == code })
}

// BankProblems lists the problems of the kind's Bank, in its order, copies each
// time: their settings may be changed, their items are shared. It panics where one
// can't be read.
func (k *Kind) BankProblems() []*Problem {
	read, ok := banks.Load(k)
	if !ok {
		var all []Problem
		for _, src := range k.Bank {
			p, err := k.Read(src)
			if err != nil {
				panic("lesson: bank problem of kind " + k.Name + ": " + err.Error())
			}
			all = append(all, *p)
		}
		read = all
		banks.Store(k, read)
	}
	var copies []*Problem
	for _, p := range read.([]Problem) {
		copies = append(copies, &p)
	}
	return copies
}
