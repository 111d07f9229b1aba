package journal

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
)

func mergeTold(t require.TestingT, path, other string) (int, []string) {
	added, told, err := Open(path).Merge(other)
	require.NoError(t, err)
	return added, said(told)
}

func TestMergeAppendsWhatIsMissing(t *testing.T) {
	laptop, coach := newPath(t), newPath(t)
	appendTold(t, laptop, sample(t, "one"), sample(t, "two"))
	appendTold(t, coach, sample(t, "two"), sample(t, "three"))
	before := read(t, laptop)

	added, told := mergeTold(t, laptop, coach)
	assert.Equal(t, 1, added)
	assert.Empty(t, told)
	assert.Equal(t, before+"\n"+encode(sample(t, "three")), read(t, laptop))
	added, _ = mergeTold(t, laptop, coach)
	assert.Zero(t, added, "twice adds nothing")
	added, _ = mergeTold(t, coach, laptop)
	assert.Equal(t, 1, added)
	assert.ElementsMatch(t, contents(loadWhole(t, laptop)), contents(loadWhole(t, coach)))
}

func TestMergeTakesTheWordsOfAPersonAsTheyAre(t *testing.T) {
	laptop, coach := newPath(t), newPath(t)
	const mine = "[[entry]] # mine\nkind = \"salt\"\n# half a bag\nat = 2026-06-01T08:00:00-06:00\nsoftener = \"portable softener\"\nbrand = \"blue bag\"\nid = \"a1\""
	write(t, coach, header+"\n[[entry]]\nkind = \"snow\"\nid = \"a0\"\n\n"+mine)
	added, told := mergeTold(t, laptop, coach)
	assert.Equal(t, 1, added)
	require.Len(t, told, 2)
	assert.Contains(t, told[0], `log.toml:8: kind: "snow" is no kind of entry`)
	assert.Contains(t, told[1], "log.toml:16: brand: is no field")
	assert.Equal(t, header+"\n"+mine+"\n", read(t, laptop))
}

func TestMergeGivesNamelessEntriesTheirName(t *testing.T) {
	laptop, coach := newPath(t), newPath(t)
	const mine = "[[entry]]\nkind = \"salt\"\nat = 2026-06-01T08:00:00-06:00\nsoftener = \"portable softener\"\n\n"
	write(t, coach, header+mine+mine+encode(sample(t, "last")))
	added, _ := mergeTold(t, laptop, coach)
	assert.Equal(t, 3, added)
	added, _ = mergeTold(t, laptop, coach)
	assert.Zero(t, added)
	assert.Len(t, loadWhole(t, laptop), 3)
}

func TestMergeOfWhatIsNoLog(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	_, told, err := Open(path).Merge(filepath.Join(t.TempDir(), "coach.toml"))
	require.ErrorContains(t, err, "coach.toml: is not there")
	assert.Len(t, told, 1)

	newer := newPath(t)
	write(t, newer, "format = 2\n")
	_, _, err = Open(path).Merge(newer)
	require.ErrorContains(t, err, "from a newer washeve")
	assert.Len(t, loadWhole(t, path), 1)
}

func TestMergedLogsHoldTheSameInAnyOrder(t *testing.T) {
	merged := func(text string, others ...string) string {
		for _, other := range others {
			text = strings.Join(append([]string{text}, quickly(other).lacking(model.Log(quickly(text).found).Holding())...), "\n")
		}
		return text
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := drawEntries(t), drawEntries(t), drawEntries(t)
		all := model.Merge(model.Merge(model.NewLog(slices.Clone(a)), model.NewLog(slices.Clone(b))), model.NewLog(slices.Clone(c)))
		x, y, z := textOf(a), textOf(b), textOf(c)
		for _, text := range []string{merged(x, y, z), merged(z, merged(y, x), z), merged(y, z, x, y)} {
			s := quickly(text)
			assert.Empty(t, said(s.all))
			assert.ElementsMatch(t, contents(all), contents(model.NewLog(s.found)))
		}
	})
}
