import { useSyncExternalStore } from "react";
import type { Clock, ClockReading } from "./clock.ts";

/** The clock's reading, on every change. For small components only: while it plays this is every frame. */
export function useReading(clock: Clock): ClockReading {
  return useSyncExternalStore(clock.subscribe, clock.read);
}

/** Something derived from the reading; the component draws again only when it differs. `pick` must give a primitive or a stable object. */
export function useClockValue<Value>(clock: Clock, pick: (reading: ClockReading) => Value): Value {
  return useSyncExternalStore(clock.subscribe, () => pick(clock.read()));
}
