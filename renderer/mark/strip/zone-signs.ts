import type { ZoneName } from "../../../shared-types/index.ts";

/** Two letters for each zone, no two alike: its name on the strip where nothing longer has room. The shortcut sheet spells them out. */
export const zoneSigns = {
  opening: "Op",
  front: "Fr",
  "driver-side": "Dr",
  "passenger-side": "Pa",
  rear: "Re",
  roof: "Ro",
  cargo: "Lo",
  cabin: "Ca",
  "engine-bay": "En",
  underside: "Un",
  documents: "Do",
  drive: "St",
  closing: "Cl",
} as const satisfies Record<ZoneName, string>;
