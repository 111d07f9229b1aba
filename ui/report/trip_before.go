package report

import (
	"washeve/planner"
	"washeve/planner/trip"
)

// TripBefore counts in words the washes that are planned on the bed before the trip, which
// starts from the bed as it stands today; "" for none.
func TripBefore(p trip.Plan) string {
	n := 0
	for _, note := range p.Notes {
		if note.Code == planner.PlannedBefore {
			n++
		}
	}
	return ofCount(n, "1 wash", "%d washes")
}
