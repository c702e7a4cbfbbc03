package export

import (
	"bytes"
	"encoding/xml"
)

// el is an element while it is built; text alone where it has no name.
type el struct {
	name  string
	attrs []xml.Attr
	text  string
	kids  []*el
}

// words is a stretch of text between elements.
func words(s string) *el { return &el{text: s} }

func tag(name string) *el { return &el{name: name} }

// with adds attributes: names and values in turn.
func (e *el) with(pairs ...string) *el {
	for i := 0; i < len(pairs); i += 2 {
		e.attrs = append(e.attrs, xml.Attr{Name: xml.Name{Local: pairs[i]}, Value: pairs[i+1]})
	}
	return e
}

func (e *el) add(kids ...*el) *el {
	e.kids = append(e.kids, kids...)
	return e
}

// say sets the text before the element's kids.
func (e *el) say(s string) *el {
	e.text = s
	return e
}

func (e *el) encode(enc *xml.Encoder) error {
	if e.name == "" {
		return enc.EncodeToken(xml.CharData(e.text))
	}
	start := xml.StartElement{Name: xml.Name{Local: e.name}, Attr: e.attrs}
	if err := enc.EncodeToken(start); err != nil {
		return err
	}
	if e.text != "" {
		if err := enc.EncodeToken(xml.CharData(e.text)); err != nil {
			return err
		}
	}
	for _, k := range e.kids {
		if err := k.encode(enc); err != nil {
			return err
		}
	}
	return enc.EncodeToken(start.End())
}

// document is e as an XML file. Names and texts are ours, so that it can't fail.
func document(e *el) []byte {
	b := bytes.NewBufferString(xml.Header)
	enc := xml.NewEncoder(b)
	if err := e.encode(enc); err != nil {
		panic("export: " + err.Error())
	}
	if err := enc.Close(); err != nil {
		panic("export: " + err.Error())
	}
	return append(b.Bytes(), '\n')
}
