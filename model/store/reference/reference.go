// Package reference reads the check values that the formulas are held to, from
// testdata/reference. Only tests import it.
package reference

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Row is a row of a file, by the names of its columns.
type Row map[string]string

// Number is a column's number.
func (r Row) Number(t testing.TB, column string) float64 {
	t.Helper()
	return Number(t, r[column])
}

// Number reads one.
func Number(t testing.TB, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}

// Rows are the rows of a file.
func Rows(t testing.TB, name string) []Row {
	t.Helper()
	lines := read(t, name)
	rows := make([]Row, len(lines)-1)
	for i, line := range lines[1:] {
		require.Len(t, line, len(lines[0]), name)
		rows[i] = Row{}
		for j, column := range lines[0] {
			rows[i][column] = line[j]
		}
	}
	return rows
}

// Lines are the rows of a file without the names of its columns, of which they may have
// more or fewer.
func Lines(t testing.TB, name string) [][]string {
	t.Helper()
	return read(t, name)[1:]
}

// read finds the file from whichever package is tested.
func read(t testing.TB, name string) [][]string {
	t.Helper()
	const deepest = 5
	for up := range deepest {
		file, err := os.Open(filepath.Join(strings.Repeat("../", up), "testdata/reference", name))
		if os.IsNotExist(err) {
			continue
		}
		require.NoError(t, err)
		defer func() { require.NoError(t, file.Close()) }()
		reader := csv.NewReader(file)
		reader.Comment, reader.FieldsPerRecord = '#', -1
		lines, err := reader.ReadAll()
		require.NoError(t, err)
		require.Greater(t, len(lines), 1, "%s is empty", name)
		return lines
	}
	t.Fatalf("there is no %s", name)
	return nil
}
