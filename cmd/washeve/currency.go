package main

// currency is what a price that is typed without one is offered where the rig states none:
// that of the territory in which the person's locale writes money, "" where it is none of
// those known here.
func (p *program) currency() string {
	return currencyOf(p.locale("LC_MONETARY"))
}

// currencyOf is the currency of a locale such as "de_AT.UTF-8", by the territory in it (ISO
// 3166 and ISO 4217).
func currencyOf(locale string) string {
	switch territoryOf(locale) {
	case "US":
		return "$"
	case "AT", "BE", "BG", "CY", "DE", "EE", "ES", "FI", "FR", "GR", "HR", "IE", "IT", "LT", "LU", "LV", "MT", "NL", "PT", "SI", "SK":
		return "EUR"
	case "CA":
		return "CAD"
	case "MX":
		return "MXN"
	case "GB":
		return "GBP"
	case "AU":
		return "AUD"
	case "NZ":
		return "NZD"
	case "CH":
		return "CHF"
	case "DK":
		return "DKK"
	case "NO":
		return "NOK"
	case "SE":
		return "SEK"
	}
	return ""
}
