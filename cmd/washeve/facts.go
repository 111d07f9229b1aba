package main

// environment is the variables that the program heeds, and what each does.
func environment() [][2]string {
	return [][2]string{
		{"WASHEVE_DIR", "the data folder, where --dir names none"},
		{"XDG_DATA_HOME", "where data folders are, where neither of the two names one"},
		{"NO_COLOR", "where it is set to anything, no colour is sent"},
		{"TERM", "dumb makes the program print instead of draw"},
		{"LC_ALL, LC_MONETARY, LANG", "the first that is set names the currency that a bare price is offered, where the rig states none"},
		{"LC_ALL, LC_MEASUREMENT, LANG", "the first that is set names the units that are shown, where neither --units nor the rig does: US ones for the territories US, LR and MM and where it names none, metric ones for all others"},
		{"TZ", "the time zone of the clock, for the log's moments"},
	}
}

// exit is a code that the program ends with, and its meaning.
type exit struct {
	code  int
	means string
}

func exits() []exit {
	return []exit{
		{done, "Done."},
		{couldNot, "It could not be done: a full disk, a folder that cannot be written, a log that is locked."},
		{wrongUse, "Wrong use or wrong input. The words on the error stream name the file, the line and what would be right."},
		{shortBed, "With plan --strict: the bed will not last this wash."},
	}
}

// dataFiles is what the data folder holds.
func dataFiles() [][2]string {
	return [][2]string{
		{"rig.toml", "what you own: vehicles, DI beds, softeners, sprayers, hoses, pens, and your defaults"},
		{"places.toml", "the water by place"},
		{"washes/*.toml", "the washes, one a file"},
		{"trips/*.toml", "the seasons, one a file"},
		{"log.toml", "what was done: washes, readings, resin changes, regenerations. It is only ever added to"},
	}
}

func examples() [][2]string {
	return [][2]string{
		{toolsName, "Plan tomorrow's wash on the screen:"},
		{toolsName + " plan --units metric | less", "Read the plan in litres:"},
		{toolsName + " log reading \"3 ppm NaCl\" --flushed yes", "Write down what the pen showed after the flush:"},
		{toolsName + " plan --strict || echo \"order resin\"", "Be told by a script when the bed will not last:"},
		{toolsName + " trip --ways", "Set ways of doing the next trip side by side:"},
		{toolsName + " log export -o log.csv", "Take the log to a spreadsheet:"},
	}
}
