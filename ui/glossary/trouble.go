package glossary

// Trouble is something that went wrong, and what may be behind it.
type Trouble struct {
	Asks   string
	Causes []Cause
}

// Cause is one thing that may be behind it, how to tell, and what to do.
type Cause struct{ What, Tell, Do string }

// Troubles lists what goes wrong, the most usual cause of each first.
func Troubles() []Trouble {
	return []Trouble{
		{"Spots anyway", []Cause{
			{"The last rinse did not replace all of the film.", "Spots stand where the spray passed fast or not at all, and the outlet reads low.", "Go over the face twice, from the top down, or more slowly; the plan's gallons hold for an even pass."},
			{"The bed is letting through.", "After the flush the pen shows more than the limit at the outlet.", "Write the reading down; the Bed screen tells whether to change the resin. Dry what is wet with a towel now."},
			{"Raw or softened water ran down later.", "Streaks start below mirrors, seams, rails and the roof's edge.", "Rinse the roof and all ledges first, and open those seams to the last rinse too."},
			{"It dried before the last rinse reached it.", "The spots are on the sunny side or on dark paint, and were there before the DI water.", "Wash that face earlier or in shade, keep it wet, do half a side at a time; the day strip shows the minutes."},
			{"It is dust, hard crust of an older wash, or etched glass.", "They stay after a wipe with DI water on a cloth.", "No rinse takes them off: that is work for the hand, on another day."},
		}},
		{"The reading jumped", []Cause{
			{"It was a first cup.", "It falls within a minute of running.", "Run the flush out, then read again; write the first one as not flushed, and it is kept without being used."},
			{"The valves were set otherwise.", "The outlet reads like the tap, or between the two.", "Shut the bypass all the way; half open, it mixes raw water in."},
			{"The pen is off, dirty or on another scale.", "It is off in the tap's water too, against the number you know.", "Rinse its tip in DI water, change its battery, check it with a standard; state its scale in the rig."},
			{"The flow was much higher.", "It falls when the flow does.", "Stay under the cap: a gallon jug and a watch tell."},
			{"The bed is breaking through.", "It stays up after the flush, at the usual flow, on two days.", "Write it down and see Bed: order or change the resin."},
		}},
		{"Low flow", []Cause{
			{"The hose is thin, long or kinked.", "More comes out of the tap itself than at the end of the hose.", "Take a wider or shorter hose; one size up makes a great difference."},
			{"A sediment filter is full.", "The flow is fine with the filter bypassed.", "Change it, and rinse it before it stands before the bed."},
			{"The bed is packed or has fines on top.", "Less comes out than before at the same tap, and the pressure before the bed is high.", "Shake it up or refill it with a coarse strainer at the bottom; never run it backwards."},
			{"The tap gives no more.", "Other taps run weak too, or it is the busy hour.", "Wash early, or fill a tank and use a pump."},
			{"A sprayer with a small tip.", "The bare hose runs well.", "Nothing is wrong: a slow sprayer suits a small bed. Compare with the flow that the plan names."},
		}},
		{"The bed ended early", []Cause{
			{"The water was harder on it than thought.", "The pen at the tap shows more than what is stated for the place.", "State the place anew, from the pen and a strip; silica and carbon dioxide load a bed unseen."},
			{"More ran through it than was written down.", "The log lacks a wash, filled buckets, a flush or a neighbour's rinse.", "Add them with their days; about is better than nothing."},
			{"It ran too fast.", "The jug fills faster than the plan's seconds.", "Throttle it, or pick a sprayer under the cap."},
			{"Water found a channel.", "The tank lay on its side, was filled with air in it, or was frozen.", "Refill it wet, upright, tapped down, without gaps."},
			{"The claim was for other water.", "The seller's gallons are for water with a fraction of your load.", "Give `good_for` and see what the plan makes of it; count in grains, not in gallons."},
		}},
		{"The pen reads 0", []Cause{
			{"All is well.", "The tap reads its usual number with the same pen.", "Write it down: a 0 after the flush teaches that the bed is not near its end."},
			{"The pen is dead, dry or in the air.", "It shows 0 in the tap's water too.", "Dip it to the mark, shake off bubbles, change the battery."},
			{"It is on another range or on hold.", "The number stands still in any water.", "Look for a hold key, or x10 on the display."},
		}},
		{"The softener tastes of salt, or its water reads higher", []Cause{
			{"Brine is left in it.", "The water tastes salty and the pen shows much more than at the tap.", "Rinse it until inlet and outlet read about the same, before it feeds the bed: brine eats a bed in minutes."},
			{"It swaps, it does not remove.", "The outlet reads as much as the inlet, or a little more.", "That is right. A softener never lowers what a pen shows; only the DI bed does."},
			{"It is spent.", "A strip shows hardness behind it, and soap curdles.", "Regenerate it with salt, and write that down."},
		}},
		{"The program says that the bed will not last", []Cause{
			{"It is close to its end.", "The readings have begun to rise.", "Order resin; for tomorrow, rinse fewer faces with DI water and dry the rest by hand."},
			{"It does not know the bed well.", "The band of gallons left is wide and there are few readings.", "Add one reading after a flush: that narrows it most."},
			{"A number was stated wrong.", "`y` lists every input, with what was stated and what assumed.", "Put it right; `u` takes an edit back."},
		}},
	}
}
