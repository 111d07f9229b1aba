package sheet

import (
	"bytes"
	"crypto/sha256"
	_ "embed" // the parts of the page
	"encoding/base64"
	"encoding/hex"
	"fmt"
	"html/template"
	"regexp"
	"strings"

	"washeve/ui/cells"
)

//go:embed sheet.html.tmpl
var pageTemplate string

//go:embed sheet.css
var stylesheet string

//go:embed keep.js
var script string

// view is what the template is given.
type view struct {
	Sheet                 Sheet
	Short, Mark, Keep     string
	Density               string
	Assumed               string
	Coach                 coachDrawing
	Tank                  tankDrawing
	Style                 template.CSS
	Script                template.JS
	StyleHash, ScriptHash string
}

// HTML is the sheet as one file: nothing is fetched, nothing needs a script,
// and a phone that may keep things keeps the ticks. It prints on one page.
func HTML(s Sheet) (string, error) {
	style := palette() + stylesheet
	s.Notice = strings.ReplaceAll(s.Notice, "`", "") // the marks around a command are for plain text
	v := view{
		Sheet: s, Short: cells.Clip(s.Title, 60, "..."), Mark: mark, Keep: keepName(s), Density: density(s),
		Assumed: strings.Join(s.Assumed, "; "), Coach: drawCoach(s.coach), Tank: drawTank(s.tank),
		Style: template.CSS(style), Script: template.JS(script), StyleHash: hashOf(style), ScriptHash: hashOf(script),
	}
	t, err := template.New("sheet").Funcs(template.FuncMap{
		"bound":   bound,
		"pattern": func(s Step) string { return patternOf(s.water) },
		"fill":    func(name string) string { return "url(#of-" + name + ")" },
	}).Parse(pageTemplate)
	if err != nil {
		return "", fmt.Errorf("write the sheet as HTML: %w", err)
	}
	var out bytes.Buffer
	if err := t.Execute(&out, v); err != nil {
		return "", fmt.Errorf("write the sheet as HTML: %w", err)
	}
	return Seal(out.String()), nil
}

// afterNumber is the blank between a number and what it counts.
var afterNumber = regexp.MustCompile(`([0-9]) ([\pL%])`)

// bound keeps a number and its unit on one line.
func bound(text string) string { return afterNumber.ReplaceAllString(text, "$1\u00a0$2") }

// hashOf is how a content policy names an inline text.
func hashOf(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

// keepName names what a phone keeps of this sheet. A sheet that asks for other
// things has another name, so that no tick stands at the wrong place.
func keepName(s Sheet) string {
	text := fmt.Sprint(s.Title, s.Tonight, s.Day, s.Steps, s.Gate)
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:8])
}
