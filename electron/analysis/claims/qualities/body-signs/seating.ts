import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const cabin = ["cabin", "drive", "driver-side", "passenger-side", "rear", "opening", "closing", "documents"] as const;
const seat =
  "seat/seats/chair/chairs/bench/benches/squab/squabs/cushion/cushions/upholstery/interior/trim/inserts/bolster/bolsters/facings";

/** What seats are covered in and how they are built, told by touch, look, use and papers. Common practice of the trade, American and British. */
const rows: readonly WordedRow[] = [
  {
    attribute: "material",
    value: "leather",
    component: "seats",
    among: ["seats"],
    order: "quality",
    topic: seat,
    zones: cabin,
    never:
      "wheel/flakes/sofa/couch/jacket/boots/shoes/belt/wallet/food/key/fob/strap/straps/bag/look/imitation/fake/faux/artificial/substitute | man made | never mooed | no cow",
    signs: `
      nappa/aniline
      full/top/corrected grain
      cow/cows/bull/bulls/steer/steers/moo/mooed/cowhide/rawhide + smell/smells/grain/sides/nick/nicks/hide/option/seats/trim - outfit/ranch/camp/pasture/field/country/town
      seats + cow/cows/animal/hides - no/outfit/ranch/camp/covers
      animal + pores/pore/grain/nicks/wire/scar/scars/off
      pores + see/feel/look
      feed/fed/feeding/condition/conditioned/conditioner/nourish/nourished + hide/hides/leather - you 'll/should/want/need
      hide + trim/faced/facings/interior/proper/real/genuine/full/optioned/option/cream/red/black/tan/biscuit/magnolia/crackled/creased/worn/patina/oiled/supple/soft - under/hide it/the/them/anything
      saddle soap/soaped
      smells ..4 saddle/tack/saddlery/handbag/baseball glove/mitt
      creak/creaks/creaked ..3 like a saddle
      baseball/catchers/catcher's glove/mitt
      tannery/tanner/tanned hide/hides
      & perforated hide/leather/middles/centers
    `,
    says: "You can see the pores in the seats, that's off an animal.",
    quiet: ["There's a cow in the field.", "I had leather boots on."],
  },
  {
    attribute: "material",
    value: "vinyl",
    component: "seats",
    among: ["seats"],
    order: "quality",
    topic: seat,
    zones: cabin,
    never: "cloth ..3 not vinyl | never/no/not vinyl",
    signs: `
      heat sealed/welded/pressed + pleat/pleats/seam/seams/vinyl/pattern/lines
      plastic hide/leather
      never mooed
      moulded/molded/shiny/plastic/sticky stuff + hide/leather/is n't/not - wheel
      no/never cow/cows + wipe/plastic/squeak/vinyl/stick/sticks
      burns/burned/burnt/fries/scald/scalds/brand/brands ..6 legs/thighs/backside/shorts
      stick/sticks/sticking/stuck/peel/peels ..5 legs/thighs/shorts
      squeak/squeaks/squeaky + diner/booth/vinyl/plastic
      diner booth/seat
      wipe/wipes/wiped/hose + damp/wet/cloth/rag/sponge/down/clean + seat/seats/bench/chairs
      bus seats + made/material/stuff
      basket weave + inserts/middles/vinyl/seats
      & wipe clean/down
      & oilcloth/oil cloth
      plastic + seats/seat + red/white/black/blue/green/tan/sticky/shiny - cover/covers/bag/wrap/base/bases/shell/shells/trim/side/sides/back/backs/pieces/surround
    `,
    says: "Basket weave inserts with the heat sealed pleats.",
    quiet: ["I wiped the dash with a damp cloth."],
  },
  {
    attribute: "material",
    value: "leatherette",
    component: "seats",
    zones: cabin,
    signs: `
      man? made/mock/artificial/synthetic/imitation/pretend/vegan/faux hide/leather
      leatherette/pleather/skai/softex/sensatec/artico
      leather effect/look/style ..2 seats/trim/interior
      real hide/leather does n't/do n't
    `,
    says: "The price list gives it as artificial hide.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "cloth",
    component: "seats",
    among: ["seats"],
    order: "quality",
    topic: seat,
    zones: cabin,
    never:
      "oil/dust/polishing/wax/clay cloth | cloth top/hood/roof/tape/cap/backing | tweed/wool cap/suit/coat | put/lay/laid a cloth | leather/vinyl ..3 not cloth",
    signs: `
      houndstooth/tartan/plaid/pinstripe/herringbone/checked/check/weave/woven/bedford/whipcord/moquette/jacquard/broadcloth + inserts/seats/seat/middles/chairs/bench/centers/facings/thing/soft/legs/hair/roll - carbon/carpet
      fabric + seats/seat/base/trim/black/gray/blue/interior/stain/fade/fray/water/warm/hard - door/top/roof/softener
      no cow/cows/hide + nap/weave/soft/warm/cloth/fabric
      & does n't burn/stick/scald
      & warm in ..2 winter
      lawn chair + nap/weave/seats
      hair/dog + weave
      extractor/shampoo/shampooed/scotchgard/scotchgarded + fabric/cloth/seats/seat
    `,
    says: "The checked pattern in the middles, it's a woven thing.",
    quiet: ["I put a cloth down."],
  },
  {
    attribute: "material",
    value: "velour",
    component: "seats",
    zones: cabin,
    never: "carpet/headliner/headlining/roof/curtain/curtains/rope",
    signs: `
      velour/velours/velvet/velvety/plush - carpet
      crushed plush/velvet/velour
      nap/pile + lays/lies/stands/brush/stroke/rub/rubbed/dark/light/stripe + seat/seats/sit/backside/finger/hand/arm/side
      finger/hand/arm/rub + leaves/leave ..2 line/stripe/mark/streak
      rub/stroke/brush ..4 one/won way ..6 dark/darker/light
      light one way
      button/buttoned/buttons/tufted + plush/loose/cushion/cushions/velour
      whorehouse/bordello/bordeaux/brothel/boudoir/honeymoon/loose cushion + red/seats/seat/plush/cushions/look/gold
      theater/theatre/cinema/movie seat/seats + red/rub/soft/like
    `,
    says: "Run a finger across that and it leaves a line.",
    quiet: ["The carpet pile is flat."],
  },
  {
    attribute: "material",
    value: "mohair",
    component: "seats",
    zones: cabin,
    never: "top/hood/roof/brush/canvas/bows/ceiling/headliner/headlining",
    signs: `
      goat/goats/angora + hair/plush/seat/bristle/seats/fur/coat
      mohair + seat/seats/bench/cushion/cushions/thirties/sedan/back/brown/taupe/interior
      bristle/bristly + seat/seats/feel/back
      moth/moths/mothproof + seat/seats/tracks/grazed/holes/bald/hair - sheep
    `,
    says: "The moths found the goat hair.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "suede",
    component: "seats",
    among: ["seats", "steering", "headliner"],
    order: "quality",
    zones: cabin,
    never: "shoes/boots/brush/jacket",
    signs: `
      microsuede/suedette/nubuck
      suede + inserts/middle/middles/center/centers/seats/seat/slide/grip/bolsters/up
      chamois + feels/like/seats
    `,
    says: "The middles are that fake suede stuff.",
    quiet: ["Don't wear your blue suede shoes in here."],
  },
  {
    attribute: "material",
    value: "corduroy",
    component: "seats",
    zones: cabin,
    never: "trousers/pants/jacket",
    signs: `
      corduroy/cord + inserts/seats/seat/wale/ribs/ridges/middles/bench/brown/tan - power/spinal/phone/extension/pull/grip/door/charging/the cord/mains
      wide/fine wale
    `,
    says: "Tan cord inserts, wide wale.",
    quiet: ["Forty years of corduroy trousers on that seat."],
  },
  {
    attribute: "material",
    value: "wool",
    component: "seats",
    zones: cabin,
    never: "carpet/carpets/wilton/pile/ceiling/headliner/lining/steel/hat/sweater/jumper/sheepskin/wheel",
    signs: `
      wool/woollen/woolen + seats/seat/chauffeur/overcoat/broadcloth/upholstery/bench
      west of england
    `,
    says: "It's the west of england broadcloth, gray wool.",
    quiet: ["The carpet is wool."],
  },
  {
    attribute: "type",
    value: "bucket",
    component: "seats",
    part: "layout",
    zones: cabin,
    never: "bench in front | captain/captains/swivel/swivels | with buckets this | bucket of/and | ice/mop/rust/headlight bucket/buckets",
    signs: `
      two/separate/individual/own chairs/chair/seats/thrones + console/gap/between/handbrake/front/shifter/armrest/later - bed/berth/bunk/sofa/pair of rear
      separate chairs
      hug/hugs/wrap/wraps/grip/grips ..3 you/ribs/hips/kidneys/your - tires/road/wheel
      side/hip/thigh bolsters + hold/hug/hips/big/deep/high
      ca n't slide ..2 over/across - door
      harness + shells/slots/holes/shell
      high back/backs/backed + chairs/front/grips/seats - bench/booster
      phone/fries/chips/keys/wallet + down the side of ..2 seat
      high backs with
      sport/sports/race/racing/fixed/comfort style/type/back ..1 bucket/buckets/pair/chairs
      handbrake/brake/shifter/console between ..2 us/seats/you
      no cuddling
    `,
    says: "There's two separate chairs up front with the console between.",
    zone: "cabin",
    quiet: ["There's a bucket of water by the door."],
  },
  {
    attribute: "type",
    value: "bench",
    component: "seats",
    part: "layout",
    zones: cabin,
    never:
      "split/halves/sixty/forty/two halves | work/park/test/church bench | no bench | one third | two parts | bench grinder/press/test/mark/seat out",
    signs: `
      sofa/couch/pew/davenport/settee + front/door/wide/across/one/long/seat/slide - at home
      three/3 across ..2 front/this - behind
      three/six passenger + front/bench/seat
      slide/scoot/slid/scooch all? the? way? over/across + seat/sweetheart/girl/wife/missus/sit/go/nothing/dog
      sweetheart/girlfriend/missus/dog ..4 middle + seat/bench/front/tree/between/sit/slide/fit/there
      no hump/console/gap + seat/slide/lap/foot/feet/across/between
      lay/lie/stretch/sleep/nap + front/across + seat/this
      whole thing/seat moves/slides/comes/goes
      door to door + seat/sofa/one/bench
      seat + one wide/long/piece + across/born/front/door
      bench front/seat/right/up/all/across + dog/middle/three/column/tree/one/born
      everybody/all ..2 moves together
      seat/backrest + all as one/1 lump/piece
    `,
    says: "One long sofa from door to door.",
    zone: "cabin",
    quiet: ["I've a work bench in the shop."],
  },
  {
    attribute: "type",
    value: "split bench",
    component: "seats",
    zones: cabin,
    signs: `
      sixty forty | forty twenty forty | forty sixty | one third two thirds | third two third
      seat/backrest/back/bench + two halves/parts/bits + fold/folds/drop/down/slide/there/track/wide/narrow/each - roof/tailgate/door/doors
      one/1 third + fold/folds/drop/down/up/slide/kids/ski/skis/passengers/there/track - roof/tailgate/door/doors
      split + bench/fold/folding/backrest/rear seat - seam/stitch/seams/leather/vinyl/cushion
      narrow/little/small ..2 bit/part/half/side/one + fold/drop/down + kids/two/people/grandchildren/passenger/passengers
    `,
    says: "The back folds in two halves, one there, one there, it's a split bench seat.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "captain",
    component: "seats",
    zones: cabin,
    signs: `
      captain/captains/captain's 's? chair/chairs
      two captains/captain
      walk between them + seats/row/back
      armchair/armchairs + armrest/armrests/swivel/each/row/middle/two
      big chairs + arms/armrest/armrests/own
    `,
    says: "Two captains in the middle row so you can walk between them to the back.",
    zone: "cabin",
    quiet: [],
  },
];

export const seatingSigns = wordedSigns(rows);
