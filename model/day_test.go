package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

func TestParseTimeOfDay(t *testing.T) {
	for text, want := range map[string]string{
		"7:30": "07:30", "07:30": "07:30", "7:30 pm": "19:30", "7 AM": "07:00", "12 am": "00:00",
		"12:15pm": "12:15", "7.30": "07:30", "7.30 pm": "19:30", "noon": "12:00", "0": "00:00", "00": "00:00", "12": "12:00", "23": "23:00", "7": "07:00", " 9 ": "09:00", "09": "09:00", "10": "10:00", "13": "13:00", "21": "21:00", "Midnight": "00:00", "23:59": "23:59",
	} {
		got, err := ParseTimeOfDay(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got.String(), text)
	}
	for _, text := range []string{"", "1", "6", "06", "24", "25:00", "7:60", "13 pm", "0 am", "7:3", "a:30", "-1:30", "7:30:00", "1234:00", "7.5", "7.30.00", "7:30.00", "7.", ".30"} {
		_, err := ParseTimeOfDay(text)
		assert.Error(t, err, text)
	}
	_, err := ParseTimeOfDay("5")
	assert.EqualError(t, err, `"5" may be of the morning or of the afternoon; write the time of day like "5 am", "5 pm" or "05:00"`)
	for text, reason := range map[string]string{"24": "is past the end of the day", "24:00": "is past the end of the day", "0 am": "has an hour that does not go with am or pm"} {
		_, err := ParseTimeOfDay(text)
		assert.EqualError(t, err, `"`+text+`" `+reason+`; write the time of day like "midnight" or "00:00"`)
	}
}

func FuzzParseTimeOfDay(f *testing.F) {
	for _, seed := range []string{"7:30", "12 am", "noon", ":", "9:5pm", "\x00"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseTimeOfDay(text)
		if err != nil {
			return
		}
		again, err := ParseTimeOfDay(got.String())
		require.NoError(t, err)
		require.Equal(t, got, again)
	})
}

func TestParseHeading(t *testing.T) {
	for text, want := range map[string]float64{
		"north": 0, "N": 0, "north-east": 45, "NE": 45, "north east": 45, "Northeast": 45, "nne": 22.5,
		"north-north-east": 22.5, "north-northeast": 22.5, "wsw": 247.5, "45": 45, "45 deg": 45, "45°": 45, "360": 0,
		"nose to the north-east": 45, "Nose North": 0, "facing due west": 270, "heading 200": 200, "  s  ": 180, "22.5 deg": 22.5,
	} {
		got, err := ParseHeading(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got.Angle().Degrees(), 1e-9, text)
	}
	for _, text := range []string{"", "nose", "up", "north-south", "361", "-10", "45 ft", "NaN", "nnn", "e-e", "45 46"} {
		_, err := ParseHeading(text)
		var parse *quantity.ParseError
		require.ErrorAs(t, err, &parse, text)
		assert.Contains(t, err.Error(), "north-east", text)
	}
}

func TestCompassWord(t *testing.T) {
	assert.Equal(t, "NE", HeadingOf(50*quantity.Degree).Word())
	assert.Equal(t, "N", HeadingOf(355*quantity.Degree).Word())
	assert.Equal(t, "W", HeadingOf(-90*quantity.Degree).Word())
}

func FuzzParseHeading(f *testing.F) {
	for _, seed := range []string{"north-east", "NE", "45 deg", "nose to the south", "-", "e", "1e400", "\xff"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseHeading(text)
		if err != nil {
			return
		}
		require.True(t, got >= 0 && got.Angle() < 360*quantity.Degree)
		again, err := ParseHeading(got.String())
		require.NoError(t, err)
		require.Equal(t, got, again)
	})
}

func TestShadeCovers(t *testing.T) {
	at := func(hour int) quantity.Opt[TimeOfDay] { return quantity.Some(TimeOfDay{Hour: hour}) }
	none := quantity.Opt[TimeOfDay]{}
	for _, c := range []struct {
		from, to quantity.Opt[TimeOfDay]
		covered  string // hours 3, 9, 15, 21
	}{
		{at(8), at(11), "-x--"}, {at(20), at(4), "x--x"}, {at(8), none, "-xxx"}, {none, at(10), "xx--"}, {none, none, "xxxx"}, {at(9), at(9), "xxxx"}, {at(9), at(15), "-x--"},
	} {
		got := ""
		for _, hour := range []int{3, 9, 15, 21} {
			if (Shade{From: c.from, To: c.to}).Covers(TimeOfDay{Hour: hour}) {
				got += "x"
			} else {
				got += "-"
			}
		}
		assert.Equal(t, c.covered, got, "%v %v", c.from, c.to)
	}
}

func TestTheDayContradicts(t *testing.T) {
	w := Wash{
		Low: quantity.Some(quantity.Celsius(20)), High: quantity.Some(quantity.Celsius(10)), DewPoint: quantity.Some(quantity.Celsius(15)),
		HumidityAt: quantity.Some(TimeOfDay{Hour: 15}), Shades: []Shade{{}},
	}
	var got []string
	for _, f := range w.Faults(nil, nil) {
		got = append(got, f.Error())
	}
	assert.Equal(t, []string{
		`low: "68 F" is above the high of the day, "50 F"; one of the two was misread`,
		`dew_point: "59 F" is above the high of the day, "50 F"; one of the two was misread`,
		`humidity_at: is the hour of humidity, which is missing`,
		`shade 1, side: is missing; write for example side = "roof"`,
	}, got)
}
