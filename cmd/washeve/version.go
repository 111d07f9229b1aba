package main

import (
	"fmt"
	"runtime/debug"
	"strings"
)

// built is what the program knows of how it was made. The same commit and the
// same Go give the same words.
type built struct {
	version  string // of the release, or one made of the commit
	revision string // the commit, "" where it was not built from one
	moment   string // of the commit, "" where it was not built from one
	dirty    bool   // the files were not as committed
	with     string // the Go that made it, and for what machine
}

func builtNow() built {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return built{version: "unreleased"}
	}
	return builtFrom(info)
}

func builtFrom(info *debug.BuildInfo) built {
	b := built{version: strings.TrimPrefix(info.Main.Version, "v")}
	if b.version == "" || b.version == "(devel)" {
		b.version = "unreleased"
	}
	settings := map[string]string{}
	for _, s := range info.Settings {
		settings[s.Key] = s.Value
	}
	b.revision, b.moment = settings["vcs.revision"], settings["vcs.time"]
	b.dirty = settings["vcs.modified"] == "true"
	b.with = strings.TrimSpace(fmt.Sprintf("%s %s/%s", info.GoVersion, settings["GOOS"], settings["GOARCH"]))
	return b
}

// day is that of the commit; "" where it is not known.
func (b built) day() string {
	day, _, _ := strings.Cut(b.moment, "T")
	return day
}

func (b built) String() string {
	lines := []string{b.version}
	if b.revision != "" {
		line := "commit " + b.revision + " of " + b.moment
		if b.dirty {
			line += ", with changes that are not committed"
		}
		lines = append(lines, line)
	}
	return strings.Join(append(lines, b.with), "\n")
}
