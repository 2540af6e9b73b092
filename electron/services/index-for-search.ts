import {
  type AttributeName,
  attributeLabel,
  type Caption,
  type Claim,
  componentLabel,
  type Finding,
  findingSubject,
  gradeLabels,
  inMarkedZones,
  type LapSpan,
  positionLabel,
  type Repair,
  valueLabel,
  zoneAt,
  zoneLabels,
} from "../../shared-types/index.ts";
import type { RecordingRow } from "../library/recordings.ts";
import type { SearchEntry } from "../library/search-entries.ts";
import { effectiveCaptions } from "./effective-captions.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingLap, storedAnalysis } from "./recording-detail.ts";

/** What a recording as a whole is found by. A stock number is typed with and without its hyphen, and with a space in its place. */
export function recordingNames({ stockNumber, title, vehicle }: Pick<RecordingRow, "stockNumber" | "title" | "vehicle">): string {
  const runs = stockNumber.match(/\p{L}+|\p{N}+/gu) ?? [];
  return [...new Set([stockNumber, runs.join(""), runs.join(" ")]), title, vehicle.name, vehicle.year ?? "", vehicle.bodyStyle].join(" ");
}

/** Raised whenever the entries below are worded or found otherwise: a library of another form is indexed anew when it is opened. */
const searchIndexForm = "2";

/** Brings the search entries of a library that another program wrote up to date. */
export function refreshSearchIndex({ library }: Pick<Parts, "library">): void {
  if (library.settings.get("searchIndex") === searchIndexForm) return;
  library.transaction(() => {
    for (const { id } of library.recordings.all()) indexRecording({ library }, id);
    library.settings.put("searchIndex", searchIndexForm);
  });
}

/** Zones and findings anew: after every edit, in its transaction. */
export function indexPeoplesWork({ library }: Pick<Parts, "library">, recordingId: string): void {
  const row = findRecording({ library }, recordingId);
  const lap = recordingLap(library, row);
  const findings = library.findings.of(recordingId);
  library.search.replace(recordingId, recordingNames(row), ["zone", "finding"], [...lap.map(zoneEntry), ...findings.map(findingEntry)]);
}

/** Claims anew: where people's zone spans have changed, a claim is found by another zone. */
export function indexClaims({ library }: Pick<Parts, "library">, recordingId: string): void {
  const { claims, repairs } = storedAnalysis(library, recordingId);
  const entries = inMarkedZones(claims, library.zoneSpans.of(recordingId)).map((claim) => claimEntry(claim, repairs));
  library.search.replace(recordingId, recordingNames(findRecording({ library }, recordingId)), ["claim"], entries);
}

/** Everything anew: after an import or an analysis, in its transaction. */
export function indexRecording(parts: Pick<Parts, "library">, recordingId: string): void {
  const { library } = parts;
  const row = findRecording(parts, recordingId);
  const lap = recordingLap(library, row);
  const { repairs } = storedAnalysis(library, recordingId);
  const captions = effectiveCaptions(library, recordingId).map((caption) => captionEntry(caption, lap, repairs));
  library.search.replace(recordingId, recordingNames(row), ["caption"], captions);
  indexClaims(parts, recordingId);
  indexPeoplesWork(parts, recordingId);
}

function zoneEntry({ zone, start, end, title }: LapSpan): SearchEntry {
  const label = zoneLabels[zone];
  const said = title === label ? label : `${label}: ${title}`;
  return { kind: "zone", reference: zone, start, end, zone, said, terms: zone };
}

function findingEntry(finding: Finding): SearchEntry {
  const { id, start, end, zone, component, part, position, seen, grade, note } = finding;
  const subject = sentenceCase(findingSubject(finding));
  return {
    kind: "finding",
    reference: id,
    start,
    end,
    zone,
    said: `${subject}: ${seen} (${gradeLabels[grade].toLowerCase()})`,
    terms: [note, zoneLabels[zone], zone, ...(part ? [positionLabel(position), componentLabel(component)] : [])].join(" "),
  };
}

function claimEntry(claim: Claim, repairs: readonly Repair[]): SearchEntry {
  const meant = repairs.filter(({ id }) => claim.repairs.includes(id)).map((repair) => repair.meant);
  return {
    kind: "claim",
    reference: claim.id,
    start: claim.start,
    end: claim.end,
    zone: claim.zone,
    said: `${claimFact(claim)}: “${claim.quote}”`,
    terms: [...meant, ...valueWordings(claim), claim.attribute, zoneLabels[claim.zone], claim.circumstance ?? ""].join(" "),
  };
}

function captionEntry({ index, start, end, text }: Caption, lap: readonly LapSpan[], repairs: readonly Repair[]): SearchEntry {
  const meant = repairs.filter(({ caption }) => caption === index).map((repair) => repair.meant);
  return { kind: "caption", reference: String(index), start, end, zone: zoneAt(lap, start), said: text, terms: meant.join(" ") };
}

/**
 * How a claim reads as a fact: "rear tire size 235/60R15", "rear brakes: drum", "engine original", "formerly paint: gold".
 * Attributes that are no word of a caller's stay unsaid.
 */
const factOf = {
  presence: (subject, value) => `${subject} ${value}`,
  originality: (subject, value) => `${subject} ${value}`,
  condition: (subject, value) => `${subject} condition ${value}`,
  type: (subject, value) => `${subject}: ${value}`,
  material: (subject, value) => `${subject}: ${value}`,
  color: (subject, value) => `${subject}: ${value}`,
} as const satisfies { readonly [Attribute in AttributeName]?: (subject: string, value: string) => string };

/** A claim as a person reads it, without its quote. */
export function claimFact(claim: Claim): string {
  const subject = [positionLabel(claim.position), claim.part ?? componentLabel(claim.component)].filter(Boolean).join(" ");
  const value = valueLabel(claim.value, claim.unit, claim.attribute);
  const attribute = attributeLabel(claim.attribute);
  const plain = (named: string) => (named.endsWith(attribute) ? `${named} ${value}` : `${named} ${attribute} ${value}`);
  const worded: Partial<Record<AttributeName, (subject: string, value: string) => string>> = factOf;
  const fact = worded[claim.attribute]?.(subject, value) ?? plain(subject);
  // What a condition is judged by ("praise", "cracks") keeps judgements apart in a comparison, and says nothing to a person.
  const told = claim.attribute !== "condition" && claim.circumstance !== null && !fact.includes(claim.circumstance);
  return sentenceCase(`${claim.time === "former" ? "formerly " : ""}${fact}${told ? ` (${claim.circumstance})` : ""}`);
}

/** Other ways in which a caller types a value: a tire size without its R, a number without its separators, two decimals or none. */
export function valueWordings({ value }: Pick<Claim, "value">): string[] {
  if (typeof value === "number") {
    // Only forms that say the same: 4.11 to one decimal would be another ratio.
    const forms = [0, 1, 2].map((decimals) => value.toFixed(decimals)).filter((form) => Number(form) === value);
    return [...new Set([String(value), ...forms, value.toLocaleString("en-US")])];
  }
  const tireSize = /^(?<width>\d{3})\/(?<aspect>\d{2})\p{L}*(?<rim>\d{2}(?:\.5)?)$/u.exec(value)?.groups;
  return tireSize
    ? [value, `${tireSize.width} ${tireSize.aspect} ${tireSize.rim}`, `${tireSize.width}${tireSize.aspect}${tireSize.rim}`]
    : [value];
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
