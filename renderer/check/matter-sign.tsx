import type { MatterState } from "./matters-at-hand.ts";

/** How a denial, a promise or a question stands, beside its line of the list. */
export function MatterSign({ state: { open, sign } }: { readonly state: MatterState }) {
  return (
    <span className="queue-sign" data-open={open || undefined}>
      {sign}
    </span>
  );
}

/** "2 left of 3"; "" where there is nothing to deal with. */
export function leftWords(left: number, all: number): string {
  return all === 0 ? "" : `${left} left of ${all}`;
}
