package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/planner"
)

// The first picture says why the roof is left out of the DI rinse, and naming it takes that
// away.
func TestTheFirstPictureSaysWhyTheRoofIsLeftOut(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, "e '40 ft' enter '12 ft' enter '0.5 ft3' enter '320 ppm NaCl' enter")
	assert.Contains(t, p.Seen(), "roof raw, out of sight")
	work := p.M.now.clone()
	assert.NoError(t, work.set(ref{section: "wash", key: "di_faces"}, "roof"))
	p.M = p.M.commit(work)
	assert.Contains(t, p.Seen(), "roof DI, no spots")

	told := said(t, o, "fresh", "walk needed", "40 ft", "12 ft", "0.5 ft3", "320 ppm NaCl", "full", "change DI first on roof", "quit")
	assert.Contains(t, told, `nobody sees the roof of a coach from the ground. To rinse it as well, name it under "DI first on"`)
	assert.Contains(t, told, "DI first on: roof.")
}
