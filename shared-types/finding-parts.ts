import type { ComponentName, PositionName, ZoneName } from "./vocabulary.ts";

/** A part that a finding can name by itself, with what follows from it. */
export interface FindingPart {
  /** As the finding carries it. */
  readonly part: string;
  readonly component: ComponentName;
  readonly position: PositionName | null;
  /** Where the camera sees it; the likeliest zone first. */
  readonly zones: readonly ZoneName[];
  /** Other words of the trade for it, British and American. */
  readonly also: string;
}

const sides = ["driver", "passenger"] as const;
const ends = ["front", "rear"] as const;
const corners = sides.flatMap((side) => ends.map((end) => ({ side, end, position: `${side}-${end}` as const })));

type Row = readonly [
  part: string,
  component: ComponentName,
  position: PositionName | null,
  zones: FindingPart["zones"] | ZoneName,
  also?: string,
];
const row = ([part, component, position, zones, also = ""]: Row): FindingPart => ({
  part,
  component,
  position,
  zones: typeof zones === "string" ? [zones] : zones,
  also,
});
const bySide = (name: string, component: ComponentName, zones: (side: (typeof sides)[number]) => FindingPart["zones"], also = "") =>
  sides.map((side) => row([`${side} ${name}`, component, side, zones(side), also]));
const byCorner = (name: string, component: ComponentName, zones?: FindingPart["zones"], also = "") =>
  corners.map(({ side, end, position }) =>
    row([`${side} ${end} ${name}`, component, position, zones ?? [`${side}-side` as const, end], also]),
  );

/**
 * The parts offered for a finding, by name (trade terms; common practice). A finding may name any other in free words.
 * Sides are the vehicle's own, as everywhere.
 */
export const findingParts: readonly FindingPart[] = [
  ...[
    row(["front bumper", "bumper", "front", ["front"]]),
    row(["rear bumper", "bumper", "rear", ["rear"]]),
    row(["hood", "body", "front", ["front", "engine-bay"], "bonnet"]),
    row(["grille", "trim", "front", "front"]),
    row(["windshield", "glass", "front", ["front", "cabin"], "windscreen"]),
    row(["rear window", "glass", "rear", ["rear"], "rear screen back light"]),
    row(["trunk lid", "body", "rear", ["rear", "cargo"], "boot lid deck lid"]),
    row(["tailgate", "body", "rear", ["rear", "cargo"], "liftgate hatch"]),
    row(["roof panel", "body", null, ["roof", "driver-side", "passenger-side"]]),
    row(["soft top", "top", null, ["roof", "rear"], "hood convertible"]),
    row(["front license plate area", "body", "front", "front", "number plate"]),
    row(["rear license plate area", "body", "rear", "rear", "number plate"]),
  ],
  ...byCorner("corner", "body"),
  ...byCorner("door", "body"),
  ...byCorner("wheel", "wheel", undefined, "rim"),
  ...byCorner("tire", "tire", undefined, "tyre"),
  ...byCorner("wheel arch", "body", undefined, "wheel lip wheel well"),
  ...byCorner("door glass", "glass", undefined, "side window"),
  ...sides.flatMap((side) => [
    row([`${side} front fender`, "body", `${side}-front`, [`${side}-side`, "front"], "wing"]),
    row([`${side} rear quarter panel`, "body", `${side}-rear`, [`${side}-side`, "rear"], "rear wing"]),
    row([`${side} headlight`, "lights", `${side}-front`, ["front", `${side}-side`], "headlamp"]),
    row([`${side} tail light`, "lights", `${side}-rear`, ["rear", `${side}-side`], "rear lamp"]),
    row([`${side} sliding door`, "body", side, [`${side}-side`], "van"]),
  ]),
  ...bySide("mirror", "trim", (side) => [`${side}-side`], "door mirror"),
  ...bySide("rocker panel", "body", (side) => [`${side}-side`, "underside"], "sill"),
  ...bySide("bed side", "body", (side) => [`${side}-side`, "cargo"], "pickup load bed"),
  ...bySide("front seat", "seats", () => ["cabin"]),
  ...byCorner("door card", "trim", ["cabin"], "door panel"),
  ...byCorner("carpet", "carpet", ["cabin"], "footwell"),
  row(["rear seat", "seats", "rear", "cabin", "bench"]),
  row(["dashboard", "dash", null, "cabin", "fascia instrument panel"]),
  row(["steering wheel", "steering", null, "cabin"]),
  row(["center console", "trim", null, "cabin", "centre"]),
  row(["headliner", "headliner", null, "cabin", "headlining roof lining"]),
  row(["load floor", "cargo-floor", null, "cargo", "trunk floor boot floor"]),
  row(["spare wheel well", "cargo-floor", null, ["cargo", "underside"]]),
  row(["load space trim", "trim", null, "cargo", "trunk lining boot"]),
  row(["truck bed", "cargo-floor", "rear", "cargo", "load bed pickup box"]),
  row(["battery tray", "electrical", null, "engine-bay"]),
  row(["radiator", "cooling", "front", "engine-bay"]),
  row(["firewall", "body", null, "engine-bay", "bulkhead"]),
  row(["valve cover", "engine", null, "engine-bay", "rocker cover"]),
  row(["oil pan", "engine", null, ["underside", "engine-bay"], "sump"]),
  ...bySide("strut tower", "suspension", () => ["engine-bay"], "shock tower inner wing"),
  ...bySide("frame rail", "frame", () => ["underside"], "chassis leg"),
  ...byCorner("floor pan", "floors", ["underside"]),
  ...byCorner("brake", "brakes", ["underside"], "disc drum rotor"),
  ...byCorner("jacking point", "frame", ["underside"]),
  row(["fuel tank", "fuel-tank", null, "underside", "gas petrol"]),
  row(["muffler", "exhaust", "rear", "underside", "silencer"]),
  row(["exhaust pipe", "exhaust", null, "underside", "tail pipe"]),
  row(["rear axle", "final-drive", "rear", "underside", "differential"]),
  row(["service book", "title", null, "documents", "history"]),
];

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** A part that is named just so, whatever its capitals. */
export function partNamed(name: string): FindingPart | undefined {
  const wanted = wordsOf(name).join(" ");
  return findingParts.find(({ part }) => part === wanted);
}

/**
 * Parts that a person may mean: every typed word begins a word of its own of the part or of its other names ("driver d" is a door). Those of the zone in view come first,
 * then those named by the words themselves, then in the table's order.
 */
export function partsMeant(typed: string, zone: ZoneName, most = 12): FindingPart[] {
  const wanted = wordsOf(typed);
  // The longest first: it has the fewest words to choose from.
  const hardest = wanted.toSorted((a, b) => b.length - a.length);
  const begins = (words: readonly string[]) => {
    const free = [...words];
    return hardest.every((word) => {
      const place = free.findIndex((each) => each.startsWith(word));
      if (place >= 0) free.splice(place, 1);
      return place >= 0;
    });
  };
  const rank = ({ part, zones }: FindingPart) => (zones.includes(zone) ? 0 : 2) + (begins(wordsOf(part)) ? 0 : 1);
  return findingParts
    .filter(({ part, also }) => begins([...wordsOf(part), ...wordsOf(also)]))
    .toSorted((a, b) => rank(a) - rank(b))
    .slice(0, most);
}
