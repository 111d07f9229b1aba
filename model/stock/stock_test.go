package stock_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/stock"
)

func owned() stock.Stock {
	others := []*stock.Kept{{File: "a.toml", Wash: model.Wash{Vehicle: "goose", Sprayer: "wand", Stages: []model.Stage{{Sprayer: "wand"}}}}}
	return stock.Stock{
		Rig: &model.Rig{
			Vehicles: []model.Vehicle{{Name: "Goose", Faces: []model.Face{model.NewFace(model.Roof)}}, {Name: "Box"}},
			Beds:     []model.Bed{{Name: "tank"}}, Sprayers: []model.Sprayer{{Name: "wand"}}, Hoses: []model.Hose{{Name: "blue"}},
			Softeners: []model.Softener{{Name: "salt"}}, Pens: []model.Pen{{Name: "pen"}},
			Defaults: model.Defaults{Vehicle: "Goose", Pen: "pen"},
		},
		Places: &model.Places{{Name: "home"}},
		Wash:   &model.Wash{Vehicle: "Goose", Place: "home"},
		Others: &others,
	}
}

func TestCloneSharesNothing(t *testing.T) {
	s := owned()
	c := s.Clone()
	require.NoError(t, c.Set(stock.Ref{Section: "vehicle", Key: "name"}, "Swan"))
	require.NoError(t, c.Set(stock.Ref{Section: stock.Face, Key: "area"}, "90 ft2"))
	assert.Equal(t, owned(), s)
	assert.Equal(t, "Swan", (*c.Others)[0].Wash.Vehicle)
	assert.Equal(t, "Swan", c.Rig.Defaults.Vehicle)
	assert.Equal(t, "Swan", c.Wash.Vehicle)
}

func TestStagesFollowASprayer(t *testing.T) {
	s := owned()
	require.NoError(t, s.Set(stock.Ref{Section: "sprayer", Key: "name"}, "lance"))
	assert.Equal(t, "lance", (*s.Others)[0].Wash.Stages[0].Sprayer)
	require.NoError(t, s.Remove("sprayer", 0))
	assert.Empty(t, (*s.Others)[0].Wash.Stages[0].Sprayer)
	assert.Empty(t, (*s.Others)[0].Wash.Sprayer)
}

func TestNamersAreListed(t *testing.T) {
	assert.Equal(t, []stock.Namer{{Defaults: true}, {}, {File: "a.toml"}}, owned().Namers("vehicle", "GOOSE"))
	assert.Empty(t, owned().Namers("vehicle", "Box"))
	assert.Empty(t, owned().Namers("hose", "blue"))
	assert.Empty(t, owned().Namers("bed", ""), "nothing names nothing")
}

func TestErrorsSayWhatIsWrong(t *testing.T) {
	s := owned()
	for _, c := range []struct {
		err  error
		want string
	}{
		{s.Clone().Set(stock.Ref{Section: "vehicle", Index: 9, Key: "name"}, "x"), "there is no vehicle 10 any more"},
		{s.Clone().Set(stock.Ref{Section: "vehicle", Key: "name"}, "box"), `"box" is the name of another vehicle already`},
		{s.Clone().Set(stock.Ref{Section: "vehicle", Key: "name"}, " "), "name cannot be left out; write it like our coach"},
		{s.Clone().Set(stock.Ref{Section: "softener", Key: "name"}, "None"), `"None" stands for no softener at all`},
		{s.Clone().Remove("pen", 3), "there is no pen to take away"},
		{s.Clone().Use("hose", 0), "no wash names a hose"},
		{s.Clone().RemoveFace(4), "there is no face"},
	} {
		assert.ErrorContains(t, c.err, c.want)
	}
	_, err := s.Add("stage")
	assert.Error(t, err)
	_, err = s.Copy("bed", -1)
	assert.Error(t, err)
	_, err = s.AddFace(0, model.Roof)
	assert.Error(t, err)
}

// Whatever is done, names stay apart and nothing names what is not there.
func TestNothingDangles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := owned()
		for range rapid.IntRange(1, 25).Draw(t, "edits") {
			section := rapid.SampledFrom(stock.Sections()).Draw(t, "section")
			index := rapid.IntRange(0, 3).Draw(t, "index")
			c := s.Clone()
			var err error
			switch rapid.SampledFrom([]string{"add", "copy", "remove", "rename", "use"}).Draw(t, "what") {
			case "add":
				_, err = c.Add(section)
			case "copy":
				_, err = c.Copy(section, index)
			case "remove":
				err = c.Remove(section, index)
			case "use":
				err = c.Use(section, index)
			default:
				name := strings.Repeat(rapid.SampledFrom([]string{"x", "漢", "box"}).Draw(t, "name"), rapid.IntRange(1, 20).Draw(t, "times"))
				err = c.Set(stock.Ref{Section: section, Index: index, Key: "name"}, name)
			}
			if err != nil {
				continue
			}
			s = c
			check(t, s)
		}
	})
}

func check(t *rapid.T, s stock.Stock) {
	faults := append(s.Rig.Faults(s.Places.Names()), s.Places.Faults()...)
	faults = append(faults, s.Wash.Faults(s.Rig, *s.Places)...)
	for _, k := range *s.Others {
		faults = append(faults, k.Wash.Faults(s.Rig, *s.Places)...)
	}
	for _, f := range faults {
		if !f.Lacks {
			t.Fatalf("%v", f)
		}
	}
}
