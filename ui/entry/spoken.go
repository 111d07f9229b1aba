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

// Spoken is the reading in words: first the flush, then the number.
func (r Reading) Spoken(th theme.Theme, sys quantity.System) talk.Page {
	lines := r.Lines(th, sys, talk.Unwrapped)
	told := lines[1:2:2]
	if r.quick {
		told = lines[1:3:3]
	}
	if r.isNew {
		told = append(told, r.given(sys))
	}
	if r.asked != "" {
		return talk.Page{Title: lines[0], Prompt: allTheSame(r.asked, th.YesOrNo())}
	}
	p := talk.Page{Title: lines[0], Said: r.problem, Tell: func() []string { return told }}
	if r.Typing() {
		p.Asks = &talk.Question{Ask: "It reads", Like: Bare("6", r.scale), Edit: r.edit}
		return p
	}
	told = append(told, "With yes, "+r.counted(sys)+"; already is for water that a wash counts.")
	p.Prompt = "Is the standing water out? yes, already, no, faster, back, or help"
	takes := "6"
	if r.told != "" {
		told, takes = append(told, "It reads "+r.told+", and is written when you say whether the standing water is out."), ""
	}
	p.Words = []talk.Word{
		{Say: "yes", Does: flushed, Takes: takes, Help: "it is out: the reading counts, and " + r.counted(sys), Like: r.like("yes")},
		{Say: "already", Does: already, Takes: takes, Help: "it is out by a wash, which counts that water: the reading counts", Like: r.like("already")},
		{Say: "no", Does: firstCup, Takes: takes, Help: "a first cup: the reading is shown and not used", Like: r.like("no")},
		{Say: "faster", Does: otherFlow, Help: "read at the flow that teaches most, or again at the job's"},
		{Say: "back", Does: Leave, Help: "no reading"},
	}
	return p
}

// like is a word with the number behind it, where that is not told.
func (r Reading) like(word string) string {
	if r.told != "" {
		return word
	}
	return word + " " + Bare("6", r.scale)
}
