package entry

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// Logger keeps the log.
type Logger interface {
	// Append adds entries for good: all or none. On error the log is as it was,
	// and the error says what to do.
	Append(entries ...model.Entry) error
	// Log is the log as it stands.
	Log() model.Log
}

// Answer gives the plan by the log as it stands, and what the log teaches.
type Answer func() (planner.Plan, *planner.Past, error)

// Desk is what the screens that write in the log work with.
type Desk struct {
	Rig    model.Rig
	Places model.Places
	Wash   model.Wash // the next one
	Logger Logger
	Answer Answer
	Lag    func() Lag // see [Book]
	Clock  func() time.Time
	NewID  func(model.Moment) (string, error)
	Deeds  *Deeds // nil where nobody undoes
	Theme  theme.Theme
	Units  quantity.System
	Size   layout.Size // of the screen, as it opens
}

// Book is the log, as a program that has one hands it to its screens.
type Book struct {
	Logger Logger
	// Past is what the log teaches as it stands, for a rig and its places; where
	// that takes long, what was known before, until Lag is [UpToDate].
	Past func(model.Rig, model.Places) *planner.Past
	// Learn begins what there is to learn, and gives the command that waits for it
	// and ends in [Learned]; nil where there is nothing to wait for. Without it,
	// and without Lag, Past is never behind.
	Learn func() tea.Cmd
	Lag   func() Lag
	Clock func() time.Time
	NewID func(model.Moment) (string, error)
	Deeds *Deeds // of this run; nil where nobody undoes
}

// Lag is how far what is known of the log is behind.
type Lag uint8

// The lags. Behind, what is known is of the log or the rig as it was a moment
// ago; Unread, nothing is known of the log yet.
const (
	UpToDate Lag = iota
	Behind
	Unread
)

// ReadingLog is said while the answer waits for the log.
const ReadingLog = "reading the log ..."

// WhileReading adds to a status that the answer is about to move.
func WhileReading(status string) string {
	if status == "" {
		return ReadingLog
	}
	return status + "  " + ReadingLog
}

// Lags is Lag, also of a book that is never behind.
func (b Book) Lags() Lag { return lagOf(b.Lag) }

// Lags is the lag of the desk's book.
func (d Desk) Lags() Lag { return lagOf(d.Lag) }

func lagOf(ask func() Lag) Lag {
	if ask == nil {
		return UpToDate
	}
	return ask()
}

// Due tells the root that there is something to learn now.
type Due struct{}

// Learned tells the screens that what the log teaches is at hand, or why it
// cannot be.
type Learned struct{ Err error }

// Now is the moment by the clock.
func (d Desk) Now() model.Moment { return model.MomentOf(d.Clock()) }

// Zone is that of the clock.
func (d Desk) Zone() *time.Location { return d.Clock().Location() }

// Known is what forms may offer.
func (d Desk) Known() Known {
	k := KnownOf(d.Rig, d.Places, d.Clock)
	k.Units, k.Wash = d.Units, d.Wash
	return k
}

// Write gives entries their moment and identifier where they have none, appends
// them, and gives their identifiers. On error nothing is written.
func (d Desk) Write(entries ...model.Entry) ([]string, error) {
	ids := make([]string, len(entries))
	for i := range entries {
		if !entries[i].At.Given() {
			entries[i].At = d.Now()
		}
		if entries[i].ID == "" {
			id, err := d.NewID(entries[i].At)
			if err != nil {
				return nil, err
			}
			entries[i].ID = id
		}
		ids[i] = entries[i].ID
	}
	err := d.Logger.Append(entries...)
	if err == nil {
		d.Deeds.Note(ids)
	}
	return ids, err
}

// Look works out the plan and what lies ahead of its bed.
func (d Desk) Look() (planner.Plan, *planner.BedPast, planner.Ahead, error) {
	plan, past, err := d.Answer()
	if err != nil {
		return plan, nil, planner.Ahead{}, err
	}
	ahead, err := planner.LookAhead(d.Rig, d.Places, d.Wash, plan, past, d.Now())
	return plan, past.Bed(plan.BedName), ahead, err
}

// Pen is the name of the pen that is used, "" where the rig has none.
func (d Desk) Pen() string {
	if d.Rig.Defaults.Pen != "" || len(d.Rig.Pens) == 0 {
		return d.Rig.Defaults.Pen
	}
	return d.Rig.Pens[0].Name
}

// Slips says of an entry what is so odd about it that it looks like a slip of the hand,
// by a plan; "" for nothing.
func (d Desk) Slips(plan *planner.Plan) func(model.Body) string {
	return func(body model.Body) string {
		note, odd := plan.Slip(&d.Rig, body)
		if !odd {
			return ""
		}
		return note.Text(d.Units)
	}
}

// notWritten is said of what was asked about and declined.
const notWritten = "Not written: put it right, or write it all the same."

// allTheSame asks whether what is odd is to be written.
func allTheSame(odd, answers string) string { return odd + " Write it all the same? " + answers }

// PriceOf is what a fill of a bed costs, as the rig states it.
func (d Desk) PriceOf(bed string) quantity.Opt[quantity.Money] {
	if i := model.Find(d.Rig.Names("bed"), bed); i >= 0 {
		return d.Rig.Beds[i].Price
	}
	return quantity.Opt[quantity.Money]{}
}

// ResinOf is what a fill of a bed holds, as the rig states it.
func (d Desk) ResinOf(bed string) quantity.Opt[quantity.Volume] {
	if i := model.Find(d.Rig.Names("bed"), bed); i >= 0 {
		return d.Rig.Beds[i].Resin
	}
	return quantity.Opt[quantity.Volume]{}
}

// Stated is a value as a person would have typed it: the text that is shown, and
// no more digits than the text has. What cannot be typed is not stated.
func Stated[Q quantity.Quantity](v Q, sys quantity.System) quantity.Opt[Q] {
	text := quantity.Show(v, sys)
	typed, err := quantity.Parse[Q](text)
	if err != nil {
		return quantity.Opt[Q]{}
	}
	return quantity.Typed(typed, text)
}

// Written tells a screen that is seen again that the log has grown.
type Written struct{}
