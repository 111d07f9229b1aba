package sheet

import (
	"strconv"
	"strings"
)

func header(s Sheet) markup {
	return `<header>
<h1>` + text(s.Title) + `</h1>
` + given(s.Notice, `<p class="notice">`, "</p>\n") + `<p class="verdict ` + text(string(s.Mood)) + `"><strong>` + text(s.Verdict) + `.</strong> ` + text(s.Chance) + `.</p>
` + given(s.Left, "<p>", "</p>\n") + `<p class="rules">` + text(s.Rules) + `</p>
<nav aria-label="Parts of the sheet">
<a href="#tonight">Tonight</a> <a href="#day">The day</a> <a href="#steps">Steps</a>` + when(s.Gate.Present, ` <a href="#gate">First DI rinse</a>`) + ` <a href="#done">When done</a>
</nav>
</header>
`
}

func heedHTML(s Sheet) markup {
	return when(len(s.Heed) > 0, `<section class="heed" id="heed">
<h2>Heed</h2>
`+plainList(s.Heed)+`
</section>
`)
}

// plainList is a list without marks.
func plainList(items []string) markup { return `<ul class="plain">` + each(items, listItem) + `</ul>` }

func listItem(words string) markup { return "<li>" + bound(words) + "</li>" }

// boxed is a label with a box to tick.
func boxed(id string, inside markup) markup {
	return `<label for="` + text(id) + `"><input type="checkbox" id="` + text(id) + `"> <span>` + inside + `</span></label>`
}

func tonightHTML(s Sheet) markup {
	return `<section id="tonight">
<h2>Tonight, in this order</h2>
<ol class="boxes">
` + each(s.Tonight, func(b Box) markup {
		class := markup("item")
		if b.Todo {
			class = "todo"
		}
		return `<li class="` + class + `">` + boxed(b.ID, `<b>`+bound(b.What)+`</b> <span class="why">`+bound(b.Why)+`</span>`) + "</li>\n"
	}) + `</ol>
</section>
`
}

func dayHTML(d Day) markup {
	return `<section id="day">
<h2>The day</h2>
<p>` + bound(d.Start) + `. ` + text(d.How) + `</p>
` + when(len(d.Notes) > 0, plainList(d.Notes)+"\n") + `<ol class="boxes">
` + each(d.Turns, turnHTML) + `</ol>
</section>
`
}

func turnHTML(t Turn) markup {
	timed := t.From != ""
	return "<li>" + boxed(t.ID, `<b>`+text(t.Face)+when(timed, ", "+text(t.From)+" to "+text(t.To))+`</b> <span class="why">DI `+bound(t.DI)+`; `+
		when(timed, bound(t.Section)+" at a time, dries in "+bound(t.Dries)+"; "+bound(t.Why)+"; ")+text(t.Outlook)+`</span>`) + "</li>\n"
}

func stepsHTML(s Sheet) markup {
	return `<section id="steps">
<h2>The steps</h2>
` + when(s.Usual != "", `<p class="usual">`+text(s.Usual)+"</p>\n") + `<ol class="boxes steps">
` + each(s.Steps, stepHTML) + `</ol>
</section>
`
}

func stepHTML(s Step) markup {
	amounts := `<b>` + bound(s.Volume) + `, ` + bound(s.Time) + `</b> at ` + bound(s.Flow)
	if s.Dry {
		amounts = bound(s.Time) + `, no water runs`
	}
	return `<li class="` + text(patternOf(s.water)) + `">` + boxed(s.ID, `<b>`+text(strconv.Itoa(s.Number))+`. `+text(s.Name)+`</b> <span class="water">`+text(s.Water)+
		` water</span> <span class="amounts">`+amounts+detail(s.Faces, s.UsualFaces)+detail(s.Sprayer, s.UsualSprayer)+`</span>`) + `
<p class="valves">` + each(s.Valves, valveHTML) + "</p></li>\n"
}

// detail is something of a step that a narrow page leaves out where it is as
// usual.
func detail(words string, usual bool) markup {
	return `<span` + when(usual, ` class="asusual"`) + `>; ` + text(words) + `</span>`
}

func valveHTML(v Valve) markup {
	class := markup("shut")
	if v.Through {
		class = "open"
	}
	return `<span class="` + class + `">` + text(v.Unit) + ` <b>` + text(v.Stand()) + `</b></span> `
}

func gateHTML(g Gate) markup {
	return when(g.Present, `<section id="gate">
<h2>Before the first DI rinse</h2>
<ol class="boxes">
<li>`+boxed("flush", `<b>`+bound(g.Flush)+`</b>`)+`</li>
</ol>
<p class="writeins">`+writeIn("Pen", "pen-before", " ppm")+` `+writeIn("Flow", "flow-before", "")+` `+writeIn("Time", "time-before", "")+`</p>
<p class="go"><b>GO:</b> `+bound(g.Go)+`. Expect `+bound(g.Expect)+`. `+bound(g.Later)+`</p>
<div class="nogo"><p><b>NO-GO:</b> the pen shows more. Then one of these:</p>
<ul>`+each(g.NoGo, spacedItem)+`</ul></div>
</section>
`)
}

// spacedItem is a list item of lists whose items may stand in one line.
func spacedItem(words string) markup { return listItem(words) + " " }

// writeIn is a place to write a figure down; a phone offers digits for all but
// times.
func writeIn(name, id string, unit markup) markup {
	digits := when(name != "Time", ` inputmode="decimal"`)
	return `<label>` + text(name) + ` <input type="text" id="` + text(id) + `"` + digits + ` autocomplete="off" maxlength="12">` + unit + `</label>`
}

func flowHTML(s Sheet) markup {
	return when(len(s.Flow) > 0, `<section id="flow">
<h2>How fast</h2>
`+plainList(s.Flow)+`
</section>
`)
}

func doneHTML(s Sheet) markup {
	return `<section id="done">
<h2>When done</h2>
` + when(s.Gate.Present, `<p class="writeins">`+writeIn("Pen", "pen-after", " ppm")+` `+writeIn("DI and flush", "di-used", "")+` `+writeIn("Time", "time-after", "")+`</p>
<p class="why end">Expect `+bound(s.Gate.End)+` at the end.</p>
`) + plainList(s.After) + `
</section>
`
}

func cautionHTML(s Sheet) markup {
	return `<section id="cautions">
<h2>Cautions</h2>
<ul class="plain small">` + each(s.Caution, spacedItem) + `</ul>
</section>
`
}

func footer(s Sheet) markup {
	assumed := strings.Join(s.Assumed, "; ")
	return `<footer>
` + when(assumed != "", `<p class="assumed"><b>Not stated, and taken instead:</b> `+text(assumed)+".</p>\n") +
		`<p>An estimate: the pen in the stream decides. Made by washeve; nothing in this file is fetched from anywhere.</p>
<p class="leftout">On paper without the pictures and what was assumed: they would not fit.</p>
<p id="clear" hidden><button type="button">Clear all ticks and notes</button></p>
</footer>
`
}
