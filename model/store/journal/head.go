package journal

import (
	"fmt"
	"strconv"
	"strings"

	"washeve/model/store/fault"
)

// formatNumber is the format of the log that this program reads and writes.
const formatNumber = 1

const byteOrderMark = "\xef\xbb\xbf"

// head reads what stands before the first entry, and tells whether to go on.
func (s *scanner) head() bool {
	s.at = len(s.text) - len(strings.TrimPrefix(s.text, byteOrderMark))
	start := s.at
	for s.at < len(s.text) && !isStart(s.text[s.at:]) {
		s.nextLine()
	}
	statements, ok := s.statements(start, s.at, 1)
	if !ok {
		return true
	}
	given := false
	for _, st := range statements {
		switch {
		case st.key != "format" || st.section != "":
			s.add(fault.Unread, st.line, st.key, "is not known here"+notUsed+meant(st.key, []string{"format", "entry"}))
		default:
			given = true
			if !s.format(st) {
				return false
			}
		}
	}
	if !given && len(s.text) > 0 {
		s.add(fault.Notice, 1, "format", fmt.Sprintf("is missing, and taken as %d; write format = %d at the top of the file", formatNumber, formatNumber))
	}
	return true
}

func (s *scanner) format(st statement) bool {
	number, err := strconv.Atoi(st.text)
	switch {
	case err != nil || number < 1:
		s.add(fault.Error, st.line, "format", fmt.Sprintf("%q is no format; write format = %d", st.text, formatNumber))
		return false
	case number > formatNumber:
		s.add(fault.Error, st.line, "", newer(number))
		return false
	}
	return true
}

func newer(number int) string {
	return fmt.Sprintf("format = %d: this log is from a newer washeve; this one reads format = %d, so bring the program up to date", number, formatNumber)
}

// meant ends a message with the known word that was likely meant, if any was.
func meant(word string, known []string) string {
	return fault.Meant(word, known, (len(word)+3)/6)
}
