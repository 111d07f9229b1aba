package model

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// said is contents in an order of their own.
func said(log Log) []string { return slices.Sorted(slices.Values(contents(log))) }

// The log is only ever added to: where it stands is the order of what has one moment.
func TestEntriesOfOneMomentStayAsTheyStand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := rapid.SliceOfN(rapid.Custom(drawEntry), 1, 10).Draw(t, "entries")
		var want []string
		for second := range int64(5) {
			for i := range entries {
				at := MomentOf(time.Unix(1780000000, 0).UTC()).Plus(second)
				if content := entries[i].Content(); entries[i].At == at && !slices.Contains(want, content) {
					want = append(want, content)
				}
			}
		}
		assert.Equal(t, want, contents(NewLog(slices.Clone(entries))))
	})
	salt := func(id, at string) Entry {
		return entry(t, SaltKind, id, at, map[string]string{"softener": "bay softener"})
	}
	log := NewLog([]Entry{salt("z", at(1)), salt("a", at(1)), salt("m", at(0))})
	assert.Equal(t, []string{"m", "z", "a"}, ids(log))
	log = Merge(log, Log{salt("b", at(1)), salt("z", at(1))})
	assert.Equal(t, []string{"m", "z", "a", "b"}, ids(log), "what the other copy adds stands behind")
	log = Merge(log, Log{correction(t, "c", 2, "m", map[string]string{"new_at": at(1)})})
	assert.Equal(t, []string{"m", "z", "a", "b"}, ids(log.Effective()))
}

func ids(log Log) []string {
	all := make([]string, len(log))
	for i := range log {
		all[i] = log[i].ID
	}
	return all
}
