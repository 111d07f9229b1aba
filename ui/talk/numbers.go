package talk

import (
	"slices"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/reader"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Reasons are numbers with their formula in words, inputs and source.
func Reasons(th theme.Theme, sys quantity.System, all []planner.Reason) []Number {
	numbers := make([]Number, len(all))
	for i, r := range all {
		numbers[i] = Number{Name: r.Number, Value: report.Result(r, sys), Lines: func(width int) []string {
			return reader.Reasons(th, sys, []planner.Reason{r}, width)
		}}
	}
	return numbers
}

// Assumptions are a group of numbers that were stated or taken, each with its source.
func Assumptions(group string, th theme.Theme, sys quantity.System, all []planner.Assumption) []Number {
	numbers := make([]Number, len(all))
	for i, a := range all {
		numbers[i] = Number{Name: a.Name, Value: report.Value(a, sys), Group: group, Lines: func(width int) []string {
			return reader.Assumptions(th, sys, []planner.Assumption{a}, width)
		}}
	}
	return numbers
}

// why tells where a number comes from; without a name it lists the numbers.
func (t *talk) why(name string) {
	p := t.page()
	if p.Numbers == nil {
		t.say("There is no number here to explain; back, then why.")
		return
	}
	numbers := p.Numbers()
	if len(numbers) == 0 {
		t.say("There is no number here to explain yet.")
		return
	}
	if name == "" {
		t.numbers(numbers)
		return
	}
	found := matching(numbers, name)
	if len(found) == 0 {
		t.say("Read: why, and the name " + quoted(name) + ". There is no such number here; why lists them.")
	}
	for _, n := range found {
		t.say(n.Lines(Unwrapped)...)
	}
}

// numbers lists what can be asked for: the answer's own numbers, and the groups of the
// others.
func (t *talk) numbers(all []Number) {
	var groups []string
	for _, n := range all {
		switch {
		case n.Group == "":
			t.say(n.Name + ": " + n.Value)
		case !slices.Contains(groups, n.Group):
			groups = append(groups, n.Group)
		}
	}
	for _, g := range groups {
		t.say("why " + g + " tells the " + g + " as well.")
	}
	t.say("Say why and a name, like why " + all[0].Name + "; why all explains each.")
}

// matching finds numbers by their name: that one, or else all that hold the words.
func matching(numbers []Number, name string) []Number {
	if strings.EqualFold(name, "all") {
		return numbers
	}
	var found []Number
	for _, n := range numbers {
		if strings.EqualFold(n.Name, name) {
			return []Number{n}
		}
		if strings.EqualFold(n.Group, name) || strings.Contains(strings.ToLower(n.Name), strings.ToLower(name)) {
			found = append(found, n)
		}
	}
	return found
}
