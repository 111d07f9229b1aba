package planner_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The domain knows no screen, and the planner knows no clock's wall, file or
// net: it is made of pure functions.
func TestTheDomainImportsNoScreenAndThePlannerNoOutsideWorld(t *testing.T) {
	outside := []string{"os", "net", "net/http", "log", "log/slog", "io/ioutil", "os/exec"}
	for _, folder := range []string{"../planner", "../model"} {
		for file, imports := range importsUnder(t, folder) {
			for _, path := range imports {
				assert.NotContains(t, path, "charmbracelet", file)
				assert.False(t, strings.HasPrefix(path, "washeve/ui") || strings.HasPrefix(path, "washeve/cmd"), "%s imports %s", file, path)
				if folder == "../planner" {
					assert.False(t, slices.Contains(outside, path), "%s imports %s", file, path)
					assert.False(t, strings.HasPrefix(path, "washeve/model/store"), "%s imports %s", file, path)
				} else {
					assert.False(t, strings.HasPrefix(path, "washeve/planner"), "%s imports %s", file, path)
				}
			}
		}
	}
}

func importsUnder(t *testing.T, folder string) map[string][]string {
	all := map[string][]string{}
	err := filepath.WalkDir(folder, func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, i := range file.Imports {
			name, err := strconv.Unquote(i.Path.Value)
			if err != nil {
				return err
			}
			all[path] = append(all[path], name)
		}
		return nil
	})
	require.NoError(t, err)
	require.NotEmpty(t, all)
	return all
}
