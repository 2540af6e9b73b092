import { tenthsLabel } from "../../shared/time.ts";
import type { StripView } from "./geometry.ts";

/** A tick's figures; tenths only where the view is so short that ticks fall between seconds. */
export function tickLabel(seconds: number, view: StripView): string {
  return view.to - view.from < 20 ? tenthsLabel(seconds) : tenthsLabel(seconds).slice(0, -2);
}
