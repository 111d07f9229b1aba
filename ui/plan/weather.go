package plan

import (
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/stock"
)

// inWeather is the work whose wash has the weather that another one of the same day and place
// states, where it states none itself.
func (w work) inWeather() work {
	if other := w.sameDay(); other != nil && !w.wash.HasWeather() {
		w.wash = w.wash.InWeatherOf(*other)
	}
	return w
}

// sameDay is another wash of the same day at the same place which states its weather; nil
// where there is none.
func (w *work) sameDay() *model.Wash {
	day, given := w.wash.Date.Get()
	at := slices.IndexFunc(w.others, func(k *stock.Kept) bool {
		return given && k.Wash.Date.Given() && k.Wash.Date.Or(day) == day && w.isHere(&k.Wash) && k.Wash.HasWeather()
	})
	if at < 0 {
		return nil
	}
	return &w.others[at].Wash
}

// isHere tells that a wash is at the place of the one in hand.
func (w *work) isHere(other *model.Wash) bool {
	there := *w
	there.wash = *other
	at := w.chosen("place")
	return at >= 0 && at == there.chosen("place")
}

// weatherTold says whose weather the wash in hand has by a day or a place that was stated; ""
// where it has its own, or had it already.
func (m *Model) weatherTold(before *model.Wash) string {
	other := m.now.sameDay()
	if other == nil || before.HasWeather() || !m.now.wash.HasWeather() {
		return ""
	}
	return "Its weather is that of " + called(other) + ", the same day and place; " + m.th.Key("u", "undo") + " takes both back."
}

// weatherHelp tells that a line of the weather says what another wash of the same day and
// place says; "" where it does not.
func (m *Model) weatherHelp(r ref, f model.Field) string {
	other := m.shown().sameDay()
	if other == nil || r.section != "wash" || !f.Given() {
		return ""
	}
	for _, theirs := range other.Weather() {
		if theirs.Key == f.Key && strings.EqualFold(theirs.Exact(), f.Exact()) {
			return "; as in " + called(other)
		}
	}
	return ""
}
