package model

import "washeve/model/quantity"

// Underway is a wash that is being done: its steps, and every deed with the
// moment it was done at. All that a screen shows of it follows from these, so that
// a program that was killed goes on where it was.
type Underway struct {
	ID       string // of the wash's entry in the log
	Plan     WashDone
	Limit    quantity.Opt[quantity.Reading] // at the bed's outlet
	Outlook  BedLeft
	Unlogged Answer // Yes: a rehearsal, of which nothing goes into the log
	Steps    []DayStep
	Deeds    []Deed
}

// BedLeft is what the plan last thought of the bed, and after how much DI water
// of this wash it thought so.
type BedLeft struct {
	After          quantity.Opt[quantity.Volume]
	Flow           quantity.Opt[quantity.Flow]   // at which the bed gives what is left
	SoFar          quantity.Opt[quantity.Volume] // that the fill had given before this wash
	Low, Mid, High quantity.Opt[quantity.Volume] // that it still gives from then on
	End, EndHigh   quantity.Opt[quantity.Reading]
	Chance         quantity.Opt[quantity.Fraction]
	Cap            quantity.Opt[quantity.Flow]
	WasteCap       quantity.Opt[quantity.Flow] // of water that is run out, as a flush is
}

// Fields lists what the file of a wash under way holds of it, the steps and deeds
// apart.
func (u *Underway) Fields() []Field {
	o := &u.Outlook
	fields := []Field{
		idField("id", "identifier", "of the wash's entry in the log", &u.ID).required(),
		choice("rehearsal", "rehearsal", "yes where nothing of it goes into the log", []Answer{Yes, No}, &u.Unlogged),
		reading("limit", "outlet limit", "outlet reading at which you stop using the bed", 5000, &u.Limit),
		gallons("bed_looked_at_after", "bed looked at after", "DI water of this wash that had run when the bed was last looked at", &o.After),
		anyFlow("bed_looked_at_flow", "bed looked at, flow", "flow of the DI water to come, at which the bed gives what is left", &o.Flow),
		gallons("bed_gallons_so_far", "gallons so far", "DI water that the fill had given before this wash", &o.SoFar),
		gallons("bed_left_low", "left in the bed, least", "one bed in ten has less", &o.Low),
		gallons("bed_left", "left in the bed", "in the middle", &o.Mid),
		gallons("bed_left_high", "left in the bed, most", "one bed in ten has more", &o.High),
		reading("outlet_at_end", "outlet at the end", "that is expected at this flow", 5000, &o.End),
		reading("outlet_at_end_high", "outlet at the end, most", "one in ten reads more", 5000, &o.EndHigh),
		measure("chance", "chance of lasting", "that the bed lasts the wash", "90 %", "0 %", "100 %", &o.Chance),
		anyFlow("cap", "flow cap", "the most through the bed; 0 gpm where no flow keeps the limit", &o.Cap),
		anyFlow("cap_to_waste", "flow cap, to waste", "the most through the bed of water that is run out, as a flush is", &o.WasteCap),
	}
	return append(fields, u.Plan.Fields()...)
}

// anyFlow is a flow that a plan may come to, however odd.
func anyFlow(key, label, help string, at *quantity.Opt[quantity.Flow]) Field {
	return measure(key, label, help, "1.3 gpm", "0 gpm", "1000 gpm", at)
}

// StepKind is what a step of a wash day asks for.
type StepKind string

// The kinds of step.
const (
	SetUp  StepKind = "set up"
	Work   StepKind = "work"
	LetDry StepKind = "drip" // let the face drip before its final rinse
	Flush  StepKind = "flush"
	Read   StepKind = "read"
	PackUp StepKind = "pack up"
)

// DayStep is one thing to do on a wash day.
type DayStep struct {
	Kind     StepKind
	Stage    string // "rinse"
	Face     Side   // "" where it is not about one
	Water    Water
	Sprayer  string
	Softener Answer // Yes: the water goes through it; No: bypassed; "" where there is none
	Bed      Answer // likewise through the DI bed
	Flow     quantity.Opt[quantity.Flow]
	Volume   quantity.Opt[quantity.Volume]
	Duration quantity.Opt[quantity.Duration]
	Area     quantity.Opt[quantity.Area] // gone over, times the passes
	Towel    Answer                      // Yes: dry the face by towel after it

	Least   quantity.Opt[quantity.Volume] // water that replaces the film of the face; less will not do
	Section quantity.Opt[quantity.Area]   // the most to soap and rinse at a time, or it dries; where that is less than the face
	Since   quantity.Opt[int]             // how many deeds were done when the step came into the plan
}

// Timed tells whether the step has a time of its own.
func (s *DayStep) Timed() bool { return s.Duration.Or(0) > 0 }

// Fields lists what the file holds of a step.
func (s *DayStep) Fields() []Field {
	return []Field{
		choice("kind", "kind", "what the step asks for", []StepKind{SetUp, Work, LetDry, Flush, Read, PackUp}, &s.Kind).required(),
		name("stage", "stage", "what is done", "final rinse", &s.Stage),
		choice("face", "face", "which face", Sides(), &s.Face),
		choice("water", "water", "raw, softened or di", []Water{Raw, Softened, DI}, &s.Water),
		name("sprayer", "sprayer", "sprayer of this step", "small pressure washer", &s.Sprayer),
		choice("through_softener", "through the softener", "yes, or no where it is bypassed", []Answer{Yes, No}, &s.Softener),
		choice("through_bed", "through the DI bed", "yes, or no where it is bypassed", []Answer{Yes, No}, &s.Bed),
		anyFlow("flow", "flow", "planned flow", &s.Flow),
		gallons("volume", "water", "planned water", &s.Volume),
		minutes("duration", "time", "planned time", &s.Duration),
		measure("area", "area", "area gone over, times the passes", "450 ft2", "0 ft2", "100000 ft2", &s.Area),
		choice("towel", "towel", "yes where the face is dried by towel after it", []Answer{Yes, No}, &s.Towel),
		gallons("least", "least water", "water that replaces the film", &s.Least),
		measure("section", "section", "the most to soap and rinse at a time", "180 ft2", "0 ft2", "100000 ft2", &s.Section),
		count("since", "since deed", "how many deeds were done when the step came into the plan", "0", 0, 100000, &s.Since),
	}
}

// DeedKind is what was done on a wash day.
type DeedKind string

// The kinds of deed. Go on and back leave a step, with the water off.
const (
	WaterOn  DeedKind = "start"
	WaterOff DeedKind = "stop"
	GoOn     DeedKind = "next"
	Skip     DeedKind = "skip"
	GoBack   DeedKind = "back"
	TakeRead DeedKind = "reading"
	TakeBack DeedKind = "take back" // of the last reading that stands: it was a slip
	Measure  DeedKind = "flow"
	TakeWay  DeedKind = "way"
	Accept   DeedKind = "accept" // a reading over the limit is taken as good enough
	EndEarly DeedKind = "end early"
	Finish   DeedKind = "finish"
	Seen     DeedKind = "seen" // the time still ran: the last deed, or none
)

// Deed is one thing that was done, and when.
type Deed struct {
	Does    DeedKind
	At      Instant
	Reading quantity.Opt[quantity.Reading] // of [TakeRead]
	Flow    quantity.Opt[quantity.Flow]    // of [Measure] and [TakeRead]; of [TakeWay]: of the DI water from then on
	Pen     string                         // of [TakeRead]
	Flushed Answer                         // of [TakeRead], where too little had run out: Yes where it was flushed all the same, No for a first cup
	SoFar   quantity.Opt[quantity.Volume]  // of [TakeRead]: what the fill has given, as far as is known
	Way     string                         // of [TakeWay]: its code
}

// Fields lists what the file holds of a deed.
func (d *Deed) Fields() []Field {
	kinds := []DeedKind{WaterOn, WaterOff, GoOn, Skip, GoBack, TakeRead, TakeBack, Measure, TakeWay, Accept, EndEarly, Finish, Seen}
	return []Field{
		choice("does", "deed", "what was done", kinds, &d.Does).required(),
		instantField("at", "when", "moment of it", &d.At).required(),
		reading("reading", "reading", "what the pen showed", 5000, &d.Reading),
		anyFlow("flow", "flow", "flow that was measured, that the pen was read at, or of the DI water on a way out", &d.Flow),
		name("pen", "pen", "pen that was used", "yellow pen", &d.Pen),
		choice("flushed", "flushed", "where less than the flush had run out: yes where it was flushed all the same, no for a first cup", []Answer{Yes, No}, &d.Flushed),
		gallons("gallons_so_far", "gallons so far", "DI water that this fill had given", &d.SoFar),
		name("way", "way out", "what was done about a short bed", "slower", &d.Way),
	}
}

// Faults finds what keeps the wash from being gone on with.
func (u *Underway) Faults() []Fault {
	faults := faultsOf("", 0, u)
	for i := range u.Steps {
		faults = append(faults, faultsOf("step", i, &u.Steps[i])...)
	}
	for i := range u.Deeds {
		faults = append(faults, faultsOf("deed", i, &u.Deeds[i])...)
	}
	if len(u.Steps) == 0 {
		faults = append(faults, Fault{Key: "step", Problem: "there is none, so nothing to go on with"})
	}
	return faults
}
