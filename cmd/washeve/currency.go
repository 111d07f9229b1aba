package main

import (
	"cmp"
	"strings"
)

// currency is what a price that is typed without one is offered where the rig states none:
// that of the territory in which the person's locale writes money, "" where it is none of
// those known here.
func (p *program) currency() string {
	return currencyOf(cmp.Or(p.env("LC_ALL"), p.env("LC_MONETARY"), p.env("LANG")))
}

// currencyOf is the currency of a locale such as "de_AT.UTF-8", by the territory in it (ISO
// 3166 and ISO 4217).
func currencyOf(locale string) string {
	const euro = "AT BE BG CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK"
	locale, _, _ = strings.Cut(locale, ".")
	locale, _, _ = strings.Cut(locale, "@")
	switch _, territory, _ := strings.Cut(locale, "_"); {
	case len(territory) != len("US") || strings.Contains(territory, " "):
		return ""
	case strings.Contains(euro, territory):
		return "EUR"
	default:
		return map[string]string{
			"US": "$", "CA": "CAD", "MX": "MXN", "GB": "GBP", "AU": "AUD", "NZ": "NZD", "CH": "CHF",
			"DK": "DKK", "NO": "NOK", "SE": "SEK", "PL": "PLN", "CZ": "CZK", "ZA": "ZAR",
		}[territory]
	}
}
