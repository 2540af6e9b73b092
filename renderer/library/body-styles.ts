import { type BodyStyle, bodyStyles } from "../../shared-types/index.ts";

export const bodyStyleLabels = {
  coupe: "coupe",
  sedan: "sedan",
  estate: "station wagon",
  hatchback: "hatchback",
  pickup: "pickup",
  van: "van",
  convertible: "convertible",
  roadster: "roadster",
} as const satisfies Record<BodyStyle, string>;

/** In a choice of body styles: the stock sheet tells it, and where it does not, it is drawn as a sedan until somebody says otherwise. */
export const bySheet = "by-sheet";
export type ChosenStyle = BodyStyle | typeof bySheet;

export const styleOptions = bodyStyles.map((value) => ({ value, label: bodyStyleLabels[value] }));
export const bySheetOption = { value: bySheet, label: "as the stock sheet says, else sedan" } as const;

/** A choice as an import takes it. */
export function importedStyle(chosen: ChosenStyle): { readonly bodyStyle: BodyStyle; readonly bodyStyleFromSheet: boolean } {
  return chosen === bySheet ? { bodyStyle: "sedan", bodyStyleFromSheet: true } : { bodyStyle: chosen, bodyStyleFromSheet: false };
}
