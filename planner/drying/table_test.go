package drying_test

import (
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/drying/sun"
)

// tableDay is a day of a coach in a mid colour, nose to the north, with 50
// mL/m2 on each upright side.
func tableDay(date model.Date, place sun.Place, zoneName string, elevation quantity.Length, weather drying.Weather) drying.Input {
	in := drying.Input{
		Date: date, Zone: zone(zoneName), Place: place, Elevation: quantity.Some(elevation),
		Heading: quantity.Some(model.HeadingOf(0)), Weather: weather,
	}
	for _, side := range []model.Side{model.Left, model.Right, model.Front, model.Rear} {
		in.Faces = append(in.Faces, drying.Face{Side: side, Film: quantity.Some(50 * quantity.MillilitrePerSquareMetre), Colour: model.MidColour})
	}
	return in
}

// allShaded is the same day with every side in the shade.
func allShaded(in drying.Input) drying.Input {
	for _, f := range in.Faces {
		in.Shades = append(in.Shades, model.Shade{Side: f.Side})
	}
	return in
}

// printTable writes the hours of a day: the side that gets most light, how hot
// it is dry, and how long 50 mL/m2 last on it in the shade and in the sun.
func printTable(in drying.Input, hours ...int) {
	open, errOpen := drying.Day(in)
	shaded, errShaded := drying.Day(allShaded(in))
	if errOpen != nil || errShaded != nil {
		fmt.Println(errOpen, errShaded)
		return
	}
	fmt.Println("| hour | sun, deg | air, C | side facing | light, W/m2 | dry panel, C | dries in shade, min | in sun, min |")
	fmt.Println("| --- | --- | --- | --- | --- | --- | --- | --- |")
	for _, h := range hours {
		for i, m := range open.Steps {
			if m.FullHour && m.At.Hour() == h {
				best := brightest(m)
				shade, _ := shaded.Steps[i].Face(best.Side)
				fmt.Printf("| %s | %.1f | %.1f | %s | %.0f | %.0f | %.1f | %.1f |\n", m.Label, m.Sun.Altitude.Degrees(), m.Air.Or(0).Celsius(),
					best.Side, best.Irradiance.WattsPerSquareMetre(), best.Dry.Or(0).Celsius(), shade.Dries.Or(0).Minutes(), best.Dries.Or(0).Minutes())
			}
		}
	}
}

func brightest(m drying.Moment) drying.FaceMoment {
	best := m.Faces[0]
	for _, f := range m.Faces {
		if f.Irradiance > best.Irradiance {
			best = f
		}
	}
	return best
}

func weather(low, high, dew float64, wind quantity.Speed, sky model.Sky) drying.Weather {
	return drying.Weather{
		Low: quantity.Some(quantity.Celsius(low)), High: quantity.Some(quantity.Celsius(high)), DewPoint: quantity.Some(quantity.Celsius(dew)),
		Wind: quantity.Some(wind), Sky: sky,
	}
}

// A clear July day at 38.5 N, 109 W, 1200 m: 17 to 35 C, dew point 4 C, wind
// 2 m/s along the panels.
func ExampleDay_drySummer() {
	printTable(tableDay(model.Date{Year: 2026, Month: 7, Day: 15}, sun.Place{Latitude: 38.5 * deg, Longitude: -109 * deg}, "America/Denver", 1200,
		weather(17, 35, 4, 2, model.ClearSky)), 7, 9, 11, 13, 15, 17, 19)
	// Output:
	// | hour | sun, deg | air, C | side facing | light, W/m2 | dry panel, C | dries in shade, min | in sun, min |
	// | --- | --- | --- | --- | --- | --- | --- | --- |
	// | 07:00 | 9.1 | 20.4 | right | 427 | 33 | 13.9 | 6.8 |
	// | 09:00 | 32.0 | 26.1 | right | 798 | 50 | 9.0 | 3.9 |
	// | 11:00 | 55.1 | 30.8 | right | 641 | 49 | 6.9 | 4.0 |
	// | 13:00 | 72.3 | 33.9 | rear | 439 | 46 | 6.0 | 4.4 |
	// | 15:00 | 62.9 | 35.0 | left | 515 | 49 | 5.8 | 4.0 |
	// | 17:00 | 40.6 | 34.0 | left | 780 | 56 | 6.3 | 3.3 |
	// | 19:00 | 17.3 | 31.0 | left | 667 | 50 | 7.7 | 3.9 |
}

// A July day with scattered cloud at 30 N, 90 W by the sea: 24 to 32 C, dew
// point 23 C, wind 2 m/s.
func ExampleDay_humidSummer() {
	printTable(tableDay(model.Date{Year: 2026, Month: 7, Day: 15}, sun.Place{Latitude: 30 * deg, Longitude: -90 * deg}, "America/Chicago", 0,
		weather(24, 32, 23, 2, model.ScatteredClouds)), 7, 9, 11, 13, 15, 17, 19)
	// Output:
	// | hour | sun, deg | air, C | side facing | light, W/m2 | dry panel, C | dries in shade, min | in sun, min |
	// | --- | --- | --- | --- | --- | --- | --- | --- |
	// | 07:00 | 9.3 | 25.4 | right | 300 | 34 | 46.1 | 12.3 |
	// | 09:00 | 34.6 | 28.1 | right | 631 | 48 | 20.1 | 6.0 |
	// | 11:00 | 60.5 | 30.2 | right | 534 | 46 | 13.6 | 6.4 |
	// | 13:00 | 81.3 | 31.6 | rear | 334 | 41 | 11.6 | 8.3 |
	// | 15:00 | 63.0 | 32.0 | left | 511 | 47 | 11.8 | 6.0 |
	// | 17:00 | 37.2 | 31.4 | left | 634 | 51 | 14.6 | 5.3 |
	// | 19:00 | 11.8 | 29.8 | left | 372 | 41 | 23.9 | 9.0 |
}

// A clear January noon at 38.5 N, 109 W, 1200 m: -4 to 7 C, dew point -6 C,
// wind 2 m/s.
func ExampleDay_winterNoon() {
	printTable(tableDay(model.Date{Year: 2026, Month: 1, Day: 15}, sun.Place{Latitude: 38.5 * deg, Longitude: -109 * deg}, "America/Denver", 1200,
		weather(-4, 7, -6, 2, model.ClearSky)), 12)
	// Output:
	// | hour | sun, deg | air, C | side facing | light, W/m2 | dry panel, C | dries in shade, min | in sun, min |
	// | --- | --- | --- | --- | --- | --- | --- | --- |
	// | 12:00 | 30.2 | 5.7 | rear | 845 | 33 | 23.7 | 6.2 |
}
