package rig

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
)

// A bare price is offered the currency of the rig's other prices, else that of where the
// person lives.
func TestABarePriceIsOfferedACurrency(t *testing.T) {
	for _, c := range []struct{ owned, lives, want string }{{"CAD", "$", "6 CAD"}, {"", "$", "$6"}} {
		o, kept := ours()
		o.Currency = c.lives
		o.Stock.Rig.Beds[0].Price = quantity.Opt[quantity.Money]{}
		if c.owned != "" {
			o.Stock.Rig.Beds[0].Price = quantity.Some(quantity.Money{Hundredths: 18500, Currency: c.owned})
		}
		p := play(t, o, "pgdown pgdown enter end '6'")
		assert.Contains(t, p.Says(), "needs its currency: tab or enter takes it as "+c.want)
		p.Keys("enter")
		assert.Equal(t, c.want, kept.kept.Rig.Softeners[0].Price.Words())
	}
}

// With metric units shown, the lines of what is owned take metric units, too.
func TestABareNumberTakesTheUnitsShown(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown m enter end 'x'")
	for p.M.looks.rows[p.M.hand].ref.Key != "diameter" {
		p.Keys("up")
	}
	assert.Contains(t, p.Says(), "like 20 cm")
	p.Keys("'22'")
	assert.Contains(t, p.Says(), "needs its unit: tab or enter takes it as 22 cm")
	p.Keys("enter")
	assert.Equal(t, "22 cm", kept.kept.Rig.Beds[0].Diameter.Words())
	assert.Equal(t, "Read as 22 cm. Saved.", p.M.status)
}
