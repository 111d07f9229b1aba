package report_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/internal/sample"
	"washeve/ui/report"
)

// short is a plan whose bed is short, with what to do.
func short(t *testing.T, price string) planner.Plan {
	rig, places, wash := sample.Day()
	sample.Set(&rig.Beds[0], map[string]string{"gallons_so_far": "190 gal", "price": price})
	var memory planner.Memory
	p, err := memory.Make(rig, places, wash)
	require.NoError(t, err)
	s, err := memory.Shorten(rig, places, wash)
	require.NoError(t, err)
	p.Shortage = &s
	return p
}

func TestTextOfAShortage(t *testing.T) {
	for _, width := range []int{40, 60, 80, 120} {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			text := report.Text(short(t, "$185"), sys, width == 60, width)
			for _, words := range []string{"When the bed is short", "Who gets DI", "Ways out", "new resin first", "$185.00"} {
				assert.Contains(t, text, words)
			}
			for _, line := range strings.Split(text, "\n") {
				assert.LessOrEqual(t, cells.Width(line), max(width, 60), line)
			}
		}
	}
	assert.NotContains(t, report.Text(sample.Plan(), quantity.US, true, 80), "Ways out")
}

func TestJSONOfAShortage(t *testing.T) {
	data, err := report.JSON(short(t, ""))
	require.NoError(t, err)
	var doc map[string]any
	require.NoError(t, json.Unmarshal(data, &doc))
	for _, path := range []string{
		"shortage.confidence", "shortage.gives_gallons", "shortage.needs_gallons", "shortage.takes_gallons", "shortage.flush_gallons", "shortage.flow_gpm",
		"shortage.drawn_gpm", "shortage.pins_short_gallons", "shortage.spots_spared", "shortage.chance_lasts", "shortage.order", "shortage.faces", "shortage.ways",
	} {
		assert.NotNil(t, dig(doc, path), path)
	}
	ways := dig(doc, "shortage.ways").([]any)
	require.Len(t, ways, 8)
	for _, one := range ways {
		w := one.(map[string]any)
		if w["code"] == planner.WayResin {
			buy := w["buy"].(map[string]any)
			assert.Contains(t, buy, "amount")
			assert.Nil(t, buy["amount"], "an unknown price is unknown, not zero")
		}
		if w["code"] == planner.WaySlower {
			assert.Nil(t, w["buy"], "nothing is bought")
		}
		assert.Equal(t, w["applies"], w["why_not"] == "")
	}
}
