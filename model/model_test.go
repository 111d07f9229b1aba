package model

import (
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

// nouns gives a new one of everything that has fields.
func nouns() map[string]Item {
	return map[string]Item{
		"vehicle": &Vehicle{}, "face": &Face{}, "bed": &Bed{}, "softener": &Softener{}, "sprayer": &Sprayer{},
		"hose": &Hose{}, "pen": &Pen{}, "defaults": &Defaults{}, "place": &Place{}, "wash": &Wash{}, "stage": &Stage{}, "shade": &Shade{},
	}
}

// TestFields: each example is right, is kept as typed, and can be taken away.
func TestFields(t *testing.T) {
	for noun, item := range nouns() {
		seen := map[string]bool{}
		for _, f := range item.Fields() {
			what := noun + "." + f.Key
			assert.False(t, seen[f.Key], "%s is there twice", what)
			seen[f.Key] = true
			assert.NotEmpty(t, f.Label, what)
			assert.NotEmpty(t, f.Help, what)
			assert.False(t, f.Given(), what)
			require.NoError(t, f.Set(f.Example), what)
			assert.Equal(t, f.Example, f.Text(), what)
			for _, word := range f.Choices {
				require.NoError(t, f.Set(strings.ToUpper(word)), what)
			}
			require.NoError(t, f.Set("  "), what)
			assert.False(t, f.Given(), what)
		}
	}
}

// TestRefusedTextChangesNothing: on error a field keeps what it had.
func TestRefusedTextChangesNothing(t *testing.T) {
	for noun, item := range nouns() {
		for _, f := range item.Fields() {
			require.NoError(t, f.Set(f.Example))
			bad := "\x1b[31m"
			require.Error(t, f.Set(bad), "%s.%s", noun, f.Key)
			assert.Equal(t, f.Example, f.Text(), "%s.%s", noun, f.Key)
		}
	}
}

func TestNames(t *testing.T) {
	var p Pen
	name := p.Fields()[0]
	for _, good := range []string{"Zoë's pen", "日本", "👨‍👩‍👧", "a \"b\" \\ c", strings.Repeat("é", 60)} {
		require.NoError(t, name.Set(" "+good+" "))
		assert.Equal(t, good, p.Name)
	}
	for _, bad := range []string{"a\x1bb", "a\nb", "a\u202eb", "a\u0085b", "a\xffb", "a\ufeffb", strings.Repeat("é", 61)} {
		assert.Error(t, name.Set(bad), "%q", bad)
	}
}

func TestTypedWordsAreOfOneLine(t *testing.T) {
	var v Vehicle
	f := v.Fields()[2]
	require.NoError(t, f.Set(" 40  ft\n6\tin "))
	assert.Equal(t, "40 ft 6 in", f.Text())
	assert.InDelta(t, 40.5, v.Length.Or(0).Feet(), 1e-12)
	v.Length = quantity.Some(40 * quantity.Foot)
	assert.Equal(t, "40 ft", f.Text(), "a value that nobody typed is written exactly")
}

func TestBounds(t *testing.T) {
	var place Place
	var wash Wash
	for _, c := range []struct {
		fields []Field
		key    string
		text   string
		want   string
	}{
		{place.Fields(), "tds", "3001 ppm", `"3001 ppm" is over 3000 ppm, which is past what this program plans for; write the TDS like 240 ppm NaCl`},
		{place.Fields(), "tds", "7 mS/cm", `"7 mS/cm" is over 6000 uS/cm, which is past what this program plans for; write the TDS like 240 ppm NaCl`},
		{wash.Fields(), "limit", "500 ppm", `"500 ppm" is over 200 ppm, which is past what this program plans for; write the outlet limit like 10 ppm NaCl`},
		{place.Fields(), "ph", "NaN", `"NaN" is not a number from 4 to 11; write the pH like 7.6`},
		{place.Fields(), "temperature", "200 F", `"200 F" is outside 33 F to 140 F; write the water temperature like 68 F`},
		{(&Vehicle{}).Fields(), "slide_outs", "2.5", `"2.5" is not a whole number from 0 to 6; write the slide-outs like 3`},
		{(&Stage{}).Fields(), "faces", "left, left", `"left, left" names "left" twice; write the faces like left, right, front, rear, roof`},
		{(&Stage{}).Fields(), "final", "maybe", `"maybe" is none of the choices; final rinse: yes or no`},
	} {
		for _, f := range c.fields {
			if f.Key == c.key {
				assert.EqualError(t, f.Set(c.text), c.want)
			}
		}
	}
}

func TestRatings(t *testing.T) {
	for text, ok := range map[string]bool{
		"10000 gr/ft3": true, "5000 gr": true, "5 kgr": true, "1.1 eq/L": true, "4 eq/L": false, "10 gr/ft3": false, "1e9 gr": false,
		"10000": false, "": false, "/": false, "10000 /": false,
	} {
		r, err := ParseRating(text)
		assert.Equal(t, ok, err == nil, "%s: %v", text, err)
		if err == nil {
			again, err := ParseRating(r.String())
			require.NoError(t, err)
			assert.Equal(t, r, again)
		}
	}
}

func TestFaultsAcrossTheRig(t *testing.T) {
	rig := Rig{
		Vehicles: []Vehicle{{Name: "a", Faces: []Face{{}, {Side: Left}}}, {Name: "A", Faces: []Face{{}}}},
		Beds:     []Bed{{Name: "b", GoodForTDS: quantity.Some(quantity.PPM(1, quantity.ScaleNaCl))}},
		Defaults: Defaults{Bed: "B", Vehicle: "c", Place: "home"},
	}
	var got []string
	for _, f := range rig.Faults(nil) {
		got = append(got, f.Error())
	}
	assert.Equal(t, []string{
		`vehicle 1, length: is missing; write for example length = "40 ft 6 in"`,
		`vehicle 1, height: is missing; write for example height = "12 ft 9 in"`,
		`vehicle 2, length: is missing; write for example length = "40 ft 6 in"`,
		`vehicle 2, height: is missing; write for example height = "12 ft 9 in"`,
		`vehicle 2, name: "A" is the name of vehicle 1 already; give each its own name`,
		`bed 1, resin: is missing; write for example resin = "0.5 ft3"`,
		`bed 1, good_for_tds: says for which water, but good_for is missing; write for example good_for = "1500 gal", or "5700 L"`,
		`vehicle.face 1, side: is missing; write for example side = "roof"`,
		`vehicle.face 3, side: is missing; write for example side = "roof"`,
		`defaults 1, vehicle: no vehicle is called "c"; there is a, A`,
	}, got)
	last := rig.Faults([]string{})
	assert.Equal(t, `defaults 1, place: no place is called "home": there is no place yet`, last[len(last)-1].Error())
}

func TestContradictions(t *testing.T) {
	sure := func(faults []Fault) []string {
		var all []string
		for _, f := range faults {
			all = append(all, f.Key+": "+f.Problem)
		}
		return all
	}
	set := func(item Item, pairs ...string) {
		for _, f := range item.Fields() {
			for i := 0; i < len(pairs); i += 2 {
				if f.Key == pairs[i] {
					require.NoError(t, f.Set(pairs[i+1]))
				}
			}
		}
	}
	var p Place
	set(&p, "flowing_pressure", "60 psi", "pressure", "55 psi", "bucket_time", "30 s", "pump_flow", "3 gpm")
	assert.Equal(t, []string{
		"flowing_pressure: goes with flowing_flow, which is missing",
		"bucket_time: goes with bucket, which is missing",
		"pump_flow: goes with pump_pressure, which is missing",
		`flowing_pressure: "60 psi" is not below the pressure with nothing flowing, "55 psi"; one of the two was misread`,
	}, sure(p.Contradictions()))
	var b Bed
	set(&b, "capacity", "5000 gr", "anion_capacity", "1.1 eq/L", "last_reading_flow", "1 gpm")
	assert.Equal(t, []string{
		"anion_capacity: the capacity is stated twice, by capacity and by anion_capacity; keep one",
		"anion_capacity: needs both cation_capacity and anion_capacity, since the scarcer side limits the bed",
		"last_reading_flow: is the flow of a reading, but last_reading is missing",
	}, sure(b.Contradictions()))
	v := Vehicle{Faces: []Face{NewFace(Left), NewFace(Left)}}
	set(&v, "height", "3 ft", "clearance", "4 ft")
	set(&v.Faces[0], "glass", "60 %", "paint", "50 %")
	assert.Equal(t, []string{
		`clearance: "4 ft" leaves no body under a height of "3 ft"`,
		`face: the shares of the face "left" add up to 110%, over 100 %`,
		`face: the face "left" is stated twice`,
	}, sure(v.Contradictions()))
}

func TestWashFaults(t *testing.T) {
	w := Wash{Bed: "x", Softener: NoSoftener, Place: "p", Stages: []Stage{{Name: "s", Water: DI, Sprayer: "y"}, {}}}
	assert.Len(t, w.Faults(nil, nil), 2, "names are not looked up where they are unknown")
	var keys []string
	for _, f := range w.Faults(&Rig{}, Places{}) {
		keys = append(keys, f.Section+"."+f.Key)
	}
	assert.Equal(t, []string{".place", ".bed", "stage.sprayer", "stage.name", "stage.water"}, keys)
}

// FuzzFields: no text makes any field panic; what is read can be shown, and
// reads the same again.
func FuzzFields(f *testing.F) {
	for _, item := range nouns() {
		for _, field := range item.Fields() {
			f.Add(field.Example)
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		for noun, item := range nouns() {
			for _, field := range item.Fields() {
				if err := field.Set(text); err != nil {
					require.NotContains(t, err.Error(), "\x1b")
					continue
				}
				kept := field.Text()
				require.False(t, strings.ContainsFunc(kept, unicode.IsControl), "%s.%s %q", noun, field.Key, kept)
				require.NoError(t, field.Set(kept))
				require.Equal(t, kept, field.Text())
			}
		}
	})
}

func FuzzParseRating(f *testing.F) {
	f.Add("10000 gr/ft3")
	f.Add("5/8 kgr")
	f.Fuzz(func(t *testing.T, text string) {
		r, err := ParseRating(text)
		if err != nil {
			return
		}
		again, err := ParseRating(r.String())
		require.NoError(t, err)
		require.Equal(t, r, again)
	})
}

func FuzzParseDate(f *testing.F) {
	f.Add("2026-06-12")
	f.Add("2024-02-29")
	f.Fuzz(func(t *testing.T, text string) {
		d, err := ParseDate(text)
		if err != nil {
			return
		}
		again, err := ParseDate(d.String())
		require.NoError(t, err)
		require.Equal(t, d, again)
	})
}

func BenchmarkFields(b *testing.B) {
	var bed Bed
	for b.Loop() {
		bed.Fields()
	}
}
