package store

import (
	"bytes"
	"slices"
	"sort"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"washeve/model"
)

// An edit puts text in the place of some bytes of a document. Text put in
// between starts a line of its own.
type edit struct {
	from, to int
	text     string
}

// A change is the edits that make a document hold other items.
type change struct {
	decoding
	eol   string
	edits []edit
	own   ours
	gone  []string // names of what is taken out, which asks for a word first
	made  []string // blocks that are put in
	kept  []nth    // of the program's own blocks that stay, with other values or as they are
}

// nth is where an item stands: the how manyth of its section in the file.
type nth struct {
	section string
	index   int
}

// changes finds the edits from what the document holds to what it is to hold. What
// is the program's own goes without a word.
func changes(d decoding, before, after schema, own ours) *change {
	c := &change{decoding: d, eol: d.eol(), own: own}
	c.fields(d.tables[0], before.top, after.top)
	seen := map[string]int{}
	was := c.blocks(before.items(), seen)
	c.list(was, after.items(), nil)
	return c
}

// A block is an item as it was, with its table; a nil table is one not written.
type block struct {
	item
	table *table
	under []block
}

// blocks gives each item the table that it was read from.
func (c *change) blocks(items []item, seen map[string]int) []block {
	blocks := make([]block, len(items))
	for i, it := range items {
		blocks[i].item = it
		if n := seen[it.section]; n < len(c.items[it.section]) {
			blocks[i].table = c.items[it.section][n]
		}
		seen[it.section]++
		blocks[i].under = c.blocks(it.under, seen)
	}
	return blocks
}

// list makes a list of blocks into a list of items: section by section at the
// top, or the entries under the block owner.
func (c *change) list(was []block, items []item, owner *block) {
	for _, section := range sectionsOf(was, items) {
		old := pick(was, section, func(b block) string { return b.section })
		now := pick(items, section, func(it item) string { return it.section })
		c.section(old, now, owner)
	}
}

func (c *change) section(old []block, now []item, owner *block) {
	plain := make([]item, len(old))
	for i, b := range old {
		plain[i] = b.item
	}
	pairs := match(plain, now)
	for i, b := range old {
		if !slices.Contains(pairs, i) {
			if !c.isOurs(b) {
				c.gone = append(c.gone, b.section+" "+quote(b.name()))
			}
			c.remove(b)
		}
	}
	for j, it := range now {
		if i := pairs[j]; i >= 0 && old[i].table != nil {
			if owner == nil && c.own[c.text(old[i].table)] {
				c.kept = append(c.kept, nth{it.section, j})
			}
			c.fields(old[i].table, old[i].fields, it.fields)
			c.list(old[i].under, it.under, &old[i])
			continue
		}
		if text := render(it, c.eol); text != "" {
			c.made = append(c.made, blocksOf(it)...)
			c.insert(text, following(old, pairs[j+1:]), owner, old)
		}
	}
}

// last is the table at the end of a block: its own, or that of the last entry
// under it.
func (b block) last() *table {
	if n := len(b.under); n > 0 {
		return b.under[n-1].last()
	}
	return b.table
}

// following is the first block that stays behind a new one.
func following(old []block, pairs []int) *table {
	for _, i := range pairs {
		if i >= 0 {
			return old[i].table
		}
	}
	return nil
}

// insert puts a new block before another one, or behind all that is under its
// owner, or behind the others of its section, or at the end of the file.
func (c *change) insert(text string, before *table, owner *block, others []block) {
	switch {
	case before != nil:
		at := c.blockStart(before)
		c.edits = append(c.edits, edit{at, at, text + c.eol})
	case owner != nil:
		last := owner.table
		if n := len(owner.under); n > 0 {
			last = owner.under[n-1].table
		}
		at := c.contentEnd(last)
		c.edits = append(c.edits, edit{at, at, c.eol + text})
	case len(others) > 0 && others[len(others)-1].table != nil:
		at := c.contentEnd(others[len(others)-1].last())
		c.edits = append(c.edits, edit{at, at, c.eol + text})
	default:
		at := len(c.data)
		c.edits = append(c.edits, edit{at, at, c.eol + text})
	}
}

func (c *change) remove(b block) {
	from, to := c.blockStart(b.table), c.contentEnd(b.table)
	for to < len(c.data) && strings.TrimSpace(c.line(to)) == "" {
		to = c.lineEnd(to)
	}
	c.edits = append(c.edits, edit{from, to, ""})
	for _, u := range b.under {
		c.remove(u)
	}
}

// fields edits the values that differ, adds lines for new ones and takes away
// the lines of those that are gone.
func (c *change) fields(t *table, before, after []model.Field) {
	for i, f := range after {
		text := f.Text()
		if text == before[i].Text() {
			continue
		}
		e := t.entry(f.Key)
		switch {
		case e == nil && text != "":
			at := c.newLineAt(t)
			c.edits = append(c.edits, edit{at, at, keyLineOf(f) + c.eol})
		case e != nil && text == "":
			c.edits = append(c.edits, edit{e.start, e.end, ""})
		case e != nil:
			c.edits = append(c.edits, edit{e.from, e.to, e.rewritten(f)})
		}
	}
}

// rewritten is the new value in the way of writing of the old one.
func (e *entry) rewritten(f model.Field) string {
	text := f.Text()
	switch e.kind {
	case unstable.Array:
		return array(text)
	case unstable.Bool:
		if text == string(model.Yes) || text == string(model.No) {
			return map[string]string{string(model.Yes): "true", string(model.No): "false"}[text]
		}
	case unstable.Integer, unstable.Float:
		if plainNumber().MatchString(text) {
			return text
		}
	case unstable.LocalDate:
		if _, err := model.ParseDate(text); err == nil {
			return text
		}
	}
	return quote(text)
}

// apply carries the edits out.
func (c *change) apply() []byte {
	sort.SliceStable(c.edits, func(i, j int) bool { return c.edits[i].from < c.edits[j].from })
	var out bytes.Buffer
	at := 0
	for _, e := range c.edits {
		if e.from < at { // inside something taken out
			if e.from == e.to {
				out.WriteString(e.text)
			}
			continue
		}
		out.Write(c.data[at:e.from])
		if e.from == e.to && out.Len() > c.tables[0].start && !bytes.HasSuffix(out.Bytes(), []byte("\n")) {
			out.WriteString(c.eol)
		}
		out.WriteString(e.text)
		at = e.to
	}
	out.Write(c.data[at:])
	return out.Bytes()
}
