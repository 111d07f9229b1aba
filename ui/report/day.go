package report

import (
	"math"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
)

type dayJSON struct {
	Start     *string               `json:"start"`
	End       *string               `json:"end"`
	Light     *drying.Light         `json:"light_at_end"`
	NotBefore *string               `json:"not_before"`
	NotAfter  *string               `json:"not_after"`
	Order     []model.Side          `json:"order"`
	Windows   []windowJSON          `json:"windows"`
	Sections  map[model.Side]number `json:"sections_ft2"`
	Unknown   []string              `json:"unknown"`
	Assumed   []string              `json:"assumed"`
}

type windowJSON struct {
	From string `json:"from"`
	To   string `json:"to"`
	Why  string `json:"why"`
}

// dayDocument is nil where nothing is known of the day.
func dayDocument(d *planner.DayPlan) *dayJSON {
	if d == nil {
		return nil
	}
	out := &dayJSON{
		NotBefore: clockJSON(d.NotBefore), NotAfter: clockJSON(d.NotAfter),
		Order: []model.Side{}, Windows: []windowJSON{}, Sections: map[model.Side]number{},
		Unknown: append([]string{}, d.Unknown...), Assumed: append([]string{}, d.Assumed...),
	}
	if d.Chosen.Given() || d.Recommended.Given() {
		end, light := clock(d.Start.End), d.LightAt(d.Start.End)
		out.Start, out.End, out.Light = &d.Start.Label, &end, &light
	}
	for _, t := range d.Start.Turns {
		out.Order = append(out.Order, t.Side)
		if section, given := t.Section.Get(); given {
			out.Sections[t.Side] = number(section.SquareFeet())
		}
	}
	for _, w := range d.Windows {
		out.Windows = append(out.Windows, windowJSON{clock(w.From), clock(w.To), w.Why})
	}
	return out
}

func clock(at time.Time) string { return at.Format("15:04") }

func clockJSON(at quantity.Opt[time.Time]) *string {
	t, given := at.Get()
	if !given {
		return nil
	}
	text := clock(t)
	return &text
}

// dryMinutes is null where it is not known and where nothing dries.
func dryMinutes(f planner.FacePlan) number {
	dries, given := f.Dries.Get()
	if !given {
		return number(math.NaN())
	}
	return number(dries.Minutes())
}

// DayStart says when to begin.
func DayStart(d *planner.DayPlan) string {
	var words string
	best, recommended := d.Recommended.Get()
	switch {
	case d.Chosen.Given():
		words = "You begin at " + d.Start.Label
	case recommended:
		words = "Begin at " + d.Start.Label
	default:
		return "When to begin is not known"
	}
	words += " and are done by " + clock(d.Start.End)
	if late := d.EndsWithoutSun(d.Start); late != "" {
		words += ", " + late
	}
	switch {
	case d.NotAfter.Given():
		words += "; " + easyStarts(d)
	case recommended:
		words += "; " + d.NoneEasy() + ": at " + best.Label + " the fewest faces hurry (" + Faces(best.Hurried()) + ")"
	}
	return words
}

// easyStarts are the starts about the recommended one after which no face hurries.
func easyStarts(d *planner.DayPlan) string {
	from, to := clock(d.NotBefore.Or(d.Start.At)), clock(d.NotAfter.Or(d.Start.At))
	if from == to {
		return "the easy start is " + from
	}
	return "easy starts from " + from + " to " + to
}

// DayBest is the start that is called recommended, and what is good about it.
func DayBest(d *planner.DayPlan, recommended string) string {
	best, given := d.Recommended.Get()
	switch {
	case !given:
		return "no start on this day is fit for a wash"
	case d.NotAfter.Given():
		return recommended + " " + best.Label + "; " + easyStarts(d)
	}
	return recommended + " " + best.Label + ": fewest faces hurry: " + Faces(best.Hurried())
}

// DayOrder lists the faces in order, each with its reason.
func DayOrder(s drying.Start) string {
	words := make([]string, len(s.Turns))
	for i, t := range s.Turns {
		words[i] = string(t.Side) + " (" + t.Why + ")"
	}
	return strings.Join(words, ", ")
}

// DayTable lists the faces with how long each lasts wet and the largest section.
func DayTable(s drying.Start, sys quantity.System) Table {
	t := Table{Head: []string{"face", "from", "to", "dries in", "largest section"}, Numeric: []bool{false, false, false, true, true}}
	for _, turn := range s.Turns {
		dries, section := "not known", "not known"
		if d, given := turn.Dries.Get(); given {
			dries = Time(d)
		}
		if a, given := turn.Section.Get(); given {
			section = quantity.Show(a, sys)
		}
		t.Rows = append(t.Rows, []string{string(turn.Side), clock(turn.From), clock(turn.To), dries, section})
	}
	return t
}

// DayWindows lists the easy hours: those in which no face hurries.
func DayWindows(d *planner.DayPlan) string {
	words := make([]string, len(d.Windows))
	for i, w := range d.Windows {
		words[i] = clock(w.From) + " to " + clock(w.To) + ", then " + w.Why
	}
	if len(words) > 0 && !d.NotAfter.Given() && d.Recommended.Given() {
		words = append(words, "the wash takes longer than that")
	}
	return strings.Join(words, "; ")
}

func (w *page) day(p planner.Plan, sys quantity.System) {
	d := p.Day
	if d == nil {
		if p.DayNote.Code != "" {
			w.prose("Day", p.DayNote.Text(sys))
		}
		return
	}
	w.prose("Day", DayStart(d)+".")
	if rise, given := d.Sun.Rise.Get(); given && d.Sun.Set.Given() {
		w.wrapped("  ", "  ", "Sun from "+clock(rise)+" to "+clock(d.Sun.Set.Or(rise))+".")
	}
	for _, n := range d.Notes {
		w.wrapped("  ", "  ", n.Text(sys)+".")
	}
	if len(d.Start.Turns) > 0 {
		w.wrapped("  order at "+d.Start.Label+": ", "    ", DayOrder(d.Start))
		w.table("Sections", DayTable(d.Start, sys))
	}
	if windows := DayWindows(d); windows != "" {
		w.wrapped("  easy hours: ", "    ", windows)
	}
	for _, u := range d.Unknown {
		w.wrapped("  needed, not known: ", "    ", u)
	}
	if len(d.Assumed) > 0 {
		w.wrapped("  assumed: ", "    ", strings.Join(d.Assumed, ", "))
	}
}
