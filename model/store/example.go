package store

import (
	"embed"
	"io/fs"
	"path"
	"path/filepath"
	"strings"

	"washeve/model"
)

//go:embed example
var exampleFiles embed.FS

const exampleFolder = "example"

// Example is the built-in rig, places, wash and trip: an invented coach and water. It
// is made anew at each call.
func Example() Library {
	lib := Library{Places: model.Places{}}
	read := func(file string) *document {
		data, err := exampleFiles.ReadFile(path.Join(exampleFolder, file))
		if err != nil {
			panic(err)
		}
		return parse(file, data)
	}
	read(placesFile).places(&lib.Places)
	known := names{rig: &lib.Rig, places: lib.Places}
	read(rigFile).rig(&lib.Rig, known)
	wash := WashFile{File: "example.toml"}
	read(path.Join(washFolder, wash.File)).wash(&wash.Wash, known)
	lib.Washes = []WashFile{wash}
	trip := TripFile{File: "example.toml"}
	known.washes = lib.WashNames()
	read(path.Join(tripFolder, trip.File)).trip(&trip.Trip, known)
	lib.Trips = []TripFile{trip}
	return lib
}

// WriteExample writes the commented files of [Example] into the folder, to start
// from. It never writes over a file: those that are there stay as they are, and
// only the names of the files written, relative to dir, are given back.
func WriteExample(dir string) (written []string, err error) {
	err = locked(dir, func() error {
		return fs.WalkDir(exampleFiles, exampleFolder, func(name string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() {
				return err
			}
			data, err := exampleFiles.ReadFile(name)
			if err != nil {
				return err
			}
			file := filepath.FromSlash(strings.TrimPrefix(name, exampleFolder+"/"))
			made, err := create(filepath.Join(dir, file), data)
			if made && err == nil {
				written = append(written, file)
			}
			return err
		})
	})
	return written, err
}
