package journey

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Tabs and the browser's history tell one problem from another by the page's title.
func TestTheTitleNamesTheProblem(t *testing.T) {
	p := visit(t, newSite(t))
	title := func() (s string) {
		p.eval(`document.title`, &s)
		return s
	}
	p.home()
	p.ready()
	home := title()
	assert.NotEmpty(t, home)
	p.choose()
	assert.Equal(t, p.text("h1")+" · "+home, title())
	p.reload()
	assert.Equal(t, p.text("h1")+" · "+home, title())
	p.eval(`document.querySelector("main nav button").click()`, nil)
	p.await("the list shows", `document.querySelector(".kind")`)
	assert.Equal(t, home, title())
	p.eval(`history.back()`, nil)
	p.await("the problem shows", `document.querySelector("#sketch, #desk, #next") && document.querySelector("main nav")`)
	assert.Contains(t, title(), p.text("h1"))
}
