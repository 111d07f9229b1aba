package model

import (
	"fmt"
	"slices"

	"washeve/model/quantity"
)

// UsualConfidence is how sure the gallons that are shared out are to be there,
// where nobody says. PRACTICE: the chance from which a bed is said to last.
const UsualConfidence quantity.Fraction = 0.9

// shareFields lists what can be stated of where the DI water goes.
func (w *Wash) shareFields() []Field {
	return []Field{
		facesField("di_faces", "DI first on", "faces that get DI water whatever else falls short", "front, left", Sides(), &w.DIFaces),
		facesField("towel_faces", "towel instead of DI", "faces that get softened water and a towel, no DI", "rear, right", Sides(), &w.TowelFaces),
		wordList("surface", Surfaces(), Surfaces(), Field{
			Key: "di_surfaces", Label: "DI only on", Help: "surfaces that get DI water; all where none is named", Example: "glass, paint",
		}, &w.DISurfaces),
		measure("di_flow", "DI held to", "flow that the DI water is held to; the hand goes slower with it", "1 gpm", "0.05 gpm", "100 gpm", &w.DIFlow),
		measure("confidence", "confidence", "how sure the water of a short bed is to be there when it is shared out", "90 %", "50 %", "99 %", &w.Confidence),
	}
}

// shareContradictions finds faces that are to get DI water and none.
func (w *Wash) shareContradictions() []Fault {
	for _, s := range w.TowelFaces {
		if slices.Contains(w.DIFaces, s) {
			return []Fault{{Key: "towel_faces", Problem: fmt.Sprintf("names the %s, which di_faces names too; keep it in one of them", s)}}
		}
	}
	return nil
}
