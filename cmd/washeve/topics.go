package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"washeve/ui/glossary"
	"washeve/ui/theme"
)

const topicColumns = 78

// topics are pages to read that do nothing: washeve help terms.
func topics() []*cobra.Command {
	return []*cobra.Command{
		topic("terms", "What the trade's words mean: bed, grains, bypass, breakthrough, ...", glossary.TermLines),
		topic("trouble", "What to do about spots, a reading that jumped, low flow, ...", glossary.TroubleLines),
	}
}

// topic is a page that is written only when it is asked for.
func topic(name, short string, lines func(theme.Theme, int) []string) *cobra.Command {
	c := &cobra.Command{Use: name, Short: short}
	c.SetHelpFunc(func(c *cobra.Command, _ []string) {
		fmt.Fprintln(c.OutOrStdout(), glossary.Text(lines, topicColumns))
	})
	return c
}
