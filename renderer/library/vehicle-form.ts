import type { BodyStyle, RecordingSummary, Vehicle } from "../../shared-types/index.ts";

/** What the person types about a recording, before it is checked. */
export interface DescriptionDraft {
  readonly title: string;
  readonly stockNumber: string;
  readonly vehicleName: string;
  readonly year: string;
  readonly bodyStyle: BodyStyle;
  readonly drive: Vehicle["drive"];
}

export const emptyDescription: DescriptionDraft = {
  title: "",
  stockNumber: "",
  vehicleName: "",
  year: "",
  bodyStyle: "sedan",
  drive: "left-hand",
};

export function draftOfRecording(recording: RecordingSummary): DescriptionDraft {
  return {
    title: recording.title,
    stockNumber: recording.stockNumber,
    vehicleName: recording.vehicle.name,
    year: recording.vehicle.year === null ? "" : String(recording.vehicle.year),
    bodyStyle: recording.vehicle.bodyStyle,
    drive: recording.vehicle.drive,
  };
}

/**
 * The title a recording is offered before the person has written one: model year and vehicle where they are typed, else what its file is called.
 * A year counts once it has its four digits, so that no half of one stands in a title.
 */
export function proposedTitle({ year, vehicleName }: Pick<DescriptionDraft, "year" | "vehicleName">, ofFile: string): string {
  const vehicle = vehicleName.trim();
  if (vehicle === "") return ofFile;
  return /^\d{4}$/.test(year.trim()) ? `${year.trim()} ${vehicle}` : vehicle;
}

/** What is wrong with a draft, by field; empty when nothing is. */
export function faultsOfDraft(draft: DescriptionDraft): Partial<Record<keyof DescriptionDraft, string>> {
  const faults: Partial<Record<keyof DescriptionDraft, string>> = {};
  if (draft.title.trim() === "") faults.title = "A title is needed: it names the recording in every list and export.";
  const year = draft.year.trim();
  // The bounds are the contract's own.
  if (year !== "" && !(/^\d{4}$/.test(year) && Number(year) >= 1880 && Number(year) <= 2100)) {
    faults.year = `“${year}” is no model year. Give four digits from 1880 to 2100, or leave it empty.`;
  }
  return faults;
}

/** The description as the contract takes it. Call only with a draft without faults. */
export function descriptionOfDraft(draft: DescriptionDraft): { title: string; stockNumber: string; vehicle: Vehicle } {
  return {
    title: draft.title.trim(),
    stockNumber: draft.stockNumber.trim(),
    vehicle: {
      name: draft.vehicleName.trim(),
      year: draft.year.trim() === "" ? null : Number(draft.year),
      bodyStyle: draft.bodyStyle,
      drive: draft.drive,
    },
  };
}
