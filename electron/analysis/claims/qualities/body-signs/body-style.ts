import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const outside = ["front", "rear", "driver-side", "passenger-side", "roof", "cargo", "opening", "closing", "cabin", "documents"] as const;
const door = "door/doors";

/** Shapes of body, doors, beds and tops, told by who sits where, what fits in and how it is opened. Common practice of the trade. */
const rows: readonly WordedRow[] = [
  {
    attribute: "type",
    value: "sedan",
    component: "body",
    zones: outside,
    never: "brochure for the | hatchback/wagon/estate | not a sedan | the sedan we had",
    signs: `
      four/4 door/doors + trunk/boot/proper/separate/sedan/saloon/family - truck/crew/cab/hatch/wagon/pickup
      separate/proper boot/trunk + lid/shelf/wall/four/doors/sedan/saloon/hatch
      bank manager/manager's/managers + shape/boot/car
      three box | boot + bonnet + shape
    `,
    says: "Four doors and a proper separate boot, a family saloon.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "wagon",
    component: "body",
    zones: outside,
    never: "off a station wagon | paddy wagon | very back | off the wagon | battle wagon | wagon wheel | covered wagon | hearse",
    signs: `
      estate/wagon/shooting/brake + long/roof/sleep/dog/wardrobe/load/back/tail/car/shape/glass/space/family - agent/last
      long roof
      wardrobe + goes/went/fits + back
      dog/dogs + back/behind + estate/wagon
      load bay + glass/long/dog/roller
    `,
    says: "It's an estate, so the wardrobe goes in the back, long roof.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "hardtop",
    component: "body",
    zones: outside,
    never: "hard top on a hoist | works hardtop | removable",
    signs: `
      no/without post/pillar/posts + window/windows/down/door/middle/open/two/four/glass - bed/climb
      pillarless
      hardtop + pillar/post/two/four/door/windows/roofline
    `,
    says: "Windows down all round and there's no post in the middle.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "roadster",
    component: "body",
    zones: outside,
    signs: `
      two seater/seats/up + open/dickey/wet/wind/roadster/roof
      no outside/winding ..2 handles/windows + wet/screens/curtains/open
      roadster + two/open/top/side
    `,
    says: "Two seater, open, no winding windows, it's a roadster.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "extended cab",
    component: "body",
    zones: outside,
    never: "not an extended",
    signs: `
      extended/super/king/club/extra/space cab/cabs/style
      little/half/small/wee/back ..1 door/doors + front + open/opened/before/first/until - hatch/fuel/gas/glove
      fold down/jump/sideways/side seat/seats + behind/truck/cab/kid/wee/toolbox/back - third/row/van/wagon/bus
      half doors/door | clamshell/rear hinged doors + cab
    `,
    says: "The little door behind won't open until you've opened the front, with jump seats, extended cab.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "regular cab",
    component: "body",
    zones: outside,
    never: "crew/extended/double",
    signs: `
      regular/single/standard cab
      one/single row + back/wall/truck/cab/head/nobody/behind/three - of/buttons/rivets
      three across + nobody/nothing behind | nobody behind + three/cab/truck
      back wall/window/glass + inch/inches/against + head/seat
    `,
    says: "One row, back wall's an inch off your head, regular cab.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "long",
    component: "body",
    part: "bed",
    zones: outside,
    never: "short/not long/wheelbase | five and a half | six and a half | does n't/wo n't shut",
    signs: `
      eight foot/feet/footer + box/bed/truck/gate/tape - wide/tall/ceiling/high
      long box/bed
      plywood/ply/plasterboard/drywall/sheetrock/sheet/sheets/ladder/lumber + gate/tailgate + shut/shuts/up/closed/flat - wouldn't/wo
    `,
    says: "It's the eight foot box, the gate shuts on a sheet of ply.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "short",
    component: "body",
    part: "bed",
    zones: outside,
    never: "long box/bed | eight foot",
    signs: `
      short/little/small/stubby box/bed
      five/six and a half + box/bed/foot/footer/truck/stick/gate - hours/thousand/gallon/miles/mil
      five foot/feet + bed/box/footer
      gate/tailgate + stay/stays/stick/sticks/wouldn't + box/bed/stick/out/mattress/two/plywood
      fits/fit in your/the garage + bed/box/truck/one - car/cover/barely
    `,
    says: "It's the short box, the one that fits in your garage.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "stepside",
    component: "body",
    part: "bed",
    zones: outside,
    signs:
      "step/steps/shelf + stand/foot/wheel/fender/bed/box/behind + cab/wheel/narrow/fenders/outside - running/bumper/board/bar/hitch/ladder | stepside/flareside/thriftside/sportside | fenders ..3 outside ..2 bed/box",
    says: "It's the stepside, there's a little shelf to stand on by the wheel.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "suicide",
    component: "body",
    part: "door",
    zones: outside,
    signs: `
      ${door} + wrong/other way | ${door} + hinge/hinged/hinges/hung + tail/rear/back + open/opens/at/wardrobe/swings - hood/bonnet/trunk/boot/half/barn/tailgate
      suicide ${door}
      swings/opens + tail/backward/backwards + ${door}/star
    `,
    says: "Back doors open the wrong way round, hinge at the tail.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "barn",
    component: "body",
    part: "door",
    zones: outside,
    never: "barn find | in/of/off the/a barn",
    signs: `
      swing/swings/opens + pair/both/two/left/sideways/outward + back/rear/gate/lift/doors/van/wagon/lifting - windows/front/butterfly/hood/bonnet/tail/free
      pair that swing
    `,
    says: "The back opens left and right, a pair of barn doors.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "manual",
    component: "top",
    zones: outside,
    never: "gearbox/transmission | power top | not manual",
    signs: `
      no motors/motor/pump/button/electric + top/roof/hood - window/windows/door/doors/mirror/spoiler/sun/sunroof
      undo/unclip/catches/latches/header + throw/shoulder/fold + top/roof/hood - bonnet/seat/panel/toolbox/engine/struts
      arm work/power | arms up
      turns/wind/winds/crank/handle/knob + sunroof/ceiling - gear/roller/rack/tent/window/rain
    `,
    says: "Undo the two clips on the top, push it back over your shoulder.",
    zone: "roof",
    quiet: [],
  },
  {
    attribute: "material",
    value: "cloth",
    component: "top",
    zones: outside,
    never: "vinyl/plastic/bonnet/side/seats/tarp | not cloth | headliner/headlining/lining/bag",
    signs: `
      mohair/canvas/duck + top/hood/roof/brush/tight/bows/rain/wet - awning/tent/seats/shoes/bag/wheel/fold
    `,
    says: "The hood's double duck, keeps the rain off.",
    zone: "roof",
    quiet: [],
  },
  {
    attribute: "material",
    value: "vinyl",
    component: "top",
    zones: outside,
    never: "no vinyl | they could have | cloth/canvas/mohair/duck",
    signs: `
      vinyl/pvc/raincoat/leathercloth + top/roof/hood/landau/soap - seat/seats/dash/door/record/floor/headliner/inside/bows/light/foam/grain/lid
      top/hood + shiny/grain/leathergrain + leather look/vinyl
    `,
    says: "The top's vinyl, wet cloth and a bit of soap.",
    zone: "roof",
    quiet: [],
  },
  {
    attribute: "material",
    value: "glass",
    component: "top",
    part: "rear window",
    zones: outside,
    never: "plastic window | body | fender/moonroof/sunroof",
    signs: `
      glass/pane/ting + back/rear + top/hood/roof/soft/see + window/lines/heated/wires/real/proper/plastic - wagon/hatch/bonnet/cab
      proper/real pane/glass + hood/top/roof/soft/back
    `,
    says: "There's a proper glass pane in the back of this soft top, with heated wires.",
    zone: "roof",
    quiet: [],
  },
];

export const bodyStyleSigns = wordedSigns(rows);
