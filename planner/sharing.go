package planner

import (
	"math"
	"slices"
	"strconv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/learning"
	"washeve/planner/split"
	"washeve/planner/surface"
)

// Sharing is a shortage worked out as far as it does not depend on the pins: what
// every face needs and what the bed gives, at each flow that may serve.
type Sharing struct {
	rig    model.Rig
	places model.Places
	wash   model.Wash
	past   *Past
	flows  []servable
	order  []model.Side // of the day, else of the wash
	asked  []model.Side // rinsed with DI by the wash, towels left out of account
	drawn  quantity.Flow

	aged  learning.Age // of the bed, as the rig states it
	stood stand        // and how it stands then
}

// servable is one flow of the DI water.
type servable struct {
	flow    quantity.Flow
	made    *making
	reserve learning.Reserve
}

// gives is what the bed gives after its flush, with a confidence.
func (f servable) gives(confidence quantity.Fraction) quantity.Volume {
	if f.made.ask.needless() {
		return endless
	}
	if f.flow <= 0 {
		return 0
	}
	return max(quantity.Volume(f.reserve.Gives(float64(confidence)))*quantity.Gallon-f.made.flush, 0)
}

// reaches is the chance that the bed gives so much after its flush.
func (f servable) reaches(v quantity.Volume) quantity.Fraction {
	if f.made.ask.needless() {
		return 1
	}
	return quantity.Fraction(f.reserve.Chance((f.made.flush + v).Gallons()))
}

// leastHeld is the least flow that the DI water is held to: below it a nozzle
// drips. PRACTICE.
const leastHeld = 0.4 * quantity.GPM

// heldTo are the flows that are tried, as parts of what the sprayer draws.
func heldTo() []float64 { return []float64{1, 0.75, 0.5, 0.35, 0.25} }

// Sharing works out what is needed and what there is, once for a wash.
func (m *Memory) Sharing(rig model.Rig, places model.Places, wash model.Wash) (*Sharing, error) {
	s := &Sharing{rig: rig, places: places, wash: wash, past: m.Past}
	open := wash
	open.TowelFaces, open.DIFaces, open.DIFlow = nil, nil, quantity.Opt[quantity.Flow]{}
	asks, err := begin(rig, places, open, sources{day: drying.Day, age: s.keepAge, curve: learning.Curve, past: s.past})
	if err != nil {
		return nil, err
	}
	s.drawn = asks.main.flowOf(model.DI)
	s.look(asks)
	open.DIFaces = model.Sides()
	held, given := wash.DIFlow.Get()
	if given && held < s.drawn {
		return s, s.try(open, held)
	}
	for _, part := range heldTo() {
		if f := s.heldAt(part); part == 1 || f >= leastHeld {
			if err := s.try(open, f); err != nil {
				return nil, err
			}
		}
	}
	return s, nil
}

// holding states a flow in hundredths of a gallon a minute, rounded down, so that
// a file has it as a person would write it.
func holding(f quantity.Flow) quantity.Opt[quantity.Flow] {
	text := strconv.FormatFloat(math.Floor(f.GPM()*100+1e-6)/100, 'f', -1, 64) + " gpm"
	held, err := quantity.Parse[quantity.Flow](text)
	if err != nil {
		return quantity.Some(f)
	}
	return quantity.Typed(held, text)
}

// heldAt is a part of what the sprayer draws, in steps that a jug can tell apart.
func (s *Sharing) heldAt(part float64) quantity.Flow {
	const step = 0.05 * quantity.GPM
	if part == 1 {
		return s.drawn
	}
	steps := math.Round(float64(s.drawn) * part / float64(step))
	return holding(step * quantity.Flow(steps)).Or(s.drawn)
}

func (s *Sharing) begin(wash model.Wash) (*making, error) {
	return begin(s.rig, s.places, wash, s.sources())
}

// look finds which faces the wash rinses with DI, and in which order.
func (s *Sharing) look(asks *making) {
	for _, st := range asks.stages {
		if st.Water != model.DI {
			continue
		}
		for _, side := range st.Faces {
			if !slices.Contains(s.asked, side) {
				s.asked = append(s.asked, side)
			}
		}
	}
	s.order = slices.Clone(s.asked)
	for _, side := range model.Sides() {
		if !slices.Contains(s.order, side) {
			s.order = append(s.order, side)
		}
	}
}

// try adds a flow.
func (s *Sharing) try(open model.Wash, f quantity.Flow) error {
	open.DIFlow = quantity.Some(f)
	made, err := s.begin(open)
	if err != nil {
		return err
	}
	s.flows = append(s.flows, servable{flow: f, made: made, reserve: made.reserve()})
	return nil
}

// endless is more water than any wash takes, in m3.
const endless quantity.Volume = 1e6

func (m *making) reserve() learning.Reserve { return m.resin.job(m.ask).Reserve(m.before.states) }

func confidenceOf(w model.Wash) quantity.Fraction { return w.Confidence.Or(model.UsualConfidence) }

// pinsOf are those of a wash, in the sharing's order. A face that the wash does
// not rinse with DI is out unless it is pinned in.
func (s *Sharing) pinsOf(wash model.Wash) []split.Pin {
	pins := make([]split.Pin, len(s.order))
	for i, side := range s.order {
		switch {
		case slices.Contains(wash.TowelFaces, side):
			pins[i] = split.Out
		case slices.Contains(wash.DIFaces, side):
			pins[i] = split.In
		case !slices.Contains(s.asked, side):
			pins[i] = split.Out
		}
	}
	return pins
}

// candidates are the faces as the split takes them, at one flow.
func (s *Sharing) candidates(at servable, pins []split.Pin) []split.Face {
	out := make([]split.Face, len(s.order))
	for i, side := range s.order {
		f, of := at.made.faceOf(side)
		out[i] = split.Face{Needs: f.DI, Worth: at.made.worth(f, of), Shows: showsOf(of), Pin: pins[i]}
	}
	return out
}

// faceOf finds a face that has been rinsed.
func (m *making) faceOf(side model.Side) (FacePlan, face) {
	i := slices.IndexFunc(m.faces, func(f face) bool { return f.side == side })
	return m.done.faces[i], m.faces[i]
}

// worth is what DI water spares on a face, surface by surface: the bands between
// what softened water would leave and what DI leaves.
func (m *making) worth(f FacePlan, of face) split.Worth {
	var sum split.Worth
	whole := quantity.Fraction(0)
	for _, share := range of.shares {
		whole += share.Part
	}
	for _, share := range of.shares {
		only := m.against.only
		if len(only) > 0 && !slices.Contains(only, share.Surface) || whole == 0 {
			continue
		}
		shows := surface.Shows(share.Surface)
		bands := bandOf(spotsOn(shows, m.against.ppm(softest(m.chosen)))) - bandOf(spotsOn(shows, f.PPMLeft))
		sum += split.WorthOf(f.Area*quantity.Area(share.Part/whole), shows, bands)
	}
	return sum
}

// bandOf numbers the outlooks from the best.
func bandOf(s Spots) int {
	return slices.Index([]Spots{NoSpots, Faint, Seen, Towel}, s)
}

// best is the flow and the choice that spare most; of equal ones the fastest
// flow, which takes the least time. Gives is what each flow has to share out.
func (s *Sharing) best(pins []split.Pin, gives []quantity.Volume) (servable, split.Choice) {
	var (
		at   servable
		best split.Choice
	)
	for i, f := range s.flows {
		c := split.Best(s.candidates(f, pins), gives[i])
		if i == 0 || c.Short < best.Short || c.Short == best.Short && c.Worth > best.Worth {
			at, best = f, c
		}
	}
	return at, best
}

// sources leaves the memory alone: the ways are worked out beside the keys.
func (s *Sharing) sources() sources {
	return sources{day: drying.Day, age: s.age, curve: learning.Curve, past: s.past}
}

// keepAge is [standAt], kept for the plans that follow: what the bed has been
// through is the same in all.
func (s *Sharing) keepAge(age learning.Age) stand {
	s.aged, s.stood = age, standAt(age)
	return s.stood
}

func (s *Sharing) age(age learning.Age) stand {
	if age.Equal(s.aged) {
		return s.stood
	}
	return standAt(age)
}
