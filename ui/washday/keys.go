package washday

import (
	"slices"
	"sort"

	"washeve/model"
	"washeve/planner/washday"
	"washeve/ui/form"
	"washeve/ui/keys"
)

const (
	run      keys.Action = "run"
	next     keys.Action = "next"
	before   keys.Action = "before"
	skip     keys.Action = "skip"
	read     keys.Action = "reading"
	undo     keys.Action = "undo"
	check    keys.Action = "flow check"
	ways     keys.Action = "ways out"
	anyway   keys.Action = "all the same"
	end      keys.Action = "end"
	back     keys.Action = "back"
	resume   keys.Action = "go on"
	wasOff   keys.Action = "was off"
	setAside keys.Action = "set aside"
	accept   keys.Action = "accept"
	abandon  keys.Action = "abandon"
	sayYes   keys.Action = "yes"
	sayNo    keys.Action = "no"
)

// Keys lists the keys as the wash now stands. The first ones are those shown at
// the foot.
func (m Model) Keys() []keys.Binding {
	leave := keys.New("See", back, "esc", "the plan", "esc").Explained("back to the plan; the wash goes on, and W comes back to it")
	switch {
	case m.behind:
		return refusedKeys()
	case m.early != "":
		return earlyKeys()
	case m.ending:
		return []keys.Binding{
			keys.New("Answer", sayYes, "y", "end it here", "y", "Y"),
			keys.New("Answer", sayNo, "n", "go on", "n", "N", "esc"),
		}
	case m.again != "":
		return againKeys()
	case m.stood != "":
		return []keys.Binding{
			keys.New("Answer", sayYes, "y", "it was flushed", "y", "Y").Explained("the standing water is out: the reading counts"),
			keys.New("Answer", sayNo, "n", "a first cup", "n", "N").Explained("the reading is written as a first cup: shown, and not used"),
			keys.New("Answer", abandon, "esc", "write nothing", "esc"),
		}
	case m.slip != "":
		return []keys.Binding{
			keys.New("Answer", sayYes, "y", "it reads so", "y", "Y").Explained("the pen reads so: write it down"),
			keys.New("Answer", sayNo, "n", "type it anew", "n", "N"),
			keys.New("Answer", abandon, "esc", "write nothing", "esc"),
		}
	case m.edit != nil && m.edit.IsHeld():
		return m.edit.HeldKeys("as it was", false)
	case m.edit != nil:
		return []keys.Binding{
			keys.New("Type", accept, "enter", "done", "enter").Explained("done; a bare number takes the unit that is offered"),
			keys.New("Type", abandon, "esc", "as it was", "esc"),
		}
	case m.picker != nil:
		return []keys.Binding{
			keys.New("Pick", form.Accept, "enter", "take it", "enter"),
			keys.New("Pick", form.Number, "1-9", "take that", "1", "2", "3", "4", "5", "6", "7", "8", "9"),
			keys.New("Pick", form.Down, "down", "next", "down", "j", "tab"),
			keys.New("Pick", form.Up, "up", "before", "up", "k"),
			keys.New("Pick", form.Abandon, "esc", "none of them", "esc"),
		}
	case m.broken != nil:
		return []keys.Binding{keys.New("Go on", setAside, "k", "keep the file aside", "k").Explained("keep the file under another name, and start a new wash"), leave}
	case m.offered:
		ran := ""
		if !m.state.Running {
			ran = "the water was off when it was left"
		}
		return []keys.Binding{
			keys.New("Go on", resume, "enter", "go on with it", "enter", " "),
			keys.New("Go on", wasOff, "o", "it was off", "o").Explained("the water was turned off when the program ended: go on without the time since then").Unless(ran),
			keys.New("Go on", end, "x", "end it", "x").Explained("end it as it stands: what was done goes into the log"),
			leave,
			readKey().Unless(goOnFirst),
			undoKey().Unless(goOnFirst),
		}
	case m.err != nil || m.state.Over:
		return []keys.Binding{leave, keys.UnitsKey()}
	}
	return append(m.stepKeys(), leave)
}

// stepKeys are those of a step. What is called for comes first.
func (m Model) stepKeys() []keys.Binding {
	all := append(m.walkKeys(), m.bedKeys()...)
	switch gate := m.state.Gate(&m.u); {
	case gate == washday.NoGo:
		return led(all, undo, ways, anyway, read)
	case m.state.Exceeds(&m.u):
		return led(all, undo, ways, read, run)
	case m.short():
		return led(all, ways, next, undo, read)
	case gate == washday.Cup:
		return led(all, before, read, anyway, undo)
	case gate == washday.AskPen && m.state.Stands():
		return led(all, read, before)
	case gate == washday.AskPen:
		return led(all, read, next)
	}
	return all
}

// led is the keys with those of some actions before the others.
func led(all []keys.Binding, by ...keys.Action) []keys.Binding {
	place := func(b keys.Binding) int {
		if i := slices.Index(by, b.Does); i >= 0 {
			return i
		}
		return len(by)
	}
	sort.SliceStable(all, func(i, j int) bool { return place(all[i]) < place(all[j]) })
	return all
}

// bedKeys are for a bed that is short.
func (m Model) bedKeys() []keys.Binding {
	noWays, fine := "", "the last reading is within the limit"
	if m.state.ToRun().DI <= 0 {
		noWays = "no DI water is left to run"
	}
	if m.state.Exceeds(&m.u) || m.state.Gate(&m.u) == washday.Cup {
		fine = ""
	}
	return []keys.Binding{
		keys.New("Bed", ways, "w", "ways out", "w").Explained("what there is to do where the bed is short, each way with its numbers").Unless(noWays),
		keys.New("Bed", anyway, "a", "go all the same", "a").Explained("take this reading as good enough").Unless(fine),
	}
}

func (m Model) walkKeys() []keys.Binding {
	noBack, noRead := "", ""
	if m.state.At == 0 {
		noBack = "this is the first step"
	}
	if !m.drawsDI() {
		noRead = "no DI water runs in this step"
	}
	return []keys.Binding{
		m.runKey(),
		keys.New("Step", next, "enter", "next", "enter", "right").Explained("this step is done, on to the next").Unless(m.noNext()),
		keys.New("Step", before, "b", "back", "b", "backspace", "left").Explained("back to the step before; its time goes on from where it was").Unless(noBack),
		m.readKey().Unless(noRead),
		keys.New("Pen and flow", check, "f", "flow check", "f").Explained("time a jug or a bucket: the steps that follow go by the flow you measure: your hand sets the time, so that stays and the gallons change").Unless(m.noFlow()),
		undoKey().Unless(m.noReading()),
		keys.New("Step", end, "x", "end early", "x").Explained("end the wash here and keep what was done"),
		keys.New("Step", skip, "s", "skip", "s").Explained("leave this step out: none of its water is counted"),
		keys.UnitsKey(),
	}
}

// runKey turns the water on and off.
func (m Model) runKey() keys.Binding {
	onOff := "start"
	if m.state.Running {
		onOff = "stop"
	}
	return keys.New("Step", run, "space", onOff, " ").Explained("the water is on, or off: the time runs or stands").Unless(m.noTime())
}

// noTime says why no time can be taken.
func (m Model) noTime() string {
	if s := m.step(); s == nil || !s.Timed() && !s.Flow.Given() {
		return "this step has no time of its own"
	}
	return ""
}

// noNext says why the step cannot be gone on from.
func (m Model) noNext() string {
	switch m.state.Gate(&m.u) {
	case washday.NoGo:
		return "the pen is over the limit: " + m.th.Key("w", "ways") + " lists the ways out, " + m.th.Key("a", "all the same") + " goes on all the same"
	case washday.Cup:
		return "a first cup reads too low: " + m.th.Key("b", "before") + " goes back to the flush, " + m.th.Key("a", "all the same") + " goes on all the same"
	case washday.AskPen:
		return "there is no reading yet: " + m.th.Key("r", "reading") + " writes it down, " + m.th.Key("s", "skip") + " goes on without one"
	}
	return ""
}

// goOnFirst is why a step's key does nothing while a wash that was left is offered.
const goOnFirst = "go on with the wash first"

func readKey() keys.Binding {
	return keys.New("Pen and flow", read, "r", "reading", "r").Explained("write down what the pen shows in the stream")
}

// readKey is also a number's first digit where a reading is asked for.
func (m Model) readKey() keys.Binding {
	if s := m.step(); s == nil || s.Kind != model.Read {
		return readKey()
	}
	return keys.New("Pen and flow", read, "r", "reading", "r", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", ".").
		Explained("write down what the pen shows in the stream; its first digit begins it as well")
}

func undoKey() keys.Binding {
	return keys.New("Pen and flow", undo, "u", "undo reading", "u", "ctrl+z").Explained("take back the last reading of this wash: the log strikes it out")
}

// drawsDI tells whether DI water runs in the step at hand.
func (m Model) drawsDI() bool { s := m.step(); return s != nil && s.Water == model.DI }

// noFlow says why no flow can be measured.
func (m Model) noFlow() string {
	if s := m.step(); s == nil || !s.Flow.Given() {
		return "no sprayer runs in this step"
	}
	return ""
}
