package form

// NumberKeys begin a new number on the line under the hand, a price by its sign too. So does a minus: the text
// then says why no value below zero can be, where a lone 5 would be taken in its place.
func NumberKeys() []string {
	return []string{"-", ".", "$", "€", "£", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9"}
}
