package planner

import (
	"math"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// aboveFeed is how far over the feed a reading is asked about before it is written.
// PRACTICE: two readings by one pen of one water are nearer than that.
const aboveFeed = 1.05

// What is odd about a reading after the bed, as codes.
const (
	ReadingOverFeed = "reading-over-feed" // over what goes into the bed
	ReadingJumped   = "reading-jumped"    // far above the one before it
)

// Slip tells what is so odd about an entry that it looks like a slip of the hand: a
// reading after the bed that is over the feed or far above the one before it, or a wash of more DI water than the fill
// can give. The entry is of this plan's bed; of another, or of another place's water,
// nothing can be told. It is false where nothing is odd.
func (p *Plan) Slip(rig *model.Rig, body model.Body) (tag.Note, bool) {
	switch b := body.(type) {
	case *model.Sample:
		if b.Point == model.AfterBed && sameOrUnsaid(b.Bed, p.BedName) && sameOrUnsaid(b.Place, p.Place) {
			if note, odd := p.overFeed(rig, b); odd {
				return note, odd
			}
			return p.jumped(rig, b)
		}
	case *model.WashDone:
		if sameOrUnsaid(b.Bed, p.BedName) {
			return p.overGiven(b.DI.Or(0))
		}
	}
	return tag.Note{}, false
}

func sameOrUnsaid(name, other string) bool { return name == "" || strings.EqualFold(name, other) }

// FeedTDS is what the pen shows of the water that goes into the bed: behind the softener or
// not, and as the plan has it where that is unsaid.
func (p *Plan) FeedTDS(softened model.Answer) quantity.Reading {
	if softened == model.Yes || softened == "" && p.BedBehind {
		return p.Softened.TDS
	}
	return p.Raw.TDS
}

// overFeed looks at a reading beside what goes into the bed.
func (p *Plan) overFeed(rig *model.Rig, s *model.Sample) (tag.Note, bool) {
	feed := p.FeedTDS(s.Feed)
	reading := readBy(rig, s)
	if feed.Number <= 0 || ppmOn(feed.Scale, reading) <= max(aboveFeed*feed.Number, feed.Number+learning.PenError) {
		return tag.Note{}, false
	}
	words := reading.String() + " after the bed is above the " + quantity.Round(feed.Number) + " ppm " + feed.Scale.String() + " of the water that goes into it, and a bed adds nothing. Another water, a slipped digit or point, another pen?"
	return tag.Note{Code: ReadingOverFeed, Format: strings.ReplaceAll(words, "%", "%%")}, true
}

// readBy is a reading on the scale that it counts on.
func readBy(rig *model.Rig, s *model.Sample) quantity.Reading {
	pen := quantity.ScaleUnsaid
	for _, own := range rig.Pens {
		if strings.EqualFold(own.Name, s.Pen) {
			pen = penScale(own)
		}
	}
	return s.Reading.Or(quantity.Reading{}).WithScale(pen).WithScale(water.DefaultScale())
}

// SameWater tells that a reading at the tap is of water such as the plan's place states, as
// near as two readings of one water are; see [aboveFeed].
func (p *Plan) SameWater(rig *model.Rig, s *model.Sample) bool {
	stated := p.Raw.TDS
	return math.Abs(ppmOn(stated.Scale, readBy(rig, s))-stated.Number) <= (aboveFeed-1)*stated.Number
}

// overGiven looks at DI water beside what the fill had left: in nine of ten such beds no
// more, and of one that is used up no more than all that it gave.
func (p *Plan) overGiven(di quantity.Volume) (tag.Note, bool) {
	left := p.Bed.Remaining
	most := left.P90
	if left.P50 <= 0 {
		most += p.Bed.SoFar
	}
	if di <= most {
		return tag.Note{}, false
	}
	return tag.Note{
		Code:   "wash-over-bed",
		Format: "%s of DI water is more than this fill can have given: about %s were left in it, and in one such bed of ten %s or more. A slipped digit or point, the total of a meter, or a change of resin that is not in the log?",
		Values: []quantity.Value{quantity.ValueOf(di), quantity.ValueOf(max(left.P50, 0)), quantity.ValueOf(max(left.P90, 0))},
	}, true
}
