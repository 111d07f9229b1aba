package split

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// anyFaces has few different sizes, so that ties and exact fits come up.
func anyFaces(t *rapid.T, pins ...Pin) []Face {
	faces := make([]Face, rapid.IntRange(0, 8).Draw(t, "faces"))
	small := rapid.Bool().Draw(t, "small numbers")
	for i := range faces {
		needs, worth := rapid.Float64Range(0, 0.2).Draw(t, "m3"), rapid.Int64Range(0, 1e12).Draw(t, "worth")
		if small {
			needs, worth = float64(rapid.IntRange(0, 6).Draw(t, "litres"))/1000, rapid.Int64Range(0, 5).Draw(t, "few")
		}
		faces[i] = Face{
			Needs: quantity.Volume(needs), Worth: Worth(worth), Shows: float64(rapid.IntRange(0, 4).Draw(t, "shows")) / 4,
			Pin: rapid.SampledFrom(pins).Draw(t, "pin"),
		}
	}
	return faces
}

func anyBudget(t *rapid.T) quantity.Volume {
	if rapid.Bool().Draw(t, "whole litres") {
		return quantity.Volume(rapid.IntRange(0, 30).Draw(t, "l")) / 1000
	}
	return quantity.Volume(rapid.Float64Range(0, 1.2).Draw(t, "m3"))
}

// brute tries every set that keeps to the pins.
func brute(faces []Face, budget quantity.Volume) (in []int, worth int64, fits bool) {
	left, needs := wholeDown(budget), int64(0)
	for mask := range 1 << len(faces) {
		n, w, set, keeps := int64(0), int64(0), []int(nil), true
		for i, f := range faces {
			taken := mask>>i&1 == 1
			keeps = keeps && (f.Pin != In || taken) && (f.Pin != Out || !taken)
			if taken {
				n, w, set = n+wholeUp(f.Needs), w+int64(f.Worth), append(set, i)
			}
		}
		if !keeps || n > left {
			continue
		}
		better := !fits || w > worth || w == worth && n < needs ||
			w == worth && n == needs && len(set) > 0 && worthy(faces, set) && slices.Compare(set, in) < 0
		if better && worthy(faces, set) {
			in, worth, needs, fits = set, w, n, true
		}
	}
	return in, worth, fits
}

// worthy tells that no face is taken for nothing.
func worthy(faces []Face, set []int) bool {
	return !slices.ContainsFunc(set, func(i int) bool { return faces[i].Worth == 0 && faces[i].Pin != In })
}

func TestEqualsBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		faces, budget := anyFaces(t, Free, Free, Free, In, Out), anyBudget(t)
		got := Best(faces, budget)
		want, worth, fits := brute(faces, budget)
		if fits != (got.Short == 0) {
			t.Fatalf("short %v, and brute force fits: %v", got.Short, fits)
		}
		if !fits {
			return
		}
		assert.Equal(t, Worth(worth), got.Worth)
		assert.Equal(t, want, slices.Sorted(slices.Values(got.In)))
	})
}

// shownFirst goes through the faces from what shows most to what shows least, and
// gives DI water to each that the rest of the budget is enough for: what a person
// would do by eye.
func shownFirst(faces []Face, budget quantity.Volume) Choice {
	s := searchOf(faces, budget)
	left := s.left
	var taken []int
	for _, i := range byShows(faces, s.free) {
		if w := s.whole[i]; w.needs <= left && w.worth > 0 {
			left -= w.needs
			taken = append(taken, i)
		}
	}
	return s.choice(taken)
}

func TestNeverWorseThanShownFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		faces, budget := anyFaces(t, Free, Free, In, Out), anyBudget(t)
		by := shownFirst(faces, budget)
		assert.GreaterOrEqual(t, Best(faces, budget).Worth, by.Worth)
		if by.Short == 0 {
			assert.LessOrEqual(t, float64(by.Needs), float64(budget)+1e-12)
		}
	})
}

func TestMoreBudgetIsNeverWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		faces, budget := anyFaces(t, Free, Free, In, Out), anyBudget(t)
		more := budget + anyBudget(t)
		less := Best(faces, budget)
		if less.Short == 0 {
			assert.GreaterOrEqual(t, Best(faces, more).Worth, less.Worth)
			assert.LessOrEqual(t, float64(less.Needs), float64(budget)+1e-12)
		}
		assert.LessOrEqual(t, Best(faces, more).Short, less.Short)
	})
}

func TestPinningIsNeverBetterThanFree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pinned, budget := anyFaces(t, Free, Free, In, Out), anyBudget(t)
		free := slices.Clone(pinned)
		for i := range free {
			free[i].Pin = Free
		}
		if got := Best(pinned, budget); got.Short == 0 {
			assert.GreaterOrEqual(t, Best(free, budget).Worth, got.Worth)
		}
	})
}

func TestPinnedInBeyondTheBudgetSaysSo(t *testing.T) {
	faces := []Face{{Needs: 0.05, Worth: 3, Pin: In}, {Needs: 0.01, Worth: 9}}
	got := Best(faces, 0.03)
	assert.Equal(t, []int{0}, got.In)
	assert.InDelta(t, 0.02, float64(got.Short), 1e-9)
}

func TestByHand(t *testing.T) {
	// What shows most takes all the water and is worth less than the other two.
	faces := []Face{{Needs: 0.030, Worth: 10, Shows: 1}, {Needs: 0.016, Worth: 7, Shows: 0.5}, {Needs: 0.014, Worth: 6, Shows: 0.9}}
	assert.Equal(t, []int{2, 1}, Best(faces, 0.030).In, "what shows most comes first")
	assert.Equal(t, []int{0}, shownFirst(faces, 0.030).In)
	assert.Empty(t, Best(faces, 0).In)
	assert.Empty(t, Best(nil, 1).In)
}

func TestTiesGoToLessWaterThenToTheFirst(t *testing.T) {
	assert.Equal(t, []int{1}, Best([]Face{{Needs: 0.02, Worth: 5}, {Needs: 0.01, Worth: 5}}, 0.02).In)
	twin := Face{Needs: 0.01, Worth: 5}
	assert.Equal(t, []int{0}, Best([]Face{twin, twin}, 0.01).In)
}

func TestWorthIsNeverBelowNothing(t *testing.T) {
	assert.Equal(t, Worth(0), WorthOf(10, 0.9, -1))
	assert.Equal(t, Worth(10*1e6*900*3), WorthOf(10, 0.9, 3))
	assert.Positive(t, WorthOf(1e300, 1, 3))
}

func BenchmarkBest(b *testing.B) {
	faces := make([]Face, 8)
	for i := range faces {
		faces[i] = Face{Needs: quantity.Volume(0.01 + 0.001*float64(i*i%7)), Worth: Worth(1000 + 37*i), Shows: 0.9}
	}
	for b.Loop() {
		Best(faces, 0.05)
	}
}
