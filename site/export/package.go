package export

import (
	"bytes"
	"encoding/xml"

	"closingside/tutor"
	"closingside/tutor/text"
)

// el is an element while it is built.
type el struct {
	name  string
	attrs []xml.Attr
	text  string
	kids  []*el
}

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

// test is the test of the items answered one way: a section for each problem.
func (p *pack) test(v *tutor.Variant, way string) []byte {
	part := tag("qti-test-part").with("identifier", "part", "navigation-mode", "nonlinear", "submission-mode", "individual")
	var section *el
	problem := ""
	for _, it := range p.items {
		if it.way != way {
			continue
		}
		if it.problem != problem {
			problem = it.problem
			section = tag("qti-assessment-section").with("identifier", problem, "title", text.Say("sheet.problem", "n", problem[1:]), "visible", "true")
			part.add(section)
		}
		section.add(tag("qti-assessment-item-ref").with("identifier", it.id, "href", it.file))
	}
	sum := tag("qti-outcome-processing").add(set("SCORE", tag("qti-sum").add(tag("qti-test-variables").with("variable-identifier", "SCORE"))))
	return document(tag("qti-assessment-test").with("xmlns", namespace, "identifier", way+"-"+v.ID, "title", v.Set.Title, "xml:lang", "en").
		add(outcome("SCORE", "float"), part, sum))
}

// manifest lists every file of the package.
func (p *pack) manifest() []byte {
	resources := tag("resources")
	tests := map[string]*el{}
	for _, way := range []string{typed, chosen} {
		file := way + ".xml"
		tests[way] = tag("resource").with("identifier", way, "type", "imsqti_test_xmlv3p0", "href", file).add(tag("file").with("href", file))
		resources.add(tests[way])
	}
	for _, it := range p.items {
		tests[it.way].add(tag("dependency").with("identifierref", it.id))
		resources.add(tag("resource").with("identifier", it.id, "type", "imsqti_item_xmlv3p0", "href", it.file).
			add(tag("file").with("href", it.file), tag("file").with("href", it.figure)))
	}
	return document(tag("manifest").with("xmlns", "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1", "identifier", "manifest").add(
		tag("metadata").add(tag("schema").say("QTI Package"), tag("schemaversion").say("3.0.0")),
		tag("organizations"), resources))
}
