package entry

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Keys lists the keys of the moment.
func (r Reading) Keys() []keys.Binding {
	leave := "back to the flush"
	switch r.at {
	case theDoubt:
		return form.AnswerKeys()
	case theFlush:
		return r.flushKeys()
	case theNumber:
		leave = "no reading"
	}
	if r.edit.IsHeld() {
		return r.edit.HeldKeys(leave, false)
	}
	return []keys.Binding{
		keys.New("Reading", take, "enter", "done", "enter", "tab"),
		keys.New("Reading", form.Abandon, "esc", leave, "esc"),
	}
}

func (r Reading) flushKeys() []keys.Binding {
	noFaster := ""
	if !r.hasFaster() {
		noFaster = "this tank allows no faster flow"
	}
	onlyNow := ""
	if !r.anyTime {
		onlyNow = "a reading of the new fill is of now"
	}
	return []keys.Binding{
		keys.New("Reading", flushed, "y", "yes", "y", "Y").Explained("it is out, and its water counts"),
		keys.New("Reading", already, "a", "already, in a wash", "a", "A"),
		keys.New("Reading", firstCup, "n", "no: a first cup", "n", "N"),
		keys.New("Reading", otherRun, "o", "other amount", "o", "O"),
		keys.New("Reading", overRun, "0-9", "type it", form.NumberKeys()...).Explained("type how much was run out"),
		keys.New("Reading", otherTime, "w", "when", "w", "W").Explained("it was not read now: say when").Unless(onlyNow),
		keys.New("Reading", otherFlow, "f", "flow", "f").Explained("it was read at the faster flow, or at the job's").Unless(noFaster),
		keys.New("Reading", before, "esc", "the number", "esc").Explained("back to the number"),
	}
}

// hasFaster tells that the reading can be taken at a flow that teaches more.
func (r Reading) hasFaster() bool { return r.faster > r.flow || r.quick }

// Lines ask for it.
func (r Reading) Lines(th theme.Theme, sys quantity.System, width int) []string {
	lines := []string{th.Strong.On(cells.Clip(cells.Safe(r.head(sys)), width, th.Marks.More))}
	add := func(ink theme.Ink, text string, most int) {
		for _, line := range cells.WrapMost(cells.Safe(text), width, most, th.Marks.More) {
			lines = append(lines, ink.On(line))
		}
	}
	typed := func(label string) {
		lines = append(lines, th.Text.On(label)+r.edit.View(th, max(width-cells.Width(label), 10)))
	}
	switch r.at {
	case theNumber:
		add(th.Text, r.flushFirst(sys), 3)
		typed("It reads ")
		if says := r.edit.Says(); says != "" && r.edit.Text() != "" {
			add(r.edit.Ink(th), says, 2)
		} else {
			add(th.Muted, "like "+r.scales.Bare("6"), 1)
		}
	case theFlush:
		add(th.Text, r.reads()+r.when(th), 2)
		add(th.Accent, r.isItOut(sys, th), 3)
		if !r.isNew {
			add(th.Muted, r.given(sys), 1)
		}
		if r.quick {
			add(th.Text, "Read at this flow it teaches most. It is for this reading only, and to waste: the wash itself keeps to the cap.", 2)
		}
	case theAmount:
		typed("Run out for it ")
		add(th.Muted, "like "+quantity.Show(r.flush, sys), 1)
	case theAge:
		add(th.Text, r.ageWords(), 3)
		typed("It had given ")
		add(th.Muted, "like "+r.anAge()+"; "+quantity.Show(quantity.Volume(0), sys)+" where it was just filled; empty where nobody knows", 2)
	case theTime:
		typed("It was read ")
		add(th.Muted, "like "+model.PastMoments, 1)
	case theDoubt:
		add(th.Text, "It reads "+r.sample.Reading.Words(), 1)
		add(th.Doubt, allTheSame(r.asked, th.YesOrNo()), 4)
	}
	if r.types() && r.at != theNumber && r.edit.Text() != "" {
		if says := r.edit.Says(); says != "" {
			lines = lines[:len(lines)-1]
			add(r.edit.Ink(th), says, 2)
		}
	}
	if r.problem != "" {
		add(th.Doubt, r.problem, 2)
	}
	return lines
}

func (r Reading) head(sys quantity.System) string {
	head := "A reading after the bed, at " + quantity.Show(r.flow, sys)
	if r.sample.Pen != "" {
		head += ", with the " + r.sample.Pen
	}
	return head
}

// flushFirst says what is to be run out before the pen is believed.
func (r Reading) flushFirst(sys quantity.System) string {
	words := "First let the standing water run out: " + quantity.Show(r.flush, sys) + ", which takes " + seconds(r.flow.Time(r.flush)) + " at this flow"
	if r.faster > r.flow {
		words += ", or " + seconds(r.faster.Time(r.flush)) + " at " + quantity.Show(r.faster, sys)
	}
	return words + ". Standing water reads too low."
}

func (r Reading) isItOut(sys quantity.System, th theme.Theme) string {
	return "Was the standing water out? " + th.Key("y", "yes") + ": yes, and " + r.counted(sys) + "; " + th.Key("o", "ran") + ": another amount. " +
		th.Key("a", "already") + ": by a wash, which counts it. " + th.Key("n", "no") + ": no"
}

// ageWords say why the age of the fill is asked.
func (r Reading) ageWords() string {
	words := "Nobody said how much DI water this fill had given before, and the reading means little without it"
	if r.aged {
		return words + "."
	}
	return words + ": just filled, it would show " + report.PPM(r.fresh) + " here."
}

// given says at how many gallons the reading counts, before its flush.
func (r Reading) given(sys quantity.System) string {
	return "This fill has given " + quantity.Show(r.soFar, sys) + ", as far as is known."
}

// counted says what the flush does to the bed.
func (r Reading) counted(sys quantity.System) string {
	return "its " + quantity.Show(r.flush, sys) + " count as given by the bed"
}

// reads is what the pen shows, and what it counts as where nobody said its scale.
func (r Reading) reads() string {
	words := "It reads " + r.sample.Reading.Words()
	if counts := r.scales.Taken(r.number); counts != "" {
		words += ", " + counts
	}
	return words + "."
}

// seconds tells a flush so that it can be counted.
func seconds(d quantity.Duration) string {
	if d.Seconds() >= 99.5 && d.Seconds() < 600 {
		return quantity.Round(d.Seconds()) + " s (" + report.Time(d) + ")"
	}
	return report.Time(d)
}

// Written says what was written of a reading.
func (r Reading) Written(sys quantity.System) string {
	s := r.sample
	words := s.Reading.Words()
	switch flush, ran := s.FlushWater.Get(); {
	case !s.Counts():
		return words + " written: a first cup, not used."
	case ran:
		return words + " written, " + quantity.Show(flush, sys) + " flushed."
	}
	return words + " written."
}
