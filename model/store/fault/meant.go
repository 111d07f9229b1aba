package fault

import "strings"

// mostMeant is far over the length of any word that is known, in bytes.
const mostMeant = 60

// Meant ends a problem with the known word that was likely meant, if one is at
// most so many letters off. Of a known word with a dot the part behind it will do.
func Meant(word string, known []string, off int) string {
	best, least := "", off+1
	if len(word) > mostMeant {
		return ""
	}
	for _, k := range known {
		if d := distance(strings.ToLower(word), k); d < least {
			best, least = k, d
		}
		if _, last, dotted := strings.Cut(k, "."); dotted && strings.EqualFold(word, last) {
			best, least = k, 0
		}
	}
	if best == "" {
		return ""
	}
	return "; did you mean " + best + "?"
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
