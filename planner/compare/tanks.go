package compare

import (
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// mostResin is the largest tank that a rig can state.
const mostResin = 10 * quantity.CubicFoot

// bedWays are new resin, twice the tank, and a second tank behind the worn one.
func bedWays(base Case, f Figures) []Way {
	return []Way{freshened(base, f), doubled(base, f), inSeries(base, f)}
}

// inSeries is a second tank behind this one.
func inSeries(base Case, f Figures) Way {
	w := Way{
		Key: "series", Name: "two in series",
		Changes: "A second tank like this one behind it, freshly filled: the worn one first, the fresh one last. When the outlet passes the limit, the worn one is taken out, the other moves to its place, and a fresh one goes last.",
		Tells: []string{
			"The first tank is used to its end, since the second takes what it lets through: a fill gives what it holds, not what is in it when a tank alone passes the limit." + base.seeFills(),
		},
		Only:    "a plan and its log know one tank, a second is only compared",
		Instead: "make twice the tank the plan, which the rig can hold; with a second tank on the hose, go by the pen behind it, and write its resin down as a change when the tanks are swapped",
		change:  func(c *Case) { c.Setting.Behind = true },
	}
	if f.Plan.Logged() {
		w.Tells = append(w.Tells, "The second tank is taken to hold what is stated of it, whatever the readings of the first taught.")
	}
	return w
}

// freshened is this tank with new resin: before a wash, that is written into the log;
// of a trip, it is a change that is planned.
func freshened(base Case, f Figures) Way {
	w := Way{Key: "new-resin", Name: "new resin first", Changes: "This tank with new resin, put in before the " + base.noun() + "."}
	if f.Plan.Bed.SoFar == 0 {
		w.same = "the resin is fresh"
	}
	if base.Trip != nil {
		if day, known := f.firstDay(); known {
			w.change = changing(day)
		}
		if len(f.Trip.Changes) > 0 && !f.Trip.Changes[0].Advised && f.Trip.Changes[0].Before == 0 {
			w.same = "a change before the first wash is planned already"
		}
		return w
	}
	w.Only, w.Instead = "new resin goes into the log", "change the resin on the Bed screen, which writes it down"
	w.change = func(c *Case) { c.Setting.Fresh = true }
	return w
}

// doubled is a tank of twice the resin, bought and freshly filled.
func doubled(base Case, f Figures) Way {
	w := Way{
		Key: "double-tank", Name: "twice the tank", Changes: "One tank with twice the resin, in the same proportions, freshly filled.",
		Buys: "a tank of " + f.Plan.Bed.Resin.AsResin().Show(quantity.US) + " twice over",
	}
	at := model.Find(base.Rig.Names("bed"), f.Plan.BedName)
	if at < 0 || 2*f.Plan.Bed.Resin > mostResin {
		w.same = "twice this tank is more than a rig can state"
		return w
	}
	w.Tells = []string{"In the rig it counts as filled: put its resin in, and write that down (Bed)."}
	if base.Trip != nil {
		w.Tells = []string{"The money and the day count the resin that it is filled with, until the log holds a fill of it."}
	}
	if f.Plan.Logged() {
		w.Tells = append(w.Tells, "Its resin is taken to hold as much by its volume as the readings of your fills have taught, like new resin in this tank.")
	}
	bed := twice(base.Rig.Beds[at], f.Plan)
	bed.Name = unused(base.Rig.Names("bed"), "twice "+base.Rig.Beds[at].Name)
	resin, _ := bed.Resin.Get()
	w.Buys = "a tank of " + resin.AsResin().Show(quantity.US)
	w.change = func(c *Case) {
		c.Rig.Beds = append(c.Rig.Beds, bed)
		*c.bed() = bed.Name
		if c.Trip != nil {
			c.Trip.Fill = model.Yes
		}
	}
	return w
}

// unused gives a name that no other item has, of at most 60 letters.
func unused(taken []string, name string) string {
	const most = 56
	if letters := []rune(name); len(letters) > most {
		name = strings.TrimSpace(string(letters[:most]))
	}
	for n := 2; model.Find(taken, name) >= 0; n++ {
		if free := name + " " + strconv.Itoa(n); model.Find(taken, free) < 0 {
			return free
		}
	}
	return name
}

// times is a value that was given, so many times over.
func times[Q quantity.Quantity](by float64, v quantity.Opt[Q]) quantity.Opt[Q] {
	if q, given := v.Get(); given {
		return quantity.Some(Q(by * float64(q)))
	}
	return v
}

// seeFills points at what two tanks bring.
func (c *Case) seeFills() string {
	if c.Trip != nil {
		return " On a long trip that is fewer changes, and less thrown out with each."
	}
	return ` See how much more under "a fill gives".`
}
