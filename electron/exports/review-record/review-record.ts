import { createHash } from "node:crypto";
import {
  cautions,
  checkedRules,
  type MatterKind,
  matterName,
  mattersOf,
  openMatters,
  type RecordedNote,
  type RecordingDetail,
  ReviewRecord,
  reviewRecordVersion,
  type SeenNote,
  sideValues,
} from "../../../shared-types/index.ts";
import { claimStanding } from "../claim-standing.ts";

/** SHA-256 of the files a recording was made from, as lower-case hexadecimal digits. */
export interface FileHashes {
  readonly video: string | null;
  readonly transcript: string;
}

/**
 * The review record of a recording as it stands, sealed with the hash of its own text.
 * @param writtenAt ISO 8601 UTC, from outside, so that the same library and moment give the same bytes.
 */
export function reviewRecord(detail: RecordingDetail, writtenAt: string, hashes: FileHashes): ReviewRecord {
  const { summary, analysis, captions } = detail;
  const { claimOf, momentsOf, claimBehind, openTopics } = claimStanding(detail);
  const open = new Set(detail.openConflictKeys);
  const known = new Set(analysis.conflicts.map(({ key }) => key));
  const spans = detail.lap.filter(({ zoneSpanId }) => zoneSpanId !== null);
  const left = openMatters({ analysis, spans, rulings: detail.rulings, seenNotes: detail.seenNotes });
  const leftNames = new Set(left.map(matterName));
  const foundNames = new Set(mattersOf(analysis).map(matterName));
  const dealtWith = (about: MatterKind, key: string) => {
    const name = matterName({ about, key });
    return { notes: inTime(detail.seenNotes.filter((note) => matterName(note) === name)).map(recorded), open: leftNames.has(name) };
  };
  const startOf = (caption: number): number => captions[caption]?.start ?? 0;
  const record: ReviewRecord = {
    version: reviewRecordVersion,
    recording: {
      title: summary.title,
      stockNumber: summary.stockNumber,
      vehicle: summary.vehicle,
      duration: summary.duration,
      importedAt: summary.importedAt,
      videoFile: detail.videoFile,
      videoSha256: hashes.video,
      transcriptFile: detail.transcriptFile,
      transcriptSha256: hashes.transcript,
    },
    writtenAt,
    analysisVersion: analysis.analysisVersion,
    publications: detail.publications,
    checked: {
      captions: captions.length,
      captionsLeftOut: analysis.doubtful.filter(({ caption }) => !detail.trustedCaptions.some((one) => one.caption === caption)).length,
      repairs: analysis.repairs.length,
      claims: analysis.claims.length,
      sheetFields: detail.stockSheet ? Object.values(detail.stockSheet).filter((value) => value.trim() !== "").length : null,
    },
    rules: rulesApplied(detail),
    conflicts: analysis.conflicts.map((conflict) => ({
      topic: conflict.topic,
      kind: conflict.kind,
      why: conflict.why,
      rule: conflict.rule,
      working: conflict.standard?.working ?? null,
      weight: conflict.weight,
      state: open.has(conflict.key) ? ("open" as const) : ("settled" as const),
      sides: conflict.sides.map(({ value, unit, claims }) => ({
        value,
        unit,
        attribute: claimOf(claims[0] ?? "")?.attribute ?? null,
        moments: momentsOf(claims),
      })),
      rulings: inTime(detail.rulings.filter(({ conflictKey }) => conflictKey === conflict.key)).map((ruling) => ({
        decision: ruling.decision,
        // As the side is called now: an older ruling wrote a year like a count, and two equal figures alike.
        sideValue:
          ruling.side === null ? null : (sideValues(conflict, analysis.claims)[ruling.side] ?? ruling.sideValues[ruling.side] ?? null),
        reason: ruling.reason,
        rightWords: ruling.rightWords,
        initials: ruling.initials,
        at: ruling.at,
        superseded: ruling.supersededBy !== null,
      })),
    })),
    formerRulings: inTime(detail.rulings.filter(({ conflictKey }) => !known.has(conflictKey))).map(
      ({ topic, sideValues, decision, reason, initials, at }) => ({ topic, sideValues, decision, reason, initials, at }),
    ),
    remarks: analysis.remarks.map(({ topic, why, rule }) => ({ topic, why, rule })),
    denials: analysis.denials.map(({ key, field, sheetValue, why, claims }) => ({
      field,
      sheetValue,
      why,
      moments: momentsOf(claims),
      ...dealtWith("denial", key),
    })),
    promises: analysis.promises.map(({ key, kind, start, quote, why, rule }) => ({
      kind,
      start,
      quote,
      why,
      rule: rule.name,
      source: rule.source,
      ...dealtWith("promise", key),
    })),
    questions: analysis.questions.map(({ key, topic, question }) => ({ topic, question, ...dealtWith("question", key) })),
    formerNotes: inTime(detail.seenNotes.filter((note) => !foundNames.has(matterName(note)))).map((note) => ({
      ...recorded(note),
      about: note.about,
      topic: note.topic,
      told: note.told,
    })),
    findings: detail.findings
      .toSorted((a, b) => a.start - b.start)
      .map((finding) => {
        const { start, seen, grade, note, initials } = finding;
        const claim = claimBehind(finding);
        return { start, seen, grade, note, initials, openConflicts: claim ? openTopics(claim.id) : [], stance: claim?.stance ?? null };
      }),
    doubtfulCaptions: analysis.doubtful.map(({ caption, why }) => ({ caption, start: startOf(caption), why })),
    trustedCaptions: detail.trustedCaptions.map(({ caption, initials }) => ({ caption, start: startOf(caption), initials })),
    leftOpen: {
      conflicts: analysis.conflicts.filter(({ key }) => open.has(key)).map(({ topic }) => topic),
      matters: left.map(({ about, topic, told }) => (about === "question" ? told : topic)),
      proposedFindings: detail.findingProposals.length,
      proposedZones: summary.counts.proposedZones,
    },
    cautions: Object.values(cautions),
    recordSha256: "",
  };
  return { ...record, recordSha256: sha256(recordText(record)) };
}

/** Every rule with what it objected to; a recording that was never analysed was held against none. */
function rulesApplied({ analysis }: RecordingDetail): ReviewRecord["rules"] {
  if (analysis.analysisVersion === 0) return [];
  const rules = new Map(checkedRules.map(({ name, source }) => [name, { name, source, objections: 0 }]));
  const object = (name: string, source: string | null) => {
    const known = rules.get(name) ?? { name, source, objections: 0 };
    // What a conflict itself cites says more than what its rule rests on as a whole.
    rules.set(name, { name, source: source ?? known.source, objections: known.objections + 1 });
  };
  for (const { rule, standard } of analysis.conflicts) object(rule, standard?.source ?? null);
  for (const { rule } of analysis.remarks) object(rule, null);
  for (const { rule } of analysis.promises) object(rule.name, rule.source);
  return [...rules.values()].toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

function recorded({ state, reason, initials, at, supersededBy }: SeenNote): RecordedNote {
  return { state, reason, initials, at, superseded: supersededBy !== null };
}

function inTime<Row extends { readonly at: string }>(rows: readonly Row[]): Row[] {
  return rows.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

export function sha256(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

/** The record as its file holds it. */
export function recordText(record: ReviewRecord): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}

/**
 * Whether a record's file is as it was written: its hash is that of its own text with the hash left empty.
 * @returns A sentence that says what is wrong; null where nothing is.
 */
export function recordFault(fileText: string): string | null {
  let parsed: unknown;
  try {
    parsed = JSON.parse(fileText);
  } catch {
    return "The file is not JSON. Take the record as it was exported.";
  }
  const record = ReviewRecord.safeParse(parsed);
  if (!record.success)
    return `The file is no review record of version ${reviewRecordVersion}: ${record.error.issues[0]?.path.join(".")} is not as it should be.`;
  const unsealed = fileText.replace(`"recordSha256": "${record.data.recordSha256}"`, '"recordSha256": ""');
  return sha256(unsealed) === record.data.recordSha256 ? null : "The record was changed after it was written: its hash is another.";
}
