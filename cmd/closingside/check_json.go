package main

import (
	"encoding/json"
	"io"
	"maps"
	"slices"
	"strings"

	"closingside/tutor"
)

const lineExample = `write {"quantity":"R","entry":"682.6 N"} or {"reset":true}`

// answer is the machine's form of a reply.
type answer struct {
	Quantity    string    `json:"quantity"`
	Entry       string    `json:"entry"`
	Verdict     string    `json:"verdict"`
	Slips       []suspect `json:"slips"`
	Unexplained float64   `json:"unexplained"`
	From        string    `json:"from,omitempty"`
	Rounded     *rounded  `json:"rounded,omitempty"`
	Notes       []string  `json:"notes,omitempty"`
	Feedback    string    `json:"feedback"`
}

type suspect struct {
	IDs         []string `json:"ids"`
	Probability float64  `json:"probability"`
}

type rounded struct {
	What   string `json:"what"`
	Digits int    `json:"digits"`
	Keep   int    `json:"keep"`
}

// answerJSON answers one line of JSON by one, written at once.
func (d *desk) answerJSON(out io.Writer, line string) error {
	name, entry, reset, bad := parseRequest(line)
	if bad != nil {
		return bad
	}
	if reset {
		d.reset()
		return encode(out, map[string]bool{"reset": true})
	}
	q, bad := d.names.find(name)
	if bad != nil {
		return bad
	}
	return encode(out, machine(d.work.Enter(q, entry)))
}

func machine(r tutor.Reply) answer {
	a := answer{Quantity: r.Quantity, Entry: r.Entry, Verdict: r.Verdict.String(), Slips: []suspect{},
		Unexplained: r.Unexplained, From: r.From, Notes: r.Notes, Feedback: r.Feedback}
	for _, s := range r.Slips {
		a.Slips = append(a.Slips, suspect{s.IDs, s.Probability})
	}
	if r.Rounded != nil {
		a.Rounded = &rounded{r.Rounded.What, r.Rounded.Digits, r.Rounded.Keep}
	}
	return a
}

// parseRequest takes a line apart: an entry for a quantity, or a reset.
func parseRequest(line string) (name, entry string, reset bool, bad error) {
	fail := func(why string) (string, string, bool, error) {
		return "", "", false, &lineError{why + "; " + lineExample}
	}
	fields, twice, ok := members(line)
	if !ok {
		return fail("this is not a JSON object")
	}
	if twice != "" {
		return fail("“" + printable(twice) + "” is given twice")
	}
	for _, key := range slices.Sorted(maps.Keys(fields)) {
		if key != "quantity" && key != "entry" && key != "reset" {
			return fail("“" + printable(key) + "” is not known here")
		}
	}
	if on, ok := fields["reset"]; ok {
		if len(fields) > 1 || string(on) != "true" {
			return fail("“reset” stands alone and is true")
		}
		return "", "", true, nil
	}
	for key, to := range map[string]*string{"quantity": &name, "entry": &entry} {
		raw, ok := fields[key]
		if !ok {
			return fail("“" + key + "” is missing")
		}
		if raw[0] != '"' || json.Unmarshal(raw, to) != nil {
			return fail("“" + key + "” must be a text in quotes")
		}
	}
	return name, entry, false, nil
}

// members takes a JSON object apart. A key that it has twice, however spelled,
// is named: which of its values is meant can't be told.
func members(line string) (fields map[string]json.RawMessage, twice string, ok bool) {
	if json.Unmarshal([]byte(line), &fields) != nil || fields == nil {
		return nil, "", false
	}
	seen := map[string]bool{}
	d := json.NewDecoder(strings.NewReader(line))
	_, err := d.Token() // the brace
	for err == nil && d.More() {
		var key json.Token
		key, err = d.Token()
		var value json.RawMessage
		if d.Decode(&value) != nil {
			return nil, "", false
		}
		name, _ := key.(string)
		if seen[name] {
			return nil, name, true
		}
		seen[name] = true
	}
	return fields, "", true
}
