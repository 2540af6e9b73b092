import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import { analyse } from "../analysis/analyse.ts";
import { readTranscript } from "../transcripts/read-transcript.ts";
import { analysisDocument } from "./analysis-document.ts";
import { describeFailure } from "./describe-failure.ts";
import { readStockSheetFile } from "./read-stock-sheet-file.ts";

const usage = `Usage: npm run --silent analyze -- TRANSCRIPT [TRANSCRIPT …] [options]
  --stock-sheet FILE     the dealer's own record (CSV); claims are held against it
  --stock-number TEXT    picks the row of a sheet of many vehicles`;

const options = {
  "stock-sheet": { type: "string" },
  "stock-number": { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

function main(args: string[]): number {
  const { positionals, values } = parseArgs({ args, allowPositionals: true, options });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  if (positionals.length === 0) {
    console.error(`No transcript was named. ${usage}`);
    return 1;
  }
  const sheetFile = values["stock-sheet"];
  let sheet: ReturnType<typeof readStockSheetFile> | null = null;
  try {
    sheet = sheetFile === undefined ? null : readStockSheetFile(sheetFile, values["stock-number"] ?? "");
  } catch (failure) {
    // Without the record nothing can be held against it, and documents that lack it would look as if nothing stood in it.
    console.error(describeFailure(sheetFile ?? "", failure));
    return 1;
  }
  let failures = 0;
  for (const file of positionals) {
    try {
      const transcript = readTranscript(readFileSync(file), basename(file));
      const analysis = analyse(transcript, {
        stockSheet: sheet?.fields ?? null,
        sheetMeanings: sheet?.meanings ?? null,
        recordedOn: sheet?.recordedOn ?? null,
      });
      process.stdout.write(`${JSON.stringify(analysisDocument(basename(file), transcript, analysis, sheet !== null))}\n`);
    } catch (failure) {
      failures += 1;
      console.error(describeFailure(file, failure));
    }
  }
  return failures ? 1 : 0;
}

// Whoever reads the documents may have seen enough (`analyze … | head`).
process.stdout.on("error", (failure: NodeJS.ErrnoException) => {
  if (failure.code !== "EPIPE") throw failure;
  process.exit(0);
});

try {
  process.exitCode = main(process.argv.slice(2));
} catch (failure) {
  console.error(`${failure instanceof Error ? failure.message : String(failure)} ${usage}`);
  process.exitCode = 1;
}
