// Package keeping says what came of keeping the work of a screen: it is kept, or a
// yes would settle why it is not, or it is on the screen and nowhere else.
package keeping

import (
	"errors"

	"washeve/ui/form"
	"washeve/ui/theme"
)

// Rewriter is an error of keeping that a yes settles: the file is written anew, and
// what stood in it is kept aside.
type Rewriter interface {
	error
	Rewrite() (backup string, err error)
	// TakesOut tells that nothing is lost but items that are taken out.
	TakesOut() bool
}

// Saved is said of work that is kept.
const Saved = "Saved."

// SavedAnew is said of work whose file was written anew.
func SavedAnew(backup string) string { return "Saved. What stood there before is in " + backup + "." }

// NotSaved is said of work that is not kept and that nothing settles.
func NotSaved(err error) string { return "Not saved, but still here: " + err.Error() }

// Question asks whether to write the file anew, where the error is a [Rewriter]; nil
// where it is not. It tells which answers it takes, and after a no what can be done.
func Question[M any](err error, th theme.Theme, rewrite func(M, Rewriter) M) *form.Question[M] {
	var r Rewriter
	if !errors.As(err, &r) {
		return nil
	}
	text := "Write it anew, and keep the old file aside? "
	if r.TakesOut() {
		text = "Take it out of the file too, and keep a copy of the file as it was? "
	}
	return &form.Question[M]{
		Text: text + th.YesOrNo(),
		Why:  "Not saved: " + err.Error(),
		Yes:  func(m M) M { return rewrite(m, r) },
		No:   "Not saved. It is as you see it here; " + th.Key("s", "save") + " tries again, " + th.Key("u", "undo") + " takes the change back.",
	}
}
