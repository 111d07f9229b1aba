package learning

import (
	"math/rand/v2"
	"testing"
)

// decade is ten years of a log: 1000 washes and 5000 readings in 40 fills.
func decade() []Fill {
	r := rand.New(rand.NewPCG(1, 40))
	fills := make([]Fill, 40)
	for i := range fills {
		var s simulated
		s.drawTruth(r, Start())
		for range 25 {
			units := 12 + 20*r.Float64()
			for range 5 {
				s.use(Use{Capacities: 1.1 * s.factor / 125, Units: units})
				s.read(r, 290, units, true)
			}
		}
		fills[i] = s.fill
	}
	return fills
}

func BenchmarkLearnAYoungFill(b *testing.B) {
	f := season(honest(4)...)
	for b.Loop() {
		Start().Learn(f)
	}
}

// The present fill of ten years' log, with its past worked out before.
func BenchmarkLearnTheLastOfADecade(b *testing.B) {
	fills := decade()
	var past []Lesson
	for _, f := range fills[30:39] {
		past = append(past, Recall(f))
	}
	o := After(past)
	for b.Loop() {
		o.Learn(fills[39])
	}
}

func BenchmarkRecallAFill(b *testing.B) {
	f := decade()[0]
	for b.Loop() {
		Recall(f)
	}
}

// From nothing: ten past fills and the present one.
func BenchmarkLearnADecadeFromNothing(b *testing.B) {
	fills := decade()
	for b.Loop() {
		var past []Lesson
		for _, f := range fills[39-MostPast : 39] {
			past = append(past, Recall(f))
		}
		After(past).Learn(fills[39])
	}
}

func BenchmarkOutlook(b *testing.B) {
	for name, f := range map[string]Fill{"young": season(honest(4)...), "long": {Uses: decade()[0].Uses[:80], Readings: decade()[0].Readings[:80]}} {
		states := Start().Learn(f).States
		j := Job{Main: Use{0.003, sprayer}, Limit: 10 / tap, LoadSpread: LoadSpread, Uses: []Use{{0.02, sprayer}, {0.1, sprayer * 0.9}, {0.02, bucket}}}
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				j.Outlook(states)
			}
		})
	}
}

func BenchmarkAdvise(b *testing.B) {
	states := Start().Learn(season(honest(6)...)).States
	j := Job{Main: Use{0.003, sprayer}, Limit: 10 / tap, Uses: []Use{{0.1, sprayer}}}
	for b.Loop() {
		j.Advise(states, tap, Trial{Units: bucket})
	}
}
