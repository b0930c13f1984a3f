# Tests of an outlet, and volts: what they show, and what that proves.

## The card's test steps. $at lists outlets, or says that it holds for all.

print-test-everywhere = Every outlet that a tester fits
print-test-protected = Where the label says “GFCI: YES”
# $joint is a box that must not be used, $at the outlets or boxes with the TEST button.
print-test-without = Keep “{ $joint }” unplugged. While it is plugged in, do not rely on the GFCI at { $at }.
print-test-find-out = We do not know if this generator’s neutral is floating or bonded. Look in its manual, or ask a licensed electrician.
print-test-reads-correct = { $at }: a plug-in tester must read CORRECT.
print-test-reads-floating = { $at }: a plug-in tester should read OPEN GROUND. That is normal for a floating neutral: do not change it. A broken ground wire reads the same, so it proves nothing.
print-test-reads-either = { $at }: a plug-in tester reads CORRECT if the neutral is bonded and the ground wire is unbroken. OPEN GROUND: the neutral floats, or a ground wire is broken. Then do not use that outlet until you know which.
print-test-other = Any other reading: stop the engine. Unplug that cord or box, start the engine, and test the outlet it was in. Work back toward the generator, one cord or box at a time, until an outlet reads right. What you unplugged last is bad: do not use it, or anything on it. If the generator’s own outlet reads wrong, do not use it.
print-test-tester-trips = { $at }: the tester’s own button must cut the power too. If it does not, do not use that outlet.
print-test-tester-no-way-back = { $at }: the button on a plug-in tester does nothing here. Press TEST on the GFCI instead.
print-test-tester-blind = { $at }: the tester’s own button does nothing. The GFCI stops no shock there. Plug in only what the label allows.
print-test-tester-doubtful = { $at }: the TEST button on the GFCI cuts the power, but a shock might not. Plug in only what the label allows.
print-test-tester-either = { $at }: we cannot tell what the tester’s own button does. Only the TEST button on the GFCI itself counts.

## The worksheet: tests

print-ws-tests = What each test shows here, and what it proves
print-ws-tests-lamps = Lamps of a tester: hot to neutral, hot to ground, neutral to ground. A lamp that is off might glow weakly.
print-ws-tests-own = The TEST button on the GFCI itself proves that the GFCI cuts the power. It needs no ground, and says nothing about one.
print-ws-tests-meter = Meter: engine off, everything unplugged. From the ground hole to the bare frame, and to the neutral hole. First hold the tips together, and subtract that reading. This is for a licensed electrician. Never open anything.
print-ws-tests-time = Longest time a GFCI may take: (20 ÷ mA) to the power of 1.43, in seconds: { $times }.
# $leak in thousandths of an ampere.
print-trip-time = { $leak } mA within { $seconds } s
print-ws-column-lamps = Lamps
print-ws-column-reads = Tester reads
print-ws-column-own-button = TEST is at
print-ws-column-tester-button = Tester’s button
print-ws-column-ground = Ground to frame
print-ws-column-joined = Neutral to ground
print-lamp-lit = on
print-lamp-dark = off
print-lamp-either = ?
print-reads-correct = correct
print-reads-floating = open ground, because neutral floats
print-reads-either = correct or open ground: we do not know
print-button-trips = cuts the power
print-button-no-way-back = does nothing
print-button-blind = does nothing: the GFCI is blind to it
print-button-either = we cannot tell
print-button-no-protection = no GFCI known
# $ohms is the most a meter shows there.
print-meter-ground-here = near 0 Ω
print-meter-ground-yes = { $ohms } or less
print-meter-neutral-yes = joined
print-meter-neutral-no = not joined
print-meter-neutral-unknown = tells which neutral it is
print-proves-reads-correct = CORRECT proves that the ground wire is unbroken as far as the bond with neutral. It does not show neutral and ground swapped, nor a second bond.
print-proves-reads-floating = OPEN GROUND on a floating neutral proves nothing: it looks the same with a broken ground wire.
print-proves-reads-either = While we do not know the neutral: CORRECT proves that it is bonded and the ground wire unbroken. OPEN GROUND leaves both open.
print-proves-button-trips = The tester’s button cuts the power: that proves the GFCI, the ground wire and the bond at once.
print-proves-button-no-way-back = The tester’s button does nothing where its current finds no way back: that proves nothing about the GFCI.
print-proves-button-blind = The tester’s button does nothing where the bond lies past the GFCI: its current comes back through the GFCI. A person’s would too.
print-proves-button-either = Where we do not know the bonds, a tester’s button that does nothing proves nothing. One that cuts the power proves the GFCI.

## The worksheet: volts

print-ws-volts-how = Volts = nominal − volts lost with everything on so far. At the moment of starting, starting amps count.
print-ws-volts-low = The generator itself might give a few volts more or less: read it there first. If a step reads lower still, stop, and look for a bad plug, a thin cord or too much on. If one half of a 120/240 V generator reads higher than the generator, stop too: its neutral might be lost.
print-ws-column-dips = Dips to
print-ws-column-reads-volts = Reads
print-ws-column-boxes = Boxes then
print-ws-worst-range = A service of 120 V is held to { $least } to { $most } (range A). That is for utilities. Here it is advice.
print-ws-worst-running = Running
print-ws-worst-start = While { $starts } starts
print-ws-column-beside = With these on
print-ws-longest = How long each cord might be
print-ws-longest-how = Longest = volts lost ÷ (amps × ohms for each foot × 2), this cord alone, with the most that may run together on it. Gauges that do not carry these amps, or that the breaker ahead does not protect, are left out. A cord with a household plug is no longer than its gauge is usually marked for these amps.
print-ws-longest-ohms = { $per }: { $ohms }.
print-ws-longest-advice = 3% and 5% are advice for the whole way. They are not law.
print-ws-column-at-3 = For 3%
print-ws-column-at-5 = For 5%
