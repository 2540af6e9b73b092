import type { PromiseKind } from "./analysis.ts";
import type { AttributeName, ComponentName, Grade, PositionName, RulingDecision, UnitName, ZoneName } from "./vocabulary.ts";

/** The words people read for the closed lists: screens and exports say the same. */

export const zoneLabels = {
  opening: "Opening",
  front: "Front",
  "driver-side": "Driver's side",
  "passenger-side": "Passenger's side",
  rear: "Rear",
  roof: "Roof",
  cargo: "Load space",
  cabin: "Cabin",
  "engine-bay": "Engine bay",
  underside: "Underside",
  documents: "Documents",
  drive: "Start-up and drive",
  closing: "Closing",
} as const satisfies Record<ZoneName, string>;

export const gradeLabels = {
  "as-new": "As new",
  good: "Good",
  worn: "Worn",
  damaged: "Damaged",
  "not-shown": "Not shown",
} as const satisfies Record<Grade, string>;

export const decisionLabels = {
  "side-stands": "One side stands",
  "both-hold": "Both hold",
  "recogniser-error": "Recognizer's error",
  "look-at-vehicle": "Look at the vehicle",
} as const satisfies Record<RulingDecision, string>;

export const promiseLabels = {
  warranty: "Warranty words",
  safety: "Safety words",
  absolute: "Without exception",
  "hedged-fact": "Relied on, with a doubt",
  opinion: "Opinion",
} as const satisfies Record<PromiseKind, string>;

export function positionLabel(position: PositionName | null): string {
  return position === null ? "" : position === "all" ? "all round" : position.replace("-", " ");
}

export function componentLabel(component: ComponentName): string {
  return component === "vin" ? "VIN" : component.replaceAll("-", " ");
}

export function attributeLabel(attribute: AttributeName): string {
  return attribute;
}

/** What a finding is about: its part in its own words where it names one, else position and component. */
export function findingSubject(finding: {
  readonly component: ComponentName;
  readonly part?: string | null;
  readonly position: PositionName | null;
}): string {
  return finding.part ?? [positionLabel(finding.position), componentLabel(finding.component)].filter(Boolean).join(" ");
}

interface ClaimAbout {
  readonly component: ComponentName;
  readonly part: string | null;
  readonly position: PositionName | null;
  readonly attribute: AttributeName;
}

/** What a claim is about, without saying a word twice: "rear tire size", "front fender condition", "price", "VIN". */
export function claimSubject({ component, part, position, attribute }: ClaimAbout): string {
  const thing = part ?? componentLabel(component);
  const thingWords = thing.toLowerCase().split(/\s+/);
  const place = positionLabel(position)
    .split(" ")
    .filter((word) => word && !thingWords.includes(word));
  const property =
    attribute === "presence" || thingWords.includes(attribute) || (component === "vin" && attribute === "type") ? [] : [attribute];
  return [...place, thing, ...property].join(" ");
}

/** A value as a person reads it: "390 cu in", "4.11:1", "235/60R15", "$38,900". Years and codes keep their digits together. */
export function valueLabel(value: number | string, unit: UnitName | null, attribute: AttributeName | null = null): string {
  if (typeof value === "string") return value;
  if (attribute === "ratio") return `${value.toFixed(2)}:1`;
  if (attribute === "year" || attribute === "date") return String(value);
  const digits = Math.abs(value) >= 1000 ? value.toLocaleString("en-US") : String(value);
  if (unit === "USD") return `$${digits}`;
  if (unit === "GBP") return `£${digits}`;
  if (unit === "EUR") return `€${digits}`;
  if (unit === "32nds") return `${value}/32 in`;
  return unit ? `${digits} ${unit}` : digits;
}

/** Seconds as `m:ss`, or `h:mm:ss` from an hour on; rounded down, so that a stamp never lies past its moment. */
export function timeLabel(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const rest = String(whole % 60).padStart(2, "0");
  const minutes = Math.floor(whole / 60);
  if (minutes < 60) return `${minutes}:${rest}`;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}:${rest}`;
}
