package planner

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

func TestAPastDayIsSaidFirst(t *testing.T) {
	today := model.Date{Year: 2028, Month: time.March, Day: 1}
	for day, want := range map[model.Date]string{
		{Year: 2028, Month: time.February, Day: 29}: "This day is past: yesterday. State the day of the wash.",
		{Year: 2028, Month: time.February, Day: 28}: "This day is past: 2 days ago. State the day of the wash.",
		{Year: 2027, Month: time.March, Day: 1}:     "This day is past: 366 days ago. State the day of the wash.",
		today:                                       "", {Year: 2028, Month: time.March, Day: 2}: "",
	} {
		before := []Note{{Code: "other"}}
		p := Plan{Date: quantity.Some(day), Warnings: before}
		p.Seen(today)
		if want == "" {
			assert.Equal(t, before, p.Warnings, day)
			continue
		}
		assert.Equal(t, want, p.Warnings[0].Text(quantity.US), day)
		assert.Equal(t, []Note{{Code: "other"}}, p.Warnings[1:])
	}
	var undated Plan
	undated.Seen(today)
	assert.Empty(t, undated.Warnings)
}
