package journey

import (
	"encoding/json"
	"fmt"
	"testing"

	"closingside/tutor/kinds"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hopeless are givens of every kind that make no problem, as one might copy
// them from a book.
var hopeless = map[string]map[string]string{
	"components": {"force.0.name": "G", "force.0.x": "0 N", "force.0.y": "0 N"},
	"two-forces": {"forces.0.name": "P", "forces.0.magnitude": "340 N", "forces.0.direction": "25 deg",
		"forces.1.name": "Q", "forces.1.magnitude": "340 N", "forces.1.direction": "205 deg"},
	"concurrent-forces": {"forces.0.name": "P", "forces.0.magnitude": "340 N", "forces.0.direction": "25 deg",
		"forces.1.name": "Q", "forces.1.magnitude": "340 N", "forces.1.direction": "205 deg"},
	"oblique-components": {"force.0.name": "P", "force.0.magnitude": "560 N", "force.0.direction": "70 deg",
		"axes.0.name": "u", "axes.0.direction": "25 deg", "axes.1.name": "v", "axes.1.direction": "205 deg"},
	"missing-force": {"known.0.name": "A", "known.0.magnitude": "520 N", "known.0.direction": "35 deg",
		"missing.0.name": "B", "missing.0.magnitude": "10 N", "resultant.0.direction": "0 deg"},
	"particle-equilibrium": {"parts.0.name": "T1", "parts.0.is": "cable", "parts.0.direction": "40 deg above -x",
		"parts.1.name": "T2", "parts.1.is": "cable", "parts.1.direction": "30 deg below -x",
		"parts.2.name": "W", "parts.2.is": "weight", "parts.2.mass": "120 kg"},
}

// What makes no problem is refused with a sentence that says why, which is in
// use and in view, and everything typed is still there.
func TestHopelessGivensOfEveryKind(t *testing.T) {
	p := visit(t, newSite(t))
	p.home()
	p.ready()
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			p.t = t
			typed := hopeless[k.Name]
			require.NotEmpty(t, typed, "every kind has some")
			p.eval(fmt.Sprintf(`document.querySelector("#kind-%s form:has([value=form]) button").click()`, k.Name), nil)
			p.await("the form shows", fmt.Sprintf(`document.querySelector("#kind-%s #own-form") && document.activeElement.id === "own"`, k.Name))
			for name, value := range typed {
				p.eval(fmt.Sprintf(`document.getElementById(%q).value = %q`, k.Name+"."+name, value), nil)
			}
			p.eval(`document.querySelector("#own-form").requestSubmit()`, nil)
			p.await("it is refused", `document.querySelector("#own-form [role=alert]")`)
			p.await("what is refused is in use", `document.activeElement.id === "refused" || document.activeElement.matches("[aria-invalid]")`)
			t.Log(p.text("#own-form [role=alert]"))
			assert.Greater(t, len(p.text("#own-form [role=alert]")), 20, "a sentence")
			p.await("the sentence is in view", `(() => { const b = document.querySelector("#refused").getBoundingClientRect(); return b.top >= 0 && b.bottom <= innerHeight; })()`)
			p.view("hopeless-" + k.Name)
			names, err := json.Marshal(typed)
			require.NoError(t, err)
			var lost []string
			p.eval(fmt.Sprintf(`Object.entries(%s).filter(([n, v]) => document.getElementById(%q + n).value !== v).map(([n]) => n)`, names, k.Name+"."), &lost)
			assert.Empty(t, lost, "nothing typed is lost")
		})
	}
}
