import { z } from "zod";

/** What stands for a field of an index text. The list is closed: any other word in braces is refused. */
export const indexFieldRows = {
  title: "The recording's title",
  "stock-number": "Stock number",
  vehicle: "Model year and name of the vehicle",
  "body-style": "Body style",
  "drive-side": "On which side the driver sits",
  length: "Length of the recording",
  "video-file": "Name of the video's file",
  chapters: "A line for each chapter: time and title; open conflicts marked",
  findings: "A line for each finding that a person accepted",
  settled: "A line for each settled conflict: what stands",
  "open-conflicts": "A line for each conflict that is open",
  "sheet-denials": "A line for each claim that the stock sheet does not bear out",
  counts: "How many chapters, findings, settled and open conflicts",
  cautions: "The cautions that belong to every index",
  "written-on": "Date of writing",
} as const satisfies Record<string, string>;

export const indexFields = Object.keys(indexFieldRows) as [keyof typeof indexFieldRows, ...(keyof typeof indexFieldRows)[]];
export const IndexField = z.enum(indexFields);
export type IndexField = z.infer<typeof IndexField>;

/** Most letters of a template. */
export const longestTemplate = 20_000;

/** A text with fields in braces: `{stock-number}`. A brace that is none of a field's is written twice: `{{`. */
export const IndexTemplate = z.strictObject({ name: z.string().trim().min(1).max(60), text: z.string().max(longestTemplate) });
export type IndexTemplate = z.infer<typeof IndexTemplate>;

/** Something in a template that cannot be filled in; line and column from 1. */
export const TemplateFault = z.strictObject({ line: z.int().positive(), column: z.int().positive(), message: z.string() });
export type TemplateFault = z.infer<typeof TemplateFault>;

/** Where a library has none of its own yet. */
export const firstTemplate: IndexTemplate = {
  name: "Listing text",
  text: `{vehicle}, stock {stock-number}
{title} ({length})

Chapters
{chapters}

Condition findings
{findings}

Put right after the walk
{settled}

Still open
{open-conflicts}

{cautions}
`,
};
