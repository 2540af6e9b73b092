import { signTable } from "./sign-table.ts";

/** Where the valves and camshafts are, what turns them, and how big the engine's family is. Common practice of the trade. */
export const valveGearSigns = signTable("engine", "type", [
  {
    value: "flathead",
    part: "valve gear",
    never: "screw/screws/screwdriver/ford's",
    signs: `
      l head !light/lights
      side valve/valver/valves/valvers
      valves + in the block/side | beside/alongside/next the? bore/bores/cylinder/cylinders/pistons/piston | upside down
      no/n't valve/rocker cover/covers ..2 on/to + valves/flat/block/flathead
      flathead/flatty/flattie
      head + slab/paving/lid/plate + plugs/nuts/nothing/valves/lifts
      head is/'s just a lid/slab/plate/plank
      nothing in the head
      no valves in the head
    `,
    says: "The valves are in the block beside the bores.",
    quiet: ["A flat head screw.", "There's no valve cover leak."],
  },
  {
    value: "pushrod",
    part: "valve gear",
    never: "overhead/clutch/brake/slave/booster/servo/mower/clutch's | master",
    signs: `
      pushrod/pushrods
      push rod/rods
      rods + rockers/rocker/lifter/lifters/tappets/valley/cam + up/bent/hollow/push/down/sing/head/set/each
      cam/camshaft + in the block/valley | down in/there/below/low + rods/block/valley/rockers
      cam/camshaft + in/down the block
      one cam/camshaft ..3 in the middle/block/valley/vee
      lifters + valley/rods/block/bores/cam
      rocker shaft/arms/arm/gear + rods/lifters/tappets/pedestals/side/block/adjust/gap/lash
      tappets + block/side/plate/rods
      sixteen/twelve/eight/all rods - tie/fuel/connecting
      overhead valve
      o h v
      valley pan/cover/plate + lifters/cam
    `,
    says: "The cam's down in the block with rods going up to the rockers.",
    quiet: ["The push rod on the brake booster.", "Push the rod in."],
  },
  {
    value: "single overhead cam",
    part: "valve gear",
    never:
      "two/twin/pair/dual/double/both cam/cams/camshafts/sprockets | four cams | security/dash/web/phone cam | d o h c | dohc | cam box",
    signs: `
      s o h c
      sohc
      one/single/only/lone ..1 cam/camshaft/stick/sprocket/lump + top/head/up/upstairs/over/bank/overhead/middle
      one overhead/top cam
      cam + on top of/in the head + one/single
      one hump + cover/head
      rocker fingers + one/single
      overhead cam/camshaft + single/one/just/chain/belt/rockers/fingers
    `,
    says: "One cam up top on the head.",
    quiet: ["It has two cams up top.", "The dash cam on top.", "It's one hump in the road."],
  },
  {
    value: "twin cam",
    part: "valve gear",
    never: "security/dash/web | lift/brake cams",
    signs: `
      d o h c
      dohc
      dee oh aitch
      two/pair/both/twin/dual/double/four ..1 cams/camshafts/sticks !brake + head/heads/top/up/each/belt/chain/timing/cover/valves/side/breathes/inlet/intake/sprockets
      two/pair/both/twin/dual/double ..1 cam/timing/top? sprockets/gears/pulleys/wheels + cam/cams/head/belt/chain/mark/side/top/cover/timing
      two sprockets side by side
      intake/inlet/exhaust cam/camshaft/cams !cover + other/another/exhaust/inlet/intake/one/side/second
      inlet/intake + exhaust + cam/cams
      cam carrier/carriers/covers - drip
      cam ..4 letting/lets it/air in
      twin/double/dual cam/cams !lift
      two humps + cover/head
      plugs + deep wells/tunnel/tunnels/down/valley + cams/cam/middle/between
      quad cam
      valvetronic/vtec
    `,
    says: "There's an intake cam one side and an exhaust cam the other.",
    quiet: ["The exhaust is new on one side.", "Two cameras up top."],
  },
  {
    value: "four valve",
    part: "valve count",
    signs: `
      four valves + cylinder/pot/hole/chamber/each/per/apiece
      sixteen/twenty/thirty/forty four/two/eight? valve/valves !stem/stems/cap/caps
      16v/24v/32v/48v
      16/24/32 valve/valves
      two in + two out
      two big + two little/small + chamber/valves/chambers
      multi valve
      multivalve
      pent roof
    `,
    says: "Four valves a cylinder, sixteen of them.",
    quiet: ["Four valve stems and all good."],
  },
  {
    value: "three valve",
    part: "valve count",
    signs: `
      three valves + cylinder/pot/hole/chamber/each/per
      three valve
      two in + one out + valve/valves/cylinder/pot/plugs - muffler/tail/exhaust
      twelve valve three
    `,
    says: "Three valves a cylinder, two in one out.",
    quiet: ["Three little caps."],
  },
  {
    value: "hydraulic lifters",
    part: "lifters",
    never: "brake/clutch/trolley/jack/tailgate/hood",
    signs: `
      hydraulic lifter/lifters/tappet/tappets/followers/cam/lash
      zero lash
      lifters/tappets/followers + pump/pumps/pumped + up/oil/pressure
      pump/pumps themselves up + oil/adjust/lash/valve
      never/n't/no/nothing ..4 adjust/set/shim/gap + valves/valve/tappets/lash/rockers/pump
      valve train/gear silent/quiet + plungers/lifters
    `,
    says: "Hydraulic lifters so you never have to set the valves.",
    quiet: ["Hydraulic brakes.", "The hydraulic jack's in the back."],
  },
  {
    value: "solid lifters",
    part: "lifters",
    never: "no/not/n't solid | gym/weights/boys",
    signs: `
      solid lifter/lifters/tappet/tappets/cam/stick/followers
      solids + lash/lifters/clicks/click/valve/cam/tick/ticks/in it
      mechanical lifters/tappets/cam
      lash + set/adjust/adjusted/every/thou/loose/thousand
      tappets/valves + set/adjust/adjusted/gap/gapped/shimmed/shims + thou/feeler/every/miles/thousand/hot/cold
    `,
    says: "Solid lifters so it ticks and wants the lash set.",
    quiet: ["The frame's solid.", "A solid tick from the clock."],
  },
  {
    value: "roller lifters",
    part: "lifters",
    signs: `
      roller lifter/lifters/cam/camshaft/tappets/followers/rockers
      tie bars + lifters
      wheels on the ..2 lifters
      went/switched/converted to a roller
    `,
    says: "It's a roller cam so no zinc oil.",
    quiet: ["The roller blind."],
  },
  {
    value: "chain",
    part: "timing drive",
    never:
      "tow/snow/bike/bicycle/final/axle/transfer/gold/door/saw/drive sprocket | no chain | not a chain | chain and padlock | tire/tires | chain gang/store/hoist/link/saw/cones | cones",
    signs: `
      duplex/simplex/triplex chain
      chain/chains + timing/cam/cams/camshaft/tensioner/guides/guide/slippers/sprocket/sprockets/stretch/stretched/rattle/crank/head/front - belt ..1 snapped
      roller chain/set + timing/front/double/gears/sprockets
      double roller !rear + set/chain/timing/front
      guides + tensioner/tensioners/slippers/slipper/plastic/chain/sump
      chain + not a? belt | instead of a? belt | no belt | never needs | for life | lifetime of the
      belt + never/n't/no/not + one/chain/due/have/any/change + chain/never/due/worry - snapped/fan
      chain guides/tensioner/slippers/rattle
      links ..4 instead/not rubber
      ratchet/hydraulic tensioner
    `,
    says: "Chain up the front with a new tensioner and guides.",
    quiet: ["The tow chain's in the back.", "A tow chain in the back."],
  },
  {
    value: "belt",
    part: "timing drive",
    never:
      "seat/seatbelt/fan/serpentine/drive/alternator/aux/auxiliary/v/compressor/ac/pulley/squeal/squeals/chirp/lap/shoulder/supercharger/blower/cvt/starter/tool/sander | no belt | not a belt | never a belt | chain | squeaks | cones/pulleys",
    signs: `
      timing belt
      cam belt/belts
      cambelt
      belt + water pump/tensioner/tensioners/idler/idlers/kit + done/changed/new/replaced/invoice/bill/receipt/spring/last/thousand/fitted/quid/pounds/dollars/at
      belt kit
      belt + due/interval/snaps/snapped/snap + miles/years/thousand/valves/bent/engine/sixty/hundred
      wet belt
      belt + runs/running/bathes/sits in the oil
      wet one + oil
      rubber + teeth + strip/belt/cover
      rubber belt + cam/crank/sprocket/head
      toothed belt/rubber/band
      sticker/label + cover + mileage/miles/date/dated + belt/fitted/last/next
      belt + sprocket/sprockets + crank/teeth/head - side by side
    `,
    says: "Belt, tensioner and water pump done at sixty thousand, there's the bill.",
    quiet: ["The fan belt's new.", "The seat belt was changed.", "It's a chain so there is no belt due at sixty thousand."],
  },
  {
    value: "timing gears",
    part: "timing drive",
    never: "ring/final/diff/axle/landing/transmission",
    signs: `
      gear drive/driven !by + cam/timing/whine/chain/belt/noisy
      timing gear/gears
      gears/gear + cam + no chain/belt | whine
      fiber/phenolic/nylon/celeron gear/wheel/cam
      straight cut + cam/timing/idle/drive
    `,
    says: "It's gear driven so you hear the cam whine.",
    quiet: ["The gears whine in second."],
  },
  {
    value: "big block",
    part: "block",
    never: "small/little/baby | of flats/apartments",
    signs: `
      big/large/great/huge block !of + car/motor/engine/cubes/cubic/torque/under/springs/heavy/there/headers/v8/chrome/truck/it/in/heads/one/v - cheese/wood/ice/concrete
      big/large block $
      rat motor
      big/large lump/motor/one/casting/engine + fills/shoehorned/steering/towers/tower/springs/weight/nose/pounds/heavy/plugs/exhaust/left/engine bay
      fat motor
      fills the ..1 hole/bay + engine/motor/block/lump
      fender to fender
    `,
    says: "It's a big block car, look how it fills the bay.",
    quiet: ["Take a walk round the big block of flats.", "It's the small block."],
  },
  {
    value: "small block",
    part: "block",
    never: "not/n't a? small | big/large",
    signs: `
      small block !of - heater/wood/cheese/big
      mouse motor
      little v8
      little/small ..1 motor/one/lump/v8 + parts/everybody/everyone/common/plugs/room/cheap/store
      the small one + bolts/heads/badge/plugs/parts
    `,
    says: "Small block so you can get at the plugs.",
    quiet: ["A small block of wood behind the wheel."],
  },
]);
