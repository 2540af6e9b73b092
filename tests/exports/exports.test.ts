import Ajv from "ajv/dist/2020.js";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { WebVTTParser } from "webvtt-parser";
import { buildExport, fileStem } from "../../electron/exports/build-export.ts";
import { chapterMarks } from "../../electron/exports/chapters/chapter-marks.ts";
import { chapterTitleText, stamp } from "../../electron/exports/chapters/webvtt.ts";
import { conditionIndex } from "../../electron/exports/condition-index.ts";
import { claimSubject, conditionIndexVersion, type TextFormat, textFormats, timeLabel } from "../../shared-types/index.ts";
import { sampleDetail } from "./sample-detail.ts";

const writtenAt = "2026-01-07T12:00:00.000Z";
const build = (format: TextFormat, detail = sampleDetail()) =>
  buildExport(format, { detail, writtenAt, hashes: { video: null, transcript: "0".repeat(64) } });

describe("chapters", () => {
  test("a span under ten seconds is taken into its neighbour, so that no player drops the list", () => {
    const chapters = chapterMarks(sampleDetail());
    expect(chapters.map(({ start, end, zone }) => ({ start, end, zone }))).toEqual([
      { start: 0, end: 30, zone: "front" },
      { start: 30, end: 75, zone: "rear" },
      { start: 75, end: 120, zone: "underside" },
    ]);
  });

  test("the plain list starts at 0:00, ascends, and marks open conflicts", () => {
    // Rules: first stamp 0:00, at least three, ascending, each at least 10 s (support.vevo.com, "YouTube Chapters").
    expect(build("chapters-list").text).toBe(
      '0:00 Front [open conflict: rear tire size]\n0:30 Tires & "wheels" <rear> a --> b [open conflict: rear tire size]\n1:15 Underside\n',
    );
  });

  test.for([
    // FACTS: 3723 s is 1:02:03, and 59.9 s is floored so that the stamp never lies after its cue.
    { seconds: 3723, label: "1:02:03" },
    { seconds: 59.9, label: "0:59" },
    { seconds: 0, label: "0:00" },
  ])("$seconds s is $label in a list", ({ seconds, label }) => expect(timeLabel(seconds)).toBe(label));

  test("the reference parser reads the WebVTT back, without an error", () => {
    // webvtt-parser is the reference implementation beside the W3C specification.
    const { cues, errors } = new WebVTTParser().parse(build("chapters-webvtt").text, "chapters");
    expect(errors).toEqual([]);
    expect(cues.map(({ startTime, endTime }) => [startTime, endTime])).toEqual([
      [0, 30],
      [30, 75],
      [75, 120],
    ]);
    // Its tree keeps the ";" of character references (webvtt-parser 2.2.0), so the raw text is compared; Chromium's parser decodes it in the journeys.
    expect(cues[1]?.text).toBe('Tires &amp; "wheels" &lt;rear&gt; a --&gt; b [open conflict: rear tire size]');
  });

  test.for([
    // W3C WebVTT: chapter title text is plain text and character references.
    { title: 'Tires & "wheels" <rear>', text: 'Tires &amp; "wheels" &lt;rear&gt;' },
    { title: "a --> b", text: "a --&gt; b" },
    { title: "two\n\nlines", text: "two lines" },
  ])("the title $title is written so that no parser stumbles", ({ title, text }) => expect(chapterTitleText(title)).toBe(text));

  test.for([
    { seconds: 3723.004, written: "01:02:03.004" },
    { seconds: 360000, written: "100:00:00.000" },
    { seconds: 11, written: "00:00:11.000" },
  ])("$seconds s is the timestamp $written", ({ seconds, written }) => expect(stamp(seconds)).toBe(written));
});

describe("condition index", () => {
  const index = conditionIndex(sampleDetail(), writtenAt);

  test("a claim in an open conflict is disputed, a ruled one is upheld or overruled, a former state is no claim about today", () => {
    expect(index.claims.map(({ quote, status }) => [quote, status])).toEqual([
      ["the rears are to 35 60 15s", "disputed"],
      ["two fifty five sixty fifteens in the back", "disputed"],
      ["four eleven", "upheld"],
      ["three seventy three", "overruled"],
      ['=HYPERLINK("x")', "denied"],
    ]);
  });

  test("the JSON validates against the schema that is exported beside it", () => {
    const validate = new Ajv({ strict: false }).compile(JSON.parse(build("index-schema").text));
    expect(validate(JSON.parse(build("index-json").text)), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...JSON.parse(build("index-json").text), version: conditionIndexVersion + 1 })).toBe(false);
  });

  test("a reference CSV parser reads every row back, and no cell is a formula", () => {
    const rows: Record<string, string>[] = parse(build("index-csv").text, { columns: true, bom: true });
    expect(rows.map((row) => row.kind)).toEqual([
      "standing",
      ...Array(3).fill("chapter"),
      "finding",
      ...Array(5).fill("claim"),
      ...Array(2).fill("conflict"),
      "stock sheet",
    ]);
    expect(rows[4]?.note).toContain("second line, ümlaut, עברית, 🚙");
    expect(rows.flatMap((row) => Object.values(row)).filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    expect(rows.filter((row) => row.kind === "conflict").map((row) => row.status)).toEqual(["open", "settled"]);
  });

  test("the page escapes everything it did not write itself, and runs and loads nothing from elsewhere", () => {
    const page = build("index-html").text;
    expect(page.match(/<script>/g)).toHaveLength(1);
    expect(page).not.toContain("alert(1)</script>");
    expect(page).toContain("&lt;/td&gt;&lt;script&gt;");
    expect(page).not.toMatch(/(?:src|href)="https?:/);
    expect(page).toContain("script-src &#39;sha256-");
  });

  test("open conflicts are marked wherever they appear, and unaccepted proposals are nowhere", () => {
    for (const format of textFormats.filter((name) => name !== "index-schema")) {
      const { text } = build(format);
      // Captions and overlays repeat what was said and what was settled; they make no claim that is open.
      if (/^(?:chapters|index)-|^correction-text$|^record-(?!schema)/.test(format)) expect(text, format).toMatch(/open|not yet checked/i);
      expect(text, format).not.toContain("UNACCEPTED PROPOSAL");
    }
  });

  test("so is what it bears out, with the moment, and what it tells that nobody spoke", () => {
    const detail = sampleDetail();
    const [claim] = detail.analysis.claims;
    const supports = [
      {
        id: "s1",
        key: "s",
        field: "rears",
        topic: "rear tire size",
        sheetValue: "235/60R15",
        claims: [claim!.id],
        why: "The sheet has the size that was said.",
      },
    ];
    const silences = [
      { id: "u1", key: "u", field: "=keys", topic: "number of keys", sheetValue: "2", why: "The sheet says 2 <keys>; nobody did." },
    ];
    const told = { ...detail, analysis: { ...detail.analysis, supports, silences } };
    const of = (format: "index-json" | "index-html" | "index-csv") => build(format, told).text;
    expect(JSON.parse(of("index-json"))).toMatchObject({
      supports: [{ topic: "rear tire size", moments: [{ start: claim!.start, quote: claim!.quote }] }],
      unspoken: [{ field: "=keys", sheetValue: "2" }],
    });
    expect(of("index-html")).toContain("The sheet says 2 &lt;keys&gt;; nobody did.");
    expect(of("index-html")).toContain("The sheet has the size that was said.");
    expect(of("index-csv")).toContain("borne out");
    expect(of("index-csv")).toMatch(/not spoken,'=keys/);
  });

  test("what the stock sheet denies is said in every form of the index", () => {
    for (const format of ["index-html", "index-csv", "index-json"] as const) {
      expect(build(format).text, format).toContain("The stock sheet says cracked; good was said.");
    }
  });

  test.for([
    { claim: { component: "price", part: null, position: null, attribute: "price" }, subject: "price" },
    {
      claim: { component: "body", part: "front fender", position: "driver-front", attribute: "condition" },
      subject: "driver front fender condition",
    },
    { claim: { component: "spare", part: null, position: null, attribute: "presence" }, subject: "spare" },
    { claim: { component: "tire", part: null, position: "rear", attribute: "size" }, subject: "rear tire size" },
  ] as const)("a claim about $subject says no word twice", ({ claim, subject }) => expect(claimSubject(claim)).toBe(subject));

  test("the same recording and time give the same bytes", () => {
    for (const format of textFormats) expect(build(format)).toEqual(build(format));
  });
});

test.for([
  { title: "../../etc/passwd", stockNumber: "", stem: "etc-passwd" },
  { title: "Übergröße 1971", stockNumber: "A/12", stem: "a-12-ubergro-e-1971" },
  { title: "…", stockNumber: "", stem: "recording" },
])("files of $title are named $stem", ({ title, stockNumber, stem }) => expect(fileStem({ title, stockNumber })).toBe(stem));
