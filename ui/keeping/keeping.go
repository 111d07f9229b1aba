// Package keeping says what came of keeping the work of a screen: it is kept, or a
// yes would settle why it is not, or it is on the screen and nowhere else.
package keeping

import (
	"errors"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/store"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/screen"
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

// NotSaved is said of work that is not kept and that no question settles.
func NotSaved(err error, th theme.Theme) string {
	text := "Not saved, but still here: " + err.Error()
	if errors.Is(err, store.ErrChanged) {
		text += "; " + th.Key("A", "reload") + " reads it anew, then repeat your change"
	}
	return text
}

// Told is what a screen says, and whether it tells of trouble, after a [screen.Said] or a
// [screen.Changed] came to it; what it has to say of its own goes before files that were
// changed, and in front of what is said behind it.
func Told(msg tea.Msg, status string, alarm bool, th theme.Theme) (string, bool) {
	switch msg := msg.(type) {
	case screen.Said:
		if msg.Behind && status != "" {
			return status + " " + msg.Text, alarm || msg.Alarm
		}
		return msg.Text, msg.Alarm
	case screen.Changed:
		if status == "" {
			return "Changed on the disk meanwhile: " + msg.Files + ". " + th.Key("A", "reload") + " reads anew; till then the answer is by what was read before.", true
		}
	}
	return status, alarm
}

// Anew is what the key of a screen says that reads all files again.
const Anew keys.Action = "read anew"

// AnewKey reads all files again, under a heading of the screen's, but for the built-in
// example.
func AnewKey(group string, example bool, th theme.Theme) keys.Binding {
	inNoFile := ""
	if example {
		inNoFile = "the built-in example is in no file; on the plan, " + th.Key("a", "adopt") + " makes it yours"
	}
	return keys.New(group, Anew, "A", "read anew", "A", "f5").Explained("read all files again, as an editor or another program has left them; what is not saved here is asked about, and kept in a copy").Unless(inNoFile)
}

// AskAnew asks the root to read all files again.
func AskAnew() tea.Msg { return screen.Anew{} }

// AnewQuestion asks whether to read all files again though work is not saved.
func AnewQuestion[M any](why error, th theme.Theme) *form.Question[M] {
	return &form.Question[M]{
		Text:  "Read the files anew, and keep what you have here in a copy beside them? " + th.YesOrNo(),
		Why:   "Not saved: " + why.Error(),
		Sends: screen.Anew{Aside: true},
	}
}

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
