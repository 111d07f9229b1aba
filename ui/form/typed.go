package form

import (
	"strings"

	"washeve/model"
)

// Calendar is what a day that a person types is read by.
type Calendar struct {
	Today model.Date // the zero value where there is no clock: only whole dates are read
	Since model.Date // a day without its year is not before this one
}

// From is the calendar of a day, from that day on.
func From(today model.Date) Calendar { return Calendar{Today: today, Since: today} }

// Written is what a person typed as a file holds it: a day in words becomes its date. What
// is wrong with it is told; any other text is as it was, right or wrong.
func (c Calendar) Written(f model.Field, text string) (string, error) {
	if !f.Day || blank(text) {
		return text, nil
	}
	day, err := model.ComingDay(text, c.Today, c.Since)
	if err != nil {
		return text, err
	}
	return day.String(), nil
}

// Taken is what a right text was read as, in words, where that is more than the text says.
func (c Calendar) Taken(f model.Field, text string) string {
	if !f.Day || blank(text) {
		return ""
	}
	day, err := model.ComingDay(text, c.Today, c.Since)
	if err != nil {
		return ""
	}
	return day.Full()
}

func blank(text string) bool { return strings.TrimSpace(text) == "" }

// Like is a text for example, as it may be typed in a field.
func Like(f model.Field) string {
	switch {
	case f.Day:
		return model.ComingDays
	case f.Moment:
		return model.PastMoments
	}
	return f.Example
}

// Help is what a field is, and how it may be typed.
func Help(f model.Field) string {
	text := f.Help
	if f.Example != "" && len(f.Choices) == 0 {
		text += ", like " + Like(f)
	}
	switch {
	case f.Day:
		text += "; a weekday is today or the next one"
	case f.Moment:
		text += "; a weekday is today or the last one"
	}
	return text
}
