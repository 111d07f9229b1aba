package trip

import (
	"washeve/model"
	"washeve/ui/history"
)

// Left is the screen as it was left: the trip that was shown, and what can be undone.
type Left struct {
	At      int
	History history.Of[Version]
	Unsaved error // why some trip was not saved
}

// Version is what undo goes back to: the trip that is shown, and how many there are.
type Version struct {
	Trip      model.Trip
	At, Trips int
}

// KeepLeft keeps what could not be saved before the screen was left, of a rig that is the
// built-in example or the person's own. The error says what would be lost.
func KeepLeft(k Keeper, example bool) error {
	left, before := k.Left()
	if !before || left.Unsaved == nil {
		return nil
	}
	all, _ := k.Trips(example)
	for i, t := range all {
		if err := k.Keep(i, t); err != nil {
			return err
		}
	}
	left.Unsaved = nil
	k.Leave(left)
	return nil
}
