package report

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner"
)

// Table is a heading and rows, all of the same length. Numeric columns stand at
// the right.
type Table struct {
	Head    []string
	Numeric []bool
	Rows    [][]string
}

// Stages lists the steps of the wash.
func Stages(p planner.Plan, sys quantity.System) Table {
	t := Table{
		Head:    []string{"", "step", "water", "flow", "volume", "time", "faces", "goes through"},
		Numeric: []bool{true, false, false, true, true, true, false, false},
	}
	for i, s := range p.Stages {
		t.Rows = append(t.Rows, []string{
			strconv.Itoa(i + 1), s.Name, WaterName(s.Water), quantity.Show(s.Flow, sys),
			quantity.Show(s.Volume, sys), Time(s.Duration), Faces(s.Faces), Through(s.Valves),
		})
	}
	return t
}

// FaceTable lists the faces and what will be seen on each when it has dried.
func FaceTable(p planner.Plan, sys quantity.System) Table {
	t := Table{
		Head:    []string{"face", "area", "last water", "DI", "in the film", "left behind", "outlook"},
		Numeric: []bool{false, true, false, true, true, true, false},
	}
	for _, f := range p.Faces {
		t.Rows = append(t.Rows, []string{
			string(f.Name), quantity.Show(f.Area, sys), WaterName(f.Water), quantity.Show(f.DI, sys),
			PPM(f.PPMLeft), quantity.Show(f.Residue, sys), SpotWords(f.Spots),
		})
	}
	return t
}

// Assumptions lists what the plan rests on, with how well each is founded.
func Assumptions(all []planner.Assumption, sys quantity.System) Table {
	t := Table{Head: []string{"what", "value", "tag", "from"}, Numeric: make([]bool, 4)}
	for _, a := range all {
		t.Rows = append(t.Rows, []string{a.Name, Value(a, sys), string(a.Source.Tag), a.Source.Text})
	}
	return t
}
