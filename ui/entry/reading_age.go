package entry

import (
	"strings"

	"washeve/model/quantity"
)

// anAge is an age of a fill for example.
func (r Reading) anAge() string { return quantity.Show(120*quantity.Gallon, r.sys) }

// unknown is the word for an age that nobody knows; an empty line says so as well.
const unknown = "unknown"

func nobodyKnows(text string) bool {
	text = strings.TrimSpace(text)
	return text == "" || strings.EqualFold(text, unknown)
}
