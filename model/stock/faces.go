package stock

import (
	"fmt"
	"slices"

	"washeve/model"
)

// Face is the section of the faces. Their index goes through all vehicles, as in
// [model.Rig.Faults].
const Face = "vehicle.face"

// Faces lists the indexes of the faces that are stated of a vehicle.
func (s Stock) Faces(ofVehicle int) []int {
	var found []int
	at := 0
	for i := range s.Rig.Vehicles {
		for range s.Rig.Vehicles[i].Faces {
			if i == ofVehicle {
				found = append(found, at)
			}
			at++
		}
	}
	return found
}

// FaceName is which face an index is, "" where there is none.
func (s Stock) FaceName(index int) string {
	if v, j := s.faceAt(index); v != nil {
		return string(v.Faces[j].Side)
	}
	return ""
}

// faceAt gives the vehicle that has a face, and which one it is there.
func (s Stock) faceAt(index int) (v *model.Vehicle, of int) {
	if index < 0 {
		return nil, 0
	}
	for i := range s.Rig.Vehicles {
		v := &s.Rig.Vehicles[i]
		if index < len(v.Faces) {
			return v, index
		}
		index -= len(v.Faces)
	}
	return nil, 0
}

// FreeSides lists the faces of a vehicle of which nothing is stated.
func (s Stock) FreeSides(ofVehicle int) []model.Side {
	if ofVehicle < 0 || ofVehicle >= len(s.Rig.Vehicles) {
		return nil
	}
	return slices.DeleteFunc(model.Sides(), func(side model.Side) bool {
		return slices.ContainsFunc(s.Rig.Vehicles[ofVehicle].Faces, func(f model.Face) bool { return f.Side == side })
	})
}

// AddFace lets something be stated of a face, and gives its index.
func (s Stock) AddFace(ofVehicle int, side model.Side) (int, error) {
	if !slices.Contains(s.FreeSides(ofVehicle), side) {
		return 0, fmt.Errorf("the face %q is there already", side)
	}
	v := &s.Rig.Vehicles[ofVehicle]
	v.Faces = append(v.Faces, model.NewFace(side))
	all := s.Faces(ofVehicle)
	return all[len(all)-1], nil
}

// RemoveFace takes away what is stated of a face.
func (s Stock) RemoveFace(index int) error {
	v, j := s.faceAt(index)
	if v == nil {
		return fmt.Errorf("there is no face to take away")
	}
	v.Faces = without(v.Faces, j)
	return nil
}
