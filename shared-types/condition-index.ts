import { z } from "zod";
import { ClaimValue, Seconds } from "./analysis.ts";
import { Publication, Vehicle } from "./recording.ts";
import {
  AttributeName,
  ComponentName,
  ConflictKind,
  Grade,
  PositionName,
  RulingDecision,
  Stance,
  UnitName,
  ZoneName,
} from "./vocabulary.ts";

/** Version of the exported JSON's form. */
export const conditionIndexVersion = 5;

/** A claim where it is told again: with its doubt and with every open conflict it is in. */
export const ToldMoment = z.strictObject({ start: Seconds, quote: z.string(), stance: Stance, openConflicts: z.array(z.string()) });
export type ToldMoment = z.infer<typeof ToldMoment>;

/**
 * The condition index as JSON: what leaves the tool. Its JSON Schema is exported from this object.
 * Unaccepted proposals are not findings and stay out; an open conflict is marked wherever one of its claims appears.
 */
export const ConditionIndex = z.strictObject({
  version: z.literal(conditionIndexVersion),
  recording: z.strictObject({
    title: z.string(),
    stockNumber: z.string(),
    vehicle: Vehicle,
    duration: Seconds,
    videoFile: z.string().nullable(),
    transcriptFile: z.string(),
  }),
  /** ISO 8601 UTC. */
  writtenAt: z.string(),
  analysisVersion: z.int(),
  /**
   * The last publication, with how many conflicts were open then, and how many other matters nobody had dealt with (null where that was not
   * yet counted); null while there was none. What those matters are is in the review record: it is for the dealer.
   */
  published: Publication.extend({ openMatters: z.int().nonnegative().nullable() }).nullable(),
  chapters: z.array(
    z.strictObject({ start: Seconds, end: Seconds, zone: ZoneName, title: z.string(), accepted: z.boolean(), openConflicts: z.int() }),
  ),
  findings: z.array(
    z.strictObject({
      start: Seconds,
      end: Seconds,
      zone: ZoneName,
      component: ComponentName,
      /** The part in its own words, closer than the component. */
      part: z.string().nullable(),
      position: PositionName.nullable(),
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
  /** How many claims were made of an earlier state of the vehicle; they are read, and not listed here. */
  formerClaims: z.int().nonnegative(),
  claims: z.array(
    z.strictObject({
      start: Seconds,
      zone: ZoneName,
      component: ComponentName,
      part: z.string().nullable(),
      position: PositionName.nullable(),
      attribute: AttributeName,
      value: ClaimValue,
      unit: UnitName.nullable(),
      stance: Stance,
      quote: z.string(),
      /** `disputed` in an open conflict, `overruled` where a ruling let another side stand, `denied` where the stock sheet says otherwise. */
      status: z.enum(["undisputed", "disputed", "upheld", "overruled", "denied"]),
      /** What a standing ruling says of it whatever else is open: another side stands, or the words were misheard. */
      ruledOut: z.enum(["overruled", "misheard"]).nullable(),
      /** Topics of every conflict it is in, and of those that are open. */
      conflictTopics: z.array(z.string()),
      openConflicts: z.array(z.string()),
    }),
  ),
  conflicts: z.array(
    z.strictObject({
      topic: z.string(),
      kind: ConflictKind,
      why: z.string(),
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
      standard: z.strictObject({ name: z.string(), source: z.string(), working: z.string() }).nullable(),
      ruling: z
        .strictObject({
          decision: RulingDecision,
          side: z.int().nullable(),
          reason: z.string(),
          rightWords: z.string().nullable(),
          initials: z.string(),
          at: z.string(),
        })
        .nullable(),
    }),
  ),
  /** Claims that the dealer's own record does not bear out. */
  denials: z.array(z.strictObject({ field: z.string(), sheetValue: z.string(), why: z.string(), moments: z.array(ToldMoment) })),
  /** Claims that it bears out. */
  supports: z.array(
    z.strictObject({ field: z.string(), topic: z.string(), sheetValue: z.string(), why: z.string(), moments: z.array(ToldMoment) }),
  ),
  /** What it tells and no claim speaks of. */
  unspoken: z.array(z.strictObject({ field: z.string(), topic: z.string(), sheetValue: z.string(), why: z.string() })),
  cautions: z.array(z.string()),
});
export type ConditionIndex = z.infer<typeof ConditionIndex>;
