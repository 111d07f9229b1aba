package main

import (
	"os"
	"path/filepath"

	"washeve/model/store"
)

// folder is where all of one person's files are.
func (p *program) folder() string { return store.Locate(p.dir, p.env("WASHEVE_DIR")) }

// fileOn is the first thing on the way up from path that is there, where that is a file;
// "" where it is a folder.
func fileOn(path string) string {
	for {
		info, err := os.Stat(path)
		above := filepath.Dir(path)
		switch {
		case err == nil && !info.IsDir():
			return path
		case err == nil || above == path:
			return ""
		}
		path = above
	}
}

// wantsFolder refuses a file in the place of the data folder, or of one above it. A folder
// that is not there yet is made, and other trouble is told where it is met.
func (p *program) wantsFolder() error {
	file := fileOn(p.folder())
	if file == "" {
		return nil
	}
	asks := "the data folder is to be a folder"
	switch {
	case p.dir != "":
		asks = "--dir wants a folder"
	case p.env("WASHEVE_DIR") != "":
		asks = "WASHEVE_DIR wants a folder"
	}
	if file != p.folder() {
		return wrongf("there can be no folder %s: %s is a file; %s, so name another, or move that file away", p.folder(), file, asks)
	}
	return wrongf("%s is a file; %s", file, asks)
}
