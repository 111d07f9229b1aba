package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
)

// A bare price is offered the currency of the rig's other prices, else that of where the
// person lives; where neither is known, it is told how one is written.
func TestABarePriceIsOfferedACurrency(t *testing.T) {
	price := func(currency string, change func(*Options)) *player {
		o := ours(t)
		o.Currency = currency
		if change != nil {
			change(&o)
		}
		p := play(t, o, "b")
		onKey(t, p, "price")
		return p.Keys("'185'")
	}
	p := price("$", nil)
	assert.Equal(t, "needs its currency: tab or enter takes it as $185", p.M.edit.Says())
	assert.Equal(t, "$185", p.Keys("enter").M.now.rig.Beds[0].Price.Words())
	p = price("EUR", nil)
	assert.Equal(t, "185 EUR", p.Keys("enter").M.now.rig.Beds[0].Price.Words())
	p = price("$", func(o *Options) {
		o.Rig.Softeners[0].Price = quantity.Some(quantity.Money{Hundredths: 600, Currency: "CAD"})
	})
	assert.Equal(t, "185 CAD", p.Keys("enter").M.now.rig.Beds[0].Price.Words())
	p = play(t, ours(t), "b")
	onKey(t, p, "price")
	assert.Equal(t, "$180", p.Keys("$ '180' enter").M.now.rig.Beds[0].Price.Words(), "a price begins by its sign")
	p = price("", nil)
	assert.Equal(t, `has no currency; write it like "$185" or "185 EUR"`, p.M.edit.Says())
}
