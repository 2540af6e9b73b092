import type { QualityRule } from "../quality-rule.ts";
import { beltKindSigns } from "./belt-kinds.ts";
import { bodyStyleSigns } from "./body-style.ts";
import { cabinKindSigns } from "./cabin-kinds.ts";
import { finishSigns } from "./finish.ts";
import { firstOrLaterSigns } from "./first-or-later.ts";
import { stateSigns } from "./how-it-is.ts";
import { likenessSigns } from "./likenesses.ts";
import { panelSigns } from "./panels.ts";
import { seatingSigns } from "./seating.ts";
import { fittingSigns } from "./there-or-not.ts";
import { windowAndKeySigns } from "./windows-and-keys.ts";

/** Signs of the shell and the cabin. */
export const bodySigns: readonly QualityRule[] = [
  ...seatingSigns,
  ...panelSigns,
  ...likenessSigns,
  ...finishSigns,
  ...bodyStyleSigns,
  ...cabinKindSigns,
  ...beltKindSigns,
  ...windowAndKeySigns,
  ...fittingSigns,
  ...stateSigns,
  ...firstOrLaterSigns,
];
