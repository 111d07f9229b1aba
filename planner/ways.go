package planner

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
)

// Shorten works the whole shortage out: the share under the wash's own pins, and
// every other way.
func (m *Memory) Shorten(rig model.Rig, places model.Places, wash model.Wash) (Shortage, error) {
	s, err := m.Sharing(rig, places, wash)
	if err != nil {
		return Shortage{}, err
	}
	share, err := s.Out(wash)
	if err != nil {
		return Shortage{}, err
	}
	ways, err := s.Ways(share)
	return Shortage{Share: share, Ways: ways}, err
}

// ways is the work on the ways out.
type ways struct {
	*Sharing
	share Share
	wash  model.Wash // as it is stated, with the pins
	base  *making    // and its plan
	fresh *making    // and that with new resin
}

// Ways works every way out of the shortage out, each by making the plan that way.
// The pins of the share hold in every way.
func (s *Sharing) Ways(share Share) ([]WayOut, error) {
	w := ways{Sharing: s, share: share, wash: share.Asked}
	base, err := s.answered(w.wash)
	if err != nil {
		return nil, err
	}
	w.base = base
	if w.fresh, err = s.refreshed(w.wash); err != nil {
		return nil, err
	}
	var out []WayOut
	for _, way := range []func() (WayOut, error){w.split, w.slower, w.cap, w.drip, w.surfaces, w.twoFills, w.newResin, w.buy} {
		one, err := way()
		if err != nil {
			return nil, err
		}
		out = append(out, one)
	}
	return out, nil
}

func (s *Sharing) answered(w model.Wash) (*making, error) {
	return answered(s.rig, s.places, w, s.sources())
}

// of takes the numbers of a way from the plan made that way.
func (w ways) of(way WayOut, made *making) WayOut {
	p := &made.plan
	way.DI, way.Softened = p.DI, p.Soft
	if made.softener == nil {
		way.Softened = p.Untreated
	}
	way.Chance, way.Verdict, way.Resin = p.Bed.ChanceLasts, p.Verdict, p.Cost
	for _, f := range made.done.faces {
		if !slices.Contains(w.asked, f.Name) {
			continue
		}
		if f.DI <= 0 {
			way.Towels += f.Area
		} else {
			way.Towels += f.Area * quantity.Area(1-f.DIPart)
		}
	}
	way.Towel = towelTime(way.Towels)
	return way
}

// stated is a way that states something of the wash.
func (w ways) stated(way WayOut, wash model.Wash) (WayOut, *making, error) {
	made, err := w.answered(wash)
	if err != nil {
		return way, nil, err
	}
	way.Wash = &wash
	return w.of(way, made), made, nil
}

// not is a way that is none here.
func (w ways) not(way WayOut, format string, values ...quantity.Value) WayOut {
	way = w.of(way, w.base)
	way.Wash = nil
	way.Not = Note{Code: way.Code, Format: format, Values: values}
	return way
}

func say(way WayOut, does, lost string, values ...quantity.Value) WayOut {
	way.Does, way.Lost = Note{Code: way.Code, Format: does, Values: values}, Note{Code: way.Code, Format: lost}
	return way
}

// sure tells that a chance is what the wash wants.
func (w ways) sure(f quantity.Fraction) bool { return f >= w.share.Confidence }

func (w ways) split() (WayOut, error) {
	way := WayOut{Code: WaySplit, Name: "DI where it shows most"}
	if w.share.Short > 0 {
		return w.not(way, "the faces pinned in need %s too much", quantity.ValueOf(w.share.Short)), nil
	}
	order := w.share.Order()
	switch {
	case w.share.Needs <= 0:
		return w.not(way, "no DI water flows in this wash"), nil
	case len(order) == 0:
		return w.not(way, "no face is sure enough: rinse what shows most first, and stop when the pen shows the limit"), nil
	}
	way, made, err := w.stated(way, w.share.Wash)
	if err != nil {
		return way, err
	}
	if len(w.share.Wash.TowelFaces) == len(w.wash.TowelFaces) && w.share.Flow == w.base.main.flowOf(model.DI) {
		return w.not(way, "the bed has enough for the unpinned faces"), nil
	}
	does, lost := "DI on "+facesWords(order)+", in this order, at %s", "a towel on all else"
	if len(order) == 1 {
		does = "DI on the " + string(order[0]) + " alone, at %s"
	}
	if len(w.share.Wash.TowelFaces) == 0 {
		lost = "minutes"
	}
	return say(way, does, lost, quantity.ValueOf(made.main.flowOf(model.DI))), nil
}

// slower holds the DI water to less: to the fastest flow that is sure enough, else
// to that of the greatest chance.
func (w ways) slower() (WayOut, error) {
	way := WayOut{Code: WaySlower, Name: "slower flow"}
	drawn := w.base.main.flowOf(model.DI)
	found := false
	var best WayOut
	for _, part := range heldTo()[1:] {
		f := w.heldAt(part)
		if f >= drawn || f < leastHeld {
			continue
		}
		wash := w.wash
		wash.DIFlow = holding(f)
		one, _, err := w.stated(way, wash)
		if err != nil {
			return way, err
		}
		one = say(one, "", w.slowLoss())
		one.Does = byJug(way.Code, "hold the DI water to %s: ", "a gallon jug", " takes %s", func(holds quantity.Volume) quantity.Value { return quantity.ValueOf(f.Time(holds)) }, quantity.ValueOf(f))
		if !found || one.Chance > best.Chance+0.005 {
			best, found = one, true
		}
		if w.sure(one.Chance) {
			break
		}
	}
	switch {
	case !found:
		return w.not(way, "%s is as slow as a nozzle still sprays", quantity.ValueOf(drawn)), nil
	case best.Chance <= w.base.plan.Bed.ChanceLasts+0.005:
		return w.not(way, "slowing down does not bring this bed back"), nil
	}
	return best, nil
}

// slowLoss says what a slower flow costs.
func (w ways) slowLoss() string {
	if w.base.main.end.Tool == model.PressureWasher {
		return "minutes (a pressure washer's pump draws its own flow: use a nozzle that is throttled)"
	}
	return "minutes"
}

// cap holds the DI water to the flow cap, where the sprayer draws more.
func (w ways) cap() (WayOut, error) {
	way := WayOut{Code: WayCap, Name: "shut down to the cap"}
	held, drawn := w.base.plan.Cap.Held(), w.base.main.flowOf(model.DI)
	limit := held.Flow
	switch {
	case drawn <= limit && !w.base.plan.Cap.Useful():
		return w.not(way, "no flow keeps this bed on spec; the DI water runs under its other caps already"), nil
	case drawn <= limit:
		return w.not(way, "DI runs under the cap of %s already", quantity.AtMost(limit)), nil
	case limit < leastHeld:
		return w.not(way, "the cap is %s, and no nozzle sprays with so little", quantity.AtMost(limit)), nil
	}
	wash := w.wash
	wash.DIFlow = holding(limit)
	way, _, err := w.stated(way, wash)
	return say(way, "shut the hose down from %s to %s", w.slowLoss(), quantity.ValueOf(drawn), quantity.AtMost(limit)), err
}

// drip lets the body drip longer: as short as is sure enough, else as saves most.
func (w ways) drip() (WayOut, error) {
	way := WayOut{Code: WayDrip, Name: "longer drip"}
	pause := w.wash.Pause.Or(UsualPause)
	best, found := WayOut{}, false
	for _, times := range []quantity.Duration{2, 3, 5} {
		longer := min(max(times*pause, times*quantity.Minute), 30*quantity.Minute)
		wash := w.wash
		wash.Pause = quantity.Some(longer)
		one, _, err := w.stated(way, wash)
		if err != nil {
			return way, err
		}
		one = say(one, "let it drip %s before the final rinse", "minutes of dripping", quantity.ValueOf(longer))
		if !found || one.DI.Volume < best.DI.Volume-worthSaving {
			best, found = one, true
		}
		if w.sure(one.Chance) {
			break
		}
	}
	if best.DI.Volume > w.base.plan.DI.Volume-worthSaving {
		return w.not(way, "a longer drip saves nothing: going over the faces once takes what it takes"), nil
	}
	return best, nil
}

// worthSaving is the least water that a way saves. PRACTICE.
const worthSaving = 0.1 * quantity.Gallon

// surfaces keeps the DI water to glass and paint.
func (w ways) surfaces() (WayOut, error) {
	way := WayOut{Code: WaySurfaces, Name: "glass and paint only"}
	wash := w.wash
	wash.DISurfaces = []model.Surface{model.Glass, model.Paint}
	way, made, err := w.stated(way, wash)
	if err != nil {
		return way, err
	}
	if made.plan.DI.Volume > w.base.plan.DI.Volume-worthSaving {
		return w.not(way, "the faces that get DI water are glass and paint already"), nil
	}
	return say(way, "DI on glass and paint, nothing on gel coat, metal, wheels and roofs", "a towel on the other surfaces"), nil
}
