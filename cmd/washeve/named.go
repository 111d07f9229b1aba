package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// fileNamed finds the file that the command line names: as it is named, else from the data
// folder or one of its folders, the ending .toml left out or not. Where there is none it
// says which places were looked in.
func fileNamed(named, data string, folders ...string) (string, error) {
	places := []string{named}
	if !filepath.IsAbs(named) {
		places = append(places, filepath.Join(data, named))
		for _, folder := range folders {
			places = append(places, filepath.Join(data, folder, named))
		}
	}
	for _, place := range places {
		for _, path := range []string{place, place + ".toml"} {
			if info, err := os.Stat(path); err == nil && !info.IsDir() || err != nil && !errors.Is(err, fs.ErrNotExist) {
				return path, nil
			}
		}
	}
	return "", wrongf("%s is not there; looked for %s, each with .toml behind it as well", named, strings.Join(places, ", "))
}
