package main

import (
	"fmt"
	"math"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/report"
)

func (p *program) bedCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "bed [WASH.toml]",
		Short: "State of the bed, what the readings say, when it ends",
		Args:  atMostOne("wash"),
		RunE: func(_ *cobra.Command, args []string) error {
			lib, wash, err := p.loadWash(args)
			if err != nil {
				return err
			}
			return p.printBed(lib, wash)
		},
	}
}

// bedAnswer is the bed's state and what lies before it.
type bedAnswer struct {
	plan  planner.Plan
	ahead planner.Ahead
	past  *planner.BedPast // nil where the log knows nothing of the bed
}

func (p *program) printBed(lib library, wash model.Wash) error {
	b, sys, err := p.openBookIn(lib.Rig)
	if err != nil {
		return err
	}
	var a bedAnswer
	if a.plan, err = b.plan(lib.Rig, lib.Places, wash); err != nil {
		return err
	}
	past := b.past(lib.Rig, lib.Places)
	if a.ahead, err = planner.LookAhead(lib.Rig, lib.Places, wash, a.plan, past, model.MomentOf(p.now())); err != nil {
		return err
	}
	a.past = past.Bed(a.plan.BedName)
	if p.json {
		return p.printJSON(a.json())
	}
	for _, line := range a.lines(sys) {
		fmt.Fprintln(p.out, line)
	}
	return nil
}

// lines is the answer in words.
func (a bedAnswer) lines(sys quantity.System) []string {
	bed := a.plan.Bed
	lines := []string{
		fmt.Sprintf("%s: %s of resin, %s given so far.", a.plan.BedName, bed.Resin.AsResin().Show(sys), quantity.Show(bed.SoFar, sys)),
		report.Judged(&a.plan) + ": " + report.Lasting(&a.plan) + ".",
		report.Remaining(a.plan, sys),
	}
	if ends, known := a.ahead.Ends.Get(); known {
		lines = append(lines, fmt.Sprintf("At the present pace it ends about %s (%s to %s).", ends.P50, ends.P10, ends.P90))
	}
	if when := report.OrderWhen(a.ahead); when != "" {
		lines = append(lines, fmt.Sprintf("Order resin %s; it takes %s to come.", when, quantity.Show(a.ahead.Lead, sys)))
	}
	lines = append(lines, a.costLines(sys)...)
	lines = append(lines, a.readingLines(sys)...)
	if high := report.High(a.past); high != "" {
		lines = append(lines, high)
	}
	if aged := report.Aged(a.past, sys); aged != "" {
		lines = append(lines, aged)
	}
	if a.plan.TakenAsNew() || a.plan.CountedFromLog() {
		lines = append(lines, "Nobody said how old this fill is: state gallons_so_far of the bed in rig.toml, or --gallons-so-far with a reading.")
	}
	if moved := report.Moved(a.ahead, sys); moved != "" && report.High(a.past) == "" && report.Aged(a.past, sys) == "" {
		lines = append(lines, moved)
	}
	for _, n := range a.plan.Remarks() {
		lines = append(lines, "", n.Text(sys))
	}
	if words := a.ahead.Advice.Note.Text(sys); words != "" {
		lines = append(lines, "", words)
	}
	return append(lines, "", report.Flush(a.plan, sys))
}

// costLines are what the fill has cost and what the wash takes of it.
func (a bedAnswer) costLines(sys quantity.System) []string {
	lines := []string{"Cost: " + report.Cost(a.plan, sys) + "."}
	if words := report.CostOfFill(a.ahead.Running, sys).Words(a.plan.Bed.Remaining.P50 <= 0); words != "" {
		lines = append(lines, "This fill has cost "+words+".")
	}
	return lines
}

// readingLines lists the readings of the present fill beside what the bed
// should have shown, and under one that fits no bed what may be behind it.
func (a bedAnswer) readingLines(sys quantity.System) []string {
	if a.past == nil {
		return []string{"", "The log holds nothing of this bed yet; washeve log reading writes down what the pen shows."}
	}
	lines := []string{"", "Readings of this fill, each beside what is expected of it by all of them:"}
	for _, r := range a.past.Present().Readings {
		word := ""
		switch {
		case r.Suspect != nil:
			word = "  fits no bed"
		case !r.Counts:
			word = "  first cup, not used"
		}
		expected := "-"
		switch {
		case r.Suspect != nil:
			expected = report.PPM(r.Suspect.Expected)
		case !math.IsNaN(r.Expected):
			expected = report.PPM(r.Expected)
		}
		lines = append(lines, fmt.Sprintf("  %s  at %10s  %-16s expected %s%s", r.At.Date(), quantity.Show(r.Gallons, sys), r.Reading, expected, word))
		lines = append(lines, causeLines(r, sys)...)
	}
	return lines
}

// causeLines say what may be behind a reading that fits no bed, the likeliest first.
func causeLines(r planner.PastReading, sys quantity.System) []string {
	if r.Suspect == nil {
		return nil
	}
	lines := []string{"    What may be behind it, the likeliest first:"}
	for i, c := range r.Suspect.Causes {
		head := fmt.Sprintf("    %d. ", i+1)
		for _, part := range cells.Wrap(c.Note.Text(sys), pageColumns-len(head)) {
			lines = append(lines, head+part)
			head = cells.Blank(len(head))
		}
	}
	return lines
}

// finite is a number that JSON can hold; nil where there is none.
func finite(v float64) any {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nil
	}
	return v
}

// json is the answer with its numbers in the unit that each name ends in.
func (a bedAnswer) json() map[string]any {
	bed := a.plan.Bed
	out := map[string]any{
		"format": 1, "bed": a.plan.BedName, "verdict": a.plan.Verdict,
		"resin_ft3": bed.Resin.CubicFeet(), "gallons_so_far": bed.SoFar.Gallons(),
		"remaining_gallons": map[string]any{
			"p10": finite(bed.Remaining.P10.Gallons()), "p50": finite(bed.Remaining.P50.Gallons()), "p90": finite(bed.Remaining.P90.Gallons()),
		},
		"chance_lasts": finite(float64(bed.ChanceLasts)),
		"flush":        map[string]any{"gallons": finite(a.plan.Flush.Volume.Gallons()), "seconds": finite(a.plan.Flush.Duration.Seconds())},
		"ends":         nil, "order_by": nil, "readings": []any{},
	}
	if ends, known := a.ahead.Ends.Get(); known {
		out["ends"] = map[string]any{"p10": ends.P10.String(), "p50": ends.P50.String(), "p90": ends.P90.String()}
	}
	if order, known := a.ahead.OrderBy.Get(); known {
		out["order_by"] = order.String()
	}
	if a.past != nil {
		out["readings"] = a.readingsJSON()
	}
	return out
}

func (a bedAnswer) readingsJSON() []map[string]any {
	rows := []map[string]any{}
	for _, r := range a.past.Present().Readings {
		row := map[string]any{
			"id": r.ID, "at": r.At.String(), "gallons": r.Gallons.Gallons(), "ppm": finite(r.PPM),
			"expected_ppm": finite(r.Expected), "used": r.Counts && r.Suspect == nil, "causes": []string{},
		}
		if r.Suspect != nil {
			row["causes"] = causeCodes(r)
		}
		rows = append(rows, row)
	}
	return rows
}

func causeCodes(r planner.PastReading) []string {
	codes := make([]string, len(r.Suspect.Causes))
	for i, c := range r.Suspect.Causes {
		codes[i] = string(c.Code)
	}
	return codes
}
