package day

import (
	"errors"
	"testing"

	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is a clear day in May, of which all is known.
func ours() Options {
	var kept planner.Memory
	rig, places, wash := sample.Day()
	return Options{
		Rig: rig, Places: places, Wash: wash,
		Make: kept.Make, Save: func(model.Wash) error { return errors.New("nothing is to be saved here") },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen.
type player struct{ *hands.Player[Model] }

func play(t testing.TB, o Options, script string) player {
	return player{hands.Play(t, New(o), script)}
}

func (p player) start() string { return fieldOf(&p.M.now, keyStart).Text() }

func (p player) nose() string { return fieldOf(&p.M.now, keyHeading).Text() }
