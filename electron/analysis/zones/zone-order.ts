import type { ZoneName } from "../../../shared-types/index.ts";

/**
 * Every zone once, for the model's tables by index. Kept here because the analysis takes types alone from `shared-types`, whose lists bring
 * a schema library with them; a zone left out or unknown fails to compile.
 */
const order = {
  opening: 0,
  front: 1,
  "driver-side": 2,
  "passenger-side": 3,
  rear: 4,
  roof: 5,
  cargo: 6,
  cabin: 7,
  "engine-bay": 8,
  underside: 9,
  documents: 10,
  drive: 11,
  closing: 12,
} as const satisfies Record<ZoneName, number>;

export const zoneIndex: Readonly<Record<ZoneName, number>> = order;
export const zoneNames = Object.keys(order) as readonly ZoneName[];
export const zoneCount = zoneNames.length;
