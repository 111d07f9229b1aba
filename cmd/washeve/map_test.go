package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const root = "../.."

// The map in DEVELOPERS.md lists every package, and what it names is there.
func TestTheMapIsTrue(t *testing.T) {
	page, err := os.ReadFile(filepath.Join(root, "DEVELOPERS.md"))
	require.NoError(t, err)
	named := map[string]bool{}
	for _, quoted := range regexp.MustCompile("`([^`\n]+)`").FindAllStringSubmatch(string(page), -1) {
		named[quoted[1]] = true
	}
	for _, folder := range packages(t) {
		short := named[filepath.Base(folder)] // a screen or a part of the drying, in a row that names the folder above it
		assert.True(t, named[folder] || short, "%s is not on the map", folder)
	}
	for path := range named {
		if !regexp.MustCompile(`^(model|planner|ui|cmd|testdata|\.ci)/[\w./*-]+$`).MatchString(path) || strings.HasSuffix(path, "...") {
			continue
		}
		found, err := filepath.Glob(filepath.Join(root, path))
		require.NoError(t, err)
		assert.NotEmpty(t, found, "the map names %s, which is not there", path)
	}
}

// packages are the folders with Go files that are no command of the workshop.
func packages(t *testing.T) []string {
	t.Helper()
	seen := map[string]bool{}
	var folders []string
	require.NoError(t, filepath.WalkDir(root, func(path string, e fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if hidden := strings.HasPrefix(e.Name(), ".") && path != root; hidden && e.IsDir() {
			return filepath.SkipDir
		}
		if filepath.Ext(path) != ".go" || seen[filepath.Dir(path)] {
			return nil
		}
		seen[filepath.Dir(path)] = true
		folder, err := filepath.Rel(root, filepath.Dir(path))
		folders = append(folders, filepath.ToSlash(folder))
		return err
	}))
	require.Greater(t, len(folders), 30)
	return folders
}
