package water

import "washeve/model/quantity"

// UsualRejection is the part of the ions that a membrane in good order holds
// back. PRACTICE: 90 to 98 % when new, less with age and with little pressure.
const UsualRejection quantity.Fraction = 0.9

// Purify is a water with a part of its ions and of its silica taken out, as a
// membrane does; every ion alike. The conductivity goes with the ions left
// ([Ions.Conductivity]). Free carbon dioxide passes a membrane as a gas does and
// stays (MEMORY: any text on reverse osmosis). The part is from 0 to 1.
func Purify(a Analysis, rejected quantity.Fraction) Analysis {
	left := quantity.Load(1 - min(max(rejected, 0), 1))
	pure := a
	pure.Ions = Ions{
		Hardness: a.Ions.Hardness * left, Sodium: a.Ions.Sodium * left,
		Bicarbonate: a.Ions.Bicarbonate * left, Chloride: a.Ions.Chloride * left,
	}
	pure.Load, pure.Low, pure.High, pure.Silica = a.Load*left, a.Low*left, a.High*left, a.Silica*left
	if before := a.Ions.Conductivity(); before > 0 {
		pure.Conductivity = a.Conductivity * (pure.Ions.Conductivity() / before)
	}
	return pure
}
