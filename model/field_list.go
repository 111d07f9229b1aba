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
	f.value = &listed[T]{noun, f.Label, known, all, at}
	return f
}

// listed is a value of several words.
type listed[T ~string] struct {
	noun, label string
	known, all  []T
	at          *[]T
}

func (v *listed[T]) text() string { return joined(*v.at) }

func (v *listed[T]) set(text string) error {
	if strings.EqualFold(strings.TrimSpace(text), "all") {
		*v.at = slices.Clone(v.all)
		return nil
	}
	words, err := v.parse(text)
	if err == nil {
		*v.at = words
	}
	return err
}

func (v *listed[T]) clear()       { *v.at = nil }
func (v *listed[T]) hold() func() { return held(v.at) }

func joined[T ~string](words []T) string {
	texts := make([]string, len(words))
	for i, w := range words {
		texts[i] = string(w)
	}
	return strings.Join(texts, ", ")
}

func (v *listed[T]) parse(text string) ([]T, error) {
	fail := func(reason string) error {
		return &quantity.ParseError{What: v.label, Text: text, Reason: reason, Example: joined(v.known)}
	}
	var words []T
	for _, part := range strings.Split(text, ",") {
		word := T(strings.ToLower(strings.TrimSpace(part)))
		if !slices.Contains(v.known, word) {
			return nil, fail(fmt.Sprintf("names %q, which is no %s", word, v.noun))
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
