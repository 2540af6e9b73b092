import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const outside = ["front", "rear", "driver-side", "passenger-side", "roof", "opening", "closing", "documents", "cargo"] as const;

/** Kinds of paint, lamps and bumpers, told by the polishing rag, by how they light and by what they do when pushed. Common practice of the trade. */
const rows: readonly WordedRow[] = [
  {
    attribute: "type",
    value: "single-stage",
    component: "paint",
    zones: outside,
    never: "base and clear",
    signs: `
      rag/cloth/pad/mop/polish/polishing/polished/compound/compounding/rubbed + red/pink/blue/green/white/color/yellow/turns/comes/goes + clear/rag/cloth/pad + no/nothing/over/single/stage/polish/color/over - chalky/away white
      no/without clear/lacquer ..2 on/over/coat | nothing over ..2 top | color/paint with nothing over
      single stage/stages | straight enamel | one coat ..2 no clear | direct gloss
      dull/chalky/oxidised/oxidized + cut/polish + comes/brings ..3 back - clear/hood's
    `,
    says: "It's single stage, take some polish and your rag turns red.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "clear coat",
    component: "paint",
    zones: outside,
    never: "single stage | no clear | peeling/peeled/peels/lifting/flaking/let/failed/failing/gone | clear coat 's/is",
    signs: `
      base/basecoat + clear/clearcoat/lacquer + coats/coat/two/stage/polish/rag/flatted/over/white - base model
      coats of clear | clear over ..2 base/color | rag/pad/polish comes ..2 white
      two stage/pack + clear/base
    `,
    says: "It's base and clear, so the polish rag comes away white.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "metallic",
    component: "paint",
    zones: outside,
    never: "no flake/metallic/sparkle | non metallic | flat/solid | bass boat | corn flakes | rust flakes | flakes off",
    signs: `
      metallic/metallics + paint/silver/blue/green/gold/sun/color/gray/red/bronze/brown/twinkle/factory/option/charcoal
      flake/fleck/flecks/sparkle/sparkles/twinkle/twinkles/pins + sun/light/paint/silver/color/metallic/see/fine - off/chrome/size/peel/rust/key/bass/wrong
      bits of silver | silver bits/flecks | stars/starlight in it
    `,
    says: "It's a metallic, see the flake twinkle in the sun.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "metal flake",
    component: "paint",
    zones: outside,
    signs: "bass boat/boats + flake/paint/stuff/glitter/sparkle | metal flake/metalflake | flake ..3 size of",
    says: "Metal flake the size of glitter, bass boat stuff.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "solid",
    component: "paint",
    zones: outside,
    signs:
      "no metallic/flake/sparkle/fleck/pearl ..2 in | flat/plain/solid color/red/white/black/blue + no/nothing/match/sparkle/metallic/paint/mix - rod/single | non metallic",
    says: "Plain solid color paint, no sparkle, nothing to match.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "matte",
    component: "paint",
    zones: outside,
    never: "primer/undercoat/anti glare | flat out | matte black trim/hood/plastic/wheels",
    signs: `
      matte/matt/satin + paint/finish/wrap/color/factory/gray/green/black/wax/sheen/polish - trim/wheels/interior/chrome/dash/wood/screen
      no/without shine/gloss/wax/polish + meant/supposed/wax/polish/paint/dull/sticker/stove/handbook/finish - faded/sun/inside
      must n't/not/never/do n't wax/polish | flat finish/paint/black/gray + factory/meant/no/stove/wash/dull/hot
      stove black/paint + dull/matt/flat
    `,
    says: "You mustn't wax the paint, it's supposed to have no shine.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "wrap",
    component: "paint",
    zones: outside,
    never: "heat/header/exhaust/bubble/plastic/bin/shrink/wheel/arms/steering/gift/birthday | was wrapped like",
    signs: `
      vinyl/film/wrap/wrapped + peel/peels/pull/underneath/edge/edges/flap/paint/whole/color - seat/seats/roof/top/tint/glass/windows/bra/dash/window/protection/satin/matte/fat
      stuck on skin | leasing company + peel/white/film/sign
    `,
    says: "It's a wrap, pull that film off and it's white paint underneath.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "lacquer",
    component: "paint",
    zones: outside,
    never: "over lacquer/lacquered wheels | lacquer's peeling",
    signs: `
      nitro/nitrocellulose/cellulose/acrylic lacquer + paint/lacquer/cracks/smell/coats/crazed/checked/rub/stuff/car/finish/polish
      pear drops/drop | thinners/cellulose + smell/coats - enamel/shelf
      coats of ..2 lacquer
      alligator/checking/crow's + lacquer/nitro/cellulose/stuff
    `,
    says: "It's got them alligator cracks only nitro lacquer gets.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "enamel",
    component: "paint",
    zones: outside,
    signs: `
      enamel/enamels/enamelled/enameled + baked/paint/hard/stove/tractor/roller/brush/oven/gloss/synthetic/coach/implement - badge/badges/emblem/pin/sign/mug/dash/plate
      baked/stoved + oven/works/hard/spanner - clay/pizza/cloth
    `,
    says: "Baked on enamel, so it's hard as a stove.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "primer",
    component: "paint",
    zones: outside,
    never: "pump/showing/bulb/shows/etch/under/through | scraped to",
    signs: `
      primer/primered/undercoat + gray/red/oxide/never/needs/still/waiting/all/whole + panel/color/wing/fender/door/car/truck/body - through/edges/chips/corner/corners/behind/inside/shipping/key/back/edge
    `,
    says: "That one wing's still primer, never got its color.",
    quiet: [],
  },
  {
    attribute: "type",
    value: "led",
    component: "lights",
    part: "headlight",
    zones: ["front", "driver-side", "passenger-side", "opening", "closing"],
    never: "roof/strip/dome/trunk/tail/tails/brake/interior/bar/work/tube | led me | no leds/led | answer | not led",
    signs: `
      leds/led/diode/diodes + headlight/headlights/lamp/lamps/dots/white/lights/front/instant/little/eyebrow/projector/kit/units/drl/beam
      little squares/dots/chips + light/lights/lamp/each/one/thirty/row/white
      no bulb/bulbs ..3 change/in/to | nothing/never ..4 change + light/lights/lamp/squares/bulb
      blue white/bluish + on/instant/lights/headlights - smoke/paint/sky/stripe/xenon/purple/flicker/warm
    `,
    says: "LED headlights, little squares, no bulb to change.",
    zone: "front",
    quiet: ["He led me round the back."],
  },
  {
    attribute: "type",
    value: "halogen",
    component: "lights",
    part: "headlight",
    zones: ["front", "driver-side", "passenger-side", "opening", "closing"],
    never: "xenon/hid/not halogen | no ordinary",
    signs: `
      halogen/halogens/h4/h7/h1 + bulb/bulbs/lamp/lamps/headlight/headlights/relay/yellow/plain/up/conversion/twelve/dollar
      ordinary/plain/regular/normal/old bulb/bulbs + front/headlight/headlights/lamp/up/change/buy/gas/cheap/dollar/garage/squirters
      good old bulbs
    `,
    says: "Up front it's just good old halogen bulbs.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "xenon",
    component: "lights",
    part: "headlight",
    zones: ["front", "driver-side", "passenger-side", "opening", "closing"],
    never: "no xenon/xenons",
    signs: `
      xenon/xenons/zenon/hid/hids + lamp/lamps/headlight/headlights/bright/light/lights/bulb/ballast/white/purple/factory/self/pair/low
      ballast/ballasts/igniter + light/lights/lamp/lamps/headlight/headlights/purple/blue
      self levelling/leveling + light/lights/lamps/headlights/dance/ones/washers/washer
      purple/blue + warm/warms/white/flicker/flash + light/lights/lamp/headlights/switch/fire/strike
    `,
    says: "Xenon lamps, they go purple then white with the ballast.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "sealed beam",
    component: "lights",
    part: "headlight",
    zones: ["front", "driver-side", "passenger-side", "opening", "closing"],
    signs: `
      sealed beam/beams/unit/units
      whole unit/lamp/thing + screws/ring/gas/bulb/throw/parts/seven/five/round/chuck/replace/store - radio/engine
      bumps/pips/nubs + face/lens/glass + light/lamp/bulb/headlight/aim/front
      throwaway/throwaways + lamp/lights/front/pair/headlights/good
      no bulb + behind/back/get at
    `,
    says: "It's a sealed beam headlight, three screws, whole unit.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "pop-up",
    component: "lights",
    part: "headlight",
    zones: ["front", "driver-side", "passenger-side", "opening", "closing"],
    never: "blocker/tent/roof/camper/toaster",
    signs: `
      pop/pops/popup/hideaway/flip/retractable + headlight/headlights/lamp/lamps/lights - blocker
      lids/eyelids + come/comes/up/open/roll/motor/vacuum/thunk + light/lights/lamps/headlights/thunk/knob/awake
      lids come up | lamps/headlights/lights wake up
    `,
    says: "Pop up headlights, the lids come up with a thunk.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "material",
    value: "chrome",
    component: "bumper",
    zones: ["front", "rear", "driver-side", "passenger-side", "opening", "closing"],
    never: "no chrome | not chrome | rubber/painted/color coded | paint | plastic bumper",
    signs: `
      bumper/bumpers + chrome/chromed/crome/plated/plating/replated/rechromed/shiny/mirror/sunglasses/hair/reflection/shave/face/sky/blue/dazzle/brightwork - scuff/crack/polish the/painted
      brightwork + bumper/back/front/pitted
    `,
    says: "You want sunglasses for that chrome bumper.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "material",
    value: "plastic",
    component: "bumper",
    zones: ["front", "rear", "driver-side", "passenger-side", "opening", "closing"],
    never: "chrome/steel/fiberglass/door/fender | like a beach ball",
    signs: `
      bumper/bumpers/cover/corner/end + plastic/moulded/molded/foam/hollow/clips/flex/flexes/pop/pops/springs/urethane/polyurethane + lean/push/knee/pops/back/gives/rust/metal/out/black/behind/scuff/scuffed/soft - seat/lamp
      no metal + either end | push + knee/thumb + comes/pops/springs ..2 out/back - radio/lighter/cap
    `,
    says: "The bumper is moulded plastic, lean on it and it pops back.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "material",
    value: "steel",
    component: "bumper",
    zones: ["front", "rear", "driver-side", "passenger-side", "opening", "closing"],
    never: "plastic/alloy/aluminum/chrome/plated/plating/stainless",
    signs: `
      bumper/bumpers + girder/steel/iron/channel/plate/welded/pipe/railroad/heavy - behind/beam/brackets/spoiler/license
      girder + chain/front/back/bumper
    `,
    says: "The bumper is a proper steel girder, welded.",
    zone: "front",
    quiet: [],
  },
];

export const finishSigns = wordedSigns(rows);
