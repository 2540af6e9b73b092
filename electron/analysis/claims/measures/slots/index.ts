import type { Slot } from "../slot.ts";
import { bodySlots } from "./body-slots.ts";
import { chassisSlots } from "./chassis-slots.ts";
import { countSlots } from "./count-slots.ts";
import { dateSlots } from "./date-slots.ts";
import { drivelineSlots } from "./driveline-slots.ts";
import { engineSlots } from "./engine-slots.ts";
import { paperSlots } from "./paper-slots.ts";
import { tireSlots } from "./tire-slots.ts";

/** Every place a spoken number can fill. Order does not matter: the likeliest slot wins. */
export const slots: readonly Slot[] = [
  ...tireSlots,
  ...chassisSlots,
  ...engineSlots,
  ...drivelineSlots,
  ...bodySlots,
  ...paperSlots,
  ...dateSlots,
  ...countSlots,
];
