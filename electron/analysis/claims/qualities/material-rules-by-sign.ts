import type { ComponentName } from "../../../../shared-types/index.ts";
import type { FixedPart, QualityRule } from "./quality-rule.ts";

/** A material told by a sign of it: what a magnet does, a weave, a trade's word for a look. Common practice of the trade, American and British. */
interface MaterialSign {
  readonly value: string;
  readonly phrases: readonly string[];
  readonly beside?: readonly string[];
  readonly unless?: readonly string[];
  readonly among: readonly ComponentName[];
  /** Where the part may be named after the sign; else as a quality stands to its part. */
  readonly order?: "place";
  readonly otherwise?: FixedPart;
  readonly says: string;
  readonly of: ComponentName;
  readonly quiet: readonly string[];
}

const signs: readonly MaterialSign[] = [
  {
    value: "aluminum",
    phrases: [
      "magnet ..12 wo/do/does/did n't/not grab/stick/hold/bite/catch/take/pull",
      "magnet ..8 never grabs/sticks/holds",
      "magnet ..12 slides/slid/falls/fell/drops/dropped/slips ..2 off",
      "wo n't grab/hold/take a? magnet",
      "n't a magnet ..4 stick/grab/hold",
    ],
    among: ["engine"],
    says: "I put a magnet on the intake and it slides right off.",
    of: "engine",
    quiet: ["The magnet sticks to the intake.", "The magnet slides off the bumper."],
  },
  {
    value: "steel",
    phrases: [
      "magnet ..3 sticks/grabs/holds/jumps/bites/grips/stuck/grabbed ..3 to/on/onto",
      "takes/holds/grabs a magnet",
      "tread/checker/chequer/diamond/deck plate",
      "treadplate",
      "checkerplate",
      "chequerplate",
    ],
    unless: [
      "n't/not/never/nothing ..5 stick/grab/hold",
      "magnet sticks ..6 then",
      "aluminum tread/checker/chequer/diamond/deck plate/treadplate/checkerplate/chequerplate",
      "alloy tread/checker/chequer/diamond/treadplate/checkerplate/chequerplate",
      "magnet sticks everywhere/all",
    ],
    among: ["body", "cargo-floor", "floors", "bumper", "fuel-tank", "top"],
    says: "Here's the bed floor, that's tread plate.",
    of: "cargo-floor",
    quiet: ["The bed floor is aluminum tread plate.", "The magnet won't stick to the fender."],
  },
  {
    value: "fiberglass",
    phrases: [
      "see/look/there 's ..2 the weave !of/on",
      "cloth/matting/mat/glass and resin",
      "resin and cloth/matting/mat/glass",
      "chopped strand",
      "glass cloth/mat/matting",
      "weave in it/that/there/this",
      "gel coat",
      "gelcoat",
    ],
    unless: [
      "no gel coat",
      "glass mat on the",
      "carpet ..3 weave",
      "weave ..3 carpet",
      "square weave",
      "basket weave",
      "patch/patched/patches/repair/repaired/filled/fix/fixed ..8 resin/strand/cloth/mat/matting",
      "resin/strand/cloth/mat/matting ..4 patch/repair/fix",
      "seat/seats ..4 weave",
      "carbon ..4 weave",
      "weave ..4 carbon",
    ],
    among: ["body", "top", "bumper"],
    order: "place",
    otherwise: { component: "body", part: null },
    says: "See the weave in it on this fender, that's cloth and resin.",
    of: "body",
    quiet: ["The carpet has a square weave.", "Somebody patched the fender with cloth and resin."],
  },
  {
    value: "vinyl",
    phrases: [
      "leathercloth",
      "leather cloth",
      "leather look",
      "imitation/fake/pretend/mock/artificial leather",
      "pvc",
      "stick/sticks to your/my/the legs/thighs/back",
    ],
    unless: ["with a leather cloth", "leather cloth and", "pvc pipe/piping/tube/tank"],
    among: ["seats", "trim", "top", "steering", "headliner"],
    otherwise: { component: "seats", part: null },
    says: "Two seats re covered in the heavy grade leathercloth.",
    of: "seats",
    quiet: ["I wiped the seats with a leather cloth.", "The seats are leather."],
  },
  {
    value: "chrome",
    phrases: [
      "chrome bumper/bumpers",
      "bumper/bumpers <be> ..1 chrome/chromed",
      "brightwork <be> ..2 chrome/chromed",
      "chrome trim/moldings/mouldings/strips/surrounds",
    ],
    unless: ["chrome bumper/bumpers car/conversion/kit", "bumper/bumpers <be> ..1 chrome <be>", "not chrome", "chrome/chromed steel/iron"],
    among: ["bumper", "trim"],
    says: "Chrome bumper up here.",
    of: "bumper",
    quiet: ["The chrome is good."],
  },
  // A British hood is the soft top; in steel it is the body's.
  ...(["mohair", "canvas", "vinyl", "cloth"] as const).map(
    (fabric): MaterialSign => ({
      value: fabric,
      phrases: [`${fabric} hood`, `hood <be> ..2 ${fabric}`],
      unless: [`hood <be> ..1 not ${fabric}`, `hood <be> n't ${fabric}`, "hood bra/cover/insulation"],
      among: ["top"],
      otherwise: { component: "top", part: null },
      says: `It has the ${fabric} hood.`,
      of: "top",
      quiet: ["The hood is steel."],
    }),
  ),
  {
    value: "aluminum",
    phrases: ["ally !cat/cats"],
    unless: ["ally polish", "ally wheels/wheel/rims", "my/an/our ally"],
    among: ["body", "engine", "top", "fuel-tank", "cooling", "transmission"],
    says: "The whole body's ally.",
    of: "body",
    quiet: ["The body is steel.", "He's an ally of mine, that body man."],
  },
  {
    value: "fiberglass",
    phrases: ["glass body/bodied/panels/fender/fenders/nose/clip/shell/tub", "body <be> ..1 glass"],
    unless: ["body <be> ..1 glass smooth", "window/windshield glass body"],
    among: ["body"],
    otherwise: { component: "body", part: null },
    says: "It's a glass body so there's nothing to rust.",
    of: "body",
    quiet: ["The glass is good and the body is straight."],
  },
  {
    value: "plastic",
    phrases: [
      "that/the/this plastic they/people",
      "joy/beauty of the plastic",
      "plastic !bag/bags/cover/covers/sheet/sheeting/trim/surround/base/handle/back/backs ..1 you wipe",
    ],
    unless: ["plastic they put/left over/on", "plastic they wrapped"],
    among: ["seats", "top"],
    says: "The seats now, it's that plastic they sold back then, you wipe it with a wet rag.",
    of: "seats",
    quiet: ["The seats are in a plastic bag.", "That's the plastic they put over the seats."],
  },
  {
    value: "plastic",
    phrases: [
      "printed film/foil",
      "film/foil/sheet ..4 printed",
      "wood grain/effect film/foil/sticker/plastic/vinyl",
      "wood grain/effect",
      "woodgrain/woodeffect",
      "simulated/fake/faux/imitation/pretend/mock/plastic wood/walnut/timber",
      "photo/photograph/picture of wood/walnut/a ..1 tree",
      "sticky back plastic",
    ],
    unless: [
      "window film",
      "woodgrain on the sides/side/doors",
      "no fake/faux/imitation/plastic",
      "not fake/faux/imitation/plastic/a",
      "n't fake/faux/imitation/plastic",
    ],
    among: ["dash", "transmission", "steering"],
    says: "A note about the fascia, the printed film has lifted at one end.",
    of: "dash",
    quiet: ["The dash is real walnut, not a photo of wood.", "Wood grain on the tailgate."],
  },
];

export const materialRulesBySign: readonly QualityRule[] = signs.map((row) => ({
  name: `${row.of} shown to be ${row.value}`,
  attribute: "material",
  value: row.value,
  phrases: row.phrases,
  ...(row.beside ? { beside: row.beside } : {}),
  ...(row.unless ? { unless: row.unless } : {}),
  about: { among: row.among, order: row.order ?? "quality", ...(row.otherwise ? { otherwise: row.otherwise } : {}) },
  denial: "drops",
  example: { says: row.says, gives: { component: row.of, value: row.value } },
  quiet: row.quiet,
}));
