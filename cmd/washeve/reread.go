package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/ui"
)

// rereads reads the data folder again for the screens whose work k keeps. Nothing that is
// shown there has changed where it fails.
func (p *program) rereads(k *keeper) ui.Reread {
	return func(aside bool) (ui.Anew, error) {
		lib, faults := p.read()
		switch {
		case fault.HasErrors(faults):
			return ui.Anew{}, stays(faults)
		case lib.example:
			return ui.Anew{}, fmt.Errorf("nothing was read anew, and what is here stays: there are no files in %s", lib.keep.Dir())
		}
		sys, err := p.system(lib.Rig)
		if err != nil {
			return ui.Anew{}, err
		}
		changed := k.store.Differs(lib.keep)
		if len(changed) == 0 && !aside {
			k.book.renew()
			if trouble := k.book.unheard(); trouble != "" {
				return ui.Anew{Same: true, Said: trouble, Alarm: true}, nil
			}
			return ui.Anew{Same: true, Said: "All files are as they are shown here."}, nil
		}
		var copies []string
		if aside {
			if copies, err = k.aside(); err != nil {
				return ui.Anew{}, notAside(copies, err)
			}
		}
		lib.goOn(k.file)
		wash, err := p.wash(lib, nil)
		if err != nil {
			return ui.Anew{}, err
		}
		o := p.options(lib, wash, p.bookBeside())
		o.Units, o.Notice, o.InHand = sys, "", ""
		return ui.Anew{Options: o, Said: rereadWords(changed, copies) + lib.noticed(), Alarm: lib.notice != ""}, nil
	}
}

// stays tells the faults for which nothing was read, a line each.
func stays(faults []fault.Fault) error {
	const most = 8
	lines := []string{"Nothing was read anew, and what is here stays. Mend these lines first:"}
	for _, f := range faults {
		if !f.Severity.Stands() {
			lines = append(lines, f.Error())
		}
	}
	if more := len(lines) - 1 - most; more > 0 {
		lines = append(lines[:1+most], fmt.Sprintf("and %d more; %s check tells all of a file", more, toolsName))
	}
	return errors.New(strings.Join(lines, "\n"))
}

// noticed is the first thing to heed in the files, behind other words.
func (lib *library) noticed() string {
	if lib.notice == "" {
		return ""
	}
	return " " + lib.notice
}

// rereadWords tell which files have changed, and which copies were kept of what could not
// be saved.
func rereadWords(changed, copies []string) string {
	text := "Read anew: " + someOf(changed) + ". Undo starts anew."
	if len(changed) == 0 {
		text = "Read anew."
	}
	if len(copies) > 0 {
		text += " What you had here is in " + someOf(copies) + "."
	}
	return text
}

// someOf lists a few files.
func someOf(files []string) string {
	const most = 3
	if more := len(files) - most; more > 0 {
		files = append(slices.Clone(files[:most]), fmt.Sprintf("%d more", more))
	}
	return strings.Join(files, ", ")
}

// goOn puts the wash of a file first, where it is there.
func (lib *library) goOn(file string) {
	at := slices.IndexFunc(lib.Washes, func(w store.WashFile) bool { return w.File == file })
	if at > 0 {
		wash := lib.Washes[at]
		lib.Washes = slices.Insert(slices.Delete(lib.Washes, at, at+1), 0, wash)
	}
}

// aside keeps what could not be saved in copies beside the files, and gives their names.
// One that cannot be kept keeps no other from it; the error then tells of all of them.
func (k *keeper) aside() (copies []string, lost error) {
	beside := k.store.Beside()
	if w := k.lost; w != nil {
		lost = also(also(beside.SavePlaces(w.places), beside.SaveRig(w.rig)), beside.SaveWash(k.file, w.wash))
	}
	for _, w := range k.lostOthers {
		lost = also(lost, beside.SaveWash(w.File, w.Wash))
	}
	lost = also(lost, k.trips.asideTo(beside))
	return beside.Copies(), lost
}

// notAside says why nothing is read anew: of what is here no copy could be kept, or not of
// all of it.
func notAside(copies []string, lost error) error {
	const stays = "nothing was read anew, and what is here stays, since "
	if len(copies) == 0 {
		return fmt.Errorf(stays+"no copy of it could be kept: %w", lost)
	}
	return fmt.Errorf(stays+"not all of it could be kept in copies: %w; what could be kept is in %s", lost, someOf(copies))
}

// asideTo saves every trip in a store of copies.
func (k *tripKeeper) asideTo(beside *store.Store) (lost error) {
	if k.borrowed {
		return nil
	}
	for i, t := range k.trips {
		file := k.files[i]
		if file == "" {
			file = beside.NewTripFile(t.Name)
		}
		lost = also(lost, beside.SaveTrip(file, t))
	}
	return lost
}
