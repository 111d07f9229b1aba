package short

import (
	"errors"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is a coach whose bed gives for some faces only.
func ours() Options {
	var kept planner.Memory
	rig, places, wash := sample.Day()
	sample.Set(&rig.Beds[0], map[string]string{"gallons_so_far": "190 gal", "price": "$185"})
	return Options{
		Rig: rig, Places: places, Wash: wash,
		Sharing: kept.Sharing, Save: func(model.Wash) error { return errors.New("nothing is to be saved here") },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player {
	p := unanswered(t, New(o))
	p.Run(p.M.Init())
	return p.Keys(script)
}

// unanswered is the screen before its first answer. Messages of the screen to itself
// are handed back to it.
func unanswered(t testing.TB, m Model) *player {
	p := hands.Play(t, m, "")
	p.Own = func(msg tea.Msg) bool {
		_, own := msg.(reckoned)
		return own
	}
	return p
}
