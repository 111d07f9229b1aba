package main

import (
	"runtime/debug"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestVersionSaysWhatItWasBuiltFrom(t *testing.T) {
	info := &debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "v1.2.0"}, Settings: []debug.BuildSetting{
		{Key: "GOOS", Value: "linux"}, {Key: "GOARCH", Value: "arm64"}, {Key: "vcs.revision", Value: "eedddef"},
		{Key: "vcs.time", Value: "2026-06-11T19:00:00Z"}, {Key: "vcs.modified", Value: "false"},
	}}
	b := builtFrom(info)
	assert.Equal(t, "1.2.0\ncommit eedddef of 2026-06-11T19:00:00Z\ngo1.26.8 linux/arm64", b.String())
	assert.Equal(t, "2026-06-11", b.day())
	info.Settings[4].Value = "true"
	assert.Contains(t, builtFrom(info).String(), "with changes that are not committed")

	bare := builtFrom(&debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "(devel)"}})
	assert.Equal(t, "unreleased", bare.version)
	assert.Empty(t, bare.day())
	assert.NotContains(t, bare.String(), "commit")
}
