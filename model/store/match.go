package store

import "strings"

// mostCells bounds the table that is filled to match two lists.
const mostCells = 1 << 20

// match pairs the items of a list as it was with those of the list as it is to
// be. For each new item it gives the index of the old one, or -1; the old ones
// that no new one has are taken out. Order is kept: an item that moved counts
// as taken out and new.
func match(before, after []item) []int {
	pairs := make([]int, len(after))
	for i := range pairs {
		pairs[i] = -1
	}
	same := func(i, j int) bool {
		return strings.EqualFold(before[i].name(), after[j].name())
	}
	from, to := 0, 0
	for _, anchor := range append(anchors(len(before), len(after), same), [2]int{len(before), len(after)}) {
		// Between two that kept their names, the others were renamed in order.
		for from < anchor[0] && to < anchor[1] {
			pairs[to] = from
			from, to = from+1, to+1
		}
		if anchor[1] < len(after) {
			pairs[anchor[1]] = anchor[0]
		}
		from, to = anchor[0]+1, anchor[1]+1
	}
	return pairs
}

// anchors is a longest list of pairs that are the same, rising in both.
func anchors(n, m int, same func(i, j int) bool) [][2]int {
	var found [][2]int
	start := 0
	for start < n && start < m && same(start, start) {
		found = append(found, [2]int{start, start})
		start++
	}
	if (n-start)*(m-start) > mostCells {
		return found
	}
	longest := make([][]int, n+1)
	for i := range longest {
		longest[i] = make([]int, m+1)
	}
	for i := n - 1; i >= start; i-- {
		for j := m - 1; j >= start; j-- {
			longest[i][j] = max(longest[i+1][j], longest[i][j+1])
			if same(i, j) {
				longest[i][j] = max(longest[i][j], 1+longest[i+1][j+1])
			}
		}
	}
	for i, j := start, start; i < n && j < m; {
		switch {
		case same(i, j) && longest[i][j] == 1+longest[i+1][j+1]:
			found = append(found, [2]int{i, j})
			i, j = i+1, j+1
		case longest[i+1][j] >= longest[i][j+1]:
			i++
		default:
			j++
		}
	}
	return found
}

func (it item) name() string { return it.fields[0].Text() }
