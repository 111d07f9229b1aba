// Package glossary is what the trade's words mean and what to do when a wash
// goes wrong, in plain sentences: for the screens, the command line and the
// manual page alike.
package glossary

// Term is a word of the trade.
type Term struct {
	Word string
	Text string
}

// Terms lists the words in the order of the alphabet.
func Terms() []Term {
	return []Term{
		{"alkalinity", "The part of the dissolved matter that is carbonate, in grains per gallon as CaCO3. A bed takes it out like the rest; where it is not measured, the plan takes a usual share."},
		{"band", "From a low to a high figure, as \"8 in 10: 40 to 150 gal\": of ten such beds one has less than the first and one more than the last. The figure before it is the middle, which half of such beds reach."},
		{"bed", "A tank filled with resin that the water runs through. What the water leaves in it is gone from the water; when the resin is full, the bed is spent and its resin is changed."},
		{"breakthrough", "The time when the outlet of a bed begins to rise. It comes slowly at first and then fast: a bed that showed 0 for weeks may pass 10 ppm within a few dozen gallons."},
		{"bypass", "A way around a unit, opened and shut by valves. Wash and rinse with the DI bed bypassed and open it for the last rinse only: every gallon through the bed is paid for."},
		{"cap", "The fastest flow that the bed is good for. There are several, by the maker's most flow, contact time, face velocity, exchange and pressure; the lowest one binds, and the plan names it."},
		{"capacity", "How much a bed can take out of the water before it is spent, in grains. A bed stops being useful before it has taken all that it could, since the last part leaks by."},
		{"conductivity", "How well water carries electricity, in uS/cm. Salts carry it and pure water hardly does, so it tells how much is dissolved. It is what every TDS pen really measures."},
		{"contact time", "How long the water stays among the beads: the volume of the resin divided by the flow. Too short a time and even fresh resin lets some through."},
		{"DI water", "Deionized water: the bed has taken the dissolved salts out, so that it dries without leaving any. It takes out no dirt and is not made for drinking."},
		{"drip", "What runs off a face by itself after the hose has moved on. A pause that lets it drip leaves a thinner film for the last rinse to replace, and saves DI water."},
		{"easy", "Of an hour: no face hurries in it. Of a start: no face hurries while its turn comes, though the wash goes on for hours. Where no easy start ends by daylight, the recommended one is that after which the fewest faces hurry."},
		{"end point", "The outlet at which a stated capacity counts as used up, as a part of the feed. Your limit is another, so the plan works out the gallons until that."},
		{"exchange", "Resin holds hydrogen and hydroxide and swaps them for the salts in the water. What it gives up joins to plain water. Each bead can swap only so often."},
		{"face velocity", "How fast the water comes down on the top of the bed: the flow divided by the area of the tank across. Too fast, and it finds its way through without touching enough beads."},
		{"fill", "The resin in a bed from one change to the next. Gallons so far, readings and the price are those of the present fill."},
		{"film", "The water that stays on a panel after it has dripped, thinner than a hair. What is dissolved in it is what is left when it dries."},
		{"first cup", "A reading before the standing water was run out. It reads too low, so the log keeps it and the program does not learn from it."},
		{"flow", "Gallons or litres a minute. A gallon jug and a watch measure it: 60 divided by the seconds that the jug takes is gpm."},
		{"flush", "Running out the water that has stood in the bed and the hose before a reading counts. Standing water has been cleaned on and on and reads lower than what the bed gives when it runs. The flush goes through the bed and uses it up as well: the plan tells it beside the DI water, or says that it is counted."},
		{"fresh layer", "The part of the bed, towards the outlet, that has not been used yet. When it is gone, the outlet begins to rise."},
		{"go, no-go", "After the flush the pen decides: at the limit or under it, go on; over it, take one of the ways out first."},
		{"grains", "An old unit of weight that the trade counts in: 7000 make a pound. Hardness is given in grains per gallon (17.1 mg/L as CaCO3 each), capacity in grains."},
		{"hardness", "The calcium and magnesium in the water, counted as if all of it were lime (CaCO3). It makes the white crust; a softener takes it out."},
		{"hurry", "A face hurries where its water dries before it can be rinsed whole, from the first drop of the rinse to the last of its last water. Then wash it in sections, none larger than the plan says."},
		{"in series", "Two beds one behind the other, the worn one first. The second takes what the first lets through, so the first may be used to its end."},
		{"leakage", "The salts that get through a bed at any time, few while it is fresh and more as it is used up. Faster water leaks more through a bed that is not yet spent."},
		{"limit", "The most that the pen may show at the outlet. A bed lasts as long as its outlet stays at or under it."},
		{"load", "What a gallon of this water takes from the bed, all salts counted alike. It is more than the hardness, since sodium and the rest count too, and it is not what the pen shows."},
		{"mixed bed", "A bed with both kinds of resin mixed, one for each half of a salt. It gives purer water than either kind alone, and its resin is changed rather than brought back with salt."},
		{"outlet", "Where the water leaves the bed, and what the pen shows there."},
		{"ppm", "Parts in a million, about milligrams in a litre. A pen's ppm is worked out from conductivity by its scale; two pens with different scales show different numbers in the same cup."},
		{"rated flow", "The flow at which the capacity of a bed is stated. It is no limit: what a maker allows at most is the maker's most flow."},
		{"reading", "What the pen shows, written down with where and when. After a flush it tells how the bed stands; the program learns this bed from its readings."},
		{"regeneration", "Bringing a softener back with salt: strong brine drives out the hardness it has caught. A mixed bed cannot be brought back this way at home."},
		{"residue", "What a face keeps when its film has dried, in milligrams a square metre. From it follows whether spots are seen."},
		{"resin", "Plastic beads, each smaller than a pinhead, that swap ions with the water. Kept wet and above freezing, they last until they are full."},
		{"section", "As much of a face as can be washed and rinsed before it dries. The plan names the largest for each face."},
		{"softener", "A tank of resin that swaps hardness for sodium. Softened water leaves no lime and suds better, but as much is dissolved in it as before: it dries to spots that wipe off more easily, and it spares a DI bed nothing."},
		{"spent layer", "The part of the bed, from the inlet on, that is full. It grows with every gallon."},
		{"spots", "What is left of drops that dried. How well it shows depends on how much there is, on the colour of the paint and on the light."},
		{"stage", "One step of the wash: some faces, one water, one sprayer. Rinse, wash, rinse, last rinse are four."},
		{"target", "The most that the film on a face may carry when it dries. The last rinse takes at least as much water as brings the film down to it."},
		{"TDS", "Total dissolved solids: all that is dissolved in the water, by weight. A pen guesses it from conductivity."},
		{"TDS scale", "The rule by which a pen turns conductivity into ppm: NaCl, 442, KCl, or a plain factor such as x0.5. It stands in the pen's papers. 1000 uS/cm is about 500 ppm on one and 700 on another, so write the scale down once."},
		{"tight", "The bed may last the wash and may not: the chance is under 9 in 10 and half or more. The program then says what else can be done."},
		{"transfer units", "How many times over the water could be cleaned while it passes the beads. Slower water and more resin give more of them, and a bed with more is used up further before the outlet rises."},
		{"vacuum breaker", "A small valve on the tap that keeps wash water from being drawn back into the drinking water. Many places ask for one."},
		{"working layer", "Where in the bed the exchange goes on just now, between the spent layer and the fresh one. Faster water makes it longer, and a longer one leaks sooner."},
	}
}
