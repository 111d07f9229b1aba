package model

// OfClock tells that the field holds a time of the day.
func (f Field) OfClock() bool {
	_, tells := f.value.(*stated[TimeOfDay, written[TimeOfDay]])
	return tells
}

// Free tells that the field takes any words, as a name or a note does.
func (f Field) Free() bool {
	_, any := f.value.(*free)
	return any
}
