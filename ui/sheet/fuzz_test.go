package sheet_test

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
	"washeve/planner/packing"
	"washeve/planner/tag"
	"washeve/ui/internal/sample"
	"washeve/ui/sheet"
)

// anyPlan is the sample plan with a name in every place that takes one, a number
// in every place that takes one, and so many of everything.
func anyPlan(name string, number float64, many int) (planner.Plan, model.Vehicle, []packing.Item) {
	p := sample.Plan()
	p.Wash, p.Vehicle, p.Place, p.BedName, p.Sprayer.Name = name, name, name, name, name
	p.Softener.Name = name
	p.Cap.Flow, p.Cap.JugSeconds = quantity.Flow(number), quantity.Duration(number)
	p.DI.Volume, p.Flush.Duration = quantity.Volume(number), quantity.Duration(number)
	p.Bed.Before.Spent, p.Bed.After.Fresh = quantity.Fraction(number), quantity.Fraction(number)
	p.Bed.ChanceLasts, p.Bed.OutletNow.P50, p.Limit.Number = quantity.Fraction(number), number, number
	note := tag.Note{Code: name, Format: strings.ReplaceAll(name, "%", "%%") + " %s", Values: []quantity.Value{quantity.ValueOf(quantity.Flow(number))}}
	stage, day := p.Stages[len(p.Stages)-1], planner.DayPlan{}
	stage.Name, stage.Sprayer, stage.Flow, stage.Volume = name, name, quantity.Flow(number), quantity.Volume(number)
	at := time.Date(2026, 6, 12, 7, 0, 0, 0, time.UTC)
	var items []packing.Item
	for range many {
		p.Stages = append(p.Stages, stage)
		p.Warnings, p.Cautions = append(p.Warnings, note), append(p.Cautions, note)
		p.Assumptions = append(p.Assumptions, planner.Assumption{Name: name, Words: name})
		items = append(items, packing.Item{Code: packing.Hose, What: note, Why: note}, packing.Item{Code: packing.Ask, Todo: true, What: note, Why: note})
		day.Notes, day.Unknown = append(day.Notes, note), append(day.Unknown, name)
		day.Start.Turns = append(day.Start.Turns, drying.Turn{
			Side: model.Side(name), Why: name, From: at, To: at, Dries: quantity.Some(quantity.Duration(number)), Section: quantity.Some(quantity.Area(number)),
		})
	}
	if many%2 == 1 {
		p.Day = &day
	}
	v := model.Vehicle{Length: quantity.Some(quantity.Length(number)), Height: quantity.Some(quantity.Length(1 / number))}
	return p, v, items
}

// Whatever the plan: a page of text stays a page, plain is ASCII, a name brings
// no markup with it, the HTML is well formed, and nothing falls.
func FuzzSheet(f *testing.F) {
	f.Add("Marigold", 1.0, uint8(1))
	f.Add(`<script>alert("1")</script>`, math.Inf(1), uint8(9))
	f.Add("`**_[x](http://e)|#&lt; --> ]]>", math.NaN(), uint8(40))
	f.Add("اسم طويل جدا للعربة 水箱 🚐👩‍🔧", -1.0, uint8(3))
	f.Add("\x1b[2J\x00\u202e\u2028\xff"+strings.Repeat("w", 200), 0.0, uint8(2))
	f.Add("washeve sheet 000000000000", 1e300, uint8(0))
	f.Fuzz(func(t *testing.T, name string, number float64, many uint8) {
		p, v, items := anyPlan(name, number, int(many)%24)
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			s := sheet.Make(sheet.Input{Plan: p, Vehicle: v, Packing: items, Units: sys})
			fits(t, sheet.Text(s, false), false)
			fits(t, sheet.Text(s, true), true)
			checkMarkdown(t, sheet.Markdown(s))
			checkHTML(t, sheet.HTML(s))
		}
	})
}

func checkMarkdown(t *testing.T, page string) {
	body, _, _ := strings.Cut(page, "<!-- washeve sheet")
	body = strings.NewReplacer("<small>", "", "</small>", "").Replace(body)
	if strings.Contains(body, "<") || strings.Contains(body, "\x1b") || !utf8.ValidString(page) {
		t.Fatalf("markup or worse in\n%s", page)
	}
}

// inputs are the only elements of a sheet's body that HTML does not close.
var inputs = regexp.MustCompile(`(<input[^>]*)>`)

// checkHTML reads the body of the page as XML, up to its script.
func checkHTML(t *testing.T, page string) {
	if !utf8.ValidString(page) || strings.Contains(page, "\x1b") || strings.Count(page, "<script") != 1 || !sheet.Sealed([]byte(page)) {
		t.Fatalf("not as it should be:\n%s", page)
	}
	_, body, _ := strings.Cut(page, "<body")
	body, _, _ = strings.Cut("<body"+body, "<script>")
	body = strings.Replace(inputs.ReplaceAllString(body, "$1/>"), " hidden>", ">", 1)
	d := xml.NewDecoder(strings.NewReader(body + "</body>"))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, body)
		}
		if start, is := token.(xml.StartElement); is {
			safeElement(t, start)
		}
	}
}

// safeElement knows every element that a sheet may have, and no attribute that
// does anything.
func safeElement(t *testing.T, e xml.StartElement) {
	const known = " body header h1 h2 p strong b nav a main section ol ul li label input span figure figcaption svg title desc defs pattern path circle rect text div footer button "
	if !strings.Contains(known, " "+e.Name.Local+" ") {
		t.Fatalf("element %s", e.Name.Local)
	}
	for _, a := range e.Attr {
		if strings.HasPrefix(a.Name.Local, "on") || a.Name.Local == "style" || a.Name.Local == "src" || (a.Name.Local == "href" && !strings.HasPrefix(a.Value, "#")) {
			t.Fatalf("attribute %s of %s", a.Name.Local, e.Name.Local)
		}
	}
}
