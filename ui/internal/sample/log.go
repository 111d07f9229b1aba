package sample

import "washeve/model"

// Log is a log in memory that can be written to, or fails.
type Log struct {
	Kept model.Log
	Fail error // why nothing can be written; nil where it can
}

// Append adds entries.
func (l *Log) Append(entries ...model.Entry) error {
	if l.Fail != nil {
		return l.Fail
	}
	l.Kept = model.Merge(l.Kept, model.Log(entries))
	return nil
}

// Log gives all entries.
func (l *Log) Log() model.Log { return l.Kept }
