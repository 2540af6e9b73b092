import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, onTestFinished, test } from "vitest";
import { analyse, analysisVersion } from "../../electron/analysis/analyse.ts";
import { AnalysisCancelled, createAnalysisRunner } from "../../electron/jobs/run-analysis.ts";
import { readTranscript } from "../../electron/transcripts/read-transcript.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const demo = join(import.meta.dirname, "..", "..", "fixtures", "demo", "demo.vtt");
const transcript = readTranscript(readFileSync(demo), "demo.vtt");
const work = { transcript, stockSheet: { mileage: "61,000" }, recordedOn: null };

function runner(workerFile?: URL) {
  const made = createAnalysisRunner(workerFile);
  onTestFinished(() => made.close());
  return made;
}

/** A worker of a few lines in the real one's place. */
function workerOf(source: string): URL {
  const path = join(temporaryFolder(), "worker.mjs");
  writeFileSync(path, `import { parentPort } from "node:worker_threads";\n${source}`);
  return pathToFileURL(path);
}

describe("the analysis in its own thread", { timeout: 30_000 }, () => {
  test("gives what the analysis itself gives, byte for byte, and tells every pass", async () => {
    const passes: [string, number, number][] = [];
    const analysis = await runner().run({ ...work, onPass: (...pass) => passes.push(pass) });
    const direct: [string, number, number][] = [];
    expect(JSON.stringify(analysis)).toBe(JSON.stringify(analyse(transcript, work, (...pass) => direct.push(pass))));
    expect(passes).toEqual(direct);
    expect(passes.length).toBeGreaterThan(3);
  });

  test("leaves the window's own thread free", async () => {
    let ticks = 0;
    const ticking = setInterval(() => {
      ticks += 1;
    }, 10);
    await runner().run(work);
    clearInterval(ticking);
    expect(ticks).toBeGreaterThan(5);
  });

  test("stops between passes when it is cancelled, and goes on with the next", async () => {
    const analyses = runner();
    const abort = new AbortController();
    const passes: string[] = [];
    const stopped = analyses.run({
      ...work,
      signal: abort.signal,
      onPass: (pass) => {
        passes.push(pass);
        abort.abort();
      },
    });
    const next = analyses.run(work);
    await expect(stopped).rejects.toBeInstanceOf(AnalysisCancelled);
    expect(passes.length).toBeLessThan(6);
    expect((await next).analysisVersion).toBe(analysisVersion);
  });

  test("is not begun when it is cancelled before", async () => {
    await expect(runner().run({ ...work, signal: AbortSignal.abort() })).rejects.toBeInstanceOf(AnalysisCancelled);
  });

  test("tells its version without any work", async () => {
    const analyses = runner();
    expect([await analyses.version(), await analyses.version()]).toEqual([analysisVersion, analysisVersion]);
  });

  test("a failure in it reaches who asked; the thread goes on", async () => {
    const analyses = runner();
    const broken = { ...work, transcript: { ...transcript, captions: null as never } };
    await expect(analyses.run(broken)).rejects.toThrow(/^The analysis failed: /);
    expect((await analyses.run(work)).analysisVersion).toBe(analysisVersion);
  });

  test("a thread that dies fails all who wait, and the next gets a new one", async () => {
    const analyses = runner(workerOf('parentPort.on("message", () => { throw new Error("died"); });'));
    const both = await Promise.allSettled([analyses.run(work), analyses.run(work)]);
    expect(both.map((each) => each.status === "rejected" && String(each.reason))).toEqual(["Error: died", "Error: died"]);
    await expect(analyses.run(work)).rejects.toThrow("died");
  });

  test("a thread that ends without a word fails who waits", async () => {
    await expect(runner(workerOf('parentPort.on("message", () => process.exit(0));')).run(work)).rejects.toThrow(/ended/);
  });

  test("closing gives up what is waiting", async () => {
    const analyses = createAnalysisRunner(workerOf('parentPort.on("message", () => {});'));
    const waiting = analyses.run(work);
    const outcome = expect(waiting).rejects.toBeInstanceOf(AnalysisCancelled);
    await analyses.close();
    await outcome;
  });
});
