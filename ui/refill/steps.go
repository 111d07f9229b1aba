package refill

import (
	"fmt"
	"strconv"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// step is one page of the change.
type step struct {
	name    string
	tell    func(Model) []line
	amounts bool // resin and bag can be typed here
	form    bool // the fill is written here
	reads   bool // a reading belongs here
}

// line is one thing to do or to heed.
type line struct {
	text string
	heed bool // a caution
	head bool // stands out
}

func do(text string) line { return line{text: text} }

func heed(text string) line { return line{text: text, heed: true} }

func steps() []step {
	return []step{
		{name: "Now, or later?", tell: Model.whether},
		{name: "How much resin", tell: Model.howMuch, amounts: true},
		{name: "Drain the tank", tell: Model.drain},
		{name: "Old resin out", tell: Model.empty},
		{name: "Tube, threads, O-ring", tell: Model.parts},
		{name: "Fill", tell: Model.pour},
		{name: "Head on", tell: Model.close},
		{name: "First water", tell: Model.firstWater},
		{name: "Write it in the log", tell: Model.logged, form: true},
		{name: "First reading", tell: Model.firstReading, reads: true},
		{name: "Second reading", tell: Model.secondReading, reads: true},
	}
}

func (m Model) vol(v quantity.Volume) string { return quantity.Show(v, m.sys) }

// whether gives the figures for running on.
func (m Model) whether() []line {
	run := m.ahead.Running
	lines := []line{
		{text: m.verdictWords(), head: true},
		do(fmt.Sprintf("The chance that it lasts the next wash (%s with its flush) is %s.", m.vol(run.Job), report.Lasting(&m.plan))),
		do(m.leftWords()),
	}
	if cost := report.CostOfFill(run, m.sys); cost.SoFar != "" {
		words := fmt.Sprintf("So far this fill has cost %s %s", cost.SoFar, cost.Unit)
		if cost.ByEnd != "" && m.plan.Bed.Remaining.P50 > 0 {
			words += fmt.Sprintf("; run to its end it comes to %s. What is left in it is worth about %s", cost.ByEnd, cost.Left)
		}
		lines = append(lines, do(words+"."))
	}
	return append(lines, m.waiting()...)
}

func (m Model) leftWords() string {
	left, washes := m.plan.Bed.Remaining, m.ahead.Running.Washes
	if left.P50 <= 0 {
		return "The outlet is at the limit of " + m.plan.Limit.String() + " already, as likely as not: one such bed in ten has more than " + m.vol(left.P90) + " left."
	}
	return fmt.Sprintf("It has about %s left (%s): %s.", m.vol(left.P50), report.EightInTen(left, m.sys), enoughFor(washes))
}

func (m Model) verdictWords() string {
	switch verdict := m.ahead.Running.Verdict; {
	case m.plan.InDoubt():
		return "In doubt: the last reading fits no bed. Flush, and read again before you decide."
	case verdict == planner.Lasts:
		return "Not yet: run on. The fill lasts the next wash."
	case verdict == planner.Tight:
		return "It is close: run on only with the new resin at hand."
	}
	return "Change it before the next wash."
}

// waiting is what to do where the change can wait.
func (m Model) waiting() []line {
	if m.ahead.Running.Verdict == planner.WillNotLast {
		return []line{do("Slowing down does not bring a spent bed back: it reads the feed at any flow. One that still has a working layer does better slower: the ways out of a short bed, on the Plan screen, tell by how much.")}
	}
	lines := []line{do("A flushed reading settles it better than a date: while it stays under " + m.plan.Limit.String() + " the resin is good.")}
	if when := report.OrderWhen(m.ahead); when != "" {
		lines = append(lines, do("Order new resin "+when+", and keep it sealed, cool and out of frost until it is needed."))
	}
	return append(lines, do(m.th.Key("Right", "next")+" goes on with the change; "+m.th.Key("esc", "back")+" leaves all as it is."))
}

// enoughFor is how many washes like the next one the bed gives.
func enoughFor(washes planner.Band[float64]) string {
	least, most := whole(washes.P10), whole(washes.P90)
	switch {
	case most == "0":
		return "not enough for one wash like the next"
	case most == "1" && least == most:
		return "enough for one wash like the next"
	case least == most:
		return "enough for " + most + " washes like the next one"
	}
	return "enough for " + least + " to " + most + " washes like the next one"
}

// whole is a number of washes, rounded down.
func whole(washes float64) string {
	if !(washes < 1000) {
		return "very many"
	}
	return strconv.Itoa(int(max(washes, 0)))
}

// howMuch gives bags, weights and what is left over.
func (m Model) howMuch() []line {
	b := planner.BagsFor(m.resin.volume, m.bag.volume)
	if b.Count == 0 {
		return []line{do("State the volume of the resin and of a bag.")}
	}
	show := func(v quantity.Volume) string { return v.AsResin().Show(m.sys) }
	into := ""
	if b.Left > 0.01*b.Bought {
		into = " (" + m.range2(b.FillLow, b.FillHigh) + " goes into the tank)"
	}
	lines := []line{
		{text: fmt.Sprintf("Buy %d %s of %s: %s to fill %s.", b.Count, plural(b.Count, "bag"), show(m.bag.volume), show(b.Bought), show(m.resin.volume)), head: true},
		do("It weighs " + m.range2(b.Low, b.High) + " to carry" + into + ", moist as it is shipped."),
	}
	if b.Left > 0.01*b.Bought {
		lines = append(lines, do(fmt.Sprintf("%s is left over: close the bag tight so that it stays moist, keep it cool, out of sun and frost, and use it at the next change.", show(b.Left))))
	} else {
		lines = append(lines, do("Nothing is left over."))
	}
	return append(lines,
		do("Take mixed-bed resin, both kinds in one bag, new or regenerated by a plant. Never softening resin: it takes out no sodium."),
		do(m.th.Key("Up and down pick a line, enter or a digit changes it.", "Say change resin, or change bag, and how much.")+" Bags are sold by volume: read the bag."))
}

func plural(n int, word string) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

func (m Model) range2(low, high quantity.Mass) string {
	return quantity.Show(low, m.sys) + " to " + quantity.Show(high, m.sys)
}

func (m Model) drain() []line {
	f := m.figures
	return []line{
		do("Close the tap. Open the sprayer until nothing comes: that releases the pressure. Then take both hoses off."),
		heed("Release the pressure before you open the head; under pressure it flies off."),
		do("Let the tank drain, upside down over a screen or by a siphon down the tube, before it is lifted."),
		do(fmt.Sprintf("The tank holds up to %s of water; draining saves most of that. The resin itself weighs %s, and stays wet.", quantity.Show(f.Water, m.sys), m.range2(planner.BagsFor(f.Resin, f.Resin).FillLow, planner.BagsFor(f.Resin, f.Resin).FillHigh))),
		heed("A wet tank of resin is heavy: lift with two, backs straight."),
		do("Run the water to where wash water may go: local rules on run-off come first."),
	}
}

func (m Model) empty() []line {
	return []line{
		do("Unscrew the head by hand; a strap helps, a wrench cracks it. Lay it on a clean cloth."),
		do("Stand a tub or a strong bag under the neck, lift the tube out if it comes, and wash the old resin out with a hose. Catch all of it."),
		heed("Spilled beads roll underfoot like ball bearings: sweep them up at once, and keep them out of drains and grass."),
		do("Used resin goes by the local waste rules: ask, and say that it is spent mixed-bed resin from tap water. Never back into a bag of new resin."),
		do("Rinse the tank with tap water until no bead is left, and look down it with a light."),
	}
}

func (m Model) parts() []line {
	return []line{
		do("Look the tube over from end to end: a crack or a loose screen lets raw water past the resin, and no new resin mends that."),
		do("Set it upright in the middle of the bottom, seated in its recess. Cap or tape its upper end, so that no bead falls in."),
		do("Wipe the threads of neck and head: one bead under the thread leaks."),
		do("Look at the O-ring: no nick, no flat. A trace of silicone grease, never petroleum jelly. The ring around the tube's end as well."),
		do("The tube must end level with the neck or just below, so that the head's own ring takes hold of it."),
	}
}

func (m Model) pour() []line {
	f := m.figures
	return []line{
		{text: fmt.Sprintf("Pour %s: it stands %s deep, and %s stays free under the neck.", f.Resin.AsResin().Show(m.sys), quantity.Show(f.Depth, m.sys), quantity.Show(f.Freeboard, m.sys)), head: true},
		do("Fill through a wide funnel, with one hand on the tube so that it stays in the middle. A little water helps the beads along."),
		do("Do not rinse, stir or wash new resin from below: the two kinds would part, and a mixed bed works only mixed."),
		do("Stop short of the free space even if the bag is not empty: beads must not reach the head."),
		heed("Gloves and glasses: fresh resin is acid and lye in one bag. Wash what touched the skin."),
		do("Sweep up, wipe the threads once more, take the cap or the tape off the tube."),
	}
}

func (m Model) close() []line {
	return []line{
		do("Press the head down over the tube, then turn it on by hand, straight. Hand-tight only: the O-ring seals, not force."),
		do("The feed goes in where the head says IN or where its arrow begins. In the usual tank it goes down through the resin and comes up the tube."),
		heed("Never reverse the flow: it parts the beads and packs them against the upper screen."),
		do("Hang the tank where it stands upright and cannot fall, hoses without a kink."),
		heed("Stay under the pressure and the temperature on the tank's label."),
	}
}

func (m Model) firstWater() []line {
	f, flush := m.figures, m.plan.Flush
	flow := m.plan.Sprayer.Flow
	return []line{
		do(fmt.Sprintf("Outlet open, tap just cracked: about %s, for about %s, until the air is out and the water runs without spitting.", quantity.Show(f.FirstFlow, m.sys), report.Time(f.FirstTime))),
		do("Slow matters: fast water into a dry bed blows a channel through it that stays."),
		do("Close the outlet for a moment: look for drops at neck and hoses. A drop means pressure off, wipe, turn on again by hand."),
		{text: fmt.Sprintf("Then flush: %s at %s, which takes %s.", m.vol(flush.Volume), quantity.Show(flow, m.sys), report.Time(flow.Time(flush.Volume))), head: true},
		do("The first water carries what the new beads let go, and can be coloured: to waste with it."),
		heed("DI water is not for drinking, and it eats bare copper and brass."),
		heed("Drain tank and hoses before frost."),
	}
}

func (m Model) logged() []line {
	if m.written {
		return []line{
			{text: "The new fill is in the log. What follows counts from here.", head: true},
			do(m.th.Key("u", "undo") + " on the Bed screen strikes it out again."),
		}
	}
	return nil
}

func (m Model) firstReading() []line {
	f := m.figures
	return append([]line{
		do(fmt.Sprintf("After the flush, at the job's flow: expect %s or less; the pen itself may be %s off.", report.PPM(f.Fresh), report.PPM(f.PenOff))),
		do(fmt.Sprintf("At %s expect %s or less.", quantity.Show(m.ahead.Faster, m.sys), report.PPM(f.FreshFast))),
		do("Far more, and falling as you flush: wait, and read again. Far more, and staying: a bypass left open, the tube cracked or not in its ring, or a channel. Put that right before you blame the resin."),
	}, m.readLines()...)
}

func (m Model) secondReading() []line {
	f := m.figures
	return append([]line{
		do(fmt.Sprintf("At the end of the first wash (%s further on): expect %s or less.", m.vol(m.ahead.Running.Job), report.PPM(f.AfterJob))),
		do("If it has climbed while the first one was low, the resin is less than it should be: dried out, part used, or less than said. The Bed screen sets each reading against the bed and says what to check."),
	}, m.readLines()...)
}

// readLines are the readings so far.
func (m Model) readLines() []line {
	if !m.written {
		return []line{do("Write the fill in the log first (the step before): a reading counts for the fill that the log knows.")}
	}
	var lines []line
	for _, r := range m.readings {
		lines = append(lines, line{text: r, head: true})
	}
	return append(lines, do(m.th.Key("r", "reading")+" adds a reading: the flush is told first."))
}
