import { signTable } from "./sign-table.ts";

/** Tread, build and sidewall of tires. Common practice of the trade. */
export const tireSigns = signTable("tire", "type", [
  {
    value: "whitewall",
    part: "sidewall",
    never: "no/not whitewalls | color on the wall | lettering",
    signs: `
      whitewall/whitewalls
      white wall/walls + tire/tires/wide/bleach/scrub/band/rubber/inch/clean - garage/building/paint
      wide whites
      band/bands/stripe/ring + white/pale/bleach + tire/tires/rubber/sidewall/scrub/dish/bands - hood/door/roof/armband
      bleach + band/bands/brush/sidewall/tires/walls
      gangster/wide whites
      redline/redlines + tire/tires - rev/tach/rpm/gauge
    `,
    says: "Wide whites, I scrub them with bleach.",
    quiet: ["The white wall of the garage."],
  },
  {
    value: "raised letter",
    part: "sidewall",
    signs: `
      raised white? letter/letters/lettering
      outline letters
      white letter/letters/lettering/writing + tire/tires/rubber/out/proud/fronts/back/chunky - sign/door/plate/hood
      proud of the rubber
    `,
    says: "Raised white letters.",
    quiet: ["A white letter in the file."],
  },
  {
    value: "blackwall",
    part: "sidewall",
    signs: `
      blackwall/blackwalls
      black wall/walls tire/tires
      plain rubber
      no stripe/stripes + letters/rubber/band/tire
    `,
    says: "Plain blackwalls.",
    quiet: ["Black walls in the room."],
  },
  {
    value: "winter",
    part: "tread",
    never: "if/when/would/make sense/valley/good rubber | all year | m and s/m plus",
    signs: `
      snowflake/snowflakes - plate
      snow tires/tire/pair/set/boots/tread
      snows + own/rims/stack/set/tires
      winter/winters tires/tire/set/rubber/pair/boots/tread
      winters + tires/rims/set
      studded
      sipes/slits + soft/rubber/tread/ice
      cold rated
      ice tires
    `,
    says: "There's a snowflake in a mountain on the side.",
    quiet: ["When the snow comes you want good tires.", "A winter car."],
  },
  {
    value: "all-season",
    part: "tread",
    signs: `
      all season/seasons/weather
      m and/plus s
      m + s
      mud and snow
      on all year + tire/tires/same/them/leave/round
      sun and sleet
    `,
    says: "M plus S on the side, you leave them on all year.",
    quiet: ["He's here all year."],
  },
  {
    value: "all-terrain",
    part: "tread",
    signs: `
      all terrain/terrains
      chunky + tread/tire/tires/howl/writing/rubber/letters - steering/jewelry
      knobbly/knobby - knees
      a t tires/tire
    `,
    says: "Knobbly all terrains.",
    quiet: ["Chunky guy."],
  },
  {
    value: "mud-terrain",
    part: "tread",
    signs: `
      mud terrain/terrains/tires/tire/grips/boggers
      muddies/mudders/boggers
      lugs + side/sidewall/howl/hum/helicopter/tread/tire/big - nuts/wheel/five/six/eight/engine
      m t tires
      claws + howl/wail/asphalt/tread/mud/tire
      helicopter + tire/tires/road/lugs/sounds
    `,
    says: "Great big lugs, sounds like a helicopter.",
    quiet: ["Five lugs a wheel."],
  },
  {
    value: "highway",
    part: "tread",
    signs: `
      highway/road/street tread/ribs
      ribs/ribbed + tread/quiet/road/round/truck - body/sill/case
    `,
    says: "Ribbed highway tread.",
    quiet: ["We took the highway."],
  },
  {
    value: "radial",
    never: "not/n't/no radials/radial | saw/fans/fan/arm | pamphlet | cracks",
    signs: `
      radial/radials + tire/tires/all/set/modern/front/on/look/drive/steel/narrow/the
      steel belt/belts/belted
      belted + tire/tires/modern/spare
      belts inside/in them
      letter r + size/bulge/sidewall
      r in the size
      bulge + radial/bottom/normal/belts/low
    `,
    says: "Steel belted radials.",
    quiet: ["A radial saw.", "The seat belts are inside."],
  },
  {
    value: "bias-ply",
    never: "not/n't/no/instead | seat | look like",
    signs: `
      bias ply/plies/belted
      cross ply/plies
      crossply/crossplies
      nylon cord/cords + tire/tires/rubber
      follow/follows/nibble/nibbles/tramline/tramlines/wander/wanders/hunt + groove/grooves/lines/line/road/skinny/tires/ruts/crack
      tall skinny + tires/grooves/shouldered
      flat spot/spots + overnight/cold/morning/warm - brake
      dash in the size
      alpha/letter size tires
    `,
    says: "They're tall and skinny and they wander with every groove.",
    quiet: ["My mind wanders."],
  },
  {
    value: "run-flat",
    signs: `
      run flat/flats
      r o f
      runflat/runflats
    `,
    says: "They're run flats.",
    quiet: ["It runs. Flat out."],
  },
  {
    value: "retread",
    signs: `
      retread/retreads
      recap/recaps/recapped
      remould/remoulds/remold/remolds
    `,
    says: "The backs are retreads.",
    quiet: ["We drove back."],
  },
  {
    value: "commercial",
    part: "tread",
    signs: `
      load range e/d/c
      ten/eight/six ply
      commercial/van tire/tires
      lt tires
      reinforced sidewall
    `,
    says: "Load range E all round.",
    quiet: ["A commercial break."],
  },
  {
    value: "directional",
    part: "tread",
    signs: `
      directional
      arrow + side/sidewall/tire + roll/rotation/way
      v pattern tread
    `,
    says: "They're directional, see the arrow on the side.",
    quiet: ["The arrow on the dash."],
  },
  {
    value: "summer",
    part: "tread",
    signs: `
      summer tires/tire/rubber
      n't ..3 frost/snow/cold + tires/tire/glass/turn/these - start/heater
      turn to glass
    `,
    says: "Summer tires, useless in frost.",
    quiet: ["Last summer."],
  },
  {
    value: "mixed",
    part: "set",
    signs: `
      mixture/mix/mismatched/assorted/stranger + tires/tire/brands/makes/names/badges/treads/patterns/makers/rubber/three - colors
      different + brands/makes/treads/patterns/makers - front
      pair and a pair
      three of one
      no two the same
      four different tires/brands/makes/badges
    `,
    says: "A mixture of makes, three of one and a stranger.",
    quiet: ["A different car."],
  },
  {
    value: "matched",
    part: "set",
    signs: `
      matching/matched/full/same set of? + tires/tire/four/maker/brand/rubber - luggage/seats
      same + brand/make/name/maker/pattern + tread/age/tires/tire/all four/round/corners - not/paint
      all one make/brand/pattern
      all four match/matching
    `,
    says: "Matched set of tires, same make all round.",
    quiet: ["A matching set of luggage."],
  },
]);
