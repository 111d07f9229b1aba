package store

import "strings"

// ours are the blocks that the program itself put into a file since it was loaded,
// each without the lines that have nothing on them, and those that are such a block with
// values typed since. They may be taken out again without a question: undo brings them
// back, and nothing that a person wrote into the file goes with them.
type ours map[string]bool

// filled is a block without its empty lines and the ends of its lines.
func filled(text string) string {
	var lines []string
	for line := range strings.Lines(text) {
		if line = strings.TrimRight(line, " \t\r\n"); line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "\n")
}

// blocksOf are the blocks that an item is written as: its own, and those under it.
func blocksOf(it item) []string {
	under := it.under
	it.under = nil
	blocks := []string{filled(render(it, "\n"))}
	for _, u := range under {
		blocks = append(blocks, blocksOf(u)...)
	}
	return blocks
}

// allBlocks are those that a new file is written as.
func allBlocks(s schema) []string {
	var blocks []string
	for _, it := range s.items() {
		blocks = append(blocks, blocksOf(it)...)
	}
	return blocks
}

// text is a block as it stands in the file, that of what is under it apart.
func (d *decoding) text(t *table) string {
	return filled(string(d.data[d.blockStart(t):d.contentEnd(t)]))
}

// isOurs tells whether a block and all under it stand as the program put them in,
// with nothing that a person wrote into the file.
func (c *change) isOurs(b block) bool {
	if b.table == nil || !c.own[c.text(b.table)] {
		return false
	}
	for _, u := range b.under {
		if !c.isOurs(u) {
			return false
		}
	}
	return true
}

// stillOwn are the blocks of a file, as a change has left it, that were the program's own
// before and stay so: nobody but the program changed them.
func (c *change) stillOwn(data []byte, read schema) []string {
	if len(c.kept) == 0 {
		return nil
	}
	now := parse("", data).decode(read)
	var blocks []string
	for _, k := range c.kept {
		if tables := now.items[k.section]; k.index < len(tables) {
			blocks = append(blocks, now.text(tables[k.index]))
		}
	}
	return blocks
}

// own remembers blocks of a file as the program's.
func (s *Store) own(file string, blocks []string) {
	if s.made[file] == nil {
		s.made[file] = ours{}
	}
	for _, block := range blocks {
		s.made[file][block] = true
	}
}

// add remembers blocks of a file, and what the file held before they were put in.
func (s *Store) add(file string, made []string, before []byte) {
	if len(made) == 0 {
		return
	}
	s.own(file, made)
	if before != nil {
		s.keepVersion(file, before)
	}
}
