package form

import (
	"fmt"
	"strings"
)

// Lost is why leaving would lose what is typed on the line of that label: a text that cannot
// be taken as it stands. It is nil where there is none; a text that lacks its unit is none,
// since leaving takes it with the one that is offered.
func (e *Edit) Lost(label string) error {
	if !e.Refused() || strings.TrimSpace(e.Text()) == "" {
		return nil
	}
	return fmt.Errorf("what is typed: %s", e.refusal(label))
}

// LostName is why leaving would lose the name of something new: it is there only once its
// name is taken. It is nil where no name was typed.
func (e *Edit) LostName(noun string) error {
	if !e.Replaced && e.Problem == nil || strings.TrimSpace(e.Text()) == "" {
		return nil
	}
	return fmt.Errorf("the new %s %s, which is there only once its name is taken", noun, quotedShort(e.Text()))
}
