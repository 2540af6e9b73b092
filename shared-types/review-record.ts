import { z } from "zod";
import { ClaimValue, PromiseKind, Seconds } from "./analysis.ts";
import { ToldMoment } from "./condition-index.ts";
import { Publication, Vehicle } from "./recording.ts";
import { MatterKind, SeenState } from "./seen-note.ts";
import { AttributeName, ConflictKind, Grade, RulingDecision, Stance, UnitName } from "./vocabulary.ts";

/** Version of the exported record's form. */
export const reviewRecordVersion = 4;

/** SHA-256 (FIPS 180-4), 64 lower-case hexadecimal digits. */
export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What a reviewer noted on a denial, a promise or a question; oldest first, superseded ones too. */
const RecordedNote = z.strictObject({
  state: SeenState,
  reason: z.string(),
  initials: z.string(),
  /** ISO 8601 UTC. */
  at: z.string(),
  superseded: z.boolean(),
});
export type RecordedNote = z.infer<typeof RecordedNote>;

/** Whether it was dealt with: noted as seen, taken out by a ruling, or answered by a zone that a person marked. */
const dealtWith = { notes: z.array(RecordedNote), open: z.boolean() };

/**
 * What was checked, by which rules, who ruled what and why, and what stayed open: kept so that it can be shown years later. Rulings that
 * were superseded stay in it, marked.
 */
export const ReviewRecord = z.strictObject({
  version: z.literal(reviewRecordVersion),
  recording: z.strictObject({
    title: z.string(),
    stockNumber: z.string(),
    vehicle: Vehicle,
    duration: Seconds,
    importedAt: z.string(),
    videoFile: z.string().nullable(),
    /** Of the video as it lay there when this was written; null where there is none or it was not found. */
    videoSha256: Sha256.nullable(),
    transcriptFile: z.string(),
    /** Of the transcript as it came in, byte for byte. */
    transcriptSha256: Sha256,
  }),
  /** ISO 8601 UTC. */
  writtenAt: z.string(),
  analysisVersion: z.int(),
  /** Every publication, oldest first, with what was open then. */
  publications: z.array(Publication),
  /** What was held against the rules. */
  checked: z.strictObject({
    captions: z.int(),
    /** Held for noise, and not read. */
    captionsLeftOut: z.int(),
    /** Numbers and words that the recognizer broke, read as they were meant. */
    repairs: z.int(),
    claims: z.int(),
    /** Columns of the stock sheet with something in them; null where there was no sheet. */
    sheetFields: z.int().nullable(),
  }),
  /** Every rule that the claims were held against, with its published source where it has one, and how often it objected. */
  rules: z.array(z.strictObject({ name: z.string(), source: z.string().nullable(), objections: z.int() })),
  conflicts: z.array(
    z.strictObject({
      topic: z.string(),
      kind: ConflictKind,
      why: z.string(),
      rule: z.string(),
      working: z.string().nullable(),
      weight: z.number(),
      state: z.enum(["open", "settled"]),
      sides: z.array(
        z.strictObject({
          value: ClaimValue,
          unit: UnitName.nullable(),
          /** What the value is of: a year is no count. */
          attribute: AttributeName.nullable(),
          moments: z.array(ToldMoment),
        }),
      ),
      rulings: z.array(
        z.strictObject({
          decision: RulingDecision,
          /** Value of the side that stands or was misheard. */
          sideValue: z.string().nullable(),
          reason: z.string(),
          rightWords: z.string().nullable(),
          initials: z.string(),
          at: z.string(),
          superseded: z.boolean(),
        }),
      ),
    }),
  ),
  /** Rulings on conflicts that the present analysis no longer finds. */
  formerRulings: z.array(
    z.strictObject({
      topic: z.string(),
      sideValues: z.array(z.string()),
      decision: RulingDecision,
      reason: z.string(),
      initials: z.string(),
      at: z.string(),
    }),
  ),
  remarks: z.array(z.strictObject({ topic: z.string(), why: z.string(), rule: z.string() })),
  denials: z.array(
    z.strictObject({ field: z.string(), sheetValue: z.string(), why: z.string(), moments: z.array(ToldMoment), ...dealtWith }),
  ),
  promises: z.array(
    z.strictObject({
      kind: PromiseKind,
      start: Seconds,
      quote: z.string(),
      why: z.string(),
      rule: z.string(),
      source: z.string(),
      ...dealtWith,
    }),
  ),
  questions: z.array(z.strictObject({ topic: z.string(), question: z.string(), ...dealtWith })),
  /** Notes on what the present analysis no longer finds. */
  formerNotes: z.array(RecordedNote.extend({ about: MatterKind, topic: z.string(), told: z.string() })),
  findings: z.array(
    z.strictObject({
      start: Seconds,
      seen: z.string(),
      grade: Grade,
      note: z.string(),
      initials: z.string(),
      /** Topics of open conflicts of the claim that it was accepted from. */
      openConflicts: z.array(z.string()),
      /** Its claim's; null for one that a person wrote. */
      stance: Stance.nullable(),
    }),
  ),
  /** Captions held for noise, and who held one for speech after all. */
  doubtfulCaptions: z.array(z.strictObject({ caption: z.int(), start: Seconds, why: z.string() })),
  trustedCaptions: z.array(z.strictObject({ caption: z.int(), start: Seconds, initials: z.string() })),
  /** Topics of conflicts that nobody settled, other matters that nobody dealt with, and proposals that nobody accepted. */
  leftOpen: z.strictObject({
    conflicts: z.array(z.string()),
    matters: z.array(z.string()),
    proposedFindings: z.int(),
    proposedZones: z.int(),
  }),
  cautions: z.array(z.string()),
  /** Of this file's own text with this field's value empty. */
  recordSha256: Sha256,
});
export type ReviewRecord = z.infer<typeof ReviewRecord>;
