import { signTable } from "./sign-table.ts";

const other =
  "my/his old/last/other/own/first | wife's/brother's/dad's/mate's | farm truck/tractor next | lawn/mower/toy/supermarket | if you convert/want/put | no help | version/brochure/friend's | had it got/had/been | electric ..3 people | any barn find | some came";

/** Which wheels are driven. Common practice of the trade, American and British. */
export const drivenWheelSigns = signTable("final-drive", "type", [
  {
    value: "four-wheel drive",
    part: "driven wheels",
    never: `${other} | not/n't/no four | two wheel/by | front/rear/all wheel drive | cylinder heads`,
    signs: `
      diff/pumpkin/differential + front + too/also/another/as/hanging/both/and/rear/back - no/no front/without
      pumpkin/pumpkins/diff/diffs front and rear/back
      both/two axles + pull/pulls/drive/driven/driving/power/dig/digs/live
      front and rear/back axles drive/driven
      shaft/shafts/propshaft/driveshaft + front/forward + another/too/also/one/as/both/wheels/goes/going - no/without/cv/nothing
      shafts/prop + one forward + back
      transfer case/box - no/brake/handbrake/leak/leaks/drip
      low range/box/ratio - no/without
      high and low + dial/lever/range/hear/motor
      two/four high + low/four/two/auto/range/dial/lever/knob/dry/tarmac
      four low/high
      4h/4l/4hi/4lo
      second/little/small/other/extra lever/stick + low/four/axles/axle/range/front/drive/diff
      front hubs + lock/locking/twist/turn/free/engage
      hubs + turn/twist/lock/free/dial + hand/boots/muddy/mud/snow/manual
      all four + pull/pulling/driven/drive/driving/scratch/dig/grip - brakes/disc/discs/tires/wheels spin
      climb/climbs/climbed + tree/tower/anything/snow/field/mountain + pull/drive/axles/four/low
      four by four - no/boards
      4x4/4wd
      engage/engages ..2 front axle/end/wheels
    `,
    says: "There's a diff hanging down at the front too, both axles pull.",
    quiet: ["No front diff on it.", "There's two axles on the trailer."],
  },
  {
    value: "all-wheel drive",
    part: "driven wheels",
    never: `${other} | not/n't/no all`,
    signs: `
      a w d
      awd
      all wheel drive
      permanent/time four/4wd/4x4/all
      shuffle/shuffles/sends/send/splits/shifts/moves + power/torque/drive + wheel/wheels/axle/grip/back/rear/front
      power/drive/torque + all four/the corners/wheels - brakes/windows
      haldex
      coupling + oil/filter/service/rear/axle/clutch/haldex - steering/rubber/doughnut/tow/center
      viscous coupling/unit
      motor on each/both axle/axles/end
      motor on the back/rear/front axle + another/front/back/rear
      center diff/differential/coupling
      all four pulling
      drives/driving/drive all four
    `,
    says: "It shuffles the power to whichever wheels have grip.",
    quiet: ["It has power windows at all four corners."],
  },
  {
    value: "front-wheel drive",
    part: "driven wheels",
    never: `${other} | not/n't/no front | rear/all/four wheel drive | electric/rear motor`,
    signs: `
      front wheel drive
      fwd
      pulls itself/you/it/along + nose/front/along/transaxle
      fronts + driving/drive/drives/pull/pulling/driven/work/pulls - lights/lever
      drive/driven/drives up? at? the front/fronts/nose
      no tunnel/hump/propshaft/prop/driveshaft/diff + floor/flat/back/middle/rear/because/get/goes
      flat floor + no/because/drive/tunnel
      torque steer/steers
      tug/tugs/pull/pulls/squirm + steering/wheel + boot/floor/throttle/power/accelerate/gas/plant
      outer cv/joint/joints + only/front ones - rear/four
      transaxle + itself/pulls/nose/fwd - rear/back
      motor/engine + sits over/above/on the front wheels
      wheelspin/spins/spin/scrabbles + fronts | front wheels - lock
      transverse + gearbox/engine/end
      driveshaft/driveshafts/shafts + front + only/no prop
    `,
    says: "No tunnel down the middle, it pulls itself along by the nose.",
    quiet: ["The fronts are worn.", "It pulls to the left."],
  },
  {
    value: "rear-wheel drive",
    part: "driven wheels",
    never: `${other} | not/n't/no rear | four/all/front wheel drive | axles pull | front diff/axle | front too | front and | four low/high`,
    signs: `
      rear wheel drive
      rwd
      push/pushes/pushed/pushing + from/behind/along + back/rear/behind/wheels - shocks/nitrogen/tube/button/buttons/seat/pedal/door/finger/bike/start/snow
      prop/propshaft/driveshaft + tunnel/middle/live + back/rear/axle/down - clunk/clunks/forward/both/front/handbrake/transfer
      back/rear wheels + push/pushes/drive/driven/driving/spin/spins/power/turns/light/lights - dual/steer/each
      tail/back/rear end? + steps/swap/swaps/slide/slides/drift/drifts/happy + out/ends/silly/power/throttle/throttle/sideways - tailgate/door/bumper/lights
      tail steps/kicks/swings/hangs/wags
      drift/drifts/drifting/donuts/doughnuts + back/tail/rear/sideways/wheels - tire/price
      burnout/burnouts/smoke + rear/back tires/wheels
      sandbags/sandbag + bed/trunk/snow/boot/back
      motor/engine + in the back/rear + axle/turns/drives/wheels
      front engine + behind/rear/back/live
      the two by four - timber/lumber/wood/plank/board/boards/of/piece/under/ladder
      two wheel drive
      2wd/4x2
      no shafts/drive/diff + front + hub/uprights/plain/just/only
      nothing up front + axle/prop/shaft/diff
      back wheels do/doing the driving/pushing/work
      fishtail/fishtails
    `,
    says: "Prop shaft down the tunnel, it pushes from the back wheels.",
    quiet: ["Push the back seat forward.", "The back wheels steer.", "The tail lights work."],
  },
]);
