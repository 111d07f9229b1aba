package flow

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// What a supply is taken to be where nothing was measured. PRACTICE.
const (
	usualStatic   = 50 * quantity.PSI
	usualTapLoss  = 12 * quantity.PSI // from the main to an outside tap, at usualTapFlow
	usualTapFlow  = 15 * quantity.GPM
	usualShutOff  = 50 * quantity.PSI
	usualPumpFlow = 3 * quantity.GPM
)

// Supply is what pushes the water: the pressure it keeps up over the flow it
// gives.
//
// A tap loses pressure as k q^1.852, the exponent of pipe friction and of
// hydrant tests (MEMORY: NFPA 291, whose 0.54 is 1/1.852). A vehicle's pump
// falls on a straight line from shut-off to wide open, which is how
// diaphragm pumps behave (PRACTICE).
type Supply struct {
	Static         quantity.Pressure // nothing flowing
	Assumed        []tag.Assumption  // what was taken where nothing was measured
	Contradictions []tag.Note        // measurements that were not used, and why
	losses         losses
}

// Pressure kept up at a flow. Below zero beyond [Supply.Most].
func (s Supply) Pressure(flow quantity.Flow) quantity.Pressure {
	return s.Static - quantity.Pressure(s.losses.at(float64(flow)))
}

// Most is the flow against no pressure at all.
func (s Supply) Most() quantity.Flow { return balance(float64(s.Static), s.losses) }

// SupplyOf is the supply of a place. A tap goes by its pressure with nothing
// flowing and, in this order, by a pressure read while a known flow ran, by the
// time an open tap took to fill a bucket, or by a usual loss.
func SupplyOf(p *model.Place) Supply {
	if p.Supply == model.Pump {
		return pumpOf(p)
	}
	return tapOf(p)
}

// Tap has a pressure with nothing flowing and another at a flow, which must be
// lower.
func Tap(static, flowing quantity.Pressure, flow quantity.Flow) Supply {
	k := float64(static-flowing) / math.Pow(float64(flow), hoseExponent)
	return Supply{Static: static, losses: losses{hose: k}}
}

// UsualTap is a tap of which only the pressure with nothing flowing is known.
// PRACTICE: it loses 12 psi at 15 gpm.
func UsualTap(static quantity.Pressure) Supply {
	return Tap(static, static-usualTapLoss, usualTapFlow)
}

// Bucket is a tap that, wide open and without hose, fills a bucket in a time: all
// of its pressure is lost on the way.
func Bucket(static quantity.Pressure, bucket quantity.Volume, time quantity.Duration) Supply {
	return Tap(static, 0, quantity.Flow(float64(bucket)/float64(time)))
}

// Pump falls in a straight line from its shut-off pressure to its flow wide
// open.
func Pump(shutOff quantity.Pressure, open quantity.Flow) Supply {
	return Supply{Static: shutOff, losses: losses{linear: float64(shutOff) / float64(open)}}
}

func pumpOf(p *model.Place) Supply {
	s := Pump(p.PumpPressure.Or(usualShutOff), p.PumpFlow.Or(usualPumpFlow))
	if !p.PumpPressure.Given() {
		s.Assumed = append(s.Assumed, tag.Quantity("pump shut-off pressure", usualShutOff, tag.FromPractice("not stated; a usual water pump of a coach")))
	}
	if !p.PumpFlow.Given() {
		s.Assumed = append(s.Assumed, tag.Quantity("pump flow wide open", usualPumpFlow, tag.FromPractice("not stated; a usual water pump of a coach")))
	}
	return s
}

func tapOf(p *model.Place) Supply {
	at, okAt := p.FlowingAt.Get()
	flow, okFlow := p.Flowing.Get()
	bucket, okBucket := p.Bucket.Get()
	time, okTime := p.BucketTime.Get()
	static, okStatic := p.Pressure.Get()
	tested := okAt && okFlow && flow > 0
	if !okStatic {
		static = usualStatic
		if tested {
			static = at + UsualTap(0).dropAt(flow)
		}
	}
	var s Supply
	switch {
	case tested && at < static:
		s = Tap(static, at, flow)
	case okBucket && okTime && bucket > 0 && time > 0:
		s = Bucket(static, bucket, time)
	default:
		s = UsualTap(static)
		s.Assumed = append(s.Assumed, tag.Quantity("pressure lost on the way to the tap at 15 gpm", usualTapLoss, tag.FromPractice("not measured; a usual outside tap")))
	}
	if !okStatic {
		s.Assumed = append(s.Assumed, tag.Quantity("pressure with nothing flowing", static, tag.FromPractice("not measured; a usual tap")))
	}
	if tested && at >= static {
		s.Contradictions = append(s.Contradictions, flowingNote(at, static))
	}
	return s
}

func flowingNote(at, static quantity.Pressure) tag.Note {
	return tag.Note{
		Code:   "flowing-pressure",
		Format: "the pressure of %s while flowing is not below the %s with nothing flowing. Assumed: the first is wrong, and it is not used; read both again",
		Values: []quantity.Value{quantity.ValueOf(at), quantity.ValueOf(static)},
	}
}

func (s Supply) dropAt(flow quantity.Flow) quantity.Pressure { return s.Static - s.Pressure(flow) }
