package bed

import (
	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/keys"
)

const (
	up      keys.Action = "up"
	down    keys.Action = "down"
	pageUp  keys.Action = "page up"
	pageDn  keys.Action = "page down"
	home    keys.Action = "newest"
	end     keys.Action = "oldest"
	back    keys.Action = "back"
	find    keys.Action = "find"
	add     keys.Action = "reading"
	wash    keys.Action = "wash"
	salt    keys.Action = "salt"
	resin   keys.Action = "resin"
	newOne  keys.Action = "new"
	right   keys.Action = "put right"
	strike  keys.Action = "strike"
	useIt   keys.Action = "use anyway"
	unfold  keys.Action = "stages"
	undo    keys.Action = "undo"
	explain keys.Action = "evidence"
	why     keys.Action = "why"

	accept  keys.Action = "accept"
	abandon keys.Action = "abandon"
)

// Keys lists the keys as the screen now stands. The first ones are those shown
// at the foot.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.ask != nil:
		return m.ask.Keys()
	case m.kinds != nil:
		return form.PickKeys("no entry")
	case m.form != nil:
		return m.form.Keys()
	case m.reading != nil:
		return m.reading.Keys()
	case m.list.search.typing:
		return []keys.Binding{
			keys.New("Find", accept, "enter", "keep what is found", "enter", "down"),
			keys.New("Find", abandon, "esc", "show all", "esc"),
		}
	}
	return append(m.addKeys(), append(m.entryKeys(), m.walkKeys()...)...)
}

func (m Model) addKeys() []keys.Binding {
	nothing, noRefill, nothingDone := "", "", ""
	if m.err != nil {
		nothing = "there is no plan yet, so no flush can be told; " + m.th.Key("n", "new") + " states any entry"
	}
	if m.o.Refill == nil || m.err != nil {
		noRefill = "there is no plan yet, so no amounts can be told"
	}
	if m.o.Deeds.Count() == 0 {
		nothingDone = "nothing was written since the program began"
	}
	return []keys.Binding{
		keys.New("Log", add, "r", "reading", "r").Explained("add a reading after the bed: the flush is told first").Unless(nothing),
		keys.New("Walk", back, "esc", "back", "esc").Explained("back to the plan"),
		keys.New("Log", wash, "w", "wash", "w").Explained("add a wash that was done: water, minutes"),
		keys.New("Log", resin, "c", "change resin", "c").Explained("change the resin, step by step, with your amounts; or see why not yet").Unless(noRefill),
		keys.New("See", explain, "e", "evidence", "e").Explained("what the readings say, what does not fit and what to check, and which reading would teach most"),
		keys.New("Log", find, "/", "find", "/").Explained("find words in the log"),
		keys.New("Log", salt, "s", "salt", "s").Explained("add a softener regenerated with salt"),
		keys.New("Log", newOne, "n", "any entry", "n").Explained("add an entry of any kind, of any day"),
		keys.New("Log", undo, "u", "undo", "u", "ctrl+z").Explained("strike out what was written last since the program began; it asks first").Unless(nothingDone),
		keys.New("See", why, "y", "where from", "y").Explained("where each number comes from").Unless(nothing),
		keys.UnitsKey(),
	}
}

func (m Model) entryKeys() []keys.Binding {
	row, ok := m.list.here()
	none, noRight, noUse, noStages := "", "", "", ""
	if !ok {
		none = "no entry is under the hand"
	}
	sample, reads := row.Now.Body.(*model.Sample)
	if !reads || sample.Counts() || row.Standing == model.Struck {
		noUse = "no first cup is under the hand"
	}
	if _, n := m.list.stagesHere(); n == 0 {
		noStages = "no wash with stages is under the hand"
	}
	switch {
	case !ok:
		noRight = none
	case row.Entry.Kind() == model.CorrectionKind:
		noRight = "a correction is not corrected; strike it out, or put the entry right once more"
	case row.Standing == model.Struck || row.Standing == model.Doubled:
		noRight = "it does not count"
	}
	if ok && row.Standing == model.Doubled {
		none = "another entry has its identifier"
	}
	return []keys.Binding{
		keys.New("Entry", right, "enter", "put right", "enter").Explained("put the entry under the hand right; the log keeps both").Unless(noRight),
		keys.New("Entry", strike, "x", "strike out", "x").Explained("strike the entry out, or let it count again").Unless(none),
		keys.New("Entry", useIt, "i", "use anyway", "i").Explained("use a first cup although the standing water was not out").Unless(noUse),
		keys.New("Entry", unfold, "o", "stages", "o").Explained("list the stages of the wash under the hand, or fold them again").Unless(noStages),
	}
}

func (m Model) walkKeys() []keys.Binding {
	newest, oldest := "", ""
	if m.list.hand == 0 {
		newest = "this is the newest entry"
	}
	if m.list.hand >= m.list.count()-1 {
		oldest = "this is the oldest entry"
	}
	return []keys.Binding{
		keys.New("Walk", down, "down", "older", "down", "j").Unless(oldest),
		keys.New("Walk", up, "up", "newer", "up", "k").Unless(newest),
		keys.New("Walk", pageDn, "pgdn", "a page older", "pgdown", " ").Unless(oldest),
		keys.New("Walk", pageUp, "pgup", "a page newer", "pgup", "b").Unless(newest),
		keys.New("Walk", home, "home", "the newest", "home", "g").Unless(newest),
		keys.New("Walk", end, "end", "the oldest", "end", "G").Unless(oldest),
	}
}
