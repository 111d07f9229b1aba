package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The last letters of identifiers tell entries apart: as many as it takes, four at least.
func TestTheTailTellsEntriesApart(t *testing.T) {
	at := "2026-05-02T10:00:00-06:00"
	salt := func(id, when string) Entry {
		return entry(t, SaltKind, id, when, map[string]string{"softener": "bay softener"})
	}
	assert.Equal(t, 4, Log{}.Tail())
	log := NewLog([]Entry{salt("1aaaaaaa11zzz001", at), salt("1aaaaaaa22zzz002", at)})
	assert.Equal(t, 4, log.Tail())
	log = NewLog(append(log, salt("1bbbbbbb22zzz001", at), salt("e7", at), salt("1aaaaaaa11zzz001", "2026-05-03T10:00:00-06:00")))
	assert.Equal(t, 7, log.Tail(), "two that say the same identifier are not to be told apart by it")
	assert.Len(t, log.Ending("22zzz001"), 1)
	assert.Len(t, log.Ending("z001"), 3)
	assert.Empty(t, log.Ending("001"), "too few letters to be meant")
}
