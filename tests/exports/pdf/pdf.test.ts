import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import { createBrowserPrinter, onPaper } from "../../../electron/launch/print-pdf.ts";
import { openApplication } from "../../../electron/services/open-application.ts";
import { noPdfPrinter, printPage, withoutChance } from "../../../electron/services/print-pages.ts";
import { cautions, type Paper, type RecordingDetail } from "../../../shared-types/index.ts";
import { sampleAnalysis, sampleAnalysisRunner } from "../../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../../support/builders/sample-application.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";
import { missingTools } from "../../support/runner/find-tools.ts";
import { hostileDetail, hostileTexts } from "../hostile-detail.ts";
import { sampleDetail } from "../sample-detail.ts";

const writtenAt = "2026-01-07T12:00:00.000Z";
const hashes = { video: null, transcript: "0".repeat(64) };
const printer = createBrowserPrinter();
/** The reason to skip what needs the browser and the programs that read PDFs. */
const missing = printer.whyNot() ?? missingTools("pdftotext", "pdftoppm");

async function printed(format: "index-html" | "record-html", detail: RecordingDetail, paper: Paper): Promise<string> {
  const page = buildExport(format, { detail, writtenAt, hashes, printed: true }).text;
  const pdf = await printPage({ pdf: printer }, page, { paper, writtenAt, signal: new AbortController().signal });
  const file = join(temporaryFolder(), "page.pdf");
  writeFileSync(file, pdf);
  return file;
}

/** The PDF's words as poppler reads them, one space between them. */
const wordsOf = (file: string): string => execFileSync("pdftotext", [file, "-"], { encoding: "utf8" }).replaceAll(/\s+/g, " ");

/** A recording long enough for several pages. */
function longDetail(): RecordingDetail {
  const detail = sampleDetail();
  const claims = Array.from({ length: 60 }, (_, row) => ({
    ...detail.analysis.claims[2]!,
    id: `long-${row}`,
    quote: `spoken line ${row} ${"and on ".repeat(row % 9)}`,
  }));
  return { ...detail, analysis: { ...detail.analysis, claims: [...detail.analysis.claims, ...claims] } };
}

describe.skipIf(missing !== null)(`the PDF${missing === null ? "" : ` (left out: ${missing})`}`, { timeout: 60_000 }, () => {
  test("of the index has title, chapters, conflicts, cautions and every hostile text as text", async () => {
    const file = await printed("index-html", hostileDetail(), "letter");
    const words = wordsOf(file);
    expect(words).toContain("Condition index");
    expect(words).toContain('</title></style><script>alert("title")</script>');
    expect(words).toContain("1:15 Underside");
    expect(words).toContain("Open: rear tire size");
    for (const caution of Object.values(cautions)) expect(words).toContain(caution);
    // Words that run right to left come in the order of their letters on paper; poppler turns them back by its own rules.
    const read = hostileTexts.filter((text) => !/[\u0590-\u06ff\u202e]|🚙/u.test(text));
    for (const text of read) expect(words).toContain(text.replaceAll(/\s+/g, " ").trim());
    expect(execFileSync("pdfinfo", [file], { encoding: "utf8" })).toMatch(/Tagged:\s+yes/);
  });

  test("of the review record has rulings, hashes and what is open", async () => {
    const words = wordsOf(await printed("record-html", sampleDetail(), "a4"));
    expect(words).toContain("Review record:");
    expect(words).toContain("One conflict is open: rear tire size.");
    expect(words).toContain("Tag on the cover reads 37 over 9.");
    expect(words.replaceAll(" ", "")).toContain(hashes.transcript);
  });

  test.for([
    // ANSI letter and ISO 216 A4, in points of 1/72 in.
    { paper: "letter", width: 612, height: 792 },
    { paper: "a4", width: 595, height: 842 },
  ] as const)(
    "on $paper: every word lies whole on its page, inside the margins, and the pages are counted",
    async ({ paper, width, height }) => {
      const file = await printed("index-html", longDetail(), paper);
      const boxes = execFileSync("pdftotext", ["-bbox", file, "-"], { encoding: "utf8" });
      const pages = [...boxes.matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gs)];
      expect(pages.length).toBeGreaterThan(2);
      for (const [, pageWidth, pageHeight, inside] of pages) {
        expect([Math.round(Number(pageWidth)), Math.round(Number(pageHeight))]).toEqual([width, height]);
        const words = [...inside!.matchAll(/xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)"/g)].map((found) =>
          found.slice(1).map(Number),
        );
        expect(words.length).toBeGreaterThan(5);
        // Half an inch is what any printer leaves: nothing is cut off.
        for (const [left, top, right, bottom] of words) {
          expect(left).toBeGreaterThan(36);
          expect(right).toBeLessThan(width - 36);
          expect(top).toBeGreaterThan(20);
          expect(bottom).toBeLessThan(height - 10);
        }
      }
      expect(wordsOf(file)).toContain(`Page ${pages.length} of ${pages.length}`);
    },
  );

  test("shows something on every page: poppler draws each with ink on it", async () => {
    const file = await printed("index-html", longDetail(), "letter");
    const folder = temporaryFolder();
    execFileSync("pdftoppm", ["-r", "20", "-gray", file, join(folder, "page")]);
    const pages = readdirSync(folder);
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      // A PGM's head is three short lines; then a byte for each pixel, 0 black.
      const pixels = readFileSync(join(folder, page)).subarray(20);
      expect(pixels.filter((gray) => gray < 128).length / pixels.length, page).toBeGreaterThan(0.002);
    }
  });

  test("is the same bytes for the same recording and time, whenever it is printed", async () => {
    const [first, second] = [
      await printed("record-html", sampleDetail(), "letter"),
      await printed("record-html", sampleDetail(), "letter"),
    ];
    expect(readFileSync(first).equals(readFileSync(second))).toBe(true);
    expect(execFileSync("pdfinfo", ["-isodates", first], { encoding: "utf8" })).toMatch(/CreationDate:\s+2026-01-07T12:00:00/);
  });

  test("ended half way, nothing is written, nothing is left in the temporary folder, and the refusal says so", async () => {
    const left = () => readdirSync(tmpdir()).filter((name) => name.startsWith("roundwalk-print-"));
    const before = left();
    const folder = temporaryFolder();
    const application = openApplication({
      host: { name: "browser", version: "0.0.0", reveal: null, pdf: printer },
      libraryFile: join(folder, "library.sqlite"),
      analysis: sampleAnalysisRunner(() => sampleAnalysis()),
    });
    onTestFinished(() => application.close());
    const { id: recordingId } = await importSample(application, { folder });
    const made: string[] = [];
    application.parts.events.subscribe((event) => {
      if (event.name !== "export.progress") return;
      made.push(`${event.payload.format} ${event.payload.done}/${event.payload.of}`);
      if (event.payload.format === "index-pdf") setTimeout(() => application.handlers["export.cancel"]({ recordingId }), 200);
    });
    const writing = application.handlers["export.write"]({
      recordingId,
      formats: ["index-html", "index-pdf"],
      granularity: "zones",
      overwrite: false,
    });
    // A second one meanwhile is told that the first is under way.
    await expect(
      Promise.resolve(
        application.handlers["export.write"]({ recordingId, formats: ["index-csv"], granularity: "zones", overwrite: false }),
      ),
    ).rejects.toMatchObject({ problem: { code: "export-under-way" } });
    await expect(writing).rejects.toMatchObject({
      problem: { code: "export-cancelled", message: expect.stringContaining("Nothing was written") },
    });
    expect(made).toEqual(["index-html 0/2", "index-pdf 1/2"]);
    expect(existsSync(join(folder, "exports")) ? readdirSync(join(folder, "exports")) : []).toEqual([]);
    expect(left().filter((name) => !before.includes(name))).toEqual([]);
    expect(application.handlers["export.cancel"]({ recordingId })).toEqual({ ended: false });
  });
});

describe("where no PDF can be made", () => {
  test("the host says why and what to do, and asking all the same is refused with that sentence", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const abilities = await application.handlers["host.abilities"]({});
    expect(abilities.whyNoPdf).toContain("print it to a PDF");
    await expect(
      application.handlers["export.write"]({ recordingId, formats: ["index-html", "index-pdf"], granularity: "zones", overwrite: false }),
    ).rejects.toMatchObject({ problem: { code: "no-pdf-printer", message: abilities.whyNoPdf } });
    expect(existsSync(join(application.folder, "exports"))).toBe(false);
    await expect(application.handlers["export.preview"]({ recordingId, format: "index-pdf", granularity: "zones" })).rejects.toMatchObject({
      problem: { code: "no-preview" },
    });
  });

  test("a machine without a browser is told to install one", () => {
    const without = createBrowserPrinter(() => undefined);
    expect(without.whyNot()).toMatch(/Chromium or Chrome.*Install one/);
    expect(noPdfPrinter.whyNot()).not.toBeNull();
  });

  test("a browser that writes nothing is named, and nothing is half done", async () => {
    const broken = createBrowserPrinter(() => "/bin/false");
    await expect(
      printPage({ pdf: broken }, "<head></head>", { paper: "a4", writtenAt, signal: new AbortController().signal }),
    ).rejects.toMatchObject({
      problem: { code: "pdf-failed", message: expect.stringContaining("/bin/false wrote no PDF") },
    });
  });
});

test("what the engine's clock and counter wrote gives way without moving a byte", () => {
  const pdf = (date: string, first: number) =>
    Buffer.from(
      `/CreationDate (D:20261126022350${date})\n/ID (node${String(first).padStart(8, "0")})/ID (node${String(first + 7).padStart(8, "0")}) (node12)>>`,
      "latin1",
    );
  const settled = Buffer.from(withoutChance(pdf("+00'00'", 252), writtenAt)).toString("latin1");
  expect(settled).toBe("/CreationDate (D:20260107120000+00'00')\n/ID (node00000001)/ID (node00000002) (node12)>>");
  expect(settled).toHaveLength(pdf("+00'00'", 252).length);
  expect(Buffer.from(withoutChance(pdf("-05'00'", 998), writtenAt)).toString("latin1")).toBe(settled);
});

test("the paper's style is let in by its hash, and by nothing wider", () => {
  const page = onPaper(buildExport("index-html", { detail: hostileDetail(), writtenAt, printed: true }).text, "a4");
  const policy = /Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1] ?? "";
  expect(policy.match(/sha256-/g)).toHaveLength(2);
  expect(policy).not.toContain("unsafe");
  expect(page).toContain("<style>@page{size:a4 portrait}</style></head>");
});
