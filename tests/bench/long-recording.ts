import { randomUUID } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openApplication } from "../../electron/services/open-application.ts";
import { type Finding, grades } from "../../shared-types/index.ts";
import { readCases } from "../corpus/read-cases.ts";

export interface LongRecording {
  readonly captions: number;
  readonly marks: number;
}

const stamp = (seconds: number): string => new Date(Math.round(seconds * 1000)).toISOString().slice(11, 23);

/** Words and seconds of a caption as a recogniser cuts them. */
const wordsOfCaption = 8;
const secondsOfCaption = 3;

/** The walks of the corpus one after the other, over and over, cut into short captions, as one WebVTT transcript. */
function transcriptOf(captions: number): string {
  const cases = readCases(fileURLToPath(new URL("../../fixtures/corpus/dev", import.meta.url)));
  const blocks: string[] = [];
  for (let turn = 0; blocks.length < captions; turn++) {
    const words = cases[turn % cases.length]!.transcript.captions.flatMap(({ text }) => text.split(/\s+/));
    for (let at = 0; at < words.length && blocks.length < captions; at += wordsOfCaption) {
      const start = blocks.length * secondsOfCaption;
      blocks.push(`${stamp(start)} --> ${stamp(start + secondsOfCaption)}\n${words.slice(at, at + wordsOfCaption).join(" ")}`);
    }
  }
  return `WEBVTT\n\n${blocks.join("\n\n")}\n`;
}

/** A new library with one recording of so many captions and findings, analysed as any other. Without a video: none is that long. */
export async function makeLongRecording(libraryFile: string, { captions, marks }: LongRecording): Promise<string> {
  const application = openApplication({ host: { name: "browser", version: "0.0.0", reveal: null }, libraryFile });
  const { handlers, parts } = application;
  const file = join(libraryFile, "..", "long.vtt");
  writeFileSync(file, transcriptOf(captions));
  const { id, duration } = await handlers["recording.import"]({
    transcript: parts.files.offerPath(file).id,
    video: null,
    stockSheet: null,
    title: "A long day on the forecourt",
    stockNumber: "LD-0001",
    vehicle: { name: "Ossler Pathmark", year: 1988, bodyStyle: "estate", drive: "left-hand" },
  });
  await handlers["settings.set"]({ initials: "BN" });
  for (let mark = 0; mark < marks; mark++) {
    const start = (mark * duration) / marks;
    const finding: Finding = {
      id: randomUUID(),
      start,
      end: start + 2,
      zone: "rear",
      component: "body",
      part: null,
      position: "rear",
      seen: `stone chip ${mark + 1}`,
      grade: grades[mark % grades.length]!,
      note: "",
      stillAt: null,
      proposalKey: null,
      initials: "BN",
    };
    parts.library.findings.put(id, finding);
  }
  const detail = await handlers["recording.get"]({ id });
  if (detail.captions.length !== captions || detail.findings.length !== marks)
    throw new Error(`The library holds ${detail.captions.length} captions and ${detail.findings.length} findings.`);
  await application.close();
  return id;
}
