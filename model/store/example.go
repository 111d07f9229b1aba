package store

import (
	"bytes"
	"embed"
	"errors"
	"io/fs"
	"os"
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
	read(path.Join(TripFolder, trip.File)).trip(&trip.Trip, known)
	lib.Trips = []TripFile{trip}
	return lib
}

// OwnFileError tells that a folder holds a rig or places of its own: the example's
// wash and trip would name what is not in them.
type OwnFileError struct{ File string }

func (e *OwnFileError) Error() string {
	return e.File + " is there already and is not the example's, so nothing of the example was written"
}

// WriteExample writes the commented files of [Example] into the folder, to start
// from. It never writes over a file: those that are there stay as they are, and
// only the names of the files written, relative to dir, are given back. Where the
// rig or the places are not the example's it writes nothing and gives an
// [OwnFileError]; what an earlier call left half done is completed.
func WriteExample(dir string) (written []string, err error) {
	return WriteExampleOn(dir, model.Date{})
}

// WriteExampleOn is [WriteExample] on a day, which is not known where zero: where the days
// of the example are past by then, they are the coming ones of the same weekdays, as far
// apart; see [ExampleOn].
func WriteExampleOn(dir string, today model.Date) (written []string, err error) {
	days := exampleMoves(today)
	err = locked(dir, func() error {
		for _, file := range []string{rigFile, placesFile} {
			if err := exampleOrMissing(dir, file); err != nil {
				return err
			}
		}
		return fs.WalkDir(exampleFiles, exampleFolder, func(name string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() {
				return err
			}
			data, err := exampleFiles.ReadFile(name)
			if err != nil {
				return err
			}
			file := filepath.FromSlash(strings.TrimPrefix(name, exampleFolder+"/"))
			made, err := create(filepath.Join(dir, file), moved(data, days))
			if made && err == nil {
				written = append(written, file)
			}
			return err
		})
	})
	return written, err
}

// exampleOrMissing gives an error where the file is there and says something else
// than the example's.
func exampleOrMissing(dir, file string) error {
	at := filepath.Join(dir, file)
	if _, err := os.Lstat(at); errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	there, err := os.ReadFile(at)
	if err != nil {
		return err
	}
	ours, err := exampleFiles.ReadFile(path.Join(exampleFolder, file))
	if err == nil && !bytes.Equal(there, ours) {
		err = &OwnFileError{file}
	}
	return err
}
