package store

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

// The wash to go on with is the next from today on, else the one written last.
func TestTheNextWash(t *testing.T) {
	today := model.Date{Year: 2026, Month: 6, Day: 12}
	wash := func(name, day string, hour int) WashFile {
		w := WashFile{File: name, Written: time.Date(2026, 6, 1, hour, 0, 0, 0, time.UTC)}
		if day != "" {
			date, err := model.ParseDate(day)
			require.NoError(t, err)
			w.Wash.Date = quantity.Some(date)
		}
		return w
	}
	for name, c := range map[string]struct {
		all    []WashFile
		want   string
		coming bool
	}{
		"none":                  {},
		"one, past":             {[]WashFile{wash("a", "2026-06-11", 1)}, "a", false},
		"today is to come":      {[]WashFile{wash("a", "2026-06-20", 9), wash("b", "2026-06-12", 1), wash("c", "2026-06-11", 9)}, "b", true},
		"the soonest":           {[]WashFile{wash("a", "2026-07-20", 9), wash("b", "2026-06-14", 1), wash("c", "2026-06-15", 8)}, "b", true},
		"before one undated":    {[]WashFile{wash("a", "", 9), wash("b", "2026-06-14", 1)}, "b", true},
		"of one day":            {[]WashFile{wash("a", "2026-06-14", 1), wash("b", "2026-06-14", 3), wash("c", "2026-06-14", 2)}, "b", true},
		"changed last":          {[]WashFile{wash("a", "2026-06-11", 1), wash("b", "2020-06-14", 3), wash("c", "", 2)}, "b", false},
		"changed last, undated": {[]WashFile{wash("a", "2026-06-11", 1), wash("b", "", 3)}, "b", false},
		"all at one moment":     {[]WashFile{wash("a", "2026-06-11", 1), wash("b", "2026-06-10", 1)}, "a", false},
	} {
		lib := Library{Washes: c.all}
		at, coming := lib.NextWash(today)
		assert.Equal(t, c.coming, coming, name)
		if c.want == "" {
			assert.Equal(t, -1, at, name)
			continue
		}
		assert.Equal(t, c.want, c.all[at].File, name)
	}
}
