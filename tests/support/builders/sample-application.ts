import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { openApplication } from "../../../electron/services/open-application.ts";
import type { PdfPrinter } from "../../../electron/services/parts.ts";
import type { Analysis, RecordingSummary, Transcript } from "../../../shared-types/index.ts";
import { sampleAnalysis, sampleAnalysisRunner, sampleTranscriptText } from "./sample-analysis.ts";
import { temporaryFolder } from "./temporary-folder.ts";

export const sampleVehicle = { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" } as const;

export interface SampleOptions {
  readonly folder?: string;
  readonly answer?: (transcript: Transcript) => Analysis;
  /** How pages become PDFs; left out where they cannot. */
  readonly pdf?: PdfPrinter;
}

/** An application on a library of its own, with the sample analysis in the worker's place. Closed when the test ends. */
export function sampleApplication({ folder = temporaryFolder(), answer = () => sampleAnalysis(), pdf }: SampleOptions = {}) {
  const logged: string[] = [];
  const application = openApplication({
    host: { name: "browser", version: "0.0.0", reveal: null, ...(pdf ? { pdf } : {}) },
    libraryFile: join(folder, "library.sqlite"),
    log: (line) => logged.push(line),
    now: steadyClock(),
    analysis: sampleAnalysisRunner(answer),
  });
  onTestFinished(() => application.close());
  return { ...application, folder, logged };
}

/** Imports the sample transcript, from a file on the disk as the desktop does. */
export async function importSample(
  application: ReturnType<typeof openApplication>,
  {
    folder,
    text = sampleTranscriptText,
    stockNumber = "FK-1971",
    again = false,
  }: { folder: string; text?: string; stockNumber?: string; again?: boolean },
): Promise<RecordingSummary> {
  const path = join(folder, "kestrel.txt");
  writeFileSync(path, text);
  return application.handlers["recording.import"]({
    transcript: application.parts.files.offerPath(path).id,
    video: null,
    stockSheet: null,
    title: "Kestrel walk round",
    stockNumber,
    vehicle: sampleVehicle,
    again,
  });
}

/** A clock that goes on by a second with every look at it. */
function steadyClock(): () => string {
  let second = 0;
  return () => new Date(Date.UTC(2026, 0, 5, 10, 0, second++)).toISOString();
}
