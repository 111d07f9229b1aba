package sheet

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/packing"
	"washeve/planner/tag"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// ruleCode is the caution that stands first on every sheet.
const ruleCode = "local-rules"

// forPlanning tells the warnings that help to plan and not to wash, or that the
// sheet tells elsewhere; the printed plan has them all.
func forPlanning(code string) bool {
	return slices.Contains([]string{
		"softening-spares-nothing", "claim", "outside-range", "beyond-scale", "hardness-assumed", "open-hose", "no-di", planner.PastDay,
	}, code)
}

// clean makes text harmless and a sentence: a capital at the front.
func clean(text string) string {
	text = strings.TrimSpace(cells.Safe(text))
	if text == "" || text[0] < 'a' || text[0] > 'z' {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

func moodOf(v planner.Verdict) Mood {
	switch v {
	case planner.Lasts:
		return Good
	case planner.Tight:
		return Doubt
	}
	return Bad
}

func (s *Sheet) head(p planner.Plan, sys quantity.System) {
	s.Title = cells.Safe(report.Heading(p))
	s.Verdict = report.Judged(&p)
	s.Chance = "Chance that it lasts: " + report.Lasting(&p)
	s.Left = report.Remaining(p, sys)
	if !throughBed(p) {
		s.Mood, s.Verdict, s.Chance, s.Left = Good, "This wash asks nothing of the DI bed", "No step uses DI water", ""
	}
}

// throughBed tells whether any step draws DI water.
func throughBed(p planner.Plan) bool {
	for _, s := range p.Stages {
		if s.Water == model.DI {
			return true
		}
	}
	return false
}

func ruleOf(p planner.Plan, sys quantity.System) string {
	for _, n := range p.Cautions {
		if n.Code == ruleCode {
			return clean(n.Text(sys))
		}
	}
	return "Local rules on washing and run-off come first. Ask."
}

// heed lists the warnings for the day of the wash.
func heed(p planner.Plan, sys quantity.System) []string {
	var out []tag.Note
	for _, n := range p.Warnings {
		if !forPlanning(n.Code) {
			out = append(out, n)
		}
	}
	return once(notes(out, sys))
}

// once leaves out what was said before.
func once(texts []string) []string {
	var out []string
	for _, t := range texts {
		if !slices.Contains(out, t) {
			out = append(out, t)
		}
	}
	return out
}

// cautions are those that apply: loose resin only where resin may be changed. What stands elsewhere on the sheet is left
// out.
func cautions(p planner.Plan, sys quantity.System) []string {
	said := map[string]bool{ruleCode: true, "estimate": true, "frost": true, "loose-resin": p.Verdict == planner.Lasts}
	var out []string
	for _, n := range p.Cautions {
		if !said[n.Code] {
			out = append(out, clean(n.Text(sys)))
		}
	}
	return out
}

func notes(all []tag.Note, sys quantity.System) []string {
	out := make([]string, len(all))
	for i, n := range all {
		out[i] = clean(n.Text(sys))
	}
	return out
}

func boxes(items []packing.Item, p planner.Plan, sys quantity.System) []Box {
	out := make([]Box, len(items))
	for i, item := range items {
		out[i] = Box{
			ID:   fmt.Sprintf("pack-%d", i+1),
			What: clean(item.What.Text(sys)), Why: cells.Safe(item.Why.Text(sys)), Todo: item.Todo,
		}
		if item.Code == packing.Jug { // the vessel goes by the units
			out[i].Why = report.Jug(p, sys)
		}
	}
	return out
}

// assumed lists what nobody stated.
func assumed(p planner.Plan, sys quantity.System) []string {
	var out []string
	for _, a := range p.Assumptions {
		if a.Source.Tag != tag.Yours {
			out = append(out, cells.Safe(a.Name+" "+report.Value(a, sys)))
		}
	}
	return out
}

// flow says how fast the water may run, and how to hold it.
func (s *Sheet) flow(p planner.Plan, sys quantity.System) {
	if !throughBed(p) {
		return
	}
	s.Flow = []string{report.Cap(p, sys) + "."}
	name := cells.Safe(p.Sprayer.Name)
	if name == "" {
		name = "sprayer"
	}
	s.Flow = append(s.Flow, clean(name+": "+quantity.Show(p.Sprayer.Flow, sys)+", "+report.SprayerNote(p)+"."))
	if note := report.HoseNote(p); note != "" {
		s.Flow = append(s.Flow, "Open hose: "+quantity.Show(p.Sprayer.OpenHose, sys)+", "+note+".")
	}
}

// after is what is left to do when the last face is done.
func (s *Sheet) after(p planner.Plan) {
	if throughBed(p) {
		s.After = append(s.After, "Keep the readings and the gallons: they teach the next plan (washeve log).")
	}
	if towels := towelFaces(p); towels != "" {
		s.After = append(s.After, "Dry by towel: "+towels+".")
	}
	s.After = append(s.After, "Release the pressure; drain tanks and hoses before transport and frost.")
}

func towelFaces(p planner.Plan) string {
	var words []string
	for _, f := range p.Faces {
		if f.Spots == planner.Towel && f.Name != model.Roof {
			words = append(words, string(f.Name))
		}
	}
	return strings.Join(words, ", ")
}
