import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const cabin = ["cabin", "drive", "driver-side", "passenger-side", "opening", "closing", "documents"] as const;
const dash = "dash/dashboard/fascia/facia/glovebox/glove/gauges/dials/clocks/instruments/plank/panel/binnacle";

/** What the dash, the floor and the roof lining are made of. Common practice of the trade, American and British. */
const rows: readonly WordedRow[] = [
  {
    attribute: "material",
    value: "wood",
    component: "dash",
    topic: dash,
    zones: cabin,
    never: "fake/sticker/film/effect/wheel/rim/knob/boat/printed/photo/imitation/plastic | door cap/caps | no/not/n't wood/veneer/walnut",
    signs: `
      veneer/veneered/veneers/marquetry/inlay/inlaid
      burr/burl + walnut/dash/elm/oak - bolt/thread
      tree/plank/timber + ${dash}/tap - christmas/fell/bed/girder/chain
      lacquer/varnish/varnished + corners/milky/lifting/crazed/crack/cracked/peeling/polisher/refinished/glove/clock - paint/rim/wheel/roof/bonnet/hood/ten
      cabinet maker/makers/makers' | french polish/polisher/polished/polishing
      walnut/mahogany/rosewood/maple/zebrano/teak/oak + ${dash}/plank/holes/round/fascia/in front
    `,
    says: "A proper plank in front of you, that's a tree.",
    quiet: ["A wooden dash is like a wooden boat."],
  },
  {
    attribute: "material",
    value: "plastic",
    component: "dash",
    topic: dash,
    zones: cabin,
    never: "wood dash | wheel/rim/bumper/seat/seats/window/windows/mat/mats",
    signs: `
      & hard/soft touch/scratchy/moulded/molded/grained/textured plastic/plastics/abs
      & plastic clips/squeaks/creaks/crack/cracked/split/fades/faded/warp/warped
      fake/sticker/stick/effect/printed/film/pretend/photo/catalogue + wood/walnut/timber/veneer - no fake/not a sticker/side/sides/flanks/tailgate/wagon
      molded/moulded black? plastic + split/crack/arizona/in front/dash
      woodgrain/woodeffect + dash/kit/sticker/fascia/print/plastic
    `,
    says: "It's molded black plastic and there's not a split in the dash.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "padded",
    component: "dash",
    zones: cabin,
    never: "roof/seat/seats/brake/top's/vinyl top/landau",
    signs: `
      padded + dash/top/foam/soft/crack/cracks/cracked/squashy/edge - roof/lid/bar/wheel/shoulder/only/landau
      dash pad + crack/cracks/cracked/foam/squash/soft/split/glare - brake/pedal/knee/bonnet/hood
      foam + poking/showing/coming/squash/spongy + top/dash/crack/cracks
    `,
    says: "Three cracks across the dash top, foam's poking out of the pad.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "painted metal",
    component: "dash",
    topic: dash,
    zones: cabin,
    never: "no tin | lid/bed/tray/floor/roof/padded/plastic",
    signs: `
      & tin/metal/steel + knock/painted/paint/tap/knuckles/magnet/ring/rings/outside/same/chips/chip/wrinkle/crackle
      tin dash
      wrinkle/crackle finish/black/paint + dash/tin/metal
      uncut steel | steel/tin/metal + in front of you
      knock knock + tin/steel/metal
      body color/colour/colored dash | dash ..3 same color/paint/gray/red ..2 outside/body/doors
    `,
    says: "It's just a tin dash, painted same time as the doors.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "leather",
    component: "dash",
    zones: cabin,
    signs:
      "hide/leather/stitched/stitching + all over the? top/dash/cowl | dash/binnacle ..3 leather/hide/stitched + stitched/hide/leather",
    says: "They've stitched hide all over the top of the dash.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "digital",
    component: "dash",
    zones: cabin,
    never: "radio/stereo/camera/clock radio/odometer",
    signs: `
      numbers/digits/segments/bars/cluster + green/bedside/calculator/glow/alarm/light/lcd/speed/electronic/lit/flicker/video
      no needles/needle/dials/hands
      all screen/screens | screen/display/panel + instead of dials/needles/gauges/clocks | screen ..3 where the dials/clocks/gauges
      digital ..1 dash/cluster/dials/speedo/speedometer/gauges/display
      virtual cockpit/dials/gauges
    `,
    says: "No needles, it's green numbers like a bedside clock.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "analog",
    component: "dash",
    zones: cabin,
    never: "no needles/needle",
    signs: `
      needles + swing/sweep/swept/rise/jump/round/real/proper/old - two needles in
      analogue/analog/round/proper/real dials/gauges/clocks/dial/gauge
      dials + needles/old/proper/school/chrome
      proper needles/needle
    `,
    says: "The needles swing up together when you turn the key.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "wood",
    component: "steering",
    part: "steering wheel",
    zones: cabin,
    signs: `
      rim/wheel/steering + wood/wooden/varnish/varnished/walnut/mahogany/laminated/beech/rivets/riveted - dash/dashboard/spoke/spokes/wagon/artillery/no wood/hub
      wood rim/rimmed/wheel
    `,
    says: "The varnish on the wheel rim's worn off at ten to two.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "material",
    value: "leather",
    component: "steering",
    part: "steering wheel",
    zones: cabin,
    never: "rims/alloy/alloys | wood/wooden rim/wheel",
    signs: `
      wheel/rim + leather/hide/stitched/stitching/unstitched + shiny/wrapped/covered/bottom/hands/ten/top/flat/worn/grip/perforated/has/gone
      leather ..1 wheel/rim/wrapped/bound - alloy/seats/steering wheel cover
    `,
    says: "The hide on the wheel's gone shiny.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "material",
    value: "plastic",
    component: "steering",
    part: "steering wheel",
    zones: cabin,
    signs: `
      rim/wheel/steering + skinny/thin/hard/cracked/bare + plastic/bakelite/urethane/polyurethane/rubber - cover
    `,
    says: "Skinny hard plastic rim on the wheel.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "material",
    value: "wool",
    component: "carpet",
    zones: [...cabin, "cargo"],
    never: "seats/seat/coat/hat/steel/ceiling",
    signs: `
      wilton/axminster
      wool/sheep/woollen/sheepskin + carpet/carpets/pile/yard/mats/rugs/floor/feet/deep/feel
    `,
    says: "That's wilton, feel it, heavy wool pile carpet.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "rubber",
    component: "carpet",
    zones: [...cabin, "cargo"],
    never: "pedal rubber/rubbers | door/windshield/windscreen/window/seal/seals/tire/tires/bumper/wiper/gasket | windscreen rubber",
    signs: `
      rubber floor/flooring/floors - under/over/on/plywood
      hose/mop/wash/wipe/power wash/rinse ..3 out + no carpet/rug/pile/rubber/floor/mat/mats
      rubber + no carpet/rug | rubber ..4 instead of carpet | no carpet/rug + rubber/mat/mop/hose
      rubber + worn through/tin/bare + pedal/floor/heel/feet
    `,
    says: "No rug in it, just a rubber floor.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "material",
    value: "vinyl",
    component: "carpet",
    zones: cabin,
    signs: "floor/floors + vinyl/lino + sheet/wipe/mop/fleet/easy/clean/roll | wipe down floor + vinyl",
    says: "Wipe down floor, it's a sheet of vinyl.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "loop",
    component: "carpet",
    zones: [...cabin, "cargo"],
    signs: "loop/looped/loops + pile/carpet/carpets/rug/floor/eighty/twenty/black/nylon - hook/hoses/belt",
    says: "He put new black loop carpet in.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "nylon",
    component: "carpet",
    zones: [...cabin, "cargo"],
    signs: "nylon/polypropylene/synthetic + carpet/pile/cut/rug/motel/floor",
    says: "The carpet's nylon, same as a motel.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "cloth",
    component: "headliner",
    zones: cabin,
    signs: `
      overhead/ceiling/headlining/headliner/head + cloth/fuzzy/fabric/felt/brushed/knit/woven - perforated/vinyl
    `,
    says: "The headliner's the fuzzy stuff on a molded board.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "vinyl",
    component: "headliner",
    zones: cabin,
    signs: `
      ceiling/headlining/headliner/bows/overhead/lining + vinyl/plastic/wipe/wipes - perforated/pinholes/pin/steel
    `,
    says: "White plastic stretched over the roof bows.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "perforated",
    component: "headliner",
    zones: cabin,
    signs: `
      pinholes/perforated/perforations/holes/pinholed + headliner/headlining/lining/ceiling/overhead/million/rows/count - rust/seat/seats/middles/leather/carpet/top's
    `,
    says: "The headlining's the perforated one with a million pinholes.",
    quiet: [],
  },
];

export const cabinKindSigns = wordedSigns(rows);
