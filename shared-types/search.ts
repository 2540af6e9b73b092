import { z } from "zod";
import { Seconds } from "./analysis.ts";
import { RecordingId } from "./recording.ts";
import { ZoneName } from "./vocabulary.ts";

/** Why a claim may not be told to a caller as a fact; the first that holds. */
export const withholdings = ["disputed", "overruled", "sheet-denies", "unsure-repair", "former", "hedged", "reported"] as const;
export const Withholding = z.enum(withholdings);
export type Withholding = z.infer<typeof Withholding>;

/** Why a claim has no answer; `detail` is what the stock sheet says instead. */
export const Withheld = z.strictObject({ reason: Withholding, detail: z.string().nullable() });
export type Withheld = z.infer<typeof Withheld>;

export const SearchHit = z.strictObject({
  recordingId: RecordingId,
  recordingTitle: z.string(),
  stockNumber: z.string(),
  kind: z.enum(["zone", "claim", "finding", "caption"]),
  start: Seconds,
  end: Seconds,
  zone: ZoneName,
  /** What matched, as a person would read it. */
  text: z.string(),
  /** What it is about, without its value: "rear tire size"; null for what names no thing (a zone, a caption). */
  subject: z.string().nullable(),
  /** True where a claim takes part in an open conflict; such a claim is never given as fact. */
  disputed: z.boolean(),
  /** Key of the gravest conflict that the claim takes part in, an open one before a settled one; null where there is none. */
  conflictKey: z.string().nullable(),
  hedged: z.boolean(),
  /** True where a ruling took the claim out. */
  overruled: z.boolean(),
  /** Also of a finding that was accepted from a claim which does not stand; null for everything else that is no claim. */
  withheld: Withheld.nullable(),
  /** What was really said, where a ruling says that these words were misheard. */
  rightWords: z.string().nullable(),
  /** One plain sentence with its time and stock number to tell a caller; null where it may not be stated as fact. */
  answer: z.string().nullable(),
  /** The question as it was read where its spelling was forgiven: "transmission pan"; null where it was found as typed. */
  readAs: z.string().nullable(),
});
export type SearchHit = z.infer<typeof SearchHit>;

/** How many vehicles are compared at once: as many as stand side by side and can still be read. */
export const mostCompared = 6;

/** One thing that was said of a vehicle about the claim asked for. */
export const ComparedMoment = z.strictObject({
  start: Seconds,
  end: Seconds,
  zone: ZoneName,
  /** "4.11:1" */
  value: z.string(),
  quote: z.string(),
  withheld: Withheld.nullable(),
  conflictKey: z.string().nullable(),
  rightWords: z.string().nullable(),
  answer: z.string().nullable(),
});
export type ComparedMoment = z.infer<typeof ComparedMoment>;

/** Vehicles side by side: for each subject ("final drive ratio") what was said of each of them. */
export const Comparison = z.strictObject({
  /** The question as it was read where its spelling was forgiven; null where it was taken as typed. */
  readAs: z.string().nullable(),
  vehicles: z.array(z.strictObject({ recordingId: RecordingId, recordingTitle: z.string(), stockNumber: z.string() })),
  subjects: z.array(
    z.strictObject({
      subject: z.string(),
      /** One list for each vehicle, in the vehicles' order; empty where nobody said. */
      said: z.array(z.array(ComparedMoment)),
    }),
  ),
});
export type Comparison = z.infer<typeof Comparison>;
