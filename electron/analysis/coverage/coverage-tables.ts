import type { Claim, ZoneName } from "../../../shared-types/index.ts";

/** A view shorter than this shows a viewer next to nothing. Common practice. */
export const shortestViewSeconds = 5;

/** What every walk is expected to show (common practice); a drive or papers are a bonus. */
export const viewsToShow = [
  { zone: "front", words: "front" },
  { zone: "driver-side", words: "driver's side" },
  { zone: "passenger-side", words: "passenger's side" },
  { zone: "rear", words: "rear" },
  { zone: "cargo", words: "load space" },
  { zone: "cabin", words: "cabin" },
  { zone: "engine-bay", words: "engine bay" },
  { zone: "underside", words: "underside" },
] as const satisfies readonly { zone: ZoneName; words: string }[];

/** A wheel is seen from its side of the vehicle. */
export const wheelCorners = [
  { corner: "driver-front", words: "driver's front wheel", seenFrom: ["driver-side"] },
  { corner: "driver-rear", words: "driver's rear wheel", seenFrom: ["driver-side"] },
  { corner: "passenger-front", words: "passenger's front wheel", seenFrom: ["passenger-side"] },
  { corner: "passenger-rear", words: "passenger's rear wheel", seenFrom: ["passenger-side"] },
] as const satisfies readonly { corner: string; words: string; seenFrom: readonly ZoneName[] }[];

/** What callers ask for first (common practice), and which claims answer it. */
export const spokenItems = [
  { item: "VIN", question: "No VIN or chassis number is spoken of. Should it be shown?", spoken: (claim) => claim.component === "vin" },
  {
    item: "odometer",
    question: "No mileage is given. What does the odometer show?",
    spoken: (claim) => claim.component === "odometer" || claim.attribute === "mileage",
  },
  {
    item: "spare",
    question: "The spare is never spoken of. Is there one, and does it hold air?",
    spoken: (claim) => claim.component === "spare",
  },
  {
    item: "tire age",
    question: "No tire date is read out. What do the date codes say?",
    spoken: (claim) => claim.component === "tire" && (claim.attribute === "date" || claim.attribute === "year"),
  },
  {
    item: "title",
    question: "The title is never spoken of. Whose name is on it, and is it clean?",
    spoken: (claim) => claim.component === "title",
  },
] as const satisfies readonly { item: string; question: string; spoken: (claim: Claim) => boolean }[];
