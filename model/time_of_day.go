package model

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"washeve/model/quantity"
)

// TimeOfDay is what a clock shows.
type TimeOfDay struct {
	Hour   int // 0 to 23
	Minute int // 0 to 59
}

// timeExample shows how a time of day is written.
const timeExample = `"7:30", "7:30 pm" or "19:30"`

// midnightExample shows how the hour is written that is 24 on no clock.
const midnightExample = `"midnight" or "00:00"`

// TimeOfDayAt is what the clock of the instant's zone shows.
func TimeOfDayAt(at time.Time) TimeOfDay { return TimeOfDay{at.Hour(), at.Minute()} }

func (t TimeOfDay) String() string {
	digit := func(v int) byte { return byte('0' + v%10) }
	return string([]byte{digit(t.Hour / 10), digit(t.Hour), ':', digit(t.Minute / 10), digit(t.Minute)})
}

// Minutes since the clock showed 00:00.
func (t TimeOfDay) Minutes() int { return 60*t.Hour + t.Minute }

// ParseTimeOfDay reads "7:30", "07:30", "7.30", "7:30 pm", "7 am", "noon" or
// "midnight", and of the bare hours 0, which is midnight, and those from 7 to 23: one from 1
// to 6 may be meant as one of the afternoon. Errors are of type [*quantity.ParseError].
func ParseTimeOfDay(text string) (TimeOfDay, error) {
	example := timeExample
	fail := func(reason string) (TimeOfDay, error) {
		return TimeOfDay{}, &quantity.ParseError{What: "time of day", Text: text, Reason: reason, Example: example}
	}
	rest := strings.ToLower(strings.Join(strings.Fields(text), " "))
	switch rest {
	case "":
		return fail("is empty")
	case "noon":
		return TimeOfDay{Hour: 12}, nil
	case "midnight":
		return TimeOfDay{}, nil
	}
	rest, half := cutHalf(rest)
	hourText, minuteText, colon := strings.Cut(strings.Replace(rest, ".", ":", 1), ":")
	if !colon && half == "" && !readAlone(hourText) {
		example = fmt.Sprintf(`"%[1]s am", "%[1]s pm" or "%02[2]d:00"`, hourText, numberOf(hourText))
		return fail("may be of the morning or of the afternoon")
	}
	hour, okHour := digits(hourText, 1)
	minute, okMinute := 0, true
	if colon {
		minute, okMinute = digits(minuteText, 2)
	}
	switch {
	case !okHour || !okMinute:
		return fail("is no time of day")
	case half != "" && hour == 0:
		example = midnightExample
		return fail("has an hour that does not go with am or pm")
	case hour == 24 && minute == 0:
		example = midnightExample
		return fail("is past the end of the day")
	case half != "" && hour > 12:
		return fail("has an hour that does not go with am or pm")
	case hour > 23 || minute > 59:
		return fail("is past the end of the day")
	case half == "am" && hour == 12:
		hour = 0
	case half == "pm" && hour < 12:
		hour += 12
	}
	return TimeOfDay{hour, minute}, nil
}

// readAlone tells that an hour by itself is not one of the night, which may be meant as one of
// the afternoon: 5 is asked about, 9 and 17 are not, nor is 0, which no afternoon has.
func readAlone(hourText string) bool {
	const earliest = 7
	hour, ok := digits(hourText, 1)
	return !ok || hour == 0 || hour >= earliest
}

// BareHour tells that a text is an hour alone, such as "9".
func BareHour(text string) bool {
	_, bare := digits(strings.TrimSpace(text), 1)
	return bare
}

func cutHalf(text string) (rest, half string) {
	for _, h := range []string{"am", "pm"} {
		if cut, ok := strings.CutSuffix(text, h); ok {
			return strings.TrimSpace(cut), h
		}
	}
	return text, ""
}

// digits reads a number of at least that many and at most two digits.
func digits(text string, least int) (int, bool) {
	if len(text) < least || len(text) > 2 || strings.Trim(text, "0123456789") != "" {
		return 0, false
	}
	v, err := strconv.Atoi(text)
	return v, err == nil
}
