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
  { words: ["air conditioning", "air-conditioning", "aircon", "a/c"], example: { query: "aircon", text: "air conditioning" } },
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
] as const satisfies readonly { words: readonly [string, string, ...string[]]; example: { query: string; text: string } }[];

/** Words of a caller's question that say nothing about where to look. */
export const questionWords: ReadonlySet<string> = new Set(
  (
    "a an the of on in at to for with and or is are was were be been it its it's this that these those there here any some which one ones " +
    "what what's whats where who how when does do did has have had having you your i me my can could tell show find about please got"
  ).split(" "),
);

/** Lower-case words and numbers; "235/60-15" gives three, as the index has them. */
export function wordsOf(text: string): string[] {
  return (
    text
      .toLowerCase()
      .replaceAll(/[’‘]/g, "'")
      .match(/[\p{L}\p{N}]+(?:'[\p{L}]+)?/gu) ?? []
  );
}
