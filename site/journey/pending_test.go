package journey

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestTypingGoesOnDuringACheck: what is typed into a field while its entry is
// checked stays there, cursor and all, and nothing of the entry is mixed in.
func TestTypingGoesOnDuringACheck(t *testing.T) {
	h := newSite(t)
	p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
	p.home()
	p.ready()
	p.eval(`document.querySelector(".choices form button").click()`, nil)
	p.await("the desk shows", `document.querySelector("#next")`)
	if p.count("#sketch-skip") > 0 {
		p.skipSketch()
	}
	p.eval(`(() => {
		document.querySelector("#next a").click();
		const field = document.activeElement;
		globalThis.typedInto = field.id;
		field.focus();
		field.value = "91";
		field.form.requestSubmit();
		field.value = "78";
		field.setSelectionRange(2, 2);
		field.dispatchEvent(new Event("input", { bubbles: true }));
	})()`, nil)
	p.await("the verdict shows", `[...document.querySelectorAll("main b")].some((b) => b.textContent === "91")`)
	var held string
	p.eval(`(() => { const f = document.getElementById(typedInto); return f.value + "|" + f.selectionStart + "|" + document.activeElement.id.replace(typedInto, "it"); })()`, &held)
	assert.Equal(t, "78|2|it", held)
}
