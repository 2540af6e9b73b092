import { expect, test } from "vitest";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const ruling = {
  conflictKey: "measure/rear tire size",
  reason: "Read on the tire.",
  rightWords: null,
  initials: "AB",
  decision: "side-stands",
  side: 1,
} as const;

test("a publication keeps who, when and how many conflicts were open, each one for good", async () => {
  const application = sampleApplication();
  const { handlers } = application;
  const { id: recordingId, published } = await importSample(application, application);
  expect(published).toBeNull();
  const open = (await handlers["recording.get"]({ id: recordingId })).openConflictKeys;
  expect(open).toHaveLength(1);
  await handlers["recording.publish"]({ recordingId, openConflictKeys: open, initials: "RT" });
  await handlers["conflict.rule"]({ recordingId, ...ruling });
  const { publications, undoLabel } = await handlers["recording.publish"]({ recordingId, openConflictKeys: [], initials: "MK" });
  expect(publications.map(({ initials, openConflicts }) => [initials, openConflicts])).toEqual([
    ["RT", 1],
    ["MK", 0],
  ]);
  // What has left cannot be taken back: undo goes on with the ruling.
  expect(undoLabel).toBe("ruling on rear tire size");
  const [row] = await handlers["recording.list"]({});
  expect(row?.published).toEqual(publications[1]);
});

test("nothing is published over the head of whoever was shown other open conflicts", async () => {
  const application = sampleApplication();
  const { handlers } = application;
  const { id: recordingId } = await importSample(application, application);
  const shown = (await handlers["recording.get"]({ id: recordingId })).openConflictKeys;
  await handlers["conflict.rule"]({ recordingId, ...ruling });
  for (const openConflictKeys of [shown, ["measure/front tire size"]])
    expect(() => handlers["recording.publish"]({ recordingId, openConflictKeys, initials: "RT" })).toThrow(/Nothing was published/);
  expect((await handlers["recording.get"]({ id: recordingId })).publications).toEqual([]);
});
