import { Refusal } from "../library/refusal.ts";

export { Refusal };

/** The refusals that more than one service gives, worded once. */
export function unknownRecording(id: string): Refusal {
  return new Refusal("recording-unknown", `The library holds no recording ${id}. It may have been removed; open the list again.`);
}
