package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestAnExampleIsAboutAsMuchInMetricUnits: about as much as the US one, by GNU Units 2.22 and
// rounded by hand.
func TestAnExampleIsAboutAsMuchInMetricUnits(t *testing.T) {
	for _, c := range []struct {
		kind     *Kind
		us, like string
	}{
		{&lengthKind, "40 ft 6 in", "12.3 m"},
		{&lengthKind, "50 ft", "15 m"},
		{&lengthKind, "4000 ft", "1200 m"},
		{&lengthKind, "8 in", "20 cm"},
		{&lengthKind, "5/8 in", "16 mm"},
		{&temperatureKind, "58 F", "14 C"},
		{&flowKind, "1.4 gpm", "5.3 L/min"},
		{&volumeKind, "0.5 ft3", "14 L"},
		{&volumeKind, "300 gal", "1100 L"},
		{&speedKind, "12 mph", "19 km/h"},
		{&pressureKind, "55 psi", "3.8 bar"},
		{&doseKind, "8 lb/ft3", "130 g/L"},
		{&capacityDensityKind, "10000 gr/ft3", "0.46 eq/L"},
		{&capacityDensityKind, "1.9 eq/L", "1.9 eq/L"},
		{&durationKind, "2 min 30 s", "2 min 30 s"},
		{&filmKind, "60 mL/m2", "60 mL/m2"},
		{&lengthKind, "3.8 m", "3.8 m"},
		{&lengthKind, "no length", "no length"},
	} {
		assert.Equal(t, c.like, c.kind.Like(c.us, Metric), c.us)
		assert.Equal(t, c.us, c.kind.Like(c.us, US), c.us)
	}
}

// TestARangeInMetricUnitsIsNotLoosened: its ends are within those that are checked.
func TestARangeInMetricUnitsIsNotLoosened(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		in   Range
		want string
	}{
		{&volumeKind, Range{"0.02 ft3", "10 ft3"}, "is outside 0.567 L to 283 L"}, // 0.5663 L and 283.17 L
		{&lengthKind, Range{"5 ft", "75 ft"}, "is outside 1.53 m to 22.8 m"},      // 1.524 m and 22.86 m
		{&lengthKind, Range{"2 in", "36 in"}, "is outside 50.8 mm to 91.4 cm"},    // 50.8 mm and 91.44 cm
		{&temperatureKind, Range{"33 F", "140 F"}, "is outside 0.556 C to 60 C"},  // 0.5556 C and 60 C
		{&fractionKind, Range{"0.1 %", "50 %"}, "is outside 0.1 % to 50 %"},       // no other units
		{&capacityDensityKind, Range{"0.3 eq/L", "3 eq/L"}, "is outside 0.3 eq/L to 3 eq/L"},
	} {
		wrong := Outside(c.kind, c.in, "it", "text", c.in.Low)
		assert.Equal(t, "is outside "+c.in.Low+" to "+c.in.High, wrong.Reason)
		assert.Same(t, wrong, InUnits(wrong, Metric))
		assert.Equal(t, c.want, wrong.Reason)
	}
}

func TestAnErrorNamesWhatIsRightInTheUnitsShown(t *testing.T) {
	_, err := Parse[Flow]("5 furlongs")
	assert.ErrorContains(t, InUnits(err, US), "write the flow like 1.4 gpm")
	assert.ErrorContains(t, InUnits(err, Metric), "write the flow like 5.3 L/min")
	assert.NoError(t, InUnits(nil, Metric))
	_, err = ParseReading("5")
	assert.Equal(t, err.Error(), InUnits(err, Metric).Error(), "a reading is the same everywhere")
}

func TestTheFamilyOfATextIsThatOfItsUnit(t *testing.T) {
	for text, want := range map[string]System{"12,2 m": Metric, "40 ft 6 in": US, "40' 6\"": US, "5/8 in": US, "300 mm": Metric} {
		sys, ok := lengthKind.SystemOf(text)
		assert.True(t, ok, text)
		assert.Equal(t, want, sys, text)
	}
	for _, text := range []string{"", "12", "m", "12 kg", "12 m 20"} {
		_, ok := lengthKind.SystemOf(text)
		assert.False(t, ok, text)
	}
	_, ok := hardnessKind.SystemOf("160 mg/L as CaCO3")
	assert.False(t, ok, "water reports of both families state it so")
	_, ok = durationKind.SystemOf("5 min")
	assert.False(t, ok, "there is no other")
}

// TestSmallLengthsAndSpeedsHaveSmallerUnits: what is under a metre is in centimetres.
func TestSmallLengthsAndSpeedsHaveSmallerUnits(t *testing.T) {
	assert.Equal(t, "20.2 cm", Show(Length(0.202), Metric))
	assert.Equal(t, "15.9 mm", Show(Length(0.0159), Metric))
	assert.Equal(t, "1 m", Show(Length(1), Metric))
	assert.Equal(t, "0 m", Show(Length(0), Metric))
	assert.Equal(t, "36 m/h", Show(Speed(0.01), Metric))
	assert.Equal(t, "36 km/h", Show(Speed(10), Metric))
	assert.Equal(t, "8 in", Show(8*Inch, US))
}
