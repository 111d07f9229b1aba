package washday

import (
	"errors"
	"strings"
)

// Leave tells of a deed that is not written, and of a reading or a flow that is typed or
// waits for an answer: leaving would lose it.
func (m Model) Leave() error {
	switch {
	case m.kept != nil:
		return errors.New("the last thing done is not written: " + m.kept.Error())
	case m.again != "" || m.stood != "" || m.slip != "":
		return errors.New("the reading on the wash day is not written yet; it waits for an answer")
	case m.edit == nil || strings.TrimSpace(m.edit.Text()) == "":
		return nil
	}
	return errors.New("the " + string(m.asks) + " on the wash day is not written yet; " + m.th.Key("enter", "what it is") + " writes it")
}
