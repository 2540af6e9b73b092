// npm run index -- [--video V] --transcript T --out DIR [--library FILE]: import, analysis and every export without a window.
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, extname, join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { chapterGranularities, exportFormats, isPdfFormat, papers, type RecordingDetail } from "../../shared-types/index.ts";
import { exportFileName } from "../exports/build-export.ts";
import { createBrowserPrinter } from "../launch/print-pdf.ts";
import { writeExportsInto } from "../services/export-recording.ts";
import { openApplication } from "../services/open-application.ts";
import { Refusal } from "../services/refusals.ts";
import { describeFailure, failingFile } from "./describe-failure.ts";
import { namedTemplate, templateFileName } from "./named-template.ts";
import { showProgress } from "./show-progress.ts";
import { summaryLines } from "./summary-lines.ts";

const usage = `Usage: npm run index -- [--video FILE] --transcript FILE --out FOLDER [options]
  --stock-sheet FILE     the dealer's own record (CSV); claims are held against it
  --title TEXT           else the transcript's name
  --stock-number TEXT
  --chapters HOW         zones (the usual), findings or everything: how much becomes a chapter
  --template TEXT        the index text by this template: the name of one in the library, or a file; else the library's first
  --paper SIZE           letter (the usual) or a4: the sheet of the PDFs, which need an installed Chromium or Chrome
  --library FILE         keep the recording in this library; else nothing stays but what is written to FOLDER
  --force                overwrite files that are already in FOLDER`;

const options = {
  video: { type: "string" },
  transcript: { type: "string" },
  "stock-sheet": { type: "string" },
  out: { type: "string" },
  library: { type: "string" },
  title: { type: "string" },
  "stock-number": { type: "string" },
  chapters: { type: "string" },
  paper: { type: "string" },
  template: { type: "string" },
  force: { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

async function main(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  if (!values.transcript || !values.out) {
    console.error(`${values.transcript ? "--out FOLDER" : "--transcript FILE"} is missing.\n${usage}`);
    return 2;
  }
  const granularity = chapterGranularities.find((known) => known === (values.chapters ?? "zones"));
  if (!granularity) {
    console.error(`--chapters takes ${chapterGranularities.join(", ")}, not "${values.chapters}".`);
    return 2;
  }
  const paper = papers.find((known) => known === (values.paper ?? "letter"));
  if (!paper) {
    console.error(`--paper takes ${papers.join(" or ")}, not "${values.paper}".`);
    return 2;
  }
  const pdf = createBrowserPrinter();
  const whyNoPdf = pdf.whyNot();
  const formats = exportFormats.filter((format) => whyNoPdf === null || !isPdfFormat(format));
  const named = [values.transcript, values.video, values["stock-sheet"]].filter((file) => file !== undefined);
  const missing = named.filter((file) => !existsSync(file));
  if (missing.length > 0) {
    for (const file of missing) console.error(`${file}: there is no such file. Check the name and the folder.`);
    return 1;
  }
  const folder = resolve(values.out);
  const title = values.title ?? basename(values.transcript, extname(values.transcript));
  const stockNumber = values["stock-number"] ?? "";
  // Asked before anything is read, so that a refusal leaves no recording behind in a library either.
  const textName = values.template !== undefined && existsSync(values.template) ? templateFileName(values.template) : values.template;
  const inTheWay = formats
    .map((format) => join(folder, exportFileName(format, { title, stockNumber }, textName === undefined ? undefined : { name: textName })))
    .filter((path) => existsSync(path));
  if (inTheWay.length > 0 && !values.force) {
    console.error(
      `Already there, and nothing was written: ${inTheWay.join(", ")}. Choose another --out folder, or add --force to overwrite.`,
    );
    return 1;
  }
  const passing = values.library ? null : mkdtempSync(join(tmpdir(), "roundwalk-index-"));
  const progress = showProgress(process.stderr);
  const application = openApplication({
    host: { name: "desktop", version: "headless", reveal: null, pdf },
    libraryFile: values.library ? resolve(values.library) : join(passing!, "library.sqlite"),
  });
  try {
    application.parts.events.subscribe((event) => {
      if (event.name === "export.progress")
        progress.say(`writing ${event.payload.format}, ${event.payload.done + 1} of ${event.payload.of}`);
      if (event.name === "analysis.progress") progress.step(event.payload.pass, event.payload.done, event.payload.of);
    });
    const template = values.template === undefined ? null : namedTemplate(application, values.template);
    const { files } = application.parts;
    const offer = (file: string | undefined) => (file === undefined ? null : files.offerPath(resolve(file)).id);
    progress.say("reading");
    const recording = await application.handlers["recording.import"]({
      transcript: offer(values.transcript)!,
      video: offer(values.video),
      stockSheet: offer(values["stock-sheet"]),
      title,
      stockNumber,
      vehicle: { name: "", year: null, bodyStyle: "sedan", drive: "left-hand" },
      bodyStyleFromSheet: true,
      // A command that is run again is meant again.
      again: true,
    });
    const detail: RecordingDetail = await application.handlers["recording.get"]({ id: recording.id });
    progress.say("writing");
    // A stock sheet may bring the stock number, and with it other file names than those that were asked for above.
    const overwrite = values.force ?? false;
    const control = new AbortController();
    const end = () => control.abort();
    // Ended while files are being made, none of them is left.
    process.once("SIGINT", end);
    const written = await writeExportsInto(
      application.parts,
      folder,
      { recordingId: recording.id, formats, granularity, paper, overwrite },
      { signal: control.signal, template },
    );
    process.off("SIGINT", end);
    progress.end();
    for (const line of summaryLines(detail)) console.log(line);
    console.log(`\nWritten to ${written.folder}:`);
    for (const file of written.files) console.log(`  ${basename(file.path)} (${file.bytes} bytes)`);
    for (const warning of new Set(written.files.flatMap(({ warnings }) => warnings))) console.error(warning);
    if (whyNoPdf !== null) console.error(`No PDF was written. ${whyNoPdf}`);
    return 0;
  } finally {
    progress.end();
    await application.close();
    if (passing) rmSync(passing, { recursive: true, force: true });
  }
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (failure) {
  const file = failingFile(failure) ?? "index";
  const inTheWay = failure instanceof Refusal && failure.problem.code === "file-exists";
  console.error(`${describeFailure(file, failure)}${inTheWay ? " (--force overwrites.)" : ""}`);
  process.exitCode = 1;
}
