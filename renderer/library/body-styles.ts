import type { BodyStyle } from "../../shared-types/index.ts";

export const bodyStyleLabels = {
  coupe: "coupe",
  sedan: "sedan",
  estate: "estate",
  hatchback: "hatchback",
  pickup: "pickup",
  van: "van",
  convertible: "convertible",
  roadster: "roadster",
} as const satisfies Record<BodyStyle, string>;
