import { cautions } from "../../shared-types/index.ts";
import type { Desk } from "../shared/place.ts";

/** Every text of the help and of the first minutes that is not a desk's own table, in one place. */

/** Opens the help from everywhere, also while something is typed and from within a window. */
export const helpKey = "F1";

export interface DeskText {
  readonly desk: Desk;
  readonly name: string;
  readonly who: string;
  readonly what: string;
  /** What to try there on the demo. */
  readonly tryIt: string;
}

export const deskTexts: readonly DeskText[] = [
  {
    desk: "mark",
    name: "Mark",
    who: "The editor",
    what: "The recording with its captions. Zones drawn thin and dashed are proposals: accept them or set your own, and note what you find, with a grade.",
    tryIt: "Play it, then accept the first zone.",
  },
  {
    desk: "check",
    name: "Check",
    who: "The reviewer",
    what: "Claims that cannot all hold, both moments side by side. Hear them, see the rule and its source, and rule on it with a reason.",
    tryIt: "The rear tires have two sizes: hear both.",
  },
  {
    desk: "call",
    name: "Call",
    who: "The salesperson",
    what: "A buyer asks, you type it in plain words, and Enter plays the spot. What is disputed or hedged says so.",
    tryIt: "Ask for the rear tire size.",
  },
];

/** What the Call desk is asked when it is opened from the first minutes. */
export const demoQuestion = "rear tire size";

export const pairText =
  "A recording is a machine transcript and, where you have it, its video. Files of one name belong together: walk.vtt and walk.mp4.";

export const fileTexts: readonly { readonly name: string; readonly words: string }[] = [
  {
    name: "Video",
    words: "mp4, mov, webm and mkv, as far as Chromium plays what is inside. A transcript without a video is a recording too.",
  },
  {
    name: "Transcript",
    words: "Plain timed text, SRT, WebVTT, or a recognizer's JSON. One that cannot be used is refused with the line and what to do.",
  },
  {
    name: "Stock sheet",
    words: "A CSV of one vehicle or the whole lot; the stock number picks the row. What a column means is asked once.",
  },
  {
    name: "Your work",
    words: "In one file on this machine, the library. Every change is on disk when the screen shows it, and undo has no end.",
  },
  {
    name: "Another machine",
    words: "A bundle holds a whole recording. Keep bundles in a folder and bring them in elsewhere; nothing is lost or taken twice.",
  },
  {
    name: "What leaves",
    words: "Export, on the Mark and Check desks: chapters, captions put right, the condition index, the review record.",
  },
];

export const cautionTexts: readonly { readonly name: string; readonly words: string }[] = [
  { name: "No inspection", words: cautions.inspection },
  { name: "Tires", words: cautions.tires },
  { name: "Claims", words: cautions.legal },
  { name: "Under the vehicle", words: cautions.underside },
  {
    name: "What is not found",
    words: "Analysis by rules finds much and not everything: a quiet queue is no proof that a recording holds no contradiction.",
  },
];

export const updateText =
  "Roundwalk asks nobody whether there is a newer version, unless you give an address here that tells of it. It is then asked once a day, and told nothing of this machine or your recordings. Nothing is fetched or opened by itself.";
