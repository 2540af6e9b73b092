import { signTable } from "./sign-table.ts";

/** How the wheels are guided, what damps them and how high it sits. Common practice of the trade, American and British. */
export const linkageSigns = signTable("suspension", "type", [
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
      lifted/raised/jacked + inch/inches/kit/suspension/stance/shackles/springs/blocks - sheet/carpet/hood/out/off/curb/trunk/seam/sill
      lift kit/blocks
      body lift
      drop/dropped brackets/pitman
      creeper + under/roll + jack/room/without
      stool/ladder + get in/into - frame/bed/roof
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
