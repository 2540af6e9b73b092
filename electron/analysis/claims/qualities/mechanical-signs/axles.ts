import { signTable } from "./sign-table.ts";

/** How the two wheels of an axle are held together and driven. Common practice of the trade, American and British. */
export const axleSigns = signTable("final-drive", "type", [
  {
    value: "limited-slip",
    part: "differential",
    never:
      "bottle/gas/lunch/luggage/storage/tool locker | no/not/n't a? posi/limited | is n't a posi | used to | would transform | nephew's/bike | both tires are | one wheel | just one",
    signs: `
      limited slip
      lsd
      posi
      posi traction
      sure grip
      trac lock
      anti slip/spin
      traction lock - control
      both wheels/tires/sides + spin/spins/turn/turns/lock/locked/dig/dug/smoke/bite/bit/marks/stripes/stripe/tracks + same/together/back/rear/gravel/lift/direction/snow/grass/diff/turn
      both turn/turned/spin/spun the? same/together
      two/twin/pair ..2 stripes/snakes/black/elevens/tracks/ruts + road/street/lot/asphalt/tarmac/leaves/left/behind/gravel - stripe down/hood/paint/pin/white/brake/trailer
      leaves/lays/laid ..2 two/twin/elevens
      clutch/clutches/cone/cones/plates/plated + diff/carrier/differential - transmission/box/gearbox/worn/coupling
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
