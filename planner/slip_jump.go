package planner

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/tag"
)

// jump is how many times over the reading before it a reading is asked about before it is
// written. A slipped point makes it ten times, and the water a little more or less. PRACTICE:
// half of that.
const jump = 5.0

// lastRead is the last reading after the bed, of the fill that is in the tank; without a
// reading where none is known that counts.
type lastRead struct {
	reading quantity.Opt[quantity.Reading]
	at      model.Moment // not given where the rig states it
}

// lastRead is what a wash's bed last read, by the log, else as the rig states it.
func (c chosen) lastRead() lastRead {
	if c.setting.Fresh {
		return lastRead{}
	}
	if past := c.past.Bed(c.bed.Name); past != nil {
		readings := past.Present().Readings
		for i := len(readings) - 1; i >= 0; i-- {
			if r := &readings[i]; r.Counts {
				return lastRead{quantity.Some(r.Reading), r.At}
			}
		}
	}
	if c.bed.Flushed == model.No {
		return lastRead{}
	}
	return lastRead{reading: c.bed.LastReading}
}

// jumped looks at a reading beside the one before it: it is odd where it is far above that,
// and above what nine of ten such beds show by now.
func (p *Plan) jumped(rig *model.Rig, s *model.Sample) (tag.Note, bool) {
	last, known := p.read.reading.Get()
	if !known {
		return tag.Note{}, false
	}
	scale, reading := p.Limit.Scale, readBy(rig, s)
	before := readBy(rig, &model.Sample{Reading: quantity.Some(last), Pen: s.Pen})
	if ppmOn(scale, reading) <= max(jump*max(ppmOn(scale, before), learning.PenError), p.Bed.OutletNow.P90) {
		return tag.Note{}, false
	}
	when := "when it was last read"
	if p.read.at.Given() {
		when = "on " + p.read.at.Date().String()
	}
	words := reading.String() + ", really? The bed read " + before.String() + " " + when +
		", and nine such beds in ten show no more than " + showPPM(p.Bed.OutletNow.P90, scale) + " now. A slipped digit or point?"
	return tag.Note{Code: ReadingJumped, Format: strings.ReplaceAll(words, "%", "%%")}, true
}
