package pattern_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/pattern"
)

func TestAPatternIsCompiledOnceAndWhenAsked(t *testing.T) {
	digits := pattern.Of(`^\d+$`)
	assert.True(t, digits().MatchString("42"))
	assert.Same(t, digits(), digits())
	wrong := pattern.Of(`(`)
	assert.Panics(t, func() { wrong() }, "and not before it is asked for")
}
