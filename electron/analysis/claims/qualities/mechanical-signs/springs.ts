import { signTable } from "./sign-table.ts";

const notSprings =
  "mattress/seat/seats/bed/sofa/chair/gate/hood/bonnet/clutch/valve/valves/throttle/return/tailgate/door/watch/clock/ignition/plug/plugs | table/tree/trees/cover/gold leaf | spring onions/clean";

/** What carries it. Common practice of the trade, American and British. */
export const springSigns = signTable("suspension", "type", [
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
      air suspension/springs/spring/ride/bellows/struts/sprung - brake/gas/valve
      on air + rides/sits/ride/lower/corners/suspension
      kneel/kneels/kneeling + button/air/down/itself - chock
      pump/pumps/compressor + itself/level/levels/height/runs + suspension/ride/tail/seconds/bags - gas/tire/tires/fuel/brake/water/ac
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
]);
