package planner

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/drying"
	"washeve/planner/flow"
	"washeve/planner/learning"
	"washeve/planner/rinse"
	"washeve/planner/surface"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// ledger collects, while a plan is made, what went into it. One that is nil
// keeps nothing: for what is only tried.
type ledger struct {
	assumptions []Assumption
	reasons     []Reason
	warnings    []Note
}

// newLedger has room for a usual plan.
func newLedger() ledger {
	return ledger{assumptions: make([]Assumption, 0, 80), reasons: make([]Reason, 0, 48)}
}

var yours = tag.Source{Tag: tag.Yours, Text: "you stated it"}

func practice(text string) tag.Source { return tag.Source{Tag: tag.Practice, Text: text} }

// take is the value given, else the fallback; either way it is written down.
func take[Q quantity.Quantity](l *ledger, name string, given quantity.Opt[Q], fallback Q, source tag.Source) Q {
	v, ok := given.Get()
	if ok {
		source = yours
	} else {
		v = fallback
	}
	l.assume(Assumption{Name: name, Value: quantity.ValueOf(v), Source: source})
	return v
}

// takeWords is [take] for what is no quantity.
func takeWords(l *ledger, name, given, fallback string, source tag.Source) string {
	if given != "" {
		l.assume(Assumption{Name: name, Words: given, Source: yours})
		return given
	}
	l.assume(Assumption{Name: name, Words: fallback, Source: source})
	return fallback
}

func (l *ledger) assume(a Assumption) {
	if l != nil {
		l.assumptions = append(l.assumptions, a)
	}
}

func (l *ledger) warn(code, format string, values ...quantity.Value) {
	l.warnNote(Note{Code: code, Format: format, Values: values})
}

// warnNote is [ledger.warn] of a note.
func (l *ledger) warnNote(n Note) {
	if l != nil {
		l.warnings = append(l.warnings, n)
	}
}

// warnWords is [ledger.warn] for words that are done, whatever is in them.
func (l *ledger) warnWords(code, words string) {
	if l != nil {
		l.warnings = append(l.warnings, wordsNote(code, words))
	}
}

// wordsNote is a note of words that are done, whatever is in them.
func wordsNote(code, words string) Note {
	return Note{Code: code, Format: strings.ReplaceAll(words, "%", "%%")}
}

func (l *ledger) explain(r Reason) { l.reasons = append(l.reasons, r) }

// input is one line under a formula.
func input[Q quantity.Quantity](name string, q Q) Assumption {
	return Assumption{Name: name, Value: quantity.ValueOf(q)}
}

// plain is one line under a formula, for a number without a unit.
func plain(name string, v float64) Assumption {
	return Assumption{Name: name, Words: quantity.Round(v)}
}

func ppm(name string, v float64, scale quantity.Scale) Assumption {
	return Assumption{Name: name, Words: showPPM(v, scale)}
}

func ppmAssumption(name string, v float64, scale quantity.Scale, source tag.Source) Assumption {
	return Assumption{Name: name, Words: showPPM(v, scale), Source: source}
}

func showPPM(v float64, scale quantity.Scale) string {
	return fmt.Sprintf("%s ppm %s", quantity.Round(v), scale)
}

// constants is what every plan rests on, whatever the user stated.
var constants = sync.OnceValue(func() []Assumption {
	return slices.Concat(water.Constants(), flow.Constants(), bed.Constants(), learning.Constants(), surface.Constants(), rinse.Constants(), drying.Constants(), own())
})

// own lists the numbers of this package.
func own() []Assumption {
	return []Assumption{
		tag.Quantity("a hand's pace from wash to wash, either way", quantity.Fraction(hand-1), practice("for the band of the DI gallons")),
		tag.Text("mixing in that band", "1.4 times better or poorer", practice("no figure in print")),
		tag.Quantity("face velocity, most", FaceVelocity, published("AWWA/ASCE, Water Treatment Plant Design, 4th ed., 2005")),
		tag.Quantity("flow of a logged wash that states none", UsualFlow, practice("a small pressure washer")),
		tag.Quantity("a reading and its wash are written down within", sameWash, practice("one day's work")),
		tag.Quantity("least time that a pace is taken from", leastSpan, practice("what a week took says nothing of a month")),
		tag.Quantity("drying by towel", TowelRate, practice("a person with two towels")),
		tag.Quantity("least flow that DI water is held to", leastHeld, practice("below it a nozzle drips")),
		tag.Text("a surface forgives a spot that shows less than", quantity.Round(hides), practice("a rubber roof does not show what glass does")),
	}
}
