package planner

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/surface"
)

// share puts into the stages which faces get DI water and which a towel, as the
// wash states it.
func share(l *ledger, c chosen, stages []model.Stage) []model.Stage {
	w := c.wash
	if len(w.DIFaces) > 0 {
		l.assume(Assumption{Name: "DI first on", Words: facesWords(w.DIFaces), Source: yours})
	}
	if len(w.TowelFaces) > 0 {
		l.assume(Assumption{Name: "towel instead of DI", Words: facesWords(w.TowelFaces), Source: yours})
	}
	if len(w.DISurfaces) > 0 {
		l.assume(Assumption{Name: "DI only on", Words: facesWords(w.DISurfaces), Source: yours})
	}
	if len(w.DIFaces)+len(w.TowelFaces) == 0 {
		return stages
	}
	return withTowels(withFirst(stages, w.DIFaces), w.TowelFaces, softest(c))
}

func facesWords[T ~string](all []T) string {
	words := ""
	for i, s := range all {
		if i > 0 {
			words += ", "
		}
		words += string(s)
	}
	return words
}

// softest is the water that stands in for DI.
func softest(c chosen) model.Water {
	if c.softener == nil {
		return model.Raw
	}
	return model.Softened
}

// withFirst adds the faces that are to get DI water to the final rinse, or to the
// last stage of DI where none is final.
func withFirst(stages []model.Stage, first []model.Side) []model.Stage {
	at := -1
	for i, s := range stages {
		if s.Water == model.DI && (at < 0 || s.Final || !stages[at].Final) {
			at = i
		}
	}
	if at < 0 {
		return stages
	}
	stages[at].Faces = slices.Clone(stages[at].Faces)
	for _, side := range first {
		if !slices.Contains(stages[at].Faces, side) {
			stages[at].Faces = append(stages[at].Faces, side)
		}
	}
	return stages
}

// withTowels takes the faces that get a towel out of every stage of DI. They get
// the softest water there is in its place, unless that is what they have had
// last.
func withTowels(stages []model.Stage, towels []model.Side, soft model.Water) []model.Stage {
	last := map[model.Side]model.Water{}
	out := make([]model.Stage, 0, len(stages)+1)
	for _, s := range stages {
		if s.Water != model.DI {
			for _, side := range s.Faces {
				last[side] = s.Water
			}
			out = append(out, s)
			continue
		}
		with, without, again := []model.Side{}, []model.Side(nil), []model.Side(nil)
		for _, side := range s.Faces {
			switch {
			case !slices.Contains(towels, side):
				with = append(with, side)
			case last[side] != soft:
				again = append(again, side)
				last[side] = soft
			default:
				without = append(without, side)
			}
		}
		if len(with) > 0 || len(without)+len(again) == 0 {
			s.Faces = with
			out = append(out, s)
		}
		if len(again) > 0 {
			out = append(out, model.Stage{Name: s.Name + ", for the towel", Water: soft, Faces: again, Sprayer: s.Sprayer, Passes: s.Passes, Coverage: s.Coverage})
		}
	}
	return out
}

// partFor is the part of a face that DI water goes on.
func partFor(shares []surface.Share, only []model.Surface) quantity.Fraction {
	if len(only) == 0 {
		return 1
	}
	part, whole := quantity.Fraction(0), quantity.Fraction(0)
	for _, s := range shares {
		whole += s.Part
		if slices.Contains(only, s.Surface) {
			part += s.Part
		}
	}
	if whole == 0 {
		return 0
	}
	return part / whole
}
