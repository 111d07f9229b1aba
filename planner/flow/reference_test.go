package flow

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// record is a row of a reference file, by the names of its columns.
type record map[string]string

func (r record) number(t *testing.T, column string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(r[column], 64)
	require.NoError(t, err, column)
	return v
}

func reference(t *testing.T, name string) []record {
	t.Helper()
	file, err := os.Open("../../testdata/reference/" + name)
	require.NoError(t, err)
	defer func() { require.NoError(t, file.Close()) }()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	records := make([]record, len(rows)-1)
	for i, row := range rows[1:] {
		records[i] = record{}
		for j, column := range rows[0] {
			records[i][column] = row[j]
		}
	}
	require.NotEmpty(t, records)
	return records
}
