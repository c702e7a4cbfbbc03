package export

import (
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// test is the test of the items answered one way: a section for each problem.
func (p *pack) test(v *sets.Variant, way string) []byte {
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
