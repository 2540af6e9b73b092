import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { startState, startTold } from "../../../electron/services/start/first-minutes.ts";
import { compareVersions, news, newsSince } from "../../../shared-types/index.ts";
import { sampleAnalysis } from "../../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../../support/builders/sample-application.ts";

describe("the first minutes", () => {
  test("are offered in a new library, with no news, and never again once they were ended", () => {
    const { parts } = sampleApplication();
    expect(startState(parts, "0.1.0")).toMatchObject({ introduce: true, demoId: null, news: [] });
    startTold(parts, "0.1.0", "first-minutes");
    expect(startState(parts, "0.1.0").introduce).toBe(false);
  });

  test("are over with the first recording of one's own", async () => {
    const application = sampleApplication();
    expect(startState(application.parts, "0.1.0").introduce).toBe(true);
    await importSample(application, application);
    expect(startState(application.parts, "0.1.0").introduce).toBe(false);
  });

  test("know the demo while the library has it", async () => {
    const application = sampleApplication();
    const { id } = await importSample(application, application);
    const { library } = application.parts;
    library.transaction(() => library.settings.put("demo", id));
    expect(startState(application.parts, "0.1.0")).toMatchObject({ introduce: true, demoId: id });
    await application.handlers["recording.remove"]({ id });
    expect(startState(application.parts, "0.1.0").demoId).toBeNull();
  });
});

test("while the demo comes in, it counts as no recording of one's own", async () => {
  const seen: ReturnType<typeof startState>[] = [];
  const application: ReturnType<typeof sampleApplication> = sampleApplication({
    answer: () => {
      seen.push(startState(application.parts, "0.1.0"));
      return sampleAnalysis();
    },
  });
  const told: unknown[] = [];
  application.parts.events.subscribe(({ name }) => {
    if (name === "library.changed") told.push(startState(application.parts, "0.1.0").demoId);
  });
  await application.start(join(import.meta.dirname, "../../../fixtures/demo"));
  expect(seen[0]).toMatchObject({ introduce: true, news: [] });
  const [demo] = await application.handlers["recording.list"]({});
  // The page is told once the demo is known as such.
  expect(told.at(-1)).toBe(demo?.id);
});

describe("what is new", () => {
  const list = [
    { version: "0.10.0", points: ["ten"] },
    { version: "0.9.0", points: ["nine"] },
    { version: "0.2.0", points: ["two"] },
  ];
  test.each([
    { told: "0.2.0", running: "0.10.0", expected: ["0.10.0", "0.9.0"] },
    { told: "0.9.0", running: "0.9.3", expected: [] },
    { told: "0.10.0", running: "0.9.0", expected: [] },
    { told: "0.0.0", running: "0.9.0", expected: ["0.9.0", "0.2.0"] },
  ])("after $told, $running tells $expected", ({ told, running, expected }) => {
    expect(newsSince(told, running, list).map(({ version }) => version)).toEqual(expected);
  });

  test("is told once for each version, to a library that was worked in before", async () => {
    const application = sampleApplication();
    const { parts } = application;
    await importSample(application, application);
    const newest = news[0]!.version;
    expect(startState(parts, newest).news[0]).toEqual(news[0]);
    startTold(parts, newest, "news");
    expect(startState(parts, newest).news).toEqual([]);
  });

  test("is written for the version in package.json, newest first", () => {
    const { version } = JSON.parse(readFileSync(join(import.meta.dirname, "../../../package.json"), "utf8")) as { version: string };
    expect(news[0]?.version).toBe(version);
    expect([...news].sort((one, other) => compareVersions(other.version, one.version))).toEqual(news);
    expect(news.every(({ points }) => points.length > 0)).toBe(true);
  });
});
