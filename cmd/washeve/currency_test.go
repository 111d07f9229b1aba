package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheCurrencyIsThatOfTheLocale(t *testing.T) {
	for locale, want := range map[string]string{
		"en_US.UTF-8": "$", "de_DE.UTF-8": "EUR", "de_AT@euro": "EUR", "en_CA": "CAD", "nb_NO.ISO8859-1": "NOK",
		"C.UTF-8": "", "C": "", "POSIX": "", "": "", "de": "", "de_": "", "xx_ T": "", "en_001": "", "ja_JP.UTF-8": "",
	} {
		assert.Equal(t, want, currencyOf(locale), locale)
	}
	env := map[string]string{"LANG": "en_US.UTF-8"}
	p := program{streams: streams{env: func(name string) string { return env[name] }}}
	assert.Equal(t, "$", p.currency())
	env["LC_MONETARY"] = "de_DE.UTF-8"
	assert.Equal(t, "EUR", p.currency())
	env["LC_ALL"] = "C"
	assert.Empty(t, p.currency(), "it is said to have none")
}
