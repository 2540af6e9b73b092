import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import { analyse } from "../analysis/analyse.ts";
import { readTranscript } from "../transcripts/read-transcript.ts";
import { analysisDocument } from "./analysis-document.ts";
import { describeFailure } from "./describe-failure.ts";

const usage = "Usage: npm run --silent analyze -- TRANSCRIPT [TRANSCRIPT …]";

function main(args: string[]): number {
  const { positionals, values } = parseArgs({ args, allowPositionals: true, options: { help: { type: "boolean", short: "h" } } });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  if (positionals.length === 0) {
    console.error(`No transcript was named. ${usage}`);
    return 1;
  }
  let failures = 0;
  for (const file of positionals) {
    try {
      const transcript = readTranscript(readFileSync(file), basename(file));
      const analysis = analyse(transcript, { stockSheet: null, recordedOn: null });
      process.stdout.write(`${JSON.stringify(analysisDocument(basename(file), transcript, analysis))}\n`);
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
