//go:build unix

package main

import (
	"flag"
	"fmt"
	"html"
	"image/color"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	uv "github.com/charmbracelet/ultraviolet"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
)

var drawPictures = flag.Bool("pictures", false, "draw the README's pictures anew")

// pictures are those of the README: a new screen is one line here.
func pictures() []picture {
	return []picture{
		{file: "plan.svg", see: "The bed lasts this wash"},
		{file: "day.svg", keys: []string{"D"}, see: "easy: no face hurries"},
		{file: "bed.svg", season: true, keys: []string{"B"}, see: "r reading"},
		{file: "refill.svg", season: true, keys: []string{"B", "c"}, see: "Old resin out"},
		{file: "washday.svg", keys: []string{"W", "enter", "space"}, see: "the time runs"},
		{file: "short.svg", keys: []string{"S"}, see: "two fills"},
		{file: "trip.svg", keys: []string{"T"}, see: "Order resin"},
		{file: "rig.svg", keys: []string{"R"}, see: "What you own"},
		{file: "compare.svg", keys: []string{"C"}, see: "as planned"},
		{file: "ways.svg", keys: []string{"T", "C", "G", "left", "left"}, see: "Instead: state the water"},
		{file: "guide.svg", keys: []string{"?", "tab"}, see: "breakthrough"},
	}
}

// picture is a screen, and the keys that lead there from the plan.
type picture struct {
	file   string
	season bool // with a rig and the log of a season, not the built-in example
	keys   []string
	see    string
}

// The README's pictures are real frames. A change on the screen fails here
// until they are drawn anew: go test ./cmd/washeve -run Pictures -pictures
func TestPicturesShowTheScreensOfToday(t *testing.T) {
	for _, p := range pictures() {
		s := start(t, setup{width: 120, height: 36, args: p.args(t), env: []string{inClockFile + "=" + p.clock(t)}})
		s.sees("flow cap")
		for _, k := range p.keys {
			s.settles()
			s.press(k)
		}
		s.sees(p.see)
		s.settles()
		path := filepath.Join("..", "..", "testdata", "pictures", p.file)
		drawn := s.svg()
		if *drawPictures {
			require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
			require.NoError(t, os.WriteFile(path, []byte(drawn), 0o644))
		}
		kept, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.True(t, string(kept) == drawn, "%s is of another day: go test ./cmd/washeve -run Pictures -pictures", p.file)
	}
}

// args name a data folder with the built-in rig and the log of a season.
func (p picture) args(t *testing.T) []string {
	if !p.season {
		return nil
	}
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	log, err := os.ReadFile(filepath.Join("..", "..", "testdata", "season", "log.toml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), log, 0o600))
	return []string{"--dir", dir}
}

// clock stands in the evening after the season's last wash, so that a picture is
// the same on any day.
func (p picture) clock(t *testing.T) string {
	c := fileClock{filepath.Join(t.TempDir(), "clock")}
	c.set(t, model.Instant{Wall: time.Date(2026, 9, 12, 20, 0, 0, 0, time.FixedZone("", -6*3600))})
	return c.path
}

// svg draws what the terminal shows, as text on coloured cells.
func (s *screen) svg() string {
	const cw, ch = 8.4, 18
	width, height := float64(s.emu.Width())*cw+16, s.emu.Height()*ch+16
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %d" font-family="ui-monospace,Menlo,Consolas,'DejaVu Sans Mono',monospace" font-size="14">`+"\n", width, height)
	fmt.Fprintf(&b, `<rect width="100%%" height="100%%" rx="8" fill="#121214"/>`+"\n")
	for y := range s.emu.Height() {
		for x := range s.emu.Width() {
			cell := s.emu.CellAt(x, y)
			if cell == nil || cell.Content == "" {
				continue
			}
			fg, bg := inks(cell)
			left, top := 8+float64(x)*cw, 8+y*ch
			if bg != "" {
				fmt.Fprintf(&b, `<rect x="%.1f" y="%d" width="%.1f" height="%d" fill="%s"/>`+"\n", left, top, cw+0.3, ch, bg)
			}
			if cell.Content != " " {
				weight := ""
				if cell.Style.Attrs&uv.AttrBold != 0 {
					weight = ` font-weight="bold"`
				}
				fmt.Fprintf(&b, `<text x="%.1f" y="%d" fill="%s"%s>%s</text>`+"\n", left, top+14, fg, weight, html.EscapeString(cell.Content))
			}
		}
	}
	b.WriteString("</svg>\n")
	return b.String()
}

func inks(cell *uv.Cell) (fg, bg string) {
	fg, bg = ink(cell.Style.Fg, "#dcdcdc"), ink(cell.Style.Bg, "")
	if cell.Style.Attrs&uv.AttrReverse != 0 {
		fg, bg = ink(cell.Style.Bg, "#121214"), ink(cell.Style.Fg, "#dcdcdc")
	}
	return fg, bg
}

func ink(c color.Color, none string) string {
	if c == nil {
		return none
	}
	r, g, b, _ := c.RGBA()
	return fmt.Sprintf("#%02x%02x%02x", r>>8, g>>8, b>>8)
}
