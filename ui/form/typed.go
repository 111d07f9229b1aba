package form

import (
	"cmp"
	"strings"
	"unicode"
	"unicode/utf8"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
)

// Calendar is what a day that a person types is read by.
type Calendar struct {
	Today model.Date // the zero value where there is no clock: only whole dates are read
	Since model.Date // a day without its year is not before this one
}

// From is the calendar of a day, from that day on.
func From(today model.Date) Calendar { return Calendar{Today: today, Since: today} }

// Set states a field of a noun as a person typed it, by what sets a field of that noun by
// its key as a file holds it: a day in words becomes its date, degrees get their side, a city
// becomes its zone, and a latitude and a longitude in one text go where each belongs.
func (c Calendar) Set(f model.Field, text string, set func(key, text string) error) error {
	north, east, both := position(f, text)
	switch {
	case both:
		if err := set(model.LatitudeKey, model.WithSide(north, northSouth)); err != nil {
			return err
		}
		return set(model.LongitudeKey, model.WithSide(east, eastWest))
	case f.Sides != "":
		text = model.WithSide(text, f.Sides)
	case f.Key == model.ZoneKey:
		text = model.ZoneName(text)
	case f.OfClock():
		text = cmp.Or(fullHour(text), text)
	case f.Day && !blank(text):
		day, err := model.ComingDay(text, c.Today, c.Since)
		if err != nil {
			return err
		}
		text = day.String()
	}
	return set(f.Key, text)
}

// The sides of a position, the positive one first.
const (
	northSouth = "NS"
	eastWest   = "EW"
)

// position parts a text with both numbers of a position.
func position(f model.Field, text string) (north, east string, both bool) {
	if f.Sides == "" {
		return "", "", false
	}
	return model.SplitPosition(text)
}

// Taken is what a right text was read as, in words, where that is more than the text says.
func (c Calendar) Taken(f model.Field, text string) string {
	north, east, both := position(f, text)
	switch {
	case both:
		return model.WithSide(north, northSouth) + ", " + longitude(east)
	case f.Sides == eastWest && longitude(text) != text:
		return longitude(text)
	case f.Sides == northSouth && model.WithSide(text, northSouth) != text:
		return model.WithSide(text, northSouth)
	case f.Key == model.ZoneKey:
		return zone(text)
	case f.OfClock():
		return fullHour(text)
	case f.Day && !blank(text):
		if day, err := model.ComingDay(text, c.Today, c.Since); err == nil {
			return day.Full()
		}
	}
	return ""
}

// fullHour is an hour alone as the time that it is; "" of any other text.
func fullHour(text string) string {
	at, err := model.ParseTimeOfDay(text)
	if err != nil || !model.BareHour(text) {
		return ""
	}
	return at.String()
}

// zone is what is to be said of a time zone: its whole name, where the text is not it.
func zone(text string) string {
	if name := model.ZoneName(text); !strings.EqualFold(name, strings.TrimSpace(text)) {
		return name
	}
	return model.ZoneNote(text)
}

// longitude is a longitude with its side, and how the other side is typed where none was.
func longitude(text string) string {
	sided := model.WithSide(text, eastWest)
	if note := model.WestNote(text); note != "" {
		return sided + "; " + note
	}
	return sided
}

func blank(text string) bool { return strings.TrimSpace(text) == "" }

// Like is a text for example, as it may be typed in a field.
func Like(f model.Field) string {
	switch {
	case f.Day:
		return model.ComingDays
	case f.Moment:
		return model.PastMoments
	case f.Sides == northSouth:
		return f.Example + ", or both lines at once: 38.6, -109.5"
	case f.Sides == eastWest:
		return f.Example + " or -109.5"
	}
	return f.Example
}

// Help is what a field is, and how it may be typed; while it is not typed yet, also what
// enter does.
func Help(f model.Field, typing bool) string {
	text := f.Help
	switch {
	case typing:
	case Awaits(f):
		text += "; type it"
	case TakesWords(f):
		text += "; " + enterThenType
	}
	if f.Example != "" && len(f.Choices) == 0 {
		text += ", like " + Like(f)
	}
	switch {
	case f.Day:
		text += "; a weekday is today or the next one"
	case f.Moment:
		text += "; a weekday is today or the last one"
	case (f.Refers != "" || len(f.Choices) > 0) && !typing:
		text += "; enter lists them"
	}
	return text
}

const enterThenType = "enter, then type"

// IsLetter tells that a key is a letter that is typed by itself: where it is no key of the
// screen it begins no text, since the letters behind it may be keys.
func IsLetter(key tea.KeyMsg) bool {
	return key.Type == tea.KeyRunes && !key.Alt && !key.Paste && len(key.Runes) > 0 && unicode.IsLetter(key.Runes[0])
}

// NoKey says of a letter that is no key of the screen how it is typed on the line of a field.
func NoKey(f model.Field, key tea.KeyMsg) string {
	text := string(key.Runes) + " is no key here"
	if f.Key != "" && len(f.Choices) == 0 && f.Refers == "" {
		text += ": " + enterThenType
	}
	return text + "."
}

// TakesWords tells that what is typed in a field may begin with a letter, as a name does:
// its letters are keys until enter, but where it [Awaits] them.
func TakesWords(f model.Field) bool {
	return len(f.Choices) == 0 && f.Refers == "" && (f.Day || f.Moment || isWords(f.Example))
}

// isWords tells that a value begins with a letter.
func isWords(example string) bool {
	first, _ := utf8.DecodeRuneInString(example)
	return unicode.IsLetter(first)
}
