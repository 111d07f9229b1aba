package theme

// Marks are the characters that lines and pictures are made of.
type Marks struct {
	Here                string // where the hand is
	Rule, Wall          string
	TopLeft, TopRight   string
	LowLeft, LowRight   string
	Full, Rest          string // a bar and what is left of it
	Beyond              string // a bar that goes off the scale
	Edge                string // the cap, drawn across the bars
	More                string // text that was cut
	Dot                 string // between two words
	Good, Doubt, Bad    string // in front of a verdict
	RawFill, SoftFill   string // the three waters on a face
	DIFill              string
	Spent, Working      string // the layers of a bed
	Fresh               string
	Faint, Seen, Towel  string // spots on a face
	Wheel               string
	Median, Band, Limit string // the outlet curve
	Up, Down            string // more above, more below
	Sun                 string
	Block               string // of letters drawn large
	Best                string // in front of the best figure of a row
}

func drawn() Marks {
	return Marks{
		Here: "›", Rule: "─", Wall: "│",
		TopLeft: "╭", TopRight: "╮", LowLeft: "╰", LowRight: "╯",
		Full: "━", Rest: "─", Beyond: "»", Edge: "┊", More: "…", Dot: "·",
		Good: "●", Doubt: "◐", Bad: "○",
		RawFill: "▓", SoftFill: "▒", DIFill: " ",
		Spent: "▓", Working: "▒", Fresh: "░",
		Faint: "·", Seen: "o", Towel: "●", Wheel: "◉",
		Median: "•", Band: "░", Limit: "┄", Up: "↑", Down: "↓", Sun: "☼", Block: "█", Best: "●",
	}
}

func ascii() Marks {
	return Marks{
		Here: ">", Rule: "-", Wall: "|",
		TopLeft: "+", TopRight: "+", LowLeft: "+", LowRight: "+",
		Full: "#", Rest: ".", Beyond: ">", Edge: ":", More: "...", Dot: "-",
		Good: "+", Doubt: "?", Bad: "!",
		RawFill: "r", SoftFill: "s", DIFill: "d",
		Spent: "x", Working: "w", Fresh: ".",
		Faint: ".", Seen: "o", Towel: "O", Wheel: "O",
		Median: "*", Band: ".", Limit: "-", Up: "^", Down: "v", Sun: "*", Block: "#", Best: "*",
	}
}
