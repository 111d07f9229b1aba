package main

import (
	"cmp"
	"strings"

	"washeve/model/quantity"
)

// territoryOf is the territory of a locale such as "de_AT.UTF-8", by its two letters of ISO
// 3166; "" where the locale names none.
func territoryOf(locale string) string {
	locale, _, _ = strings.Cut(locale, ".")
	locale, _, _ = strings.Cut(locale, "@")
	_, territory, _ := strings.Cut(locale, "_")
	if len(territory) != 2 || strings.Trim(territory, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" {
		return ""
	}
	return territory
}

// locale is the person's own for one category, such as LC_MONETARY, by POSIX's order.
func (p *program) locale(category string) string {
	return cmp.Or(p.env("LC_ALL"), p.env(category), p.env("LANG"))
}

// localUnits are the units to show where neither a flag nor the rig says: those of the
// territory in which the person's locale measures.
func (p *program) localUnits() quantity.System {
	return unitsOf(p.locale("LC_MEASUREMENT"))
}

// unitsOf are the units of a locale: metric in all territories but three (CLDR, measurement
// systems), and US ones where none is named.
func unitsOf(locale string) quantity.System {
	switch territoryOf(locale) {
	case "", "US", "LR", "MM":
		return quantity.US
	}
	return quantity.Metric
}
