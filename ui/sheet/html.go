package sheet

import (
	"crypto/sha256"
	_ "embed" // the style and the script of the page
	"encoding/base64"
	"encoding/hex"
	"fmt"
	"strings"

	"washeve/ui/cells"
)

//go:embed sheet.css
var stylesheet string

//go:embed keep.js
var script string

// HTML is the sheet as one file: nothing is fetched, nothing needs a script,
// and a phone that may keep things keeps the ticks. It prints on one page.
//
// It is not written by html/template: that calls methods by their names, so the
// linker would keep every method of the program, which are 4 MB.
func HTML(s Sheet) string {
	s.Notice = strings.ReplaceAll(s.Notice, "`", "") // the marks around a command are for plain text
	return Seal(string(head(s) + `<body class="` + text(density(s)) + `">
` + header(s) + `<main>
` + heedHTML(s) + tonightHTML(s) + dayHTML(s.Day) + coachHTML(drawCoach(s.coach)) + stepsHTML(s) + gateHTML(s.Gate) +
		tankHTML(drawTank(s.tank)) + flowHTML(s) + doneHTML(s) + cautionHTML(s) + `</main>
` + footer(s) + `<script>` + markup(script) + `</script>
</body>
</html>
`))
}

// head says what the page is, and that nothing is run or shown but what stands
// in it.
func head(s Sheet) markup {
	style := palette() + stylesheet
	return `<!DOCTYPE html>
<html lang="en" data-keep="` + text(keepName(s)) + `">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="generator" content="` + text(mark) + `">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '` + text(hashOf(style)) + `'; script-src '` + text(hashOf(script)) + `'">
<title>` + text(cells.Clip(s.Title, 60, "...")) + `</title>
<style>` + markup(style) + `</style>
</head>
`
}

// hashOf is how a content policy names an inline text.
func hashOf(inline string) string {
	sum := sha256.Sum256([]byte(inline))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

// keepName names what a phone keeps of this sheet. A sheet that asks for other
// things has another name, so that no tick stands at the wrong place.
func keepName(s Sheet) string {
	asks := fmt.Sprint(s.Title, s.Tonight, s.Day, s.Steps, s.Gate)
	sum := sha256.Sum256([]byte(asks))
	return hex.EncodeToString(sum[:8])
}
