package picture

import (
	"strings"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// letterHeight is how many rows a letter takes at its smallest.
const letterHeight = 5

// drawnLetters are the letters that can be drawn large, each in five rows.
func drawnLetters() map[rune]string {
	return map[rune]string{
		'A': ".##.|#..#|####|#..#|#..#", 'B': "###.|#..#|###.|#..#|###.", 'C': ".###|#...|#...|#...|.###", 'D': "###.|#..#|#..#|#..#|###.",
		'E': "####|#...|###.|#...|####", 'F': "####|#...|###.|#...|#...", 'G': ".###|#...|#.##|#..#|.###", 'H': "#..#|#..#|####|#..#|#..#",
		'I': "###|.#.|.#.|.#.|###", 'J': "..##|...#|...#|#..#|.##.", 'K': "#..#|#.#.|##..|#.#.|#..#", 'L': "#...|#...|#...|#...|####",
		'M': "#...#|##.##|#.#.#|#...#|#...#", 'N': "#..#|##.#|#.##|#..#|#..#", 'O': ".##.|#..#|#..#|#..#|.##.", 'P': "###.|#..#|###.|#...|#...",
		'Q': ".##.|#..#|#..#|#.#.|.#.#", 'R': "###.|#..#|###.|#.#.|#..#", 'S': ".###|#...|.##.|...#|###.", 'T': "###|.#.|.#.|.#.|.#.",
		'U': "#..#|#..#|#..#|#..#|.##.", 'V': "#..#|#..#|#..#|.##.|.##.", 'W': "#...#|#...#|#.#.#|##.##|#...#", 'X': "#..#|#..#|.##.|#..#|#..#",
		'Y': "#.#|#.#|.#.|.#.|.#.", 'Z': "####|..#.|.#..|#...|####",
		'0': ".##.|#..#|#..#|#..#|.##.", '1': ".#.|##.|.#.|.#.|###", '2': "###.|...#|.##.|#...|####", '3': "###.|...#|.##.|...#|###.",
		'4': "#..#|#..#|####|...#|...#", '5': "####|#...|###.|...#|###.", '6': ".##.|#...|###.|#..#|.##.", '7': "####|...#|..#.|.#..|.#..",
		'8': ".##.|#..#|.##.|#..#|.##.", '9': ".##.|#..#|.###|...#|.##.",
		':': ".|#|.|#|.", '-': "...|...|###|...|...", '+': "...|.#.|###|.#.|...", '.': ".|.|.|.|#", '/': "..#|..#|.#.|#..|#..", ' ': "..|..|..|..|..", '!': "#|#|#|.|#",
	}
}

// Letters draws text large, as large as fits into the cells and whole multiples
// allow: a cell is about twice as high as broad, so letters are up to twice as many
// cells broad as high. False where it does not fit, has a letter that cannot be drawn,
// or the theme is plain.
func Letters(th theme.Theme, text string, ink theme.Ink, width, height int) ([]string, bool) {
	rows, ok := letterRows(strings.ToUpper(text))
	if !ok || th.Plain {
		return nil, false
	}
	across, down := width/max(cells.Width(rows[0]), 1), min(height/letterHeight, 3)
	if across < 1 || down < 1 {
		return nil, false
	}
	down = min(down, across)
	across = min(across, 2*down)
	lines := make([]string, 0, letterHeight*down)
	for _, row := range rows {
		var b strings.Builder
		for _, dot := range row {
			mark := " "
			if dot == '#' {
				mark = th.Marks.Block
			}
			b.WriteString(strings.Repeat(mark, across))
		}
		line := ink.On(strings.TrimRight(b.String(), " "))
		for range down {
			lines = append(lines, line)
		}
	}
	return lines, true
}

// letterRows puts the letters side by side, a cell apart.
func letterRows(text string) ([]string, bool) {
	drawn := drawnLetters()
	rows := make([]string, letterHeight)
	for i, r := range text {
		letter, known := drawn[r]
		if !known {
			return nil, false
		}
		for y, part := range strings.Split(letter, "|") {
			if i > 0 {
				rows[y] += "."
			}
			rows[y] += part
		}
	}
	return rows, text != ""
}
