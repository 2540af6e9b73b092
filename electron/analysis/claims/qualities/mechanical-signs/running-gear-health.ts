import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const brakes = signTable("brakes", "condition", [
  {
    value: "flawed",
    circumstance: "fault",
    denial: "turns",
    never: "clutch/engine/stuck in traffic/different video | steering pump | that one's",
    signs: `
      brakes/brake/braking + pull/pulls ..2 left/right/side | squeal/squeals/squealing/grind/grinds/grinding/judder/judders/shudder | fade/fades/faded | spongy/soft | bind/binding/binds/drag/dragging
      pedal + spongy | sinks/sinking | goes to the floor/carpet - clutch/slave/accelerator
      pads/pad/shoes/linings/discs/rotors + low/worn/finished/scored/warped/cracked/glazed/soaked/contaminated/pitted/lipped - not/new/seat/feet
      metal on metal + brake/brakes/stop/hear/grind
      caliper/calipers/wheel cylinder/cylinders + seized/stuck/sticking/leaking/weeping/frozen - engine
      brake line/lines/pipe/pipes/hose/hoses + perished/cracked/swollen/corroded/rusty/flaky/weeping/crusty
      handbrake/hand brake/parking brake + n't/not hold/holding/work/working | does nothing | useless/weak/seized/stretched
      handbrake/parking wo/does n't hold
      imbalance across/on
      brake imbalance
      warped rotor/rotors/disc/discs
      seized caliper/calipers/piston/handbrake
      master + wept/leaking/leaks/bypassing/weeping - clutch/new
      abs light ..2 on/lit
    `,
    says: "The brakes pull to the left.",
    quiet: ["The clutch pedal's spongy.", "It stops dead straight."],
  },
  {
    value: "good",
    circumstance: "praise",
    never: "bus stop/engine/clutch/gearbox | pull/pulls to | squeal/squeals/worn",
    signs: `
      stops/stopped/brakes/pulls/pulled up ..1 straight/true/square/even/evenly/level/dead/well/hard
      stops/stopped/brakes/pulls/pulled ..2 dead straight
      stops/stop on a dime/sixpence
      stops ..2 like it should/ought
      firm/hard/solid/high/lovely pedal - clutch
      pedal 's/is ..1 firm/hard/solid/high/rock - clutch
      no pull/squeal/judder/shudder/fade
      plenty/lots/loads of meat/pad/lining ..3 pads/shoes/discs/brakes/left
      pads + plenty/meat/loads/thick - worn/seat/dash/pedal/life
      handbrake/parking brake holds/held
      hand brake holds
      brakes 're/are/is ..1 good/great/strong/excellent/superb/sharp/perfect/fine/brilliant
    `,
    says: "It stops dead straight with a firm pedal.",
    quiet: ["It won't start.", "The bus stop's straight there."],
  },
]);

const transmission = signTable("transmission", "condition", [
  {
    value: "flawed",
    circumstance: "fault",
    denial: "turns",
    never: "engine mount/turbo/alternator/steering/limited/cam/pump/axle/diff | somebody crunching | straight cut",
    signs: `
      clutch + slips/slipping/judders/drags/dragging - packs/diff/fan/limited
      slips/slipping in/between/into/going gear/second/third/top/fourth
      grinds/grates/crunches/crunch/grind/grate ..3 second/third/reverse/first/gear
      jumps/pops/jump/pop/kicks ..1 out of ..1 gear/third/second/first/fourth/fifth
      synchro/synchros/synchromesh + gone/weak/tired/worn/shot/lazy/going
      whine/whines/whining/noisy in second/third/first/reverse/gear/fifth/every
      release/throwout/thrust bearing + noise/noisy/chirp/chirping/chirps/squeals/going/worn/rumble
      no second/third/reverse at all
      lost reverse/second/third/overdrive
      revs ..1 climb/flare/rise ..4 speed does/stays
      gearbox/transmission/trans/box 's/is ..1 noisy/tired/shot/knackered/slipping/leaking/weeping
      clunk/clunks/bangs into drive/gear/reverse
      like stirring
    `,
    says: "It grinds going into second.",
    quiet: ["A limited slip diff.", "The brakes grind."],
  },
  {
    value: "good",
    circumstance: "praise",
    never: "engine/brakes/steering/grinds/crunches/whines | but third/second",
    signs: `
      shift/shifts/shifting/changes/gearchange/gearbox/box + slick/snick/snickety/butter/silk/crisp/sweet/sweetly/seamless | smooth/smoothly - grinds/oil
      goes/slots/slips/drops into ..3 sweet/sweetly/lovely/easy/clean - key
      slots in ..2 sweet/sweetly/lovely/clean
      no crunch/crunches/whine/grinding/slip/slipping ..4 gear/gears/box/clutch/second/third
      no whine/noise/crunch in any
      clutch 's/is ..1 light/good/strong/smooth/lovely/sweet/fine/new
      clutch bites/takes ..3 halfway/low/just/nice/nicely/lovely/smooth/where
      does/did n't slip + clutch/third/bit/hill/gear
      gearbox/transmission/trans/box 's/is ..1 good/great/strong/perfect/sweet/lovely/fine/quiet/tight
    `,
    says: "Slick box, no crunch into any gear.",
    quiet: ["It crunches into second."],
  },
]);

const finalDrive = signTable("final-drive", "condition", [
  {
    value: "flawed",
    circumstance: "noise",
    denial: "turns",
    never: "engine/gearbox/turbo/pump/alternator/blower",
    signs: `
      axle/diff/differential/rear end/pinion + whine/whines/whining/hum/hums/howl/howls/moan/moans/noisy/clunk/clunks/clonk/sings
      rear/back end + whine/whines/whining/hum/hums/howl/howls/moans/noisy
      wheel bearing/bearings + hum/drone/noise/noisy/whine/rumble/growl/gone/going/worn
      moaner/whines/hums/howls on the overrun
    `,
    says: "The rear end whines at fifty on the overrun.",
    quiet: ["The gearbox whines."],
  },
  {
    value: "flawed",
    circumstance: "leaks",
    denial: "turns",
    never: "drum waiting",
    signs: `
      diff/axle/differential/halfshaft ..1 seal/seals + leak/leaks/weep/weeps/weeping/drip/past/gone
      axle oil + past/streak/brakes/leaking
    `,
    says: "Axle oil's getting past.",
    quiet: ["The pinion seal's new."],
  },
  {
    value: "good",
    circumstance: "praise",
    never: "engine/gearbox/brakes",
    signs: `
      no whine/backlash/clunk/noise ..4 diff/axle/rear
      next to no backlash
      diff/axle/rear end + silent/quiet/dry | no noise | no whine - noisy
      wheel bearings + quiet/silk/smooth/tight
    `,
    says: "There's next to no backlash in the yoke.",
    quiet: ["The gearbox is quiet."],
  },
]);

export const runningGearHealthSigns: readonly QualityRule[] = [...brakes, ...transmission, ...finalDrive];
