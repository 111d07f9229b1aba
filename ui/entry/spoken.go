package entry

import (
	"washeve/model/quantity"
	"washeve/ui/form"
	"washeve/ui/screen"
	"washeve/ui/talk"
	"washeve/ui/theme"
)

// Spoken is the form in words. Put gives the screen with the form as it is then.
func (f Form) Spoken(put func(Form) screen.Screen) talk.Page {
	p := talk.Page{Title: f.Title, Like: "change note windy, or write", Said: f.status, Things: func() []talk.Thing { return f.things(put) }}
	p.Tell = func() []string {
		words := "Say list for its lines, walk to be asked for each, write to put it into the log, back to leave it."
		if why := f.Problem(); why != "" {
			return []string{"Not complete yet: " + why + ".", words}
		}
		return []string{words}
	}
	field, _ := f.here()
	switch {
	case f.asked != "":
		p.Prompt = allTheSame(f.asked, "yes or no")
	case f.picker != nil:
		p.Asks = &talk.Question{Ask: f.picker.Title, List: f.picker}
	case f.edit != nil:
		p.Asks = &talk.Question{Ask: field.Label, Like: form.Like(field), Edit: f.edit}
	default:
		p.Words = []talk.Word{
			{Say: "change", Does: change, Of: "LINE", Takes: "windy", Like: "change note windy", Help: "state a line"},
			{Say: "clear", Does: takeAway, Of: "LINE", Like: "clear note", Help: "take the value of a line away"},
			{Say: "write", Does: Write, Help: "put it into the log"},
			{Say: "back", Does: Leave, Help: "leave it; nothing is written"},
		}
	}
	return p
}

func (f Form) things(put func(Form) screen.Screen) []talk.Thing {
	e := f.entry.Clone()
	var all []talk.Thing
	for i, key := range f.rows {
		field, ok := f.field(&e, key)
		if !ok {
			continue
		}
		text := f.shown(field)
		if key == "id" && text == "" {
			text = "given when it is written"
		}
		all = append(all, talk.Thing{
			Name: field.Label, Text: text, Like: form.Like(field), Must: field.Required, From: append(field.Choices, f.known.Names[field.Refers]...),
			On: func() screen.Screen { return put(f.onto(i)) },
		})
	}
	return all
}

// Spoken is the reading in words.
func (r Reading) Spoken(th theme.Theme, sys quantity.System) talk.Page {
	p := talk.Page{Title: r.head(sys), Said: r.problem}
	switch r.at {
	case theDoubt:
		p.Prompt = allTheSame(r.asked, th.YesOrNo())
	case theNumber:
		p.Asks = &talk.Question{Ask: "It reads", Like: r.scales.Bare("6"), Edit: &r.edit, More: []string{r.flushFirst(sys)}}
	case theAmount:
		p.Asks = &talk.Question{Ask: "Run out for it", Like: quantity.Show(r.flush, sys), Edit: &r.edit}
	case theAge:
		p.Asks = &talk.Question{
			Ask: "It had given before", Like: r.anAge() + ", " + quantity.Show(quantity.Volume(0), sys) + " where it was just filled, or " + unknown, Edit: &r.edit, More: []string{r.ageWords()},
		}
	case theTime:
		p.Asks = &talk.Question{Ask: "It was read", Like: "yesterday 19:30", Edit: &r.edit}
	case theFlush:
		p.Prompt, p.Words = "Was the standing water out? yes, ran 5 gal, already, no, when, faster, back, or help", r.words(sys)
		p.Tell = func() []string { return r.told(th, sys) }
	}
	return p
}

// told is what there is to know where it is asked whether the standing water is out.
func (r Reading) told(th theme.Theme, sys quantity.System) []string {
	told := []string{r.reads() + r.when(th)}
	if r.ahead {
		told = append(told, r.flushFirst(sys))
	}
	if !r.isNew {
		told = append(told, r.given(sys))
	}
	return append(told, "With yes, "+r.counted(sys)+"; already is for water that a wash counts.")
}

func (r Reading) words(sys quantity.System) []talk.Word {
	return []talk.Word{
		{Say: "yes", Does: flushed, Help: "it was out: the reading counts, and " + r.counted(sys)},
		{Say: "ran", Does: otherRun, Takes: quantity.Show(r.flush, sys), Like: "ran 5 gal", Help: "another amount was run out for it"},
		{Say: "already", Does: already, Help: "it was out by a wash, which counts that water: the reading counts"},
		{Say: "no", Does: firstCup, Help: "a first cup: the reading is shown and not used"},
		{Say: "faster", Does: otherFlow, Help: "it was read at the flow that teaches most, or again at the job's"},
		{Say: "when", Does: otherTime, Takes: "yesterday 19:30", Like: "when yesterday 19:30", Help: "it was not read now, but then"},
		{Say: "back", Does: before, Help: "back to the number"},
	}
}
