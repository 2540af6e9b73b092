import { analyse } from "../../../electron/analysis/analyse.ts";
import { huesOf } from "../../../electron/analysis/comparison/values/colors.ts";
import { materialOf } from "../../../electron/analysis/comparison/values/materials.ts";
import { choicesOf } from "../../../electron/analysis/comparison/values/type-families/index.ts";
import type { Claim, ComponentName } from "../../../shared-types/index.ts";
import type { Label, LabelledSentence } from "./read-sentences.ts";

/** What leads the camera to where a component is seen; outside at the driver's side for all others. */
const leadTo: Partial<Record<ComponentName, string>> = {
  engine: "Let's pop the hood.",
  "fuel-system": "Let's pop the hood.",
  ignition: "Let's pop the hood.",
  cooling: "Let's pop the hood.",
  electrical: "Let's pop the hood.",
  exhaust: "Okay it's up on the lift now.",
  transmission: "Okay it's up on the lift now.",
  "final-drive": "Okay it's up on the lift now.",
  brakes: "Okay it's up on the lift now.",
  steering: "Okay it's up on the lift now.",
  suspension: "Okay it's up on the lift now.",
  frame: "Okay it's up on the lift now.",
  floors: "Okay it's up on the lift now.",
  "fuel-tank": "Okay it's up on the lift now.",
  seats: "Let's get in it.",
  dash: "Let's get in it.",
  carpet: "Let's get in it.",
  belts: "Let's get in it.",
  headliner: "Let's get in it.",
  audio: "Let's get in it.",
  "air-conditioning": "Let's get in it.",
  odometer: "Let's get in it.",
  title: "So here's the paperwork.",
  vin: "So here's the paperwork.",
  price: "So here's the paperwork.",
  vehicle: "So here's the paperwork.",
  spare: "Let's open the trunk.",
  "cargo-floor": "Let's open the trunk.",
  top: "Up top.",
};
/** Without one, the walk would seem to be at its opening still. */
const greeting = "Hey folks, welcome, we have another one for you today so let's have a look round it.";
const elsewhere = "Come round to the driver's side.";

/** Claims of words that the bank labels; numbers are measured on whole walks. */
export const labelled: ReadonlySet<string> = new Set(["type", "material", "color", "originality", "condition", "presence"]);

export function claimsIn({ text, labels }: LabelledSentence): Claim[] {
  const captions = [
    { index: 0, start: 0, end: 12, text: greeting },
    { index: 1, start: 12, end: 20, text: leadTo[labels[0]?.component ?? "body"] ?? elsewhere },
    { index: 2, start: 20, end: 32, text },
  ];
  const { claims } = analyse({ format: "plain", captions, duration: 32 }, { stockSheet: null, recordedOn: null });
  return claims.filter((claim) => claim.captions.includes(2) && labelled.has(claim.attribute));
}

/** Two spellings of one thing: a family's choice, a hue, a material, else the same word. */
function meansTheSame(component: ComponentName, attribute: string, claimed: string, wanted: string): boolean {
  if (claimed.toLowerCase() === wanted) return true;
  if (attribute === "color") {
    const [a, b] = [huesOf(claimed), huesOf(wanted)];
    return a !== undefined && b !== undefined && [...a].some((hue) => b.has(hue));
  }
  if (attribute === "material") return materialOf(claimed) !== undefined && materialOf(claimed) === materialOf(wanted);
  if (attribute !== "type") return false;
  const chosen = choicesOf(component, wanted);
  return choicesOf(component, claimed).some(({ family, choice }) =>
    chosen.some((other) => other.family === family && other.choice === choice),
  );
}

export function isRead(label: Label, claims: readonly Claim[]): boolean {
  return claims.some(
    ({ component, attribute, value }) =>
      component === label.component && attribute === label.attribute && meansTheSame(component, attribute, String(value), label.value),
  );
}

export interface SentenceScore {
  readonly labels: number;
  readonly read: number;
  /** Sentences that claim nothing, and how many of them gave a claim all the same. */
  readonly quiet: number;
  readonly notQuiet: number;
  readonly missed: readonly string[];
}

/** Reads each sentence where its part is seen, and counts what is read of what it claims. */
export function scoreSentences(sentences: readonly LabelledSentence[]): SentenceScore {
  let labels = 0;
  let read = 0;
  let quiet = 0;
  let notQuiet = 0;
  const missed: string[] = [];
  for (const sentence of sentences) {
    const claims = claimsIn(sentence);
    if (sentence.labels.length === 0) {
      quiet += 1;
      if (claims.length > 0) notQuiet += 1;
      continue;
    }
    for (const label of sentence.labels.filter(({ attribute }) => labelled.has(attribute))) {
      labels += 1;
      if (isRead(label, claims)) read += 1;
      else missed.push(`${sentence.file}:${sentence.line} ${label.component}/${label.attribute}=${label.value}: ${sentence.text}`);
    }
  }
  return { labels, read, quiet, notQuiet, missed };
}
