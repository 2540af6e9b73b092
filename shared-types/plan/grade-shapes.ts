import type { Grade } from "../vocabulary.ts";

/** One outline for each grade, around 0,0, some ten units across: a grade is told by its shape, not by a colour. */
export const gradeShapes = {
  "as-new": "M0-5L5 0L0 5L-5 0Z",
  good: "M-4.5 0A4.5 4.5 0 1 0 4.5 0A4.5 4.5 0 1 0-4.5 0Z",
  worn: "M-4.5-4.5H4.5V4.5H-4.5Z",
  damaged: "M0-5L5.5 4.5H-5.5Z",
  "not-shown": "M-4.5-4.5L4.5 4.5M4.5-4.5L-4.5 4.5",
} as const satisfies Record<Grade, string>;
