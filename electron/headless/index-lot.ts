import { basename, resolve } from "node:path";
import { parseArgs } from "node:util";
import { chapterGranularities, exportFormats, isPdfFormat, lostFields, papers } from "../../shared-types/index.ts";
import { createBrowserPrinter } from "../launch/print-pdf.ts";
import { defaultLibraryFile } from "../library/default-place.ts";
import { indexLot } from "../services/lot/index-lot.ts";
import { type Application, openApplication } from "../services/open-application.ts";
import { describeFailure, failingFile } from "./describe-failure.ts";
import { namedTemplate } from "./named-template.ts";
import { showProgress } from "./show-progress.ts";

const usage = `Usage: npm run index-lot -- --out FOLDER [options]
  --library FILE       another library than your own
  --all                recordings with open conflicts too, which every file then says
  --stock TEXT         those with this stock number, ready or not; may be given more than once
  --stock-sheet FILE   a sheet of the whole lot (CSV): each recording first gets its row, by stock number
  --template TEXT      a text for each by this template: the name of one in the library, or a file
  --text-only          the text alone
  --chapters HOW       zones (the usual), findings or everything
  --paper SIZE         letter (the usual) or a4: the sheet of the PDFs, which need an installed Chromium or Chrome
  --force              overwrite files that are already there`;

const options = {
  library: { type: "string" },
  out: { type: "string" },
  all: { type: "boolean" },
  stock: { type: "string", multiple: true },
  "stock-sheet": { type: "string" },
  template: { type: "string" },
  "text-only": { type: "boolean" },
  chapters: { type: "string" },
  paper: { type: "string" },
  force: { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

async function main(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  const granularity = chapterGranularities.find((known) => known === (values.chapters ?? "zones"));
  const paper = papers.find((known) => known === (values.paper ?? "letter"));
  if (!values.out || !granularity || !paper || (values["text-only"] && !values.template)) {
    const fault = !values.out
      ? "--out FOLDER is missing."
      : !granularity
        ? `--chapters takes ${chapterGranularities.join(", ")}.`
        : !paper
          ? `--paper takes ${papers.join(" or ")}.`
          : "--text-only needs a --template.";
    console.error(`${fault}\n${usage}`);
    return 2;
  }
  const pdf = createBrowserPrinter();
  const whyNoPdf = values["text-only"] ? null : pdf.whyNot();
  const formats = values["text-only"] ? [] : exportFormats.filter((format) => whyNoPdf === null || !isPdfFormat(format));
  const application = openApplication({
    host: { name: "desktop", version: "headless", reveal: null, pdf },
    libraryFile: values.library ? resolve(values.library) : defaultLibraryFile(),
  });
  const progress = showProgress(process.stderr);
  const stop = new AbortController();
  process.once("SIGINT", () => stop.abort());
  try {
    const template = values.template === undefined ? null : namedTemplate(application, values.template);
    if (values["stock-sheet"]) await takeSheet(application, resolve(values["stock-sheet"]));
    const recordings = await application.handlers["recording.list"]({});
    const asked = values.stock
      ? recordings.filter(({ stockNumber }) => values.stock?.includes(stockNumber))
      : values.all
        ? recordings
        : null;
    const done = await indexLot(
      application.parts,
      {
        recordingIds: asked?.map(({ id }) => id) ?? null,
        // The text is written where a template is named.
        formats: formats.filter((format) => format !== "index-text"),
        granularity,
        paper,
        folder: resolve(values.out),
        overwrite: values.force ?? false,
      },
      template,
      stop.signal,
      (what) => (what === "" ? undefined : progress.say(what)),
    );
    progress.end();
    for (const { title, folder, files, warnings } of done.written) {
      console.log(`written  ${title}: ${files.length} files in ${folder}`);
      for (const warning of warnings) console.error(`${title}: ${warning}`);
    }
    for (const { title, why } of done.left) console.log(`left     ${title}: ${why}`);
    for (const { title, why } of done.failed) console.error(`not written: ${title}: ${why.replaceAll(/\s+/g, " ")}`);
    if (whyNoPdf !== null && done.written.length > 0) console.error(`No PDF was written. ${whyNoPdf}`);
    if (done.cancelled) console.error("Cancelled. What is listed as written is whole.");
    return done.failed.length > 0 || done.cancelled ? 1 : 0;
  } finally {
    progress.end();
    await application.close();
  }
}

/** Gives every recording its row, and waits until all of them are read anew. */
async function takeSheet({ handlers, parts, analyst }: Application, path: string): Promise<void> {
  const stockSheet = parts.files.offerPath(path).id;
  const { matched, rowsLeft, recordingsLeft, twice, unreadable } = await handlers["lot.match"]({ stockSheet });
  const fuller = matched.filter((row) => lostFields(row) > 0);
  const ids = matched.filter((row) => row.standing !== "same" && !fuller.includes(row)).map(({ recordingId }) => recordingId);
  if (ids.length > 0) await handlers["lot.take"]({ stockSheet, recordingIds: ids });
  await analyst.idle();
  console.log(
    `Stock sheet: ${matched.length} matched (${ids.length} of them new or changed), ${rowsLeft.length} rows without a recording, ${recordingsLeft.length} recordings without a row.`,
  );
  for (const { title, changes } of fuller)
    console.error(
      `${title}: keeps its former sheet, which has ${lostFields({ changes })} fields that the new row lacks. Give it in the window.`,
    );
  for (const { stockNumber, lines } of twice)
    console.error(`${basename(path)}: “${stockNumber}” stands in lines ${lines.join(", ")}; none of them was taken.`);
  for (const { title, why } of unreadable) console.error(`${title}: ${why}`);
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (failure) {
  console.error(describeFailure(failingFile(failure) ?? "index-lot", failure));
  process.exitCode = 1;
}
