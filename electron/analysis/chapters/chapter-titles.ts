import type { ZoneName } from "../../../shared-types/index.ts";

/** What a viewer reads in the player's list. */
export const chapterTitles = {
  opening: "Introduction",
  front: "Front",
  "driver-side": "Driver's side",
  "passenger-side": "Passenger side",
  rear: "Rear",
  roof: "Roof",
  cargo: "Load space",
  cabin: "Interior",
  "engine-bay": "Engine bay",
  underside: "Underside",
  documents: "Papers and history",
  drive: "Start-up and drive",
  closing: "Closing",
} as const satisfies Record<ZoneName, string>;

/** Word after a title that has stood before: a walk that goes back to a zone gets a chapter of its own. */
export const againSuffix = "again";
