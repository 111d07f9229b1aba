package fault

import "strings"

// mostMeant is far over the length of any word that is known, in bytes.
const mostMeant = 60

// Meant ends a problem with the known word that was likely meant, if one is at
// most so many letters off. Of a known word with a dot the part behind it will do.
func Meant(word string, known []string, off int) string {
	if i := Nearest(word, known, off); i >= 0 {
		return DidYouMean(known[i])
	}
	return ""
}

// DidYouMean ends a problem with the word that was likely meant.
func DidYouMean(word string) string { return "; did you mean " + word + "?" }

// Nearest is the index of the known word that was likely meant, of those that are at most
// so many letters off; -1 where none is.
func Nearest(word string, known []string, off int) int {
	best, least := -1, off+1
	if len(word) > mostMeant {
		return -1
	}
	for i, k := range known {
		if d := distance(strings.ToLower(word), k); d < least {
			best, least = i, d
		}
		if _, last, dotted := strings.Cut(k, "."); dotted && strings.EqualFold(word, last) {
			best, least = i, 0
		}
	}
	return best
}

// distance counts the letters to put in, take out or change to get from a to b.
func distance(a, b string) int {
	from, to := []rune(a), []rune(b)
	row := make([]int, len(to)+1)
	for j := range row {
		row[j] = j
	}
	for i, x := range from {
		diagonal := row[0]
		row[0] = i + 1
		for j, y := range to {
			cost := diagonal
			if x != y {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(to)]
}
