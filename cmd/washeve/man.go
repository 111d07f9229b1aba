package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"washeve/ui/glossary"
	"washeve/ui/manual"
)

func (p *program) manCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "man",
		Short: "Print the manual page, for man(1)",
		Long:  "Print the manual page. `washeve man | man -l -` shows it.",
		Args:  noArguments,
		RunE: func(c *cobra.Command, _ []string) error {
			_, err := fmt.Fprint(p.out, manualPage(c.Root(), builtNow()))
			return err
		},
	}
}

// manualPage is made from the commands themselves, so that it names them all.
func manualPage(root *cobra.Command, b built) string {
	page := manual.New(toolsName, 1, b.day(), toolsName+" "+b.version)
	page.Section("Name")
	page.Text(toolsName + " - " + strings.ToLower(root.Short[:1]) + root.Short[1:])
	page.Section("Synopsis")
	page.Lines(toolsName+" [OPTIONS]", toolsName+" COMMAND [OPTIONS] [ARGUMENTS]")
	page.Section("Description")
	page.Text(root.Long)
	page.Section("Commands")
	manualCommands(page, root)
	page.Section("Options of every command")
	manualFlags(page, root.PersistentFlags())
	manualUse(page)
	manualFiles(page)
	manualWords(page)
	return page.String()
}

// manualCommands lists the commands below one, each with its own options.
func manualCommands(page *manual.Page, above *cobra.Command) {
	for _, c := range above.Commands() {
		if c.IsAvailableCommand() && c.Name() != "help" {
			manualCommand(page, c)
		}
	}
}

func manualCommand(page *manual.Page, c *cobra.Command) {
	if c.HasAvailableSubCommands() && c.Name() == "completion" {
		page.Part(c.CommandPath() + " SHELL")
		page.Text(c.Short + ": " + strings.Join(namesBelow(c), ", ") + ".")
		return
	}
	if c.HasAvailableSubCommands() {
		manualCommands(page, c)
		return
	}
	page.Part(strings.TrimSuffix(c.UseLine(), " [flags]"))
	words := c.Short + "."
	if c.Long != "" {
		words = c.Long
	}
	manualWritten(page, words)
	manualFlags(page, c.LocalNonPersistentFlags())
	if c.Example != "" {
		page.Lines(strings.Split(c.Example, "\n")...)
	}
}

// manualWritten writes paragraphs; one of indented lines stays as it is.
func manualWritten(page *manual.Page, text string) {
	for paragraph := range strings.SplitSeq(text, "\n\n") {
		if strings.HasPrefix(paragraph, " ") {
			page.Lines(strings.Split(paragraph, "\n")...)
			continue
		}
		page.Text(paragraph)
	}
}

func namesBelow(c *cobra.Command) []string {
	var names []string
	for _, below := range c.Commands() {
		names = append(names, below.Name())
	}
	return names
}

func manualFlags(page *manual.Page, flags *pflag.FlagSet) {
	flags.VisitAll(func(f *pflag.Flag) {
		if f.Hidden || f.Name == "help" {
			return
		}
		name, usage := pflag.UnquoteUsage(f)
		head := "--" + f.Name
		if f.Shorthand != "" {
			head = "-" + f.Shorthand + ", " + head
		}
		switch name {
		case "":
		case "int":
			head += " NUMBER"
		default:
			head += " TEXT"
		}
		page.Term(head, usage)
	})
}

// manualUse is what comes in and out besides the commands.
func manualUse(page *manual.Page) {
	page.Section("Environment")
	for _, e := range environment() {
		page.Term(e[0], e[1])
	}
	page.Section("Exit status")
	for _, e := range exits() {
		page.Term(fmt.Sprint(e.code), e.means)
	}
	page.Section("Examples")
	for _, e := range examples() {
		page.Text(e[1])
		page.Lines(e[0])
	}
}

func manualFiles(page *manual.Page) {
	page.Section("Files")
	page.Text("The data folder is that of --dir, else $WASHEVE_DIR, else washeve in the user's data home (~/.local/share on Linux). All of it is plain TOML; the folder can be copied, kept in version control and read by other programs. Comments and order survive whatever the program changes.")
	for _, f := range dataFiles() {
		page.Term(f[0], f[1])
	}
}

func manualWords(page *manual.Page) {
	page.Section("Terms")
	for _, t := range glossary.Terms() {
		page.Term(t.Word, t.Text)
	}
	page.Section("When something goes wrong")
	for _, t := range glossary.Troubles() {
		page.Part(t.Asks)
		for _, c := range t.Causes {
			page.Term(c.What, c.Tell)
			page.Said("To do:", c.Do)
		}
	}
}
