package bed

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// list is the log, the newest first, with the hand on one entry.
type list struct {
	rows   []model.Row
	shown  []int // of rows, where something is looked for; nil for all
	hand   int
	search search
	texts  []string // what is searched, made when first needed
}

type search struct {
	typing bool
	text   string
}

// of is the list of a log, looking for what was looked for before.
func (l list) of(log model.Log) list {
	rows := log.Rows()
	for i, j := 0, len(rows)-1; i < j; i, j = i+1, j-1 {
		rows[i], rows[j] = rows[j], rows[i]
	}
	l.rows, l.texts, l.shown = rows, nil, nil
	if l.search.text != "" {
		l = l.found(nil)
	}
	return l.onto(l.hand)
}

func (l list) count() int {
	if l.search.text == "" {
		return len(l.rows)
	}
	return len(l.shown)
}

// row is line i of what is shown.
func (l list) row(i int) (model.Row, bool) {
	switch {
	case i < 0 || i >= l.count():
		return model.Row{}, false
	case l.search.text == "":
		return l.rows[i], true
	}
	return l.rows[l.shown[i]], true
}

func (l list) here() (model.Row, bool) { return l.row(l.hand) }

func (l list) onto(i int) list {
	l.hand = min(max(i, 0), max(l.count()-1, 0))
	return l
}

// look changes what is looked for. More letters only narrow what is found.
func (l list) look(text string) list {
	narrower := l.search.text != "" && strings.HasPrefix(text, l.search.text)
	among := l.shown
	l.search.text = text
	if text == "" {
		l.shown = nil
		return l.onto(0)
	}
	if !narrower {
		among = nil
	}
	return l.found(among).onto(0)
}

// found keeps the rows that hold the words; among nil looks through all.
func (l list) found(among []int) list {
	if l.texts == nil {
		l.texts = make([]string, len(l.rows))
		for i := range l.rows {
			l.texts[i] = strings.ToLower(textOf(&l.rows[i], quantity.US))
		}
	}
	wanted := strings.ToLower(l.search.text)
	found := []int{}
	if among == nil {
		for i, text := range l.texts {
			if strings.Contains(text, wanted) {
				found = append(found, i)
			}
		}
	}
	for _, i := range among {
		if strings.Contains(l.texts[i], wanted) {
			found = append(found, i)
		}
	}
	l.shown = found
	return l
}

// textOf is an entry in one line: its day, its kind, what it says.
func textOf(r *model.Row, sys quantity.System) string {
	text := dayOf(r) + " " + string(r.Entry.Kind()) + " " + saysOf(r, sys)
	return text
}

func dayOf(r *model.Row) string {
	stamp := r.Now.At.String()
	return strings.Replace(stamp[:min(len(stamp), len("2026-06-12T08:15"))], "T", " ", 1)
}

// saysOf is what an entry says, with what became of it.
func saysOf(r *model.Row, sys quantity.System) string {
	var b strings.Builder
	switch r.Standing {
	case model.Struck:
		b.WriteString("struck out: ")
	case model.Doubled:
		b.WriteString("doubled, not counted: ")
	case model.Corrected:
		b.WriteString("corrected: ")
	}
	say(&b, r.Now.Body, sys)
	if r.Now.Note != "" {
		b.WriteString("; " + r.Now.Note)
	}
	return b.String()
}

func say(b *strings.Builder, body model.Body, sys quantity.System) {
	switch e := body.(type) {
	case *model.WashDone:
		parts(b, shown("", e.DI, " DI", sys), shown("", e.Softened, " softened", sys), shown("", e.Raw, " raw", sys), shown("in ", e.Duration, "", sys), e.Place, e.Vehicle)
	case *model.StageDone:
		parts(b, e.Stage, shown("", e.Used, " "+string(e.Water), sys), shown("in ", e.Duration, "", sys))
	case *model.Sample:
		sayReading(b, e, sys)
	case *model.Refill:
		price := ""
		if money, given := e.Price.Get(); given {
			price = money.String()
		}
		amount := ""
		if v, given := e.Resin.Get(); given {
			amount = v.AsResin().Show(sys)
		}
		parts(b, amount, string(e.State), lead("lot ", e.Lot), price, e.Bed)
	case *model.Regeneration:
		parts(b, e.Softener, shown("", e.Salt, " salt", sys))
	case *model.Correction:
		sayCorrection(b, e)
	}
}

func sayReading(b *strings.Builder, s *model.Sample, sys quantity.System) {
	value := ""
	if r, given := s.Reading.Get(); given {
		value = r.String()
	}
	how := ""
	switch {
	case s.Point != model.AfterBed:
	case s.Flushed == model.Yes:
		how = "flushed"
	case s.Anyway == model.Yes:
		how = "first cup, used anyway"
	default:
		how = "first cup, not used"
	}
	parts(b, value+" "+string(s.Point), shown("at ", s.Flow, "", sys), how, s.Place)
}

func sayCorrection(b *strings.Builder, c *model.Correction) {
	if c.Strike == model.Yes {
		parts(b, "strikes out "+c.Of)
		return
	}
	changes := make([]string, 0, len(c.Changes)+2)
	for _, ch := range c.Changes {
		changes = append(changes, ch.Key+" "+ch.Text)
	}
	if len(c.Clear) > 0 {
		changes = append(changes, "without "+strings.Join(c.Clear, ", "))
	}
	if c.At.Given() {
		changes = append(changes, "really was "+c.At.String())
	}
	parts(b, "corrects "+c.Of+": "+strings.Join(changes, ", "))
}

func shown[Q quantity.Quantity](before string, o quantity.Opt[Q], after string, sys quantity.System) string {
	v, given := o.Get()
	if !given {
		return ""
	}
	return before + quantity.Show(v, sys) + after
}

func lead(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

// parts joins what is not empty.
func parts(b *strings.Builder, all ...string) {
	first := true
	for _, text := range all {
		if text == "" {
			continue
		}
		if !first {
			b.WriteString(", ")
		}
		b.WriteString(text)
		first = false
	}
}
