import type { MouseEvent } from "react";

/**
 * For controls that a pointer uses between key presses: a click leaves the focus where it was, so that the next Space plays instead of
 * pressing the control again. The keyboard reaches them as ever.
 */
export const keepFocus = {
  onMouseDown: (event: MouseEvent): void => event.preventDefault(),
} as const;
