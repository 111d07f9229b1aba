package main

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

func TestTheUnitsAreThoseOfTheLocale(t *testing.T) {
	for locale, want := range map[string]quantity.System{
		"en_US.UTF-8": quantity.US, "en_LR": quantity.US, "my_MM.UTF-8": quantity.US,
		"C.UTF-8": quantity.US, "C": quantity.US, "POSIX": quantity.US, "": quantity.US, "de": quantity.US, "de_": quantity.US, "xx_ T": quantity.US, "en_001": quantity.US,
		"de_DE.UTF-8": quantity.Metric, "de_AT@euro": quantity.Metric, "en_CA": quantity.Metric, "en_GB.UTF-8": quantity.Metric, "ja_JP.UTF-8": quantity.Metric,
	} {
		assert.Equal(t, want, unitsOf(locale), locale)
	}
}

// The flag goes before the rig, the rig before the locale, and of that what measures before
// the language.
func TestWhatSaysTheUnits(t *testing.T) {
	env := map[string]string{}
	p := program{streams: streams{env: func(name string) string { return env[name] }}}
	rig := model.Rig{}
	shown := func() quantity.System {
		sys, err := p.system(rig)
		assert.NoError(t, err)
		return sys
	}
	assert.Equal(t, quantity.US, shown())
	env["LANG"] = "de_DE.UTF-8"
	assert.Equal(t, quantity.Metric, shown())
	env["LC_MEASUREMENT"] = "en_US.UTF-8"
	assert.Equal(t, quantity.US, shown())
	env["LC_ALL"] = "fr_FR.UTF-8"
	assert.Equal(t, quantity.Metric, shown())
	rig.Defaults.Units = model.UnitsUS
	assert.Equal(t, quantity.US, shown())
	p.units = "metric"
	assert.Equal(t, quantity.Metric, shown())
	p.units = "furlongs"
	_, err := p.system(rig)
	assert.Error(t, err)
}
