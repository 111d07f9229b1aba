package entry

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/theme"
)

// OfAnyTime is the reading where it may have been read before now: its time can be stated, and
// is now unless it is.
func (r Reading) OfAnyTime() Reading {
	r.anyTime = true
	return r
}

// Entry is what is written of the reading, after [Write]; its moment is not given where it is now.
func (r Reading) Entry() model.Entry { return model.Entry{At: r.read, Body: r.Sample()} }

// moment is when a text says that it was read.
func (r Reading) moment(text string) (model.Moment, error) {
	m, err := model.PastMoment(text, r.clock())
	if err == nil && m.Compare(model.MomentOf(r.clock())) > 0 {
		return m, &quantity.ParseError{What: "moment", Text: text, Reason: "is still to come", Example: model.PastMoments}
	}
	return m, err
}

// when says when it was read, and how another time is stated: " Read now; w: another time.".
func (r Reading) when(th theme.Theme) string {
	if !r.anyTime {
		return ""
	}
	read := "now"
	if r.read.Given() {
		read = "at " + r.read.Told(r.clock().Location())
	}
	return " Read " + read + "; " + th.Key("w", "when") + ": another time."
}
