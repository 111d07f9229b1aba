package sheet

import (
	"fmt"
	"math"

	"washeve/model"
)

// rect is a rectangle of a drawing, in its own units, ready to be written.
type rect struct{ X, Y, W, H string }

func box4(x, y, w, h float64) rect {
	return rect{decimal(x), decimal(y), decimal(w), decimal(h)}
}

func decimal(v float64) string { return fmt.Sprintf("%.1f", v) }

// coachDrawing is the vehicle from its left, the front at the left.
type coachDrawing struct {
	Height  string // of the whole drawing, which is drawWidth wide
	Parts   []coachPart
	Windows []rect
	Wheels  []string // x of each
	WheelY  string
	Ground  string // y
	Words   []placed
	Told    string // all of it in words
}

type coachPart struct {
	rect
	Water string // names a pattern
}

// placed is a text that begins at a point.
type placed struct{ X, Y, Text string }

const (
	drawWidth = 340.0
	edge      = 14.0 // how thick an end or the roof is drawn
)

// drawCoach lays the vehicle out to scale, within what can be drawn.
func drawCoach(c coach) coachDrawing {
	wide := drawWidth - 8
	tall := wide * float64(c.height) / float64(c.length)
	if math.IsNaN(tall) || math.IsInf(tall, 0) {
		tall = 0
	}
	tall = min(max(tall, 64), 180)
	const top, wheel = 24.0, 11.0
	left := (drawWidth - wide) / 2
	d := coachDrawing{WheelY: decimal(top + tall), Ground: decimal(top + tall + wheel)}
	d.part(c, model.Roof, box4(left+edge/2, top, wide-edge, edge))
	d.part(c, model.Front, box4(left, top+edge, edge, tall-edge-6))
	d.part(c, model.Rear, box4(left+wide-edge, top+edge, edge, tall-edge-6))
	d.part(c, model.Left, box4(left+edge, top+edge, wide-2*edge, tall-edge-6))
	step := (wide - 2*edge - 20) / 4
	for i := range 4 {
		d.Windows = append(d.Windows, box4(left+edge+14+step*float64(i), top+edge+8, step-12, (tall-edge)*0.24))
	}
	for _, share := range []float64{0.17, 0.72, 0.82} {
		d.Wheels = append(d.Wheels, decimal(left+wide*share))
	}
	d.word(c, model.Roof, left+edge/2, top-8)
	d.word(c, model.Left, left+edge+12, top+edge+(tall-edge)*0.66)
	below := top + tall + wheel + 18
	for i, side := range []model.Side{model.Front, model.Rear, model.Right} {
		d.word(c, side, left, below+18*float64(i))
	}
	d.Height = decimal(below + 44)
	for i, f := range c.faces {
		if i > 0 {
			d.Told += "; "
		}
		d.Told += f.words
	}
	return d
}

func (d *coachDrawing) part(c coach, side model.Side, r rect) {
	f, _ := c.of(side)
	d.Parts = append(d.Parts, coachPart{r, patternOf(f.water)})
}

func (d *coachDrawing) word(c coach, side model.Side, x, y float64) {
	f, known := c.of(side)
	if !known {
		return
	}
	d.Words = append(d.Words, placed{decimal(x), decimal(y), f.words})
}

// patternOf names the pattern of a water.
func patternOf(w model.Water) string {
	switch w {
	case model.DI:
		return "di"
	case model.Softened:
		return "softened"
	case model.Raw:
		return "raw"
	}
	return "none"
}

// tankDrawing is the bed now and after the wash, side by side.
type tankDrawing struct {
	Tanks []tankStand
	Words []placed
	Told  string
}

type tankStand struct {
	Name   placed
	Layers []layerDrawing
	Shell  rect
}

type layerDrawing struct {
	rect
	Layer string
}

const (
	tankTop, tankTall, tankWide = 24.0, 120.0, 62.0
)

func drawTank(t tank) tankDrawing {
	var d tankDrawing
	for i, stand := range [][3]float64{t.before, t.after} {
		x := 8 + float64(i)*(tankWide+16)
		s := tankStand{
			Name:  placed{X: decimal(x), Y: decimal(tankTop - 8), Text: [2]string{"now", "after"}[i]},
			Shell: box4(x, tankTop, tankWide, tankTall),
		}
		y := tankTop
		for j, share := range stand {
			if share > 0 {
				s.Layers = append(s.Layers, layerDrawing{box4(x, y, tankWide, share*tankTall), layerNames[j]})
			}
			y += share * tankTall
		}
		d.Tanks = append(d.Tanks, s)
	}
	for j, name := range layerNames {
		words := fmt.Sprintf("%s %.0f to %.0f %%", name, 100*t.before[j], 100*t.after[j])
		d.Words = append(d.Words, placed{X: decimal(8 + 2*(tankWide+16)), Y: decimal(tankTop + 22 + 40*float64(j)), Text: words})
		if j > 0 {
			d.Told += "; "
		}
		d.Told += words
	}
	return d
}
