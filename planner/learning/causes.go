package learning

import (
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// CauseCode names a cause for programs.
type CauseCode string

// The causes that readings can point at.
const (
	OpenBypass    CauseCode = "bypass-open"     // raw water beside the bed
	CrackedTube   CauseCode = "cracked-tube"    // or its seal: raw water past the resin inside the tank
	Channelling   CauseCode = "channelling"     // water finds a way through the resin
	SpentEarly    CauseCode = "spent-early"     // used up earlier than any fresh fill
	OtherScale    CauseCode = "pen-scale"       // the pen is on another scale than said
	StandingWater CauseCode = "standing-water"  // a first cup
	OtherFeed     CauseCode = "other-feed"      // the feed is not what the place says
	NewFill       CauseCode = "unlogged-change" // resin changed and not logged
	WrongFlow     CauseCode = "wrong-flow"      // quicker than logged
)

// candidate is a cause with how well it suits (0: not at all) and its words.
type candidate struct {
	code  CauseCode
	suits func(circumstances) float64
	words string
}

func (k candidate) note(c circumstances) tag.Note {
	if k.code == OpenBypass || k.code == CrackedTube {
		share := quantity.Fraction(c.share)
		return tag.Note{Code: string(k.code), Format: k.words, Values: []quantity.Value{quantity.ValueOf(share)}}
	}
	return tag.Note{Code: string(k.code), Format: k.words}
}

// when gives the score where a cause suits, with a bonus for each further sign.
func when(suits bool, score float64, signs ...bool) float64 {
	if !suits {
		return 0
	}
	for _, s := range signs {
		if s {
			score++
		}
	}
	return score
}

// causes are what can be behind a reading that fits no bed, with what to check.
// PRACTICE.
func causes() []candidate {
	return append(highCauses(), lowCauses()...)
}

func highCauses() []candidate {
	return []candidate{
		{OpenBypass, func(c circumstances) float64 {
			return when(c.high && !c.atEnd && c.share > 0.15, 1.5, c.share > 0.6, c.share > 0.6, c.lowAfter)
		}, "The bypass may have been open, all or in part: the outlet read %s of the feed from a bed that should hold. Close it, flush, read again."},
		{CrackedTube, func(c circumstances) float64 {
			return when(c.high && !c.atEnd && c.share < 0.7 && !c.falling, 1.8, c.constant, c.constant, c.stays)
		}, "Raw water may get past the resin, by a cracked down tube or its O-ring: the outlet read %s of the feed. Read again at a third of the flow: such a leak does not fall. Then look at the tube and the ring."},
		{Channelling, func(c circumstances) float64 {
			return when(c.high && !c.atEnd && c.share < 0.7, 1.2, c.falling, c.falling, c.stays && !c.constant)
		}, "Water may have found a channel through the resin: a slower flow would then read lower. Stand the tank upright, fill it slowly with the air out, and read again at a third of the flow."},
		{SpentEarly, func(c circumstances) float64 {
			return when(c.high && c.share > 0.05, 1.6, c.lowBefore, c.stays, c.atEnd, c.lowBefore && c.stays)
		}, "The resin may be used up, earlier than any fill of this size should be: part-used or dried-out resin, less resin than said, or water drawn that is not in the log. Look through the log and at the level of the resin."},
		{WrongFlow, func(c circumstances) float64 {
			return when(c.high && !c.atEnd && c.share < 0.3 && !c.constant, 1.1, c.falling)
		}, "The flow may have been more than logged: time a jug at the outlet and read again at that flow."},
	}
}

func lowCauses() []candidate {
	return []candidate{
		{OtherScale, func(c circumstances) float64 {
			scaleLike := c.ratio > 0.35 && c.ratio < 0.8 || c.share > 1.2
			return when(!c.atEnd && c.Read > 5 && scaleLike, 1.5, c.again, c.again, c.share > 1.2)
		}, "The pen may be on another scale than said. Read the tap with it: if that is off from the place's figure in the same ratio, set the pen's scale."},
		{StandingWater, func(c circumstances) float64 {
			return when(!c.high && !c.atEnd, 1.7, c.highAfter)
		}, "It may have been a first cup: water that stood in the tank goes on being cleaned. Let the standing water run out and read again."},
		{NewFill, func(c circumstances) float64 {
			return when(!c.high && c.ratio < 0.1 && !c.highAfter, 1, c.highSoFar, c.highSoFar && c.stays)
		}, "The resin may have been changed without an entry in the log. If so, log the change with its date."},
		{OtherFeed, func(c circumstances) float64 {
			return when(!c.atEnd && (!c.high || c.share > 0.8), 0.9, c.share > 1.2)
		}, "The feed may not be what the place says. Read the tap, with the same pen, on the same day."},
	}
}
