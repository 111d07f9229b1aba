package compare

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func marked(more bool, near, apart float64, values ...any) []bool {
	r := Row{More: more, near: near, apart: apart}
	for _, v := range values {
		if f, ok := v.(float64); ok {
			r.Cells = append(r.Cells, Cell{Known: true, order: f})
		} else {
			r.Cells = append(r.Cells, Cell{})
		}
	}
	r.mark()
	out := make([]bool, len(values))
	for i, c := range r.Cells {
		out[i] = c.Best
	}
	return out
}

func TestTheBestOfARow(t *testing.T) {
	assert.Equal(t, []bool{false, true, false}, marked(false, 0, 0, 3.0, 1.0, 2.0))
	assert.Equal(t, []bool{true, false, false}, marked(true, 0, 0, 3.0, 1.0, 2.0))
	assert.Equal(t, []bool{false, true, true}, marked(false, 0, 0, 3.0, 1.0, 1.0), "a tie is best twice")
	assert.Equal(t, []bool{false, true, true}, marked(false, 0.005, 0, 3.0, 1.0, 1.004), "so is what nobody could tell apart")
	assert.Equal(t, []bool{false, false}, marked(false, 0, 0, 2.0, 2.0), "where all are equal none is best")
	assert.Equal(t, []bool{false, false, true}, marked(false, 0, 0, nil, 2.0, 1.0), "an unknown is not best, and not in the way")
	assert.Equal(t, []bool{false, false}, marked(false, 0, 0, nil, 2.0), "one alone is not better than an unknown")
	assert.Equal(t, []bool{false, false}, marked(false, 0, 0, nil, nil))
	assert.Empty(t, marked(false, 0, 0))
}

func TestBestDoesNotDependOnTheOrderOfTheWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		more := rapid.Bool().Draw(t, "more")
		values := rapid.SliceOfN(rapid.Float64Range(0, 10), 1, 12).Draw(t, "values")
		there, back := make([]any, len(values)), make([]any, len(values))
		for i, v := range values {
			there[i], back[len(values)-1-i] = v, v
		}
		a, b := marked(more, 0.005, 0, there...), marked(more, 0.005, 0, back...)
		for i := range a {
			if a[i] != b[len(b)-1-i] {
				t.Fatalf("%v and %v", a, b)
			}
		}
	})
}
