package report

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/split"
)

// ShareGives says what the bed gives and what the faces need.
func ShareGives(s *planner.Share, sys quantity.System) string {
	return fmt.Sprintf("With %s the bed gives %s at %s after its flush; DI for every face takes %s.",
		confidence(s.Confidence), quantity.Show(s.Gives, sys), quantity.Show(s.Flow, sys), quantity.Show(s.Needs, sys))
}

const noDI = "No DI water flows in this wash: there is nothing to share out."

func confidence(f quantity.Fraction) string { return fmt.Sprintf("%.0f %% confidence", 100*float64(f)) }

// ShareSays says who gets DI water, and how much of the spots that spares.
func ShareSays(s *planner.Share, sys quantity.System) string {
	order := s.Order()
	switch {
	case s.Short > 0:
		return fmt.Sprintf("The faces pinned in do not fit: they need %s more than the bed gives.", quantity.Show(s.Short, sys))
	case s.Needs <= 0:
		return noDI
	case len(order) == 0:
		return "No face is sure enough. Rinse in this order, and stop when the pen shows the limit."
	}
	spares := Percent(s.Spared) + " of the spots that DI on all would"
	if s.Unpinned-s.Spared > 0.005 {
		spares += "; without pins " + Percent(s.Unpinned)
	}
	if len(order) == 1 {
		return fmt.Sprintf("DI on the %s alone: it spares %s.", order[0], spares)
	}
	return fmt.Sprintf("DI on %s, in this order: it spares %s.", Order(order), spares)
}

// Order lists faces one by one.
func Order(sides []model.Side) string {
	words := make([]string, len(sides))
	for i, s := range sides {
		words[i] = string(s)
	}
	return strings.Join(words, ", ")
}

// Pin says what was decided of a face; "" where nothing was.
func Pin(p split.Pin) string {
	switch p {
	case split.In:
		return "pinned in"
	case split.Out:
		return "pinned out"
	}
	return ""
}

// ShareTable lists the faces: those with DI in their order, then the rest.
func ShareTable(s *planner.Share, sys quantity.System) Table {
	t := Table{
		Head:    []string{"face", "gets", "water", "time", "towel", "if left", "DI need", "to here", "pin"},
		Numeric: []bool{false, false, true, true, true, false, true, true, false},
	}
	for _, f := range s.Faces {
		t.Rows = append(t.Rows, []string{
			string(f.Name), WaterName(f.Water), quantity.Show(f.Volume, sys), Time(f.Duration), orNone(f.Towel),
			spotWord(f.Spots), needOf(f, sys), Odds(f.Reaches), strings.TrimPrefix(Pin(f.Pin), "pinned "),
		})
	}
	return t
}

// needOf is the DI water that a face needs; none is asked for one that the wash
// does not rinse with it.
func needOf(f planner.FaceShare, sys quantity.System) string {
	if !f.Asked && f.Pin != split.In {
		return "-"
	}
	return quantity.Show(f.Needs, sys)
}

// spotWord is the outlook in one word.
func spotWord(s planner.Spots) string {
	if s == planner.NoSpots {
		return "clear"
	}
	return string(s)
}

func orNone(d quantity.Duration) string {
	if d <= 0 {
		return "-"
	}
	return Time(d)
}

// Turning says what pinning a face the other way would do.
func Turning(f planner.FaceShare, now *planner.Share, sys quantity.System) string {
	does := "Pinned in, the " + string(f.Name) + " gets DI"
	if f.DI {
		does = "Pinned out, the " + string(f.Name) + " gets a towel"
	}
	o := f.Other
	if o.Short > 0 {
		return does + ", and the bed is " + quantity.Show(o.Short, sys) + " short of that."
	}
	var parts []string
	for _, side := range o.Gain {
		if side != f.Name {
			parts = append(parts, "the "+string(side)+" gains DI")
		}
	}
	for _, side := range o.Lose {
		if side != f.Name {
			parts = append(parts, "the "+string(side)+" loses it")
		}
	}
	if len(parts) > 0 {
		does += ", " + strings.Join(parts, ", ")
	}
	then, was := Percent(o.Spared), Percent(now.Spared)
	if then == was {
		return does + ": spared " + then + ", as now."
	}
	return does + ": spared " + then + " rather than " + was + "."
}

// WaysTable lists the ways out with their numbers. A way that is none here has
// its reason in place of them.
func WaysTable(ways []planner.WayOut, sys quantity.System) Table {
	t := Table{
		Head:    []string{"way", "DI", "time", "towel", "lasts", "buy", "resin"},
		Numeric: []bool{false, true, true, true, true, true, true},
	}
	for _, w := range ways {
		if w.Not.Code != "" {
			continue
		}
		t.Rows = append(t.Rows, []string{
			w.Name, quantity.Show(w.DI.Volume, sys), Time(w.DI.Duration), orNone(w.Towel), Odds(w.Chance), Buy(w.Buy), resinUsed(w.Resin),
		})
	}
	return t
}

// Buy says what is bought. An unknown price is not nothing.
func Buy(o planner.Outlay) string {
	price, known := o.Price.Get()
	switch {
	case !o.Needed:
		return "-"
	case !known:
		return "unknown"
	}
	return price.String()
}

func resinUsed(c planner.Cost) string {
	if !c.Known {
		return "unknown"
	}
	return Money(c.Wash, c.Currency)
}

// WaySays says what a way is and what it costs beside money, or why it is none.
func WaySays(w planner.WayOut, sys quantity.System) string {
	if w.Not.Code != "" {
		return "none here: " + w.Not.Text(sys) + "."
	}
	return w.Does.Text(sys) + ". It costs " + w.Lost.Text(sys) + "."
}

// shortage is the page's part on a short bed.
func (w *page) shortage(p planner.Plan, sys quantity.System) {
	if p.Shortage == nil {
		return
	}
	s := &p.Shortage.Share
	w.prose("When the bed is short", ShareGives(s, sys))
	w.wrapped("  ", "  ", ShareSays(s, sys))
	w.table("Who gets DI", ShareTable(s, sys))
	w.wrapped("  ", "  ", "\"If left\" is how it dries without a towel. \"To here\" is the chance that the bed gives for a face and all above it.")
	w.table("Ways out", WaysTable(p.Shortage.Ways, sys))
	for _, way := range p.Shortage.Ways {
		w.wrapped("  - ", "    ", way.Name+": "+WaySays(way, sys))
	}
}
