/**
 * Words that tell what the numbers near them are about. Strength 0 to 1, of a word right beside the number; it fades with distance.
 * They rank readings and never make one: the claims pass, which knows the sentence, has the last word.
 */
export const topics = [
  "tire",
  "wheel",
  "ratio",
  "displacement",
  "flow",
  "mileage",
  "price",
  "year",
  "date-code",
  "voltage",
  "power",
  "torque",
  "pressure",
  "depth",
  "thickness",
  "bore",
  "stroke",
  "vin",
  "time",
  "weight",
  "count",
] as const;
export type Topic = (typeof topics)[number];

export interface TopicCue {
  readonly topic: Topic;
  /** Phrases of one to three lower-case words. */
  readonly words: readonly string[];
  readonly before: number;
  readonly after: number;
}

const phrases = (list: string): readonly string[] => list.split("|").map((phrase) => phrase.trim());

export const topicCues: readonly TopicCue[] = [
  {
    topic: "tire",
    words: phrases(
      "tire|tires|tyre|tyres|rubber|radials|radial|sidewall|bias ply|whitewalls|white letters|crossplies|spare|donut|space saver|shod|wrapped in|fronts are|rears are|rears|fronts|tread|all terrains|mud terrains|all seasons|meats",
    ),
    before: 0.7,
    after: 0.6,
  },
  {
    topic: "wheel",
    words: phrases("wheel|wheels|rim|rims|alloys|alloy|steelies|hubcaps|backspacing|offset|bolt pattern|styled steels"),
    before: 0.6,
    after: 0.7,
  },
  {
    topic: "ratio",
    words: phrases(
      "gear|gears|geared|ratio|ratios|rear end|axle|axles|rear axle|final drive|diff|differential|ring and pinion|posi|limited slip|locker|to one|to 1|highway gear|quick change|pinion|third member|pumpkin|rear gear|rear gears|rear is|nine inch|9 inch|12 bolt|10 bolt|the tag|tag says|tag's|diff gear|crown wheel",
    ),
    before: 0.75,
    after: 0.9,
  },
  {
    topic: "displacement",
    words: phrases(
      "engine|motor|block|cubic|cubes|small block|big block|liter|litre|stroker|v8|v6|v 8|v 6|straight six|inline six|inline four|flathead|displacement|mill|under the hood|crate|turbo diesel|diesel|badge says|badge",
    ),
    before: 0.6,
    after: 0.6,
  },
  { topic: "flow", words: phrases("carb|carbs|carburetor|carburettor|cfm|double pumper|barrel"), before: 0.6, after: 0.7 },
  {
    topic: "mileage",
    words: phrases(
      "mile|miles|mileage|odometer|odo|speedo|clock|on the clock|showing|original miles|kilometers|kilometres|ks|digital dash|reads|odometer says|miles on it|on the car|trip meter",
    ),
    before: 0.75,
    after: 0.85,
  },
  {
    topic: "price",
    words: phrases(
      "asking|in it total|in parts|in labor|in receipts|a folder|price|priced|money|dollars|dollar|bucks|sticker|quid|sterling|cash|out the door|list price|listed|paid|cost|costs|worth|bid|reserve|offer|invoice|receipt|firm|spent|buy it|take it home|grand|obo|yours for|we want|i want|ono|plus tax|windscreen price|euro|euros|part of the|on the board|in the window|on the windscreen|near offer|near enough|best offer|up for|he'll take|she'll take|i'll take|we'll take|they'll take|i'd take|he'd take|gonna take|number is|the number|the list",
    ),
    before: 0.75,
    after: 0.55,
  },
  {
    topic: "year",
    words: phrases(
      "year|model year|built|born|new in|since|back in|made in|model|registered|from the|first registered|in|titled|bought it new|was a|it's a|its a|of|off a|off an|out of a|out of an|correct for",
    ),
    before: 0.35,
    after: 0.2,
  },
  { topic: "year", words: phrases("model year|model|car|plate|titled as"), before: 0.1, after: 0.25 },
  {
    topic: "date-code",
    words: phrases("date code|date codes|dot|dots|d o t|week|week code|date stamp|dated|born on|date on|tin|made the"),
    before: 0.85,
    after: 0.4,
  },
  {
    topic: "voltage",
    words: phrases("volt|volts|voltage|battery|charging|alternator|generator|meter says|multimeter|resting|running's|running|charge"),
    before: 0.6,
    after: 0.8,
  },
  {
    topic: "power",
    words: phrases(
      "horse|horsepower|power|dyno|bhp|brake|kilowatts|hp|at the wheels|at the crank|at the tires|rated at|papers say|makes|making|pulled|put down",
    ),
    before: 0.5,
    after: 0.7,
  },
  { topic: "torque", words: phrases("torque|foot pounds|newton|pound feet"), before: 0.6, after: 0.8 },
  {
    topic: "pressure",
    words: phrases("pressure|psi|pounds|compression|oil pressure|boost|bar|cylinder|cold|hot|low one|inflated|leakdown"),
    before: 0.6,
    after: 0.5,
  },
  {
    topic: "depth",
    words: phrases("tread|tread depth|depth|left on|thirty seconds|32ths|nubs|whiskers|wear bars"),
    before: 0.6,
    after: 0.6,
  },
  {
    topic: "thickness",
    words: phrases("mil|mils|micron|microns|paint meter|gauge says|meter|thickness|pads|pad|rotor|rotors|lining|millimeters|millimetres"),
    before: 0.5,
    after: 0.6,
  },
  { topic: "bore", words: phrases("bore|bored|over|overbore|punched|pistons"), before: 0.5, after: 0.7 },
  {
    topic: "vin",
    words: phrases("vin|v i n|chassis number|serial number|vehicle identification|last eight|last six"),
    before: 0.9,
    after: 0.5,
  },
  { topic: "time", words: phrases("till|o'clock|am|pm|a m|p m|at night|in the morning|open|hours|noon"), before: 0.5, after: 0.8 },
  {
    topic: "weight",
    words: phrases(
      "weigh|weighs|weight|weighed|payload|towing|tow|tow rating|rated for|gross|gvw|gvwr|g v w|empty|unladen|laden|curb|hitch|tongue",
    ),
    before: 0.8,
    after: 0.4,
  },
  { topic: "ratio", words: ["rear"], before: 0, after: 0.5 },
  { topic: "date-code", words: ["code", "codes"], before: 0.35, after: 0.2 },
  { topic: "mileage", words: ["on it", "on her", "on him"], before: 0, after: 0.45 },
  { topic: "date-code", words: phrases("the date|on the date|the dates"), before: 0.3, after: 0.6 },
  { topic: "price", words: ["would take"], before: 0.7, after: 0.2 },
  // Work is dated by the mileage it was done at.
  {
    topic: "mileage",
    words: phrases(
      "done at|changed at|replaced at|rebuilt at|renewed at|fitted at|installed at|serviced at|swapped at|went in at|stamped at|service at|actual miles|and change|miles on the",
    ),
    before: 0.95,
    after: 0.95,
  },
  { topic: "stroke", words: ["stroke", "inch stroke", "stroke is"], before: 0.5, after: 0.9 },
  { topic: "displacement", words: ["bored", "stroked", "punched out"], before: 0.7, after: 0.6 },
];
