package model

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model/quantity"
)

// wordList is a field of several words out of those that are known. "all" stands
// for what all is.
func wordList[T ~string](noun string, known, all []T, f Field, at *[]T) Field {
	f.List = true
	f.text = func() string { return joined(*at) }
	f.set = func(text string) error {
		if strings.EqualFold(strings.TrimSpace(text), "all") {
			*at = slices.Clone(all)
			return nil
		}
		words, err := parseList(noun, known, f, text)
		if err == nil {
			*at = words
		}
		return err
	}
	f.clear = func() { *at = nil }
	f.hold = held(at)
	return f
}

func joined[T ~string](words []T) string {
	texts := make([]string, len(words))
	for i, w := range words {
		texts[i] = string(w)
	}
	return strings.Join(texts, ", ")
}

func parseList[T ~string](noun string, known []T, f Field, text string) ([]T, error) {
	fail := func(reason string) error {
		return &quantity.ParseError{What: f.Label, Text: text, Reason: reason, Example: joined(known)}
	}
	var words []T
	for _, part := range strings.Split(text, ",") {
		word := T(strings.ToLower(strings.TrimSpace(part)))
		if !slices.Contains(known, word) {
			return nil, fail(fmt.Sprintf("names %q, which is no %s", word, noun))
		}
		if slices.Contains(words, word) {
			return nil, fail(fmt.Sprintf("names %q twice", word))
		}
		words = append(words, word)
	}
	return words, nil
}

// facesField holds faces of the vehicle. "all" stands for what all is.
func facesField(key, label, help, example string, all []Side, at *[]Side) Field {
	return wordList("face", []Side{Left, Right, Front, Rear, Roof}, all, Field{Key: key, Label: label, Help: help, Example: example}, at)
}
