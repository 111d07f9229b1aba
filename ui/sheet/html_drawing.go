package sheet

func coachHTML(d coachDrawing) markup {
	return `<figure class="coach">
<svg viewBox="0 0 340 ` + text(d.Height) + `" role="img" aria-labelledby="coach-title coach-told">
<title id="coach-title">The vehicle from its left side, front at the left</title>
<desc id="coach-told">` + text(d.Told) + `</desc>
` + patterns("of-raw", "of-softened", "of-di") +
		each(d.Parts, func(p coachPart) markup {
			return `<rect class="ground"` + p.at() + ` rx="3"/><rect class="body"` + filled(p.Water) + p.at() + ` rx="3"/>
`
		}) + each(d.Windows, func(r rect) markup { return `<rect class="ground outline"` + r.at() + ` rx="4"/>` }) + `
` + each(d.Wheels, func(x string) markup {
		return `<circle class="wheel" cx="` + text(x) + `" cy="` + text(d.WheelY) + `" r="11"/>`
	}) + `
<path class="outline" d="M0 ` + text(d.Ground) + `H340"/>
` + each(d.Words, func(p placed) markup { return p.words(` class="plate"`) + "\n" }) + `</svg>
<figcaption>The last water on each face, and what will be seen when it has dried</figcaption>
</figure>
`
}

func tankHTML(d tankDrawing) markup {
	return `<figure class="tank">
<svg viewBox="0 0 340 150" role="img" aria-labelledby="tank-title tank-told">
<title id="tank-title">The resin in the tank, from the inlet at the top</title>
<desc id="tank-told">` + text(d.Told) + `</desc>
` + patterns("of-spent", "of-working", "of-fresh") + each(d.Tanks, func(t tankStand) markup {
		return t.Name.words("") + "\n" + each(t.Layers, func(l layerDrawing) markup {
			return `<rect class="ground"` + l.at() + `/><rect class="body"` + filled(l.Layer) + l.at() + `/>`
		}) + `
<rect class="outline"` + t.Shell.at() + ` rx="2"/>
`
	}) + each(d.Words, func(p placed) markup { return p.words("") + "\n" }) + `</svg>
<figcaption>The bed now and after the wash; the feed comes in at the top</figcaption>
</figure>
`
}

// patterns are the three ways of filling a shape: lines, dots and dashes.
func patterns(lines, dots, dashes markup) markup {
	return `<defs>
<pattern id="` + lines + `" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="s-raw" d="M0 0V6"/></pattern>
<pattern id="` + dots + `" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="f-softened" cx="3" cy="3" r="1.6"/></pattern>
<pattern id="` + dashes + `" width="24" height="12" patternUnits="userSpaceOnUse"><path class="s-di" d="M0 6H11"/></pattern>
</defs>
`
}

func filled(pattern string) markup { return ` fill="url(#of-` + text(pattern) + `)"` }

func (r rect) at() markup {
	return ` x="` + text(r.X) + `" y="` + text(r.Y) + `" width="` + text(r.W) + `" height="` + text(r.H) + `"`
}

func (p placed) words(attribute markup) markup {
	return `<text` + attribute + ` x="` + text(p.X) + `" y="` + text(p.Y) + `">` + text(p.Text) + `</text>`
}
