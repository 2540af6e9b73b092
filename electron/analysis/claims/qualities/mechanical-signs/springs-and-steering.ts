import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const notSprings =
  "mattress/seat/seats/bed/sofa/chair/gate/hood/bonnet/clutch/valve/valves/throttle/return/tailgate/door/watch/clock/ignition/plug/plugs | table/tree/trees/cover/gold leaf | spring onions/clean";

/** What carries it, how the wheels are guided and how high it sits. Common practice of the trade, American and British. */
const springs = signTable("suspension", "type", [
  {
    value: "leaf",
    part: "spring",
    never: `${notSprings} | used to have/be leaf | leaf packs are/were long gone | leaf springs have been swapped/replaced | no/not leaf/leaves`,
    signs: `
      leaf/leaves + spring/springs/pack/packs/rear/axle/back/axles/main/helper/broken/eyes/extra/cracked/sagged/shackle/underneath/log
      leafs
      pack/packs + flat/clips/shackle/blades/backwards/eye/leaf/elliptic | rear packs - nickel/modules/battery/cells/power/jump/ice/charge/six/clutch/tow/handling/sport
      shackle/shackles - tow/hook/recovery/d/trailer
      semi elliptic/elliptics/elliptical
      elliptics
      cart/wagon/buggy springs/spring
      flat springs/spring/ones
      blades/blade + spring/springs/stack/grease/eyes/leaf/torch - wiper/wipers/fan/fuse
      u bolts + axle/spring/springs/perch/plate
      spring eye/eyes
      center bolt + perch/spring/leaf/layers
      clips hold ..2 layers/leaves
      helper spring/springs/leaf
    `,
    says: "Shackles at the back end of the spring and U bolts round the axle.",
    quiet: ["The leaf spring from the gate.", "Leaves in the cowl.", "The battery pack's flat."],
  },
  {
    value: "transverse leaf",
    part: "spring",
    signs: `
      transverse leaf/spring
      buggy spring
      one/single spring + across/side/sideways/over the axle + axle/across/perches/perch
      spring/leaf + side to side/crossways/crosswise/crosswise
      suicide spring/axle
    `,
    says: "One spring across over the axle, perches at each end.",
    quiet: ["One spring's broken."],
  },
  {
    value: "coil",
    part: "spring",
    never: `${notSprings} | coil pack/packs/over/overs/wire/tower/lead | not/no coil/coils | stick/pencil/hot/bimetal coil/coils | choke | cord/cable | collars/threaded/spanner`,
    signs: `
      coil/coils + spring/springs/rear/back/front/suspension/broke/corner/sagged/axle/trailing/shock/strut - heater/relay/ignition/wires/leads/spark/distributor/misfire/idle/module/cap/points/condenser/bracket
      spring/springs + tower/towers/coiled/curly/pocket/pockets | shock up/round - leaf/flat/elliptic
      pig tail/tails spring/springs
      pigtail/pigtails spring/springs
      round ones/wire + back/rear/corners/corner/sits/all/comfy
      spring/springs + in/up/into ..2 tower/towers/pocket
      curly ones/springs
      plain springs where
      rubber + doughnut/isolator/pad + top ..3 spring
    `,
    says: "There's a coil in the tower with the shock up the middle.",
    quiet: ["The coil's hot, it misfires.", "Mattress springs."],
  },
  {
    value: "coil-over",
    part: "spring",
    signs: `
      coil over/overs
      coilover/coilovers
      adjusters/collars/collar/perches/ring + spanner/wind/threaded/seized/height/turn/c + springs/spring/shocks/shock/rear/low/down/up - brake/shoes/seat/headlight
      threaded + body/bodies/collar/collars + spring/springs/shocks
      c/hook spanner + up/down/collars/turn/wind/springs/shocks
    `,
    says: "You wind the collars with a C spanner, they're threaded bodies with springs.",
    quiet: ["The brake adjusters are seized."],
  },
  {
    value: "air",
    part: "spring",
    never:
      "airbag light | steering wheel/dash/curtain/crash/passenger | this bag | ac/con | sleeping/kit/tea/shopping/tool/bin/grocery bag/bags | compressor for the shop | hose/line in the shop | my truck | bus/coach | been done away | helper | shock pump",
    signs: `
      bag/bags/bagged + corner/air/dump/fill/filling/level/levelled/leveled/lower/ride/ones/suspension/spring/springs/low/pump/hundred - recovery/room
      air suspension/springs/spring/ride/bags/bellows/struts/sprung
      on air + rides/sits/ride/lower/corners/suspension
      kneel/kneels/kneeling + button/air/down/itself - chock
      pump/pumps/compressor + up/itself/level/levels/height/runs + suspension/ride/tail/corner/seconds/back/leak/bags - tire/tires/fuel/brake/water/ac
      light/message with ..1 car and ..1 arrow
      dump/dumps ..3 loading/loaded/low/air
      rises/rise/raises/lifts + itself/start/button/inches + air/compressor/hiss/settles - hood/window/roof/seat
      hiss/hisses/pssh + drops/lowers/settles/corner/sits + height/down/ride/suspension/bag
      bellows - exhaust
      folds + rubber + cracks/bag/air - door
    `,
    says: "Bags at the back, I can dump it for loading.",
    quiet: ["The airbag light.", "My bag's in the back."],
  },
  {
    value: "torsion bar",
    part: "spring",
    signs: `
      torsion bar/bars/spring/springs/beam ..0 bar?
      bars/bar + splined/splines/spline/twist/twists/wound/adjuster/height/ride + spring/height/rear/front/lift/across/tube/set/no - sway/roll/anti/bull/bike/tow/tie/roof
      no spring + bolt/bar/turn/see
      cranked/wound ..2 bars/keys
      turn ..3 bolt + front + comes/goes/raises
    `,
    says: "No springs to see, it's on torsion bars, turn that bolt and the front comes up.",
    quiet: ["The sway bar's new.", "No spring in the seat."],
  },
  {
    value: "hydropneumatic",
    part: "spring",
    signs: `
      sphere/spheres - frenchman/up the road
      hydropneumatic/hydrolastic/hydragas
      green fluid + stands/rises/ride/suspension
      stands up like a camel
    `,
    says: "Green spheres at the back.",
    quiet: ["The coolant's green."],
  },
  {
    value: "rubber",
    part: "spring",
    signs: `
      rubber cone/cones + springs/spring/springing/no/do/suspension - bump/axle
      rubber springs/suspension/sprung
      doughnuts for springs
    `,
    says: "Rubber cones do the springing.",
    quiet: ["A rubber cone in the road."],
  },
  {
    value: "self-leveling",
    part: "spring",
    signs: `
      self leveling/levelling/levelers
      levels itself/himself
      pumps ..2 own tail/back
      nivomat/load leveling/levelling
    `,
    says: "The estate has the self levelling rear.",
    quiet: ["The ground's level."],
  },
  {
    value: "strut",
    part: "linkage",
    never: "hood/bonnet/tailgate/hatch/trunk/boot/gas/lift/window/door/brace/tower/bar",
    signs: `
      macpherson/mcpherson/strut/struts + front/suspension/mount/mounts/top/spring/rear/new/leg/pair/boing/knock/leaking/inner
      spring and damper/shock + one leg/unit
    `,
    says: "Strut front suspension with new top mounts.",
    quiet: ["The hood strut's weak."],
  },
  {
    value: "double wishbone",
    part: "linkage",
    signs: `
      double wishbone/wishbones/arms
      wishbone/wishbones + top/upper/lower/each/front/double/unequal
      arm + top/above + below/bottom + upright/between/knuckle
      a frame/frames/arms/arm top and bottom
      unequal length arms
      upper and lower arms/control
    `,
    says: "One arm on top, one arm below and the upright between.",
    quiet: ["Arm rests up and down."],
  },
  {
    value: "multi-link",
    part: "linkage",
    signs: `
      multi link
      multilink
      five/four arms/links + rear/each/wheel/back/hub - axle
    `,
    says: "Multi link rear with five arms each side.",
    quiet: ["Multiple links to the site."],
  },
  {
    value: "four-link",
    part: "linkage",
    signs: `
      four link/rods + axle/rear/locate/back/triangulated/it
      rods locate the axle
      three link
    `,
    says: "Four rods locate the axle.",
    quiet: ["Four link chain."],
  },
  {
    value: "panhard",
    part: "linkage",
    signs: `
      panhard
      track bar
      rod + frame + side + axle + other/far
      watts/watt's linkage
    `,
    says: "A Panhard rod from the frame this side to the axle on the other.",
    quiet: ["The tie rod's bent."],
  },
  {
    value: "trailing arm",
    part: "linkage",
    never: "semi",
    signs: `
      trailing arm/arms - rubbers/bush/springs
      long arms + hinged/pivot/rear/wheels
      truck arms
    `,
    says: "It's on long trailing arms at the back.",
    quiet: ["Semi trailing arms."],
  },
  {
    value: "semi-trailing arm",
    part: "linkage",
    signs: `
      semi trailing
      arms/pivots + skew/angle/skewed + rear
    `,
    says: "Semi trailing arms at the rear.",
    quiet: ["A semi with a trailer."],
  },
  {
    value: "beam",
    part: "linkage",
    signs: `
      twist/torsion beam
      u shaped + twists/rear/wheels
      beam + rear/twists/back/wheels + twist/twists/simple/joins - light/high/low/head/lights/lamps/main
    `,
    says: "It's a twist beam joining the two rear wheels.",
    quiet: ["The main beam works on the rear."],
  },
  {
    value: "de dion",
    part: "linkage",
    signs: `
      de dion
      tube joining/between the wheels + diff
    `,
    says: "It's a de dion, a bent tube joining the wheels but the diff's on the body.",
    quiet: ["A bent tube."],
  },
  {
    value: "solid axle",
    part: "axle",
    never: "no solid/straight/beam | not a solid | cv shafts",
    signs: `
      solid/straight/beam/forged/dropped/tube/i axle/axles/beam + front/up/under/king/nose/both/truck/off/swap/ends/steering
      king pin/pins
      kingpin/kingpins
      i beam/beams
      s f a
      sfa
      log + front/rear/back/leaf - book/logs/manifold/wood/service
      axle runs/goes straight across
    `,
    says: "King pins on a forged axle.",
    quiet: ["A log of wood up front."],
  },
  {
    value: "independent",
    part: "axle",
    never: "not/n't/no independent | garage/mechanic/shop/dealer/inspector/inspection/valuer/specialist",
    signs: `
      independent + suspension/front/rear/all/springing/end/round
      wheel/wheels + own thing/arms/pair/mind/independently/bump - brake
      hits a bump + other + know/feel/move
      irs/ifs - tax
      i r s
      i f s
    `,
    says: "Each front wheel has its own arms, it's independent.",
    quiet: ["An independent garage looked at the front."],
  },
  {
    value: "gas",
    part: "shock",
    never: "hood/tailgate/trunk/hatch/bonnet/boot struts | put a gas shock on anything | bbq/bottle/pedal",
    signs: `
      nitrogen + shock/shocks/push/damper/dampers/sticker
      gas + shock/shocks/damper/dampers/charged/pressurized
      monotube/mono tube
      pressurized/pressurised + shock/shocks/damper/label
      push/pushes back out + let/themselves/shock/shocks
    `,
    says: "Monotube gas shocks, they push back out by themselves.",
    quiet: ["Nitrogen in the tires."],
  },
  {
    value: "lever-arm",
    part: "shock",
    signs: `
      lever arm/shocks/shock/dampers/damper + shock/shocks/damper/dampers/arm/oil/top
      damper/shock oil + plug/top/lever/can
      casting + arm + damper/shock
      hydraulic arm + frame/tubes
    `,
    says: "Lever arm dampers, you top them up with damper oil through the plug.",
    quiet: ["The gear lever."],
  },
  {
    value: "telescopic",
    part: "shock",
    signs: `
      telescopic/telescopics - aerial/antenna/column/steering/wheel/ladder/mirror/lens
      tube shocks/dampers/shock
      tubes on the back/front/rear + pin/shock/top
      up and down dampers/shocks
    `,
    says: "Ordinary telescopic dampers.",
    quiet: ["A telescopic aerial."],
  },
  {
    value: "adjustable",
    part: "shock",
    signs: `
      adjustable shocks/dampers/damping/shock/struts/rebound
      comfort/soft and sport/hard/firm + switch/button/dampers/firm/mode - seat
      dampers/shocks + firm up/switch/click/clicks/knob/dial/electronic/adaptive
    `,
    says: "Comfort and sport on the switch, the dampers firm up.",
    quiet: ["The adjustable seat."],
  },
  {
    value: "magnetic",
    part: "shock",
    signs: `
      magnetic/magnet/magnets + damper/dampers/shocks/ride + oil/fluid/stiff/suspension
      magnetic ride/dampers/shocks
    `,
    says: "Magnetic dampers.",
    quiet: ["A magnetic sign."],
  },
  {
    value: "lowered",
    part: "height",
    never:
      "not/n't/nobody ..2 lowered/slammed | set ..1 back | hood/window/seat/tailgate/lift lowered | put ..1 back | mortgage | belt/lift/hoist/lower it",
    signs: `
      lowered/slammed + inch/inches/springs/two/low/car/suspension/ride/three/arch/arches/kit/block/blocks - price/engine/valve/oil/into/off
      dropped ..2 inch/inches + front/rear/nose/car/springs/suspension - price/bar
      dropped/drop spindles/axle/springs
      cut springs/coils
      lowering springs/kit/blocks
      speed bump/bumps + scrape/scrapes/clear/catch/low | wo/ca n't
      scrape/scrapes/scraping + low/drive/driveway/cut/down/curb - wheel/wheels/bumper/rim/bodywork/paint/gouge
      weeds + nose/low/down
      ca n't get ..6 between the tire/tyre/wheel and + arch/fender
      lower than + standard/stock/factory/meant/normal/supposed
      sits/sat down/low/lower + stock/standard/inch/inches/nice/over
      tucks/tucked + tire/wheel/arch/fender/rim
      stance + low/lowered/slammed/inch
    `,
    says: "It's been lowered on cut springs and scrapes on the speed bumps.",
    quiet: ["Nobody's slammed it.", "The price was lowered."],
  },
  {
    value: "lifted",
    part: "height",
    never:
      "not/n't/never/nobody ..4 lifted/jacked/raised | raised white/letter/letters/outline | radial/radials | if you/we can fit/want | engine/body/motor lifted out | set ..1 back | before the lift | lifter/lifters | hood/tailgate/seat/lift arm | two post | on the lift | face",
    signs: `
      lifted/raised/jacked + inch/inches/truck/kit/suspension/stance/three/four/six/two/shackles/springs/blocks/tires - hood/out/off/curb/trunk/seam/sill
      lift kit/blocks
      body lift
      drop/dropped brackets/pitman
      creeper + under/roll + jack/room/without
      stool/ladder + get in/into/up
      climb up ..2 into
      sits/stands up high
      longer shackles
    `,
    says: "It's got a four inch lift kit, you need a stool to get in.",
    quiet: ["Nobody's jacked it.", "It's on the lift."],
  },
  {
    value: "standard",
    part: "height",
    signs: `
      stock/factory/standard/original/right/same height/stance/ride - price/wheel
      height + left/factory/plant/catalog/standard/showroom - roof/full/seat/door/bulkhead
      nobody ..2 slammed/lowered/jacked/lifted it
      nobody ..2 touched/changed the ride? height
      not/n't/never ..2 lowered/lifted/slammed/jacked/raised + stance/height/springs/sits/suspension/factory
      sits/sat ..1 how/level/as/where/like + catalog/factory/left/plant/new/should/made/stock
      set/put ..2 back + lift/down/inches/height/sat
    `,
    says: "It sits at the factory height, nobody's slammed it.",
    quiet: ["The seat height adjusts."],
  },
]);

const steering = signTable("steering", "type", [
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
      box + sector/drag/link/steering/play/weep/worm/free/vague/frame/knuckle/arm/adjust/adjuster/ratio/column/tighter/spear/roller - gearbox/gears/clutch/shift/third
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
      finger/fingertip/fingertips/pinky/straw/palm + steering/steer/steers/turn/lock/park/parking/light/twirl/swing/job/still | the wheel - arch/key/heard/brake/brakes/clutch/switch/gear/changes
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

export const springAndSteeringSigns: readonly QualityRule[] = [...springs, ...steering];
