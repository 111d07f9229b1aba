package model

// Free tells that the field takes any words, as a name or a note does.
func (f Field) Free() bool {
	_, any := f.value.(*free)
	return any
}
