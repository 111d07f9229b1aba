//go:build unix

package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui"
	"washeve/ui/keys"
)

// binding is a row of a key table: the folder of ui, the heading, what it does.
type binding struct{ folder, group, does string }

// press is a key of a row of a table.
type press struct {
	binding
	key string
}

// Every key that a screen says it has is pressed in a real terminal, where it can act
// and where it cannot: the program lives, and the frame is the one that the screen means
// to show. A row of a key table that is pressed nowhere fails, and so does one that can
// act and changes nothing.
func TestEveryKeyOfEveryScreen(t *testing.T) {
	var mu sync.Mutex
	acted := map[binding]bool{}
	met, pressed, count := map[binding]bool{}, map[press]bool{}, 0
	t.Run("stations", func(t *testing.T) {
		for _, st := range stations() {
			var can []press
			var cannot []string
			for _, b := range st.twin(t).Keys() {
				for _, folder := range append(strings.Fields(st.screen), ".", "form") {
					for _, group := range []string{b.Group, ""} { // "" for a heading that is worked out
						row := binding{folder, group, string(b.Does)}
						met[row] = met[row] || b.Blocked == ""
					}
				}
				if b.Blocked != "" {
					cannot = append(cannot, b.Keys()...)
					continue
				}
				for _, key := range some(b.Keys()) {
					p := press{binding{st.screen, b.Group, string(b.Does)}, key}
					if !ends(b) && !pressed[p] { // for a way out there is a test of its own
						pressed[p] = true
						can = append(can, p)
						count++
					}
				}
			}
			t.Run(st.name, func(t *testing.T) {
				t.Parallel()
				did := st.acts(t, can, cannot)
				mu.Lock()
				defer mu.Unlock()
				for row := range did {
					acted[row] = true
				}
			})
		}
	})
	for _, row := range tables(t) {
		if _, is := unreachable()[row]; !is {
			assert.True(t, met[row], "no station presses %q (%s) of ui/%s where it can act", row.does, row.group, row.folder)
		}
	}
	for p := range pressed {
		assert.True(t, acted[p.binding], "%q (%s) of ui/%s is said to act, and changes nothing", p.does, p.group, p.folder)
	}
	t.Logf("%d keys that act, at %d stations", count, len(stations()))
}

// some are the keys of a row; of one that takes the whole alphabet as text, every seventh
// letter, small and large.
func some(all []string) []string {
	const alphabet, every = 26, 7
	if len(all) < alphabet {
		return all
	}
	var few []string
	for i := 0; i < len(all); i += every {
		few = append(few, all[i])
	}
	return few
}

// unreachable are the rows for which there is no station, and why.
func unreachable() map[binding]string {
	return map[binding]string{
		{"compare", "Compare", "back"}: "nothing can be compared only where there is no plan, and then C does not open the page",
	}
}

// noKey is a letter that is no key of any screen, and is told so where text can be typed.
const noKey = "z"

// acts presses the keys that cannot act, then those that can, one after another for as
// long as they can, and gives the rows that changed the frame. Where a key leads away, esc may lead back; else
// the program is started anew.
func (st station) acts(t *testing.T, todo []press, cannot []string) (did map[binding]bool) {
	did = map[binding]bool{}
	var twin ui.App
	var s *screen
	both := func(key string) {
		twin = given(twin, keys.Press(key)).(ui.App)
		s.press(key)
		s.becomes(shown(twin.View()))
		s.fits(80, 24)
	}
	fresh := false
	for title := ""; len(todo)+len(cannot) > 0; {
		i := -1
		if s != nil && len(todo) > 0 {
			if i = offered(twin, title, todo); i < 0 && !slices.ContainsFunc(twin.Keys(), func(b keys.Binding) bool { return ends(b) && b.Does == "leave" }) {
				both("esc")
				i = offered(twin, title, todo)
			}
		}
		if i < 0 {
			require.False(t, fresh, "%v cannot be pressed where it is said to act", todo)
			if s != nil {
				s.kill()
			}
			twin, s = st.twin(t), st.open(t, setup{margin: 4})
			title = twin.Title()
			s.becomes(shown(twin.View()))
			for _, key := range cannot {
				both(key)
			}
			cannot, fresh = nil, true
			continue
		}
		anew := todo[i].does == "read anew" // which ends beside the screens, and says the same each time
		if anew {
			both(noKey)
		}
		before := shown(twin.View())
		both(todo[i].key)
		if shown(twin.View()) != before {
			did[todo[i].binding] = true
		}
		require.True(t, did[todo[i].binding] || !anew, "nothing shows that all was read anew")
		todo, fresh = slices.Delete(todo, i, i+1), false
	}
	return did
}

// offered is the first of some keys that can act where the program is now; -1 for none.
func offered(a ui.App, title string, todo []press) int {
	if a.Title() != title {
		return -1
	}
	return slices.IndexFunc(todo, func(p press) bool {
		return slices.ContainsFunc(a.Keys(), func(b keys.Binding) bool {
			return b.Group == p.group && string(b.Does) == p.does && b.Blocked == "" && slices.Contains(b.Keys(), p.key)
		})
	})
}

// becomes waits until the screen shows a frame, but for the time of day.
func (s *screen) becomes(frame string) {
	s.t.Helper()
	want := timeless(frame)
	end := time.Now().Add(patience)
	s.mu.Lock()
	defer s.mu.Unlock()
	for timeless(s.text()) != want && !s.over && time.Now().Before(end) {
		s.mu.Unlock()
		s.pause()
		s.mu.Lock()
	}
	require.Equal(s.t, want, timeless(s.text()), "the screen should show what the program means")
}

// shown is a frame as [screen.text] gives it, in a window of the usual size with a margin.
func shown(view string) string {
	var b strings.Builder
	lines := strings.Split(ansi.Strip(view), "\n")
	for y := range 24 + 4 {
		line := ""
		if y < len(lines) {
			line = lines[y]
		}
		b.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	return b.String()
}

var ofTheMoment = regexp.MustCompile(`\d+:\d\d(:\d\d(Z|[+-]\d\d:\d\d)?)?|\b[0-9a-z]{16}\b|\d{8}-\d{6}`)

// timeless is a text without the times of day and the identifiers made of them: the
// twins do not run at one moment.
func timeless(text string) string { return ofTheMoment.ReplaceAllString(text, "#") }

// tables are all rows of the key tables in the source of the screens.
func tables(t *testing.T) (rows []binding) {
	t.Helper()
	files, err := filepath.Glob("../../ui/*/*.go")
	require.NoError(t, err)
	files = append(files, "../../ui/app.go")
	constants := map[string]string{}
	var parsed []*ast.File
	var folders []string
	for _, path := range files {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		require.NoError(t, err)
		folder, err := filepath.Rel("../../ui", filepath.Dir(path))
		require.NoError(t, err)
		parsed, folders = append(parsed, file), append(folders, folder)
		ast.Inspect(file, func(n ast.Node) bool {
			if v, ok := n.(*ast.ValueSpec); ok && len(v.Values) == 1 {
				constants[folder+" "+v.Names[0].Name] = literal(v.Values[0])
			}
			return true
		})
	}
	for i, file := range parsed {
		ast.Inspect(file, func(n ast.Node) bool {
			call, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			switch f, _ := call.Fun.(*ast.SelectorExpr); {
			case f == nil || folders[i] == "history" || folders[i] == "keeping": // their keys are rows of the screens that ask for them
			case len(call.Args) >= 5 && f.Sel.Name == "New" && fmt.Sprint(f.X) == "keys":
				does, known := constants[constantOf(folders[i], call.Args[1])]
				require.True(t, known, "what a key does is a constant: a row of ui/%s", folders[i])
				rows = append(rows, binding{folders[i], literal(call.Args[0]), does})
			case f.Sel.Name == "UndoKey" || f.Sel.Name == "RedoKey":
				rows = append(rows, binding{folders[i], literal(call.Args[0]), strings.ToLower(strings.TrimSuffix(f.Sel.Name, "Key"))})
			case f.Sel.Name == "AnewKey":
				rows = append(rows, binding{folders[i], literal(call.Args[0]), constants["keeping Anew"]})
			}
			return true
		})
	}
	require.Greater(t, len(rows), 200)
	return rows
}

// constantOf is the folder and the name of a constant of that folder, or of another one.
func constantOf(folder string, e ast.Expr) string {
	switch e := e.(type) {
	case *ast.Ident:
		return folder + " " + e.Name
	case *ast.SelectorExpr:
		return fmt.Sprint(e.X) + " " + e.Sel.Name
	}
	return ""
}

func literal(e ast.Expr) string {
	if lit, ok := e.(*ast.BasicLit); ok {
		text, _ := strconv.Unquote(lit.Value)
		return text
	}
	return ""
}
