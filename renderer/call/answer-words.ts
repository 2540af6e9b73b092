import type { SearchHit, Withholding } from "../../shared-types/index.ts";

/** Why a claim has no sentence for the caller, and what to do instead. `detail` is what the stock sheet says. */
const whyWithheld = {
  disputed: () => "In dispute: the recording says two things about this. Do not state it; say it is being checked.",
  overruled: () => "Overruled: a ruling says that this does not hold. Do not state it.",
  "sheet-denies": (detail) => `The stock sheet says ${detail ?? "otherwise"}. Do not state it; say it is being checked.`,
  "unsure-repair": () => "The recognizer broke this value and its reading is not sure. Do not state it; play the words.",
  former: () => "An earlier state of the vehicle, not today's. Do not state it; play the words.",
  hedged: () => "Said with a doubt. Do not state it; play the words, or ask at the vehicle.",
  reported: () => "Said of what somebody else says. Do not state it; play the words, or ask at the vehicle.",
} as const satisfies Record<Withholding, (detail: string | null) => string>;

/** What to say to the caller instead of an answer, where the words may not be stated as fact. */
export function cautionOf(hit: Pick<SearchHit, "withheld" | "answer">): string | null {
  if (hit.withheld) return whyWithheld[hit.withheld.reason](hit.withheld.detail);
  return hit.answer === null ? "No sentence to give: play the moment and let the caller hear it." : null;
}

type Named = Pick<SearchHit, "subject" | "stockNumber" | "recordingTitle">;

/** What a moment is about, and of which vehicle: "rear tire size, stock FK-1971". */
export function thingOf({ subject, stockNumber, recordingTitle }: Named): string {
  return `${subject ?? "this moment"}, ${stockNumber ? `stock ${stockNumber}` : recordingTitle}`;
}

/** Why the copying key copied nothing: whoever pastes blindly would tell the caller of the vehicle before. */
export function nothingToCopy(told: Named & Pick<SearchHit, "withheld">): string {
  const standing = standingOf(told);
  const why = standing === null ? "there is no sentence to give" : `it stands as ${standing}`;
  return `Nothing was copied: ${why} (${thingOf(told)}). The clipboard holds what it held before.`;
}

/** What copying was asked for where no moment is chosen. */
export const noMoment = "";
export const noMomentWords = "Nothing was copied: no moment is chosen. The clipboard holds what it held before.";

const standings = {
  disputed: "in dispute",
  overruled: "overruled",
  "sheet-denies": "denied by the stock sheet",
  "unsure-repair": "unsure reading",
  former: "formerly",
  hedged: "hedged",
  reported: "as others say",
} as const satisfies Record<Withholding, string>;

/** How a claim stands, in a word or two; null where it may be told. */
export function standingOf({ withheld }: Pick<SearchHit, "withheld">): string | null {
  return withheld && standings[withheld.reason];
}
