package short

import (
	"washeve/model"
	"washeve/planner"
	"washeve/planner/split"
	"washeve/ui/keys"
)

const (
	up     keys.Action = "up"
	down   keys.Action = "down"
	other  keys.Action = "other list"
	turn   keys.Action = "pin"
	pinIn  keys.Action = "pin in"
	pinOut keys.Action = "pin out"
	free   keys.Action = "free all"
	more   keys.Action = "surer"
	less   keys.Action = "less sure"
	take   keys.Action = "take"
	why    keys.Action = "why"
	back   keys.Action = "back"
)

// Keys lists the keys as the screen now stands. The first ones are those shown
// at the foot.
func (m Model) Keys() []keys.Binding {
	nothing := ""
	if m.err != nil {
		nothing = "there is no plan to share out"
	}
	return append(m.pinKeys(), append(m.wayKeys(nothing), m.walkKeys(nothing)...)...)
}

func (m Model) pinKeys() []keys.Binding {
	noFace, isIn, isOut, none := "", "", "", ""
	f, ok := m.face()
	if !ok {
		noFace = "no face is under the hand"
	}
	if f.Pin == split.In {
		isIn = "it is pinned in"
	}
	if f.Pin == split.Out {
		isOut = "it is pinned out"
	}
	if len(m.now.DIFaces)+len(m.now.TowelFaces) == 0 {
		none = "no face is pinned"
	}
	return []keys.Binding{
		keys.New("Share", turn, "space", "pin or free", " ").Explained("pin the face the other way than it has it; free a face that is pinned").Unless(noFace),
		keys.New("Share", pinIn, "i", "pin in", "i").Explained("this face gets DI water whatever else falls short").Unless(noFace + isIn),
		keys.New("Share", pinOut, "o", "pin out", "o").Explained("this face gets a towel instead").Unless(noFace + isOut),
		keys.New("Share", free, "x", "free all", "x").Explained("no face is pinned any more").Unless(none),
		keys.New("Share", less, "-", "less sure", "-").Explained("share out more water, with less confidence that the bed gives it").Unless(m.end(-1)),
		keys.New("Share", more, "+", "surer", "+", "=").Explained("share out less water, with more confidence that the bed gives it").Unless(m.end(1)),
	}
}

// end tells why the confidence goes no further.
func (m Model) end(by int) string {
	all := confidences()
	now := m.now.Confidence.Or(model.UsualConfidence)
	switch {
	case m.err != nil:
		return "there is no plan to share out"
	case by < 0 && now <= all[0]:
		return "less would be a guess"
	case by > 0 && now >= all[len(all)-1]:
		return "no bed is surer"
	}
	return ""
}

func (m Model) wayKeys(nothing string) []keys.Binding {
	return []keys.Binding{
		keys.New("Ways", take, "enter", "take it", "enter").Explained("make the way under the hand the plan, and go back; on a face, the share as it stands. " + m.th.Key("u", "undo") + " on the plan takes it back").Unless(m.cannotTake()),
		keys.New("See", back, "esc", "back", "esc", "backspace").Explained("back to the plan with these pins; there " + m.th.Key("u", "undo") + " takes them back"),
		keys.New("See", why, "y", "where from", "y").Explained("where each number comes from").Unless(nothing),
		m.history.UndoKey("Share"),
		m.history.RedoKey("Share"),
		keys.UnitsKey(),
	}
}

func (m Model) walkKeys(nothing string) []keys.Binding {
	return []keys.Binding{
		keys.New("Walk", down, "down", "line down", "down", "j").Unless(nothing),
		keys.New("Walk", up, "up", "line up", "up", "k").Unless(nothing),
		keys.New("Walk", other, "tab", "faces or ways", "tab", "shift+tab").Unless(nothing),
	}
}

// cannotTake tells why enter does nothing here.
func (m Model) cannotTake() string {
	if m.err != nil {
		return "there is no plan to share out"
	}
	if _, ok := m.face(); ok {
		switch {
		case m.share.Short > 0:
			return "the faces pinned in need more than the bed gives"
		case len(m.share.Order()) == 0:
			return "no face is sure enough; " + m.th.Key("-", "less sure") + " asks for less"
		}
		return ""
	}
	w, ok := m.way()
	switch {
	case !ok:
		return "no way is under the hand"
	case w.Not.Code != "":
		return w.Not.Text(m.sys)
	case m.waysOf != m.turn:
		return "the ways are being worked out"
	case w.Code == planner.WayBuy:
		return "there is nothing to state: buy it, and rinse with it what the bed does not reach"
	}
	return ""
}
