package model

import (
	"fmt"
	"slices"

	"washeve/model/quantity"
)

// Sky is how much of the sky is covered, in a word of the weather observers.
type Sky string

// The words, from bright to dark.
const (
	ClearSky        Sky = "clear"
	FewClouds       Sky = "few"       // 1 to 2 eighths
	ScatteredClouds Sky = "scattered" // 3 to 4 eighths
	BrokenClouds    Sky = "broken"    // 5 to 7 eighths
	Overcast        Sky = "overcast"
)

// Skies lists the words from bright to dark.
func Skies() []Sky { return []Sky{ClearSky, FewClouds, ScatteredClouds, BrokenClouds, Overcast} }

// Colour is how dark a panel is, in a word.
type Colour string

// The colours, from cool to hot in the sun.
const (
	White       Colour = "white"
	LightColour Colour = "light"
	MidColour   Colour = "mid"
	DarkColour  Colour = "dark"
	Black       Colour = "black"
)

// Colours lists the words from white to black.
func Colours() []Colour { return []Colour{White, LightColour, MidColour, DarkColour, Black} }

// Shade is what keeps the sun off a side from one clock time to another: past
// midnight where To is not after From, from or to midnight where one is left
// out, and the whole day where both are left out or the same.
type Shade struct {
	Side     Side
	From, To quantity.Opt[TimeOfDay]
	By       string // "the oak"
}

// Fields lists what can be stated of a shade.
func (s *Shade) Fields() []Field {
	return []Field{
		choice("side", "side", "which face is in the shade", Sides(), &s.Side).required(),
		field("from", "from", "since when; from midnight where left out", "8:00", &s.From, ParseTimeOfDay, TimeOfDay.String),
		field("to", "to", "until when; to midnight where left out", "11:30", &s.To, ParseTimeOfDay, TimeOfDay.String),
		name("by", "by", "what keeps the sun off", "the oak", &s.By),
	}
}

// Covers tells whether the shade lies on its side when the clock shows t.
func (s Shade) Covers(t TimeOfDay) bool {
	from, to, now := s.From.Or(TimeOfDay{}).Minutes(), s.To.Or(TimeOfDay{}).Minutes(), t.Minutes()
	if from < to {
		return from <= now && now < to
	}
	return from == to || now >= from || now < to
}

// dayFields are what a person can state of the day of a wash.
func (w *Wash) dayFields() []Field {
	return append([]Field{
		field("heading", "heading", "where the nose points: a compass word, or degrees from true north", "north-east", &w.Heading, ParseHeading, Heading.String),
		field("start", "start", "when you begin; left out, the plan names the best time", "7:30", &w.Start, ParseTimeOfDay, TimeOfDay.String),
	}, w.Weather()...)
}

// Weather lists what can be stated of the weather of a wash.
func (w *Wash) Weather() []Field {
	return []Field{
		measure("low", "low of the day", "lowest temperature of the air, from the forecast", "58 F", "-60 F", "130 F", &w.Low),
		measure("high", "high of the day", "highest temperature of the air, from the forecast", "86 F", "-60 F", "130 F", &w.High),
		measure("humidity", "humidity", "relative humidity, from the forecast; the day's mean where its hour is left out", "35 %", "1 %", "100 %", &w.Humidity),
		field("humidity_at", "hour of humidity", "when the air is so humid", "15:00", &w.HumidityAt, ParseTimeOfDay, TimeOfDay.String),
		measure("dew_point", "dew point", "from the forecast; taken before the humidity", "45 F", "-60 F", "100 F", &w.DewPoint),
		measure("wind", "wind", "from the forecast, which is for 10 m above open ground", "6 mph", "0 mph", "60 mph", &w.Wind),
		choice("sky", "sky", "cloud: few is up to 2 eighths, scattered 3 to 4, broken 5 to 7", Skies(), &w.Sky),
	}
}

// OnAnotherDay is the wash without its day, and without the start and the weather, which
// are that day's alone. Weather tells that there was some.
func (w Wash) OnAnotherDay() (other Wash, weather bool) {
	weather = w.HasWeather()
	w.Date, w.Start = quantity.Opt[Date]{}, quantity.Opt[TimeOfDay]{}
	return w.InWeatherOf(Wash{}), weather
}

// HasWeather tells that something is stated of the weather.
func (w *Wash) HasWeather() bool { return slices.ContainsFunc(w.Weather(), Field.Given) }

// InWeatherOf is the wash with the weather that another one states, and no other.
func (w Wash) InWeatherOf(other Wash) Wash {
	w.Low, w.High, w.DewPoint = other.Low, other.High, other.DewPoint
	w.Humidity, w.HumidityAt = other.Humidity, other.HumidityAt
	w.Wind, w.Sky = other.Wind, other.Sky
	return w
}

// Contradictions finds statements that cannot be true together.
func (w *Wash) Contradictions() []Fault {
	return append(w.shareContradictions(), w.dayContradictions()...)
}

func (w *Wash) dayContradictions() []Fault {
	var faults []Fault
	low, okLow := w.Low.Get()
	high, okHigh := w.High.Get()
	dew, okDew := w.DewPoint.Get()
	if okLow && okHigh && low > high {
		faults = append(faults, Fault{Key: "low", Problem: fmt.Sprintf("%q is above the high of the day, %q; one of the two was misread", show(w.Low), show(w.High))})
	}
	if okDew && okHigh && dew > high {
		faults = append(faults, Fault{Key: "dew_point", Problem: fmt.Sprintf("%q is above the high of the day, %q; one of the two was misread", show(w.DewPoint), show(w.High))})
	}
	if w.HumidityAt.Given() && !w.Humidity.Given() {
		faults = append(faults, Fault{Key: "humidity_at", Problem: "is the hour of humidity, which is missing"})
	}
	return faults
}

// show is a value as it was typed, else as the program writes it.
func show[Q quantity.Quantity](at quantity.Opt[Q]) string {
	if words := at.Words(); words != "" {
		return words
	}
	return quantity.Show(at.Or(0), quantity.US)
}
