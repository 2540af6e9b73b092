/**
 * Words for the same thing in the trade on either side of the Atlantic. A query with one of a row finds places with any of it.
 * Common practice; `example` is a query and a text that it must find.
 */
export const sameThings = [
  {
    words: ["trunk", "boot", "cargo", "load space", "luggage compartment", "truck bed"],
    example: { query: "boot", text: "the trunk is clean" },
  },
  { words: ["hood", "bonnet"], example: { query: "bonnet", text: "under the hood" } },
  {
    words: ["underside", "underneath", "underbody", "undercarriage", "chassis", "on the lift"],
    example: { query: "chassis", text: "Underside" },
  },
  { words: ["tire", "tyre"], example: { query: "rear tyres", text: "the rear tires" } },
  { words: ["windshield", "windscreen"], example: { query: "windscreen", text: "a chip in the windshield" } },
  { words: ["transmission", "gearbox", "trans"], example: { query: "gearbox", text: "the transmission was rebuilt" } },
  { words: ["fender", "wing", "quarter panel"], example: { query: "wing", text: "driver fender" } },
  { words: ["fuel tank", "gas tank", "petrol tank"], example: { query: "petrol tank", text: "a new gas tank" } },
  { words: ["fuel", "gas", "gasoline", "petrol"], example: { query: "petrol", text: "a full load of gas" } },
  { words: ["muffler", "silencer"], example: { query: "silencer", text: "two mufflers" } },
  { words: ["sway bar", "anti-roll bar", "stabilizer bar"], example: { query: "anti-roll bar", text: "one sway bar" } },
  { words: ["shock", "damper", "shock absorber"], example: { query: "dampers", text: "new shocks" } },
  { words: ["turn signal", "indicator", "blinker"], example: { query: "indicators", text: "the turn signals work" } },
  { words: ["hubcap", "wheel cover", "wheel trim"], example: { query: "wheel trims", text: "four hubcaps" } },
  { words: ["wheel", "rim"], example: { query: "rims", text: "fifteen inch wheels" } },
  { words: ["convertible top", "soft top", "hood top"], example: { query: "soft top", text: "the convertible top is new" } },
  { words: ["emergency brake", "parking brake", "handbrake"], example: { query: "handbrake", text: "the parking brake holds" } },
  {
    words: ["axle ratio", "rear end", "final drive", "differential", "rear axle", "diff", "gears"],
    example: { query: "diff", text: "final drive ratio 4.11:1" },
  },
  { words: ["engine", "motor"], example: { query: "motor", text: "engine bay" } },
  { words: ["cabin", "interior", "inside"], example: { query: "interior", text: "Cabin" } },
  { words: ["dash", "dashboard", "instrument panel"], example: { query: "dashboard", text: "the dash pad" } },
  { words: ["odometer", "mileage", "miles", "mile", "clock"], example: { query: "mileage", text: "68,000 miles" } },
  { words: ["radiator", "rad"], example: { query: "rad", text: "an aluminum radiator" } },
  { words: ["aluminum", "aluminium", "alloy"], example: { query: "aluminium", text: "aluminum heads" } },
  { words: ["color", "colour"], example: { query: "colour", text: "color code" } },
  { words: ["gray", "grey"], example: { query: "grey", text: "gray carpet" } },
  { words: ["stock", "original", "factory"], example: { query: "original", text: "it is a factory radio" } },
  { words: ["license plate", "number plate", "registration plate"], example: { query: "number plate", text: "the license plate light" } },
  { words: ["title", "logbook", "registration", "v5"], example: { query: "logbook", text: "a clean title" } },
  {
    words: ["air conditioning", "air-conditioning", "aircon", "air con", "a/c", "ac"],
    example: { query: "aircon", text: "air conditioning" },
  },
  { words: ["sedan", "saloon"], example: { query: "saloon", text: "four door sedan" } },
  { words: ["estate", "station wagon", "wagon"], example: { query: "estate", text: "a long wagon" } },
  { words: ["pickup", "truck"], example: { query: "pickup", text: "half ton truck" } },
  { words: ["size", "diameter", "displacement"], example: { query: "wheel size", text: "the wheel diameter is fifteen" } },
  { words: ["price", "asking"], example: { query: "price", text: "asking 38,900" } },
  { words: ["driver side", "drivers side", "driver's side", "driver"], example: { query: "drivers side", text: "Driver's side" } },
  {
    words: ["passenger side", "passengers side", "passenger's side", "passenger"],
    example: { query: "passenger side", text: "Passenger's side" },
  },
  // Below: each pair is one thing, British and American, or long and short.
  { words: ["spare wheel", "spare tire", "spare"], example: { query: "spare wheel", text: "there is a spare in the back" } },
  { words: ["rocker panel", "rocker", "sill"], example: { query: "sills", text: "the rocker panel is solid" } },
  { words: ["door card", "door panel", "door trim"], example: { query: "door cards", text: "the door panels are original" } },
  { words: ["glovebox", "glove box", "glove compartment"], example: { query: "glovebox", text: "the glove compartment shuts" } },
  { words: ["headlight", "headlamp"], example: { query: "headlamps", text: "four headlights" } },
  { words: ["tail light", "taillight", "tail lamp", "rear light"], example: { query: "rear lights", text: "both taillights" } },
  { words: ["side light", "parking light", "marker light"], example: { query: "side lights", text: "the parking lights" } },
  { words: ["reversing light", "backup light", "reverse light"], example: { query: "reversing light", text: "one backup light is out" } },
  { words: ["wiper", "windshield wiper", "windscreen wiper"], example: { query: "windscreen wipers", text: "the wipers park" } },
  { words: ["seat belt", "seatbelt", "lap belt", "safety belt"], example: { query: "seatbelts", text: "lap belts in the rear" } },
  { words: ["seat", "upholstery"], example: { query: "upholstery", text: "the seats were redone" } },
  { words: ["headliner", "headlining", "roof lining"], example: { query: "roof lining", text: "the headliner sags" } },
  { words: ["carpet", "floor covering"], example: { query: "floor covering", text: "new carpet" } },
  { words: ["sunroof", "moonroof", "sun roof"], example: { query: "sunroof", text: "the moonroof opens" } },
  { words: ["speedo", "speedometer"], example: { query: "speedo", text: "the speedometer works" } },
  { words: ["gauge", "gage", "instrument"], example: { query: "gages", text: "all the gauges work" } },
  { words: ["stick shift", "manual"], example: { query: "stick shift", text: "a manual gearbox" } },
  { words: ["gear lever", "gear stick", "shifter"], example: { query: "gear lever", text: "the shifter is tight" } },
  { words: ["driveshaft", "drive shaft", "propshaft", "propeller shaft"], example: { query: "propshaft", text: "the drive shaft is new" } },
  { words: ["carburetor", "carburettor", "carb"], example: { query: "carburettor", text: "a four barrel carburetor" } },
  { words: ["valve cover", "rocker cover", "cam cover"], example: { query: "rocker cover", text: "chrome valve covers" } },
  { words: ["oil pan", "sump"], example: { query: "sump", text: "the oil pan is dry" } },
  { words: ["alternator", "generator", "dynamo"], example: { query: "dynamo", text: "the generator charges" } },
  { words: ["spark plug", "plug"], example: { query: "plugs", text: "new spark plugs" } },
  { words: ["accelerator", "throttle", "gas pedal"], example: { query: "accelerator", text: "the throttle is free" } },
  { words: ["tailpipe", "tail pipe", "exhaust pipe"], example: { query: "tailpipe", text: "the exhaust pipe is new" } },
  { words: ["grille", "grill"], example: { query: "grill", text: "the grille is straight" } },
  { words: ["mirror", "wing mirror", "side mirror", "door mirror"], example: { query: "wing mirrors", text: "both side mirrors" } },
  { words: ["radio", "stereo", "head unit"], example: { query: "stereo", text: "the radio works" } },
  { words: ["demister", "defroster"], example: { query: "demister", text: "the defroster works" } },
  { words: ["horsepower", "hp", "bhp"], example: { query: "bhp", text: "300 hp" } },
  { words: ["respray", "repaint"], example: { query: "respray", text: "an older repaint" } },
  { words: ["scratch", "scuff", "scrape"], example: { query: "scuffs", text: "one scratch on the door" } },
  { words: ["dent", "ding"], example: { query: "dents", text: "a small ding" } },
  { words: ["rust", "corrosion", "rot"], example: { query: "corrosion", text: "no rust anywhere" } },
  { words: ["leak", "weep", "drip", "seep"], example: { query: "leaks", text: "it weeps a little" } },
  { words: ["leather", "hide"], example: { query: "hide", text: "leather seats" } },
  { words: ["tow bar", "towbar", "tow hitch", "trailer hitch", "hitch"], example: { query: "tow bar", text: "a trailer hitch" } },
  { words: ["roof rack", "luggage rack", "roof rails"], example: { query: "roof rack", text: "a luggage rack" } },
  { words: ["lug wrench", "wheel brace"], example: { query: "wheel brace", text: "the jack and lug wrench" } },
  { words: ["inspection", "mot", "roadworthy"], example: { query: "mot", text: "a fresh inspection" } },
  { words: ["owner", "keeper"], example: { query: "keepers", text: "two owners from new" } },
  { words: ["van", "panel van", "delivery van"], example: { query: "panel van", text: "a van with side doors" } },
  { words: ["convertible", "drophead", "cabriolet", "ragtop"], example: { query: "drophead", text: "a convertible" } },
  { words: ["hardtop", "hard top"], example: { query: "hard top", text: "two door hardtop" } },
  { words: ["four-wheel drive", "four wheel drive", "4x4", "4wd"], example: { query: "4x4", text: "four wheel drive works" } },
] as const satisfies readonly { words: readonly [string, string, ...string[]]; example: { query: string; text: string } }[];

/** Slips that are words themselves or too far from what is meant to be found by nearness alone. Common practice. */
export const mistyped: ReadonlyMap<string, string> = new Map([
  ["break", "brake"],
  ["breaks", "brakes"],
  ["axel", "axle"],
  ["axels", "axles"],
  ["peddle", "pedal"],
  ["peddles", "pedals"],
  ["brakeing", "braking"],
  ["wheal", "wheel"],
  ["wheals", "wheels"],
  ["millage", "mileage"],
  ["tyer", "tyre"],
  ["tyers", "tyres"],
  ["tier", "tire"],
  ["tiers", "tires"],
  ["gaskit", "gasket"],
  ["guage", "gauge"],
  ["guages", "gauges"],
  ["deisel", "diesel"],
  ["exaust", "exhaust"],
  ["exsaust", "exhaust"],
  ["shassis", "chassis"],
  ["chasis", "chassis"],
  ["chassy", "chassis"],
]);

/** Words of a caller's question that say nothing about where to look. */
export const questionWords: ReadonlySet<string> = new Set(
  (
    "a an the of on in at to for with and or is are was were be been it its it's this that these those there here any some which one ones " +
    "what what's whats where who how when does do did has have had having you your i me my can could tell show find about please got " +
    "work works working many much still"
  ).split(" "),
);

/** Words that ask whether a thing works: how it was found to be answers them, not that it is there. */
const workingWords: ReadonlySet<string> = new Set(
  "work works working run runs running operate operates operational function functions".split(" "),
);

export function asksWhetherItWorks(query: string): boolean {
  return wordsOf(query).some((word) => workingWords.has(word));
}

/** Lower-case words and numbers; "235/60-15" gives three, as the index has them. */
export function wordsOf(text: string): string[] {
  return (
    text
      .toLowerCase()
      .replaceAll(/[’‘]/g, "'")
      .match(/[\p{L}\p{N}]+(?:'[\p{L}]+)?/gu) ?? []
  );
}
