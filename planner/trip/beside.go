package trip

import (
	"cmp"
	"reflect"
	"sort"
	"strconv"
	"strings"

	"washeve/model"
	"washeve/planner"
)

// mostBeside is how many washes are asked about together, by date.
const mostBeside = 40

// Beside are the washes that are planned by themselves and wait for the bed of one of them:
// this and the others with a day from today on, but for those of a day on which the log
// has water of the bed. They stand by date, those of one day as they begin. There are none
// where the wash itself has no such day.
type Beside struct {
	Rig    model.Rig
	Places model.Places
	Past   *planner.Past // of the log; nil where there is none
	Today  model.Date
	Bed    string
	Washes []model.Wash
}

// BesideOf lists them. Among the others the wash itself may be.
func BesideOf(rig model.Rig, places model.Places, wash model.Wash, others []model.Wash, past *planner.Past, today model.Date) Beside {
	in := Input{Rig: rig}
	b := Beside{Rig: rig, Places: places, Past: past, Today: today, Bed: in.bedOf(&wash)}
	if !b.waits(&wash) {
		return b
	}
	b.Washes = append(b.Washes, wash)
	for i := range others {
		if o := &others[i]; b.waits(o) && !reflect.DeepEqual(*o, wash) && strings.EqualFold(in.bedOf(o), b.Bed) {
			b.Washes = append(b.Washes, *o)
		}
	}
	sort.SliceStable(b.Washes, func(i, j int) bool {
		a, c := &b.Washes[i], &b.Washes[j]
		return cmp.Or(a.Date.Or(today).Compare(c.Date.Or(today)), cmp.Compare(begins(a), begins(c)), cmp.Compare(a.Name, c.Name)) < 0
	})
	b.Washes = b.Washes[:min(len(b.Washes), mostBeside)]
	return b
}

// waits tells that a wash is still to be done.
func (b *Beside) waits(w *model.Wash) bool {
	day, given := w.Date.Get()
	return given && day.Compare(b.Today) >= 0 && !b.Past.Gave(b.Bed, day)
}

// begins is the minute of the day at which a wash begins; one that states none comes last.
func begins(w *model.Wash) int {
	if at, given := w.Start.Get(); given {
		return at.Minutes()
	}
	return 24 * 60
}

// Plan plans them as one trip from stop to stop, on which any of them could change places
// with any other. Errors are those of [Make].
func (b Beside) Plan() (Plan, error) {
	in := b.trip()
	p, err := Make(in)
	for i := range p.Stops {
		p.Stops[i].Name = in.Trip.Stops[p.Stops[i].Index].Place
	}
	for i := range p.Washes {
		w := &p.Washes[i]
		w.Hours = planner.HoursOf(b.Rig, b.Places, b.Washes[w.Index], b.Past)
	}
	return p, err
}

func (b *Beside) trip() Input {
	in := Input{Rig: b.Rig, Places: b.Places, Past: b.Past, Today: b.Today, Ordered: true, Loose: true, Like: b.like}
	in.Trip.Name, in.Trip.Bed = "Washes planned on this bed", b.Bed
	for i := range b.Washes {
		w := &b.Washes[i]
		number := strconv.Itoa(i)
		stop := model.Stop{Date: w.Date, Name: "\x00" + number, Place: in.placeOf(w)} // a name that nobody's place has
		in.Trip.Stops = append(in.Trip.Stops, stop)
		in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: w.Date, Name: cmp.Or(w.Name, "a wash"), Place: stop.Name, Like: number})
	}
	return in
}

// like finds a wash by its number.
func (b *Beside) like(number string) (model.Wash, bool) {
	i, err := strconv.Atoi(number)
	if err != nil || i < 0 || i >= len(b.Washes) {
		return model.Wash{}, false
	}
	return b.Washes[i], true
}

// placeOf is the name of the place of a wash.
func (in *Input) placeOf(w *model.Wash) string {
	if name := cmp.Or(w.Place, in.Rig.Defaults.Place); name != "" || len(in.Places) == 0 {
		return name
	}
	return in.Places[0].Name
}
