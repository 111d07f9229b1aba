// Package sun says where the sun stands, and when it rises and sets.
package sun

import (
	"fmt"
	"math"
	"time"

	"washeve/model/quantity"
)

// Place is a spot on the earth, east and north positive.
type Place struct {
	Latitude  quantity.Angle
	Longitude quantity.Angle
}

// Check tells what is wrong with the place, or nil.
func (p Place) Check() error {
	if lat := p.Latitude.Degrees(); !(lat >= -90 && lat <= 90) {
		return fmt.Errorf("latitude %g deg is outside -90 to 90; north is positive", lat)
	}
	if lon := p.Longitude.Degrees(); !(lon >= -180 && lon <= 180) {
		return fmt.Errorf("longitude %g deg is outside -180 to 180; east is positive, west negative", lon)
	}
	return nil
}

// Position is where the sun's centre stands for a place and an instant.
type Position struct {
	Altitude quantity.Angle      // above the horizon, as if there were no air
	Azimuth  quantity.Angle      // from true north through east, 0 to a full turn
	Space    quantity.Irradiance // on a surface square to the sun, outside the air
}

// solarConstant in W/m2 at one astronomical unit.
// MEMORY: 1360.8 +- 0.5 W/m2, Kopp and Lean, Geophys. Res. Lett. 38 (2011) L01706.
const solarConstant = 1361

// At computes the sun's position for an instant, by the low-accuracy theory of
// J. Meeus, Astronomical Algorithms, 2nd ed. (1998), chapter 25 (sun), eq. 12.4
// (sidereal time) and 13.5, 13.6 (horizon). MEMORY.
//
// The theory's own accuracy is 0.01 deg. Parallax (at most 0.0025 deg) and the
// difference of dynamical and universal time (0.001 deg) are left out. Against
// two ephemeris programs it keeps within 0.01 deg for 2003 to 2025; near the
// zenith the azimuth is as much worse as it is less defined.
func (p Place) At(t time.Time) Position {
	s := apparent(daysSince2000(t))
	sinLat, cosLat := math.Sincos(float64(p.Latitude))
	sinDec, cosDec := math.Sincos(s.declination)
	sinH, cosH := math.Sincos(s.sidereal + float64(p.Longitude) - s.ascension)
	sinAlt := sinLat*sinDec + cosLat*cosDec*cosH
	azimuth := math.Atan2(-cosDec*sinH, sinDec*cosLat-cosDec*sinLat*cosH)
	if azimuth < 0 {
		azimuth += 2 * math.Pi
	}
	return Position{
		Altitude: quantity.Angle(math.Asin(max(-1, min(1, sinAlt)))),
		Azimuth:  quantity.Angle(azimuth),
		Space:    quantity.Irradiance(solarConstant / (s.distance * s.distance)),
	}
}

// hourAngle is how far the sun is past the meridian, -pi to pi.
func (p Place) hourAngle(t time.Time) float64 {
	s := apparent(daysSince2000(t))
	return math.Remainder(s.sidereal+float64(p.Longitude)-s.ascension, 2*math.Pi)
}

// daysSince2000 counts days of universal time from 2000 January 1, 12 h.
func daysSince2000(t time.Time) float64 {
	const epoch = 946728000 // Unix seconds
	return (float64(t.Unix()-epoch) + float64(t.Nanosecond())*1e-9) / 86400
}

// place of the sun among the stars; angles in radians, distance in AU.
type equatorial struct {
	ascension, declination, distance float64
	sidereal                         float64 // at Greenwich
}

func apparent(days float64) equatorial {
	const deg = math.Pi / 180
	t := days / 36525
	meanLongitude := 280.46646 + t*(36000.76983+t*0.0003032)
	anomaly := deg * (357.52911 + t*(35999.05029-t*0.0001537))
	eccentricity := 0.016708634 - t*(0.000042037+t*0.0000001267)
	sin1, cos1 := math.Sincos(anomaly)
	sin2, sin3 := 2*sin1*cos1, sin1*(3-4*sin1*sin1)
	centre := (1.914602-t*(0.004817+t*0.000014))*sin1 + (0.019993-t*0.000101)*sin2 + 0.000289*sin3
	sinNode, cosNode := math.Sincos(deg * (125.04 - 1934.136*t))
	longitude := deg * (meanLongitude + centre - 0.00569 - 0.00478*sinNode)
	obliquity := deg * (23.43929111 - t*(0.013004167+t*(1.64e-7-t*5.04e-7)) + 0.00256*cosNode)
	sinLon, cosLon := math.Sincos(longitude)
	sinObl, cosObl := math.Sincos(obliquity)
	return equatorial{
		ascension:   math.Atan2(cosObl*sinLon, cosLon),
		declination: math.Asin(sinObl * sinLon),
		distance:    1.000001018 * (1 - eccentricity*eccentricity) / (1 + eccentricity*math.Cos(anomaly+deg*centre)),
		sidereal:    deg * (math.Mod(280.46061837+360.98564736629*days, 360) + t*t*0.000387933 - 0.00478*sinNode*cosObl),
	}
}

// Apparent is the altitude as seen through the air.
func (p Position) Apparent() quantity.Angle { return p.Altitude + Refraction(p.Altitude) }

// Refraction is how much the air lifts a body of this true altitude:
// 1.02' / tan(h + 10.3/(h + 5.11)), h in degrees, for 1010 mbar and 10 C.
// Saemundsson, Sky and Telescope 72 (1986) 70, in Meeus, eq. 16.4. MEMORY.
// Good to 0.1' above the horizon; nothing is added below -1 deg, where nobody
// sees the sun.
func Refraction(altitude quantity.Angle) quantity.Angle {
	h := altitude.Degrees()
	if !(h > -1 && h < 89.9) {
		return 0
	}
	return quantity.Angle(1.02/math.Tan((h+10.3/(h+5.11))*math.Pi/180)) / 60 * quantity.Degree
}
