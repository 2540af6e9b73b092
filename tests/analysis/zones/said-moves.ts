import { readFileSync } from "node:fs";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { findZones } from "../../../electron/analysis/zones/find-zones.ts";
import { ZoneName } from "../../../shared-types/index.ts";
import { type MarkedWalk, markedWalk, type RecogniserStyle } from "./marked-walks.ts";

/** A sentence said after one place and before another; `to` equals `from` where it is a remark and the camera stays. */
export interface SaidMove {
  readonly from: ZoneName;
  readonly to: ZoneName;
  readonly next: ZoneName | null;
  readonly words: string;
}

export const saidMoves: readonly SaidMove[] = readFileSync(new URL("../../../fixtures/walks/said-moves.tsv", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"))
  .map((line) => {
    const [from, to, next, words = ""] = line.split("\t");
    return { from: ZoneName.parse(from), to: ZoneName.parse(to), next: next === "-" ? null : ZoneName.parse(next), words };
  });

export const isRemark = (said: SaidMove): boolean => said.from === said.to;

/** What the narrator says in a place before the sentence: a move everyone knows, and things seen there alone. */
const stayed: Readonly<Record<ZoneName, string>> = {
  opening: "Hey everybody, welcome back. I've got a good one for you today, and here is the walk around.",
  front: "Let's start at the front of the car. The grille is straight and both headlights are clear. No chips in the front bumper.",
  "driver-side": "Let's go down the driver's side. The front fender and both doors are straight. No rust in the rocker panel.",
  "passenger-side": "Let's go down the passenger side. The front fender and both doors are straight. No rust in the rocker panel.",
  rear: "Let's come around to the back of the car. Both tail lights are clear. The rear bumper is straight and the badges are here.",
  roof: "Let's look up at the roof. The roof skin is smooth and the roof rails are tight.",
  cargo: "Let's open up the trunk. The trunk mat is dry, the spare tire is here, and the jack is in its place.",
  cabin: "Let's get inside. The seats are clean, the dashboard has no cracks, and the carpet is dry.",
  "engine-bay": "Let's look under the hood. The radiator is new, the valve cover is dry, and the alternator is clean.",
  underside: "Let's get underneath. The frame rails are solid and the driveshaft is straight. No leaks from the oil pan.",
  documents: "Here is the paperwork. The title is clean, the service history is here, and I have the window sticker.",
  drive: "Okay, we're out on the road for a test drive. It tracks straight at sixty miles an hour and the brakes pull up straight.",
  closing: "Thanks for watching, and give me a call.",
};

/** Said anywhere: what follows the sentence names no part and no place. */
const saysNothing = "It is nice and tidy, as you would hope. I am happy with that, and I think you will be too.";

export function walkOf(said: SaidMove, style: RecogniserStyle): MarkedWalk {
  const { from, to, next, words } = said;
  const greeting = from === "opening" ? "" : `{opening} ${stayed.opening}`;
  const last = next && next !== "closing" ? `{${next}} ${stayed[next]} {closing} ${stayed.closing}` : `{closing} ${stayed.closing}`;
  const spoken = to === "closing" ? "" : saysNothing;
  return markedWalk(`${greeting} {${from}} ${stayed[from]} ${isRemark(said) ? "" : `{${to}}`} ${words} ${spoken} ${last}`, style);
}

/** Share of the seconds from the sentence to the next place that are in the right zone. */
export function shareRight(said: SaidMove, style: RecogniserStyle): number {
  const { to } = said;
  const walk = walkOf(said, style);
  const zones = findZones(hearSpeech(walk.transcript));
  const places = walk.zones.filter((zone) => zone.zone === to);
  const start = isRemark(said) ? (places[0]?.start ?? 0) : (places.at(-1)?.start ?? 0);
  const after = walk.zones.find((zone) => zone.start > start);
  const end = after?.start ?? walk.transcript.duration;
  // A caption's worth of leeway at each end: what counts here is the place and not the border.
  let right = 0;
  let seconds = 0;
  for (let moment = start + 1; moment < end - 1; moment += 0.5) {
    seconds += 1;
    if (zones.find((zone) => zone.start <= moment && moment < zone.end)?.zone === to) right += 1;
  }
  return seconds ? right / seconds : 1;
}

/** Least share of seconds for a sentence to count as understood. */
export const understood = 0.8;
