package store

import "testing"

// BenchmarkSaveUnderway is what each deed of a wash day costs on the disk: a wash of some
// thirty steps in its middle.
func BenchmarkSaveUnderway(b *testing.B) {
	u := someUnderway()
	for range 15 {
		u.Steps = append(u.Steps, u.Steps[1], u.Steps[1])
		u.Deeds = append(u.Deeds, u.Deeds[0], u.Deeds[0], u.Deeds[0])
	}
	s := Open(b.TempDir())
	for b.Loop() {
		if err := s.SaveUnderway(u); err != nil {
			b.Fatal(err)
		}
	}
}
