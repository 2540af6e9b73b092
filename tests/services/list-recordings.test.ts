import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openLibrary } from "../../electron/library/open-library.ts";
import { recordingSummary } from "../../electron/services/recording-detail.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

/** What the list says, and what it would say if nothing had been kept. */
async function bothLists(application: ReturnType<typeof sampleApplication>) {
  const { parts, handlers } = application;
  const fresh = parts.library.recordings.all().map((row) => recordingSummary(parts, row));
  return { told: await handlers["recording.list"]({}), fresh };
}

test("the list keeps what it has counted, and tells every change of it", async () => {
  const application = sampleApplication();
  const { handlers } = application;
  const { id } = await importSample(application, application);
  await importSample(application, { ...application, again: true, stockNumber: "FK-2" });
  const initials = "AB";
  const detail = await handlers["recording.get"]({ id });
  const keys = detail.findingProposals.map(({ key }) => key);
  const [conflictKey = ""] = detail.openConflictKeys;
  const ruling = { decision: "side-stands", side: 0, reason: "Read on the tire.", rightWords: null, initials } as const;
  const steps = [
    () => handlers["finding.accept"]({ recordingId: id, proposalKeys: keys, initials }),
    () => handlers["zone.accept"]({ recordingId: id, start: 0, end: 60, initials }),
    () => handlers["conflict.rule"]({ recordingId: id, conflictKey, ...ruling }),
    () => handlers["edit.undo"]({ recordingId: id, initials }),
    () => handlers["edit.redo"]({ recordingId: id, initials }),
    () => handlers["recording.analyse"]({ id }),
    () => handlers["recording.measured"]({ id, duration: 400 }),
    () => handlers["recording.describe"]({ id, title: "Renamed", stockNumber: "X", vehicle: detail.summary.vehicle }),
    () => handlers["recording.remove"]({ id }),
  ];
  let before = JSON.stringify((await bothLists(application)).told);
  for (const [index, step] of steps.entries()) {
    await step();
    const { told, fresh } = await bothLists(application);
    expect(told, `after step ${index + 1}`).toEqual(fresh);
    if (index !== 5) expect(JSON.stringify(told), `step ${index + 1} changes the list`).not.toBe(before);
    before = JSON.stringify(told);
  }
});

test("a video that goes without a word is told as gone", async () => {
  const application = sampleApplication();
  const { id } = await importSample(application, application);
  const path = join(application.folder, "late.mp4");
  writeFileSync(path, Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from("ftypisom")]));
  const video = application.parts.files.offerPath(path).id;
  await application.handlers["video.take"]({ recordingId: id, video, replace: false });
  expect(await application.handlers["recording.list"]({})).toMatchObject([{ hasVideo: true, videoFound: true }]);
  rmSync(path);
  expect(await application.handlers["recording.list"]({})).toMatchObject([{ hasVideo: true, videoFound: false }]);
});

test("what another Roundwalk writes into the same file is seen", async () => {
  const application = sampleApplication();
  const { id } = await importSample(application, application);
  await application.handlers["recording.list"]({});
  const other = openLibrary(application.parts.library.file);
  other.transaction(() => other.recordings.setDuration(id, 777));
  other.close();
  expect(await application.handlers["recording.list"]({})).toMatchObject([{ duration: 777 }]);
});
