package theme

// Palette gives the number of each meaning's colour in the 256 colours, for a
// ground. Those past 16 look the same on every terminal, so their contrast can
// be computed.
func Palette(ground Ground) map[string]string {
	if ground == Light {
		return map[string]string{
			"raw": "94", "softened": "55", "di": "24", "sun": "94",
			"good": "24", "doubt": "94", "bad": "161",
			"muted": "241", "accent": "61", "edge": "245",
		}
	}
	return map[string]string{
		"raw": "215", "softened": "177", "di": "80", "sun": "228",
		"good": "80", "doubt": "221", "bad": "210",
		"muted": "247", "accent": "153", "edge": "243",
	}
}
