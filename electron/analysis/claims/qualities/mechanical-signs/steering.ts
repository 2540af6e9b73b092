import { signTable } from "./sign-table.ts";

/** How it is steered, from which side, and what helps. Common practice of the trade, American and British. */
export const steeringSigns = signTable("steering", "type", [
  {
    value: "rack and pinion",
    never:
      "no/not a? rack/gaiters | race/luggage/roof/wine/bike/gun/lumber/ladder/plate/tool/dish/magazine/hat/up rack | gaiters anywhere | gear/shift/lever/stick gaiter | axle/cv/driveshaft/half gaiter",
    signs: `
      rack + gaiter/gaiters/tie/pinion/steering/quick/turns/tight/leak/leaks/reconditioned/ends/hoses/pump/fluid/race/boots/new/compact/subframe/mounts/direct
      gaiter/gaiters/boots/bellows + tube/accordion/steering/track/tie/concertina/long | each/either end - shifter/handbrake
      tie/track rod/rods + straight/come/out + tube/rack/housing
      bar with teeth
      toothed bar
      teeth + bar + gear/steering/direct
      pinion bolt/seal + steering/subframe/column/gaiter/dribbles/rack - axle/diff
      no/n't ..2 pitman/idler + tube/rod/rack
      long alloy/aluminum tube/housing + column/steering/gaiters/u
    `,
    says: "A gaiter each end like an accordion and the tie rods come straight out of the rack.",
    quiet: ["The roof rack's new.", "No gaiters anywhere.", "The gear lever gaiter's torn."],
  },
  {
    value: "box",
    never:
      "fuse/glove/tool/gear/air/back/battery/window/juke/boot/storage/horse/wall/switch/jack/plastic/cardboard box | in a/the box | ticked/tick | no box | had a box",
    signs: `
      pitman/idler/drag link/arm/links - no/n't
      steering box
      box + sector/drag/link/steering/play/weep/worm/free/vague/knuckle/arm/adjust/adjuster/ratio/column/tighter/spear/roller - gearbox/gears/clutch/shift/third
      recirculating ball
      worm and/& roller/sector/peg/nut
      cam and peg
      cast lump + frame/inside + steering/bolted/arm
      relay rods/rod
      sector shaft/seal
      filler + arm out/arm + bottom/top/gaiters
    `,
    says: "Drag link runs from the box to the knuckle and there's an idler the other side.",
    quiet: ["Tools in the box.", "The gear box.", "A drag race."],
  },
  {
    value: "worm",
    signs: `
      worm + steering/middle/lock/sector/roller/worn/box - gear ..1 clamp/clips/clip/hole/wood/compost/clamps/drive
      worm and sector/roller/peg
    `,
    says: "The worm's worn in the middle so it's tight on lock.",
    quiet: ["Worm holes in the wood."],
  },
  {
    value: "power",
    part: "assist",
    never:
      "no/not/n't/without/never ..2 assist/assistance/assisted/power/pump/help | brakes/windows/locks/seats/clutch/hood/tailgate/trunk/gate/door | manual/armstrong | forgot to turn | fuel/water/oil pump | option | ticked",
    signs: `
      power steering - if/pump missing
      power assisted/assistance
      finger/fingertip/fingertips/pinky/straw + steering/steer/steers/turn/lock/park/parking/light/twirl/swing/job/still | the wheel - arch/key/heard/brake/brakes/clutch/switch/gear/changes
      one handed/hand + park/parking/space/turn/garage/steer/steering/lock/wheel - hold/hold
      mother/grandmother/gran/wife/nan + swing/park/turn/steer + garage/wheel/space/parks
      steering/rack + pump/hose/hoses/fluid/reservoir/belt/ram/assisted/assist/light/electric - heavy/jack/roof/two and
      pump + moan/moans/groan/groans/whine/whines/howl/howls + lock/full/turn/wheel
      full lock + pump/moan/moans/groan/squeal/belt
      assisted + steering/rack/motor/column/light - brake
      light as a feather + wheel/steering/key/column/pump
      twirl + straw/finger/wheel/this
      ram/pump + steering/fitted/assistance
      high pressure hose/line + pump/shiny/rack/box - washer
      red fluid + rack/steering/pump/hoses
    `,
    says: "One finger job, even standing still, with the steering pump quiet.",
    quiet: ["No power steering pump on it.", "The fuel pump moans.", "Power windows at your fingertips."],
  },
  {
    value: "manual",
    part: "assist",
    never: "brakes/gearbox/transmission/windows/book/owner's/servo/clutch",
    signs: `
      armstrong/unassisted
      manual/unassisted steering/rack/box - gearbox
      no/not/n't/without/never ..3 power/assist/assistance/assisted/pump/help/helps + steering/steer/wheel/fluid/park/parking/turn/front/big - brakes/fuel/water
      no steering pump/fluid/reservoir
      no pump + front of/steering/engine/alternator/forgot/steer/belt - fuel/gravity/tank/needed/lever
      nothing to help ..1 you + wheel/steer/turn/park
      nothing helping you
      heavy + steer/steering/wheel/park/parking + low/arms/stationary/standing/moving/speed/until - clutch
      you 're steering it yourself
      arms/biceps/shoulders/gym + park/parking/steer/steering/wheel - rest/rests
      option/optional/box + assist/assistance/power steering + n't/not/unticked
      big wheel + help/leverage/park/because
    `,
    says: "No power steering, big wheel because there's nothing to help you.",
    quiet: ["Manual gearbox.", "No fuel pump up front."],
  },
  {
    value: "electric",
    part: "assist drive",
    signs: `
      electric/electrical power? steering/assist/assisted/rack
      column motor/motors
      motor + column/steering/assisted/assist/rack - wiper/seat/starter
      no belt no pump
      no pump no fluid
    `,
    says: "It's electric steering, a motor on the column.",
    quiet: ["The wiper motor's on the column."],
  },
  {
    value: "hydraulic",
    part: "assist drive",
    signs: `
      hydraulic + steering/rack/box/assist - brakes/clutch/no hydraulics
      hoses + rack/box + pump/fluid
      pump + moan/moans/groans/whine + lock
      steering + pump + fluid/hose/belt
    `,
    says: "Hydraulic steering, hoses down to the rack from the pump.",
    quiet: ["Hydraulic brakes."],
  },
  {
    value: "quick",
    part: "ratio",
    signs: `
      quick steering/rack/ratio
      one/two and a half turns
      half a turn + corner/round/lock - nothing/catches/starts
      turns lock to lock + quick/only/just/two
      tighter ratio
    `,
    says: "It's a quick rack, two and a half turns.",
    quiet: ["Half a turn of the key."],
  },
  {
    value: "left-hand drive",
    part: "drive side",
    signs: `
      left hand drive/drives - had it been/conversion
      lhd
      wrong side + wheel/steering/sit/drive/toll/europe/continental/import + left/lhd
      sat/sits/sit on the left + drive/wheel
    `,
    says: "It's left hand drive.",
    quiet: ["It's right hand drive."],
  },
  {
    value: "right-hand drive",
    part: "drive side",
    signs: `
      right hand drive/drives
      rhd
      rightie/righty
      postman/mail/mailman ..1 style + drive/wheel/side/right
      wheel's/wheel on the right/wrong side - passenger
    `,
    says: "It's right hand drive, postman style.",
    quiet: ["It's left hand drive."],
  },
]);
