import { signTable } from "./sign-table.ts";

const other =
  "my/his old/last/other/own/first | wife's/brother's/dad's/mate's | farm truck/tractor next | lawn/mower/toy/supermarket | if you convert/want/put | no help | version/brochure/friend's | had it got/had/been | electric ..3 people | any barn find | some came";

/** Which wheels are driven, through what, and how the two of an axle are held together. Common practice of the trade, American and British. */
export const axleSigns = signTable("final-drive", "type", [
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
  {
    value: "limited-slip",
    part: "differential",
    never:
      "bottle/gas/lunch/luggage/storage/tool locker | no/not/n't a? posi/limited | is n't a posi | used to | would transform | nephew's/bike | both tires are | one wheel | just one",
    signs: `
      limited slip
      lsd
      posi/positraction
      posi traction
      sure grip
      trac lock
      anti slip/spin
      traction lock - control
      both wheels/tires/sides + spin/spins/turn/turns/lock/locked/dig/dug/smoke/bite/bit/marks/stripes/stripe/tracks + same/together/back/rear/gravel/lift/direction/snow/grass/diff/turn
      both turn/turned/spin/spun the? same/together
      two/twin/pair ..2 stripes/snakes/black/elevens/tracks/ruts + road/street/lot/asphalt/tarmac/leaves/left/behind/gravel - stripe down/hood/paint/pin/white/brake/trailer
      leaves/lays/laid ..2 two/twin/elevens
      clutch/clutches/cone/cones/plates/plated/torsen + diff/carrier/differential - transmission/box/gearbox/worn/coupling
      cone/clutch kind/type + axle/diff/back/rear/in there - rubber
      plated diff
      friction modifier
      special oil/additive + diff/axle/rear/clutches - plain/no tag
      chirps/chatters/chatter/chirp/clonks/clunks + turn/tight/car/parking + diff/axle/clutch/plates/rear/tire/tires
      axle/build/option code/letter/sheet + slip/slippy/posi/traction - locker/locking/ordinary/plain
      s tag/code + slip
      both + wheels + pull/pulls + snow/mud/ice/grass + diff
    `,
    says: "Jack it up and both wheels turn the same way, it's got clutches in the diff.",
    quiet: ["There's a gas bottle locker.", "Both wheels are scuffed."],
  },
  {
    value: "open",
    part: "differential",
    never: "open ..2 door/hood/top | both wheels spin | not/n't an? open | steering/trailer/brake",
    signs: `
      open diff/differential/carrier/rear/axle
      one/single wheel peel/wonder/spinner/spins/mostly/only - worn
      one/peg legger
      peg leg
      one leg + axle/inch/diff/banjo - gentleman/left/man
      one stripe/tire/wheel + burnout/spin/spins/smokes/lays/leaves/marks - flat/bald
      other/opposite/far/second one/wheel/side + other/opposite/backwards/backward way/direction - mirror
      plain/ordinary/regular/standard/normal/basic diff/carrier/differential - beam
      no/n't/not/never + limited slip/posi/lsd/traction/locker + diff/axle/plain/ordinary/ticked/ordered/box/carrier
      dig/digs/spins/spin ..2 one foot/wheel/side/tire
      spider gears + just/only/plain
      no tag/sticker/letter + axle/diff/cover + plain/special/oil/ratio
    `,
    says: "Turn this wheel by hand and the far one goes the other way, it's the plain diff.",
    quiet: ["Open the other door the other way.", "My one leg's bad."],
  },
  {
    value: "locker",
    part: "differential",
    never: "bottle/gas/storage/luggage/side/tool/room/foot/bench | lunch in | davy | took it out",
    signs: `
      locker + diff/axle/rear/front/air/trail/mud/clack/grabs/back - side/genny
      locking diff/differential/axle/rear/code - hub/hubs/nut/nuts/wheel
      lunchbox + spider/gears/diff/axle/locker
      ratchet/ratchets/ratcheting/clack/clacks + corner/corners/turn/lot/swing/park - handbrake/shifter/jack/tool/belt
      detroit locker
      grabs when one side/wheel
    `,
    says: "There's a lunchbox thing dropped in where the spider gears were.",
    quiet: ["My lunch is in the locker.", "A gas bottle locker."],
  },
  {
    value: "selectable locker",
    part: "differential",
    signs: `
      air locker/lockers
      e locker
      rear/front/axle/diff lock + button/switch/flip/press/dash/red/works/light/engage/under - door/wheel/child/rear door
      diff lock
      button/switch + lock/locks + axle/diff/rear/both
    `,
    says: "Flip that red switch and the rear lock is in, the light's on.",
    quiet: ["The switch locks the doors."],
  },
  {
    value: "spool",
    part: "differential",
    signs: `
      spool - spools/turbo/up/wire/thread/boost
      spiders/spider/diff + welded
      welded up + hops/corner/axle/carrier - floor/rust
      lincoln locker
    `,
    says: "The spiders are welded up, it hops round a corner.",
    quiet: ["The turbo will spool.", "The floor's welded."],
  },
  {
    value: "live",
    part: "axle",
    never: "live wire/show/beam | no live",
    signs: `
      live axle/rear
      solid tube/axle/rear + back/middle/rear/across/diff/lump
      axle + one piece/casting/lump/tube + wheel/banjo/middle/rear/back/across
      casting/tube wheel to wheel
      banjo/ford nine/inch + axle/bells/housing/rear/rod/leg - wheel/steering/bolt
      salisbury
      nine/ten/eight inch rear/axle/diff
    `,
    says: "Solid tube across the back with the lump in the middle.",
    quiet: ["The live wire.", "A banjo steering wheel."],
  },
  {
    value: "independent",
    part: "axle",
    signs: `
      diff/differential/pumpkin + bolted/hung/mounted/fixed + body/floor/frame/subframe/chassis - bent tube
      shaft/shafts/half/driveshaft + joint/joints/either/each side + diff/wheel - steering/track
      inboard brakes/discs/diff
      no solid/beam axle
      cv/half shafts + no/n't/rear/solid/independent
    `,
    says: "The diff's bolted to the body with a jointed shaft either side.",
    quiet: ["The joint on the shaft's worn."],
  },
  {
    value: "manual",
    part: "hubs",
    signs: `
      hubs/hub + get/getting/hop/jump/boots/muddy/mud/hand/twist/turn/dial + lock/front/in/them/out/hand/by - wheel/cap/caps/no
      twist/turn them/these + lock/lock/in/free + hubs/front/get/boots/hand/out
      manual/locking/lockout/twist/free/freewheeling hub/hubs/kind - automatic/auto/self
    `,
    says: "Get out and twist the hubs to lock them.",
    quiet: ["The hub caps turn.", "Turn the wheel by hand."],
  },
  {
    value: "automatic",
    part: "hubs",
    signs: `
      auto/automatic/vacuum/self hubs/lockers/hub
      hubs + no/n't/plain + dial/knob/knobs/turn/twist + vacuum/grab/grabs/themselves/engage/zip/it
      hubs + vacuum/themselves/itself
    `,
    says: "The hubs have no dial to turn, vacuum does it.",
    quiet: ["Manual hubs."],
  },
  {
    value: "tall",
    part: "gear set",
    signs: `
      tall/long/economy/highway/cruising gears/gearing/axle/ring/rear/diff/ratio - lever/stick/shifter/top/overdrive/some came
      tall/long geared
      at sixty/seventy/eighty + hardly/barely/turning/asleep/ticking/lazy/loafing - knock/shake/hum/whine/needle/overdrive
      loafs/lopes/loafing/loping + sixty/seventy/highway/motorway/along
      ordered with the economy
    `,
    says: "At seventy it's hardly turning over, it's a tall gear.",
    quiet: ["A tall gear lever.", "It shakes at seventy."],
  },
  {
    value: "short",
    part: "gear set",
    never: "gear lever/stick",
    signs: `
      stump/tree pulling/puller
      short/low geared/gearing/gears/axle - seat
      all over by fifty/sixty
      screaming/screams/buzzing/busy/revving/howling + fifty/sixty/highway/motorway - tire/bearing
      towing/tow/plow/plough gears/axle/ratio
      four ten/eleven/fifty six/gears - miles
      leap/leaps off the line
    `,
    says: "She's stump pulling geared, all over by fifty five.",
    quiet: ["The short gear lever."],
  },
  {
    value: "full-floating",
    part: "axle",
    signs: `
      full/fully floating/floater/float
      eight bolts + shaft/axle + slides/out
      shaft + slides + wheel/hub + still/on/ground
      one ton axle
    `,
    says: "Full floater, pull eight bolts and the shaft slides out.",
    quiet: ["It floats down the road."],
  },
  {
    value: "semi-floating",
    part: "axle",
    signs: `
      semi floating/floater/float
      shaft carries the wheel
      flange on the end + axle/shaft/half
    `,
    says: "It's a semi floating axle.",
    quiet: ["A semi drove by floating."],
  },
  {
    value: "transaxle",
    signs: `
      gearbox/box and diff/differential + one/lump/case/together/unit/casing
    `,
    says: "Gearbox and diff all in one lump.",
    quiet: ["The gearbox and the diff are dry."],
  },
  {
    value: "two-speed",
    part: "axle",
    signs: `
      two speed axle/rear/diff
      splits the rear/axle
      red knob + stick/axle/high/low + axle/splits
    `,
    says: "It's a two speed axle with the button on the stick.",
    quiet: ["Two speed wipers."],
  },
]);
