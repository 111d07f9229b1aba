package store

// mostKept is how many versions of a file are remembered.
const mostKept = 16

// remember keeps what a file holds before items are taken out of it or put in, so
// that bringing them back brings back their comments as well, and taking out what was
// put in leaves every byte as it was.
func (s *Store) remember(file string) { s.keepVersion(file, s.seen[file]) }

func (s *Store) keepVersion(file string, data []byte) {
	s.before[file] = append(s.before[file], data)
	if len(s.before[file]) > mostKept {
		s.before[file] = s.before[file][1:]
	}
}

// asItWas gives the remembered version of a file that holds the noun, or data
// where there is none.
func asItWas[T any](s *Store, file string, data []byte, noun *T, of func(*T) schema) []byte {
	versions := s.before[file]
	for i := len(versions) - 1; i >= 0; i-- {
		if holds(versions[i], noun, of) {
			return versions[i]
		}
	}
	return data
}
