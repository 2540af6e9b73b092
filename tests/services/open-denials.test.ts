import { expect, test } from "vitest";
import { sampleAnalysis } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const denial = (id: string, claims: string[]) => ({
  id,
  key: id,
  field: "tires",
  sheetValue: "205/70R14",
  claims,
  why: "The sheet says so.",
});
const ruling = { conflictKey: "measure/rear tire size", reason: "Read on the tire.", rightWords: null, initials: "AB" };

test("a denial waits until rulings have taken every claim out that it denies", async () => {
  const denials = [denial("d1", ["c1"]), denial("d2", ["c1", "c2"]), denial("d3", ["c4"])];
  const application = sampleApplication({ answer: () => sampleAnalysis({ denials }) });
  const { id: recordingId, counts } = await importSample(application, application);
  const { handlers } = application;
  const open = async () => (await handlers["recording.list"]({}))[0]?.counts.openDenials;
  expect([counts.openDenials, await open()]).toEqual([3, 3]);
  await handlers["conflict.rule"]({ ...ruling, recordingId, decision: "side-stands", side: 1 });
  expect(await open()).toBe(2);
  await handlers["edit.undo"]({ recordingId, initials: "AB" });
  expect(await open()).toBe(3);
  await handlers["conflict.rule"]({ ...ruling, recordingId, decision: "both-hold", side: null });
  expect(await open()).toBe(3);
});

test("without a denial nothing waits", async () => {
  const application = sampleApplication();
  expect((await importSample(application, application)).counts.openDenials).toBe(0);
});
