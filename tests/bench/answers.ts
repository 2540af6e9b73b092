// node tests/bench/answers.ts [RECORDINGS]: how fast the Call desk is answered over a large library, and how much of that is the library's size.
// The walks of the corpus come in over and over, each with a stock number and a name of its own.
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { analyse, analysisVersion } from "../../electron/analysis/analyse.ts";
import { openApplication } from "../../electron/services/open-application.ts";
import type { Analysis } from "../../shared-types/index.ts";

const recordings = Number(process.argv[2] ?? 300);
const corpus = fileURLToPath(new URL("../../fixtures/corpus", import.meta.url));
const transcripts = ["dev", "own"].flatMap((folder) =>
  readdirSync(join(corpus, folder))
    .filter((name) => /\.(?:txt|vtt|srt)$/.test(name))
    .map((name) => join(corpus, folder, name)),
);
const makers = ["Havelin", "Ossler", "Fallow", "Brannock", "Tessaly", "Korrin"];
const models = ["Tarrow", "Pathmark", "Kestrel", "Meridian", "Lodestar"];

const asked = [
  ["a zone", "underside"],
  ["a part", "rear tires"],
  ["a British word", "boot floor"],
  ["a value", "4.11"],
  ["a question", "which ones have a spare tyre"],
  ["a stock number and a zone", "LK-0123 underside"],
  ["a vehicle and a part", "kestrel gearbox"],
  ["one letter", "r"],
  ["a common word", "the car"],
  ["a slip", "tranmission"],
  ["two slips", "kestral chasis"],
  ["a slip being typed", "tranmis"],
  ["nothing there", "xyzzy plugh"],
] as const;

const folder = mkdtempSync(join(tmpdir(), "roundwalk-answers-"));
const known = new Map<string, Analysis>();
const application = openApplication({
  host: { name: "browser", version: "0.0.0", reveal: null },
  libraryFile: join(folder, "library.sqlite"),
  log: () => {},
  analysis: {
    // The same words give the same analysis, which is not what is measured here.
    run: async ({ transcript, stockSheet, recordedOn }) => {
      const words = transcript.captions.map(({ text }) => text).join("\n");
      const analysis = known.get(words) ?? analyse(transcript, { stockSheet, recordedOn });
      known.set(words, analysis);
      return analysis;
    },
    version: async () => analysisVersion,
    close: async () => {},
  },
});
const { handlers, parts } = application;
try {
  const ids: string[] = [];
  const importing = performance.now();
  for (let turn = 0; turn < recordings; turn++) {
    const vehicle = {
      name: `${makers[turn % makers.length]} ${models[turn % models.length]}`,
      year: 1955 + (turn % 60),
      bodyStyle: "coupe",
      drive: "left-hand",
    } as const;
    const { id } = await handlers["recording.import"]({
      transcript: parts.files.offerPath(transcripts[turn % transcripts.length] as string).id,
      video: null,
      stockSheet: null,
      title: `${vehicle.year} ${vehicle.name}, walk round`,
      stockNumber: `LK-${String(turn).padStart(4, "0")}`,
      vehicle,
      again: true,
    });
    ids.push(id);
  }
  console.log(
    `${recordings} recordings of ${transcripts.length} walks, imported in ${((performance.now() - importing) / 1000).toFixed(1)} s`,
  );
  console.log("asked                        words                          first ms   median ms   slowest ms   hits");
  const line = async (what: string, words: string, ask: () => Promise<number> | number) => {
    const times: number[] = [];
    let hits = 0;
    for (let run = 0; run < 15; run++) {
      const start = performance.now();
      hits = await ask();
      times.push(performance.now() - start);
    }
    const [first = 0, ...later] = times;
    const ordered = later.toSorted((a, b) => a - b);
    const cells = [first, ordered[Math.floor(ordered.length / 2)] ?? 0, ordered.at(-1) ?? 0]
      .map((ms) => ms.toFixed(1).padStart(11))
      .join(" ");
    console.log(`${what.padEnd(28)} ${words.padEnd(28)} ${cells} ${String(hits).padStart(6)}`);
  };
  for (const [what, words] of asked)
    await line(what, words, async () => (await handlers["search.find"]({ query: words, limit: 60 })).length);
  const compared = ids.slice(0, 6);
  await line(
    "six vehicles by a claim",
    "axle ratio",
    async () => (await handlers["search.compare"]({ query: "axle ratio", recordingIds: compared })).subjects.length,
  );
  // What a ruling or an edit costs the next question: all that was kept is read anew.
  await line("after a write", "rear tires", async () => {
    parts.library.transaction(() => parts.library.settings.put("initials", "AB"));
    return (await handlers["search.find"]({ query: "rear tires", limit: 60 })).length;
  });
  await line("a slip after a write", "tranmission", async () => {
    parts.library.transaction(() => parts.library.settings.put("initials", "AB"));
    return (await handlers["search.find"]({ query: "tranmission", limit: 60 })).length;
  });
} finally {
  await application.close();
  rmSync(folder, { recursive: true, force: true });
}
