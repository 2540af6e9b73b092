import { expect, test } from "vitest";
import { sampleQuestion } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const question = { about: "question", key: sampleQuestion.key } as const;
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
  await handlers["recording.publish"]({ recordingId, openConflictKeys: open, openMatters: [question], initials: "RT" });
  await handlers["conflict.rule"]({ recordingId, ...ruling });
  const { publications, undoLabel } = await handlers["recording.publish"]({
    recordingId,
    openConflictKeys: [],
    openMatters: [question],
    initials: "MK",
  });
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
    expect(() => handlers["recording.publish"]({ recordingId, openConflictKeys, openMatters: [question], initials: "RT" })).toThrow(
      /Nothing was published/,
    );
  expect((await handlers["recording.get"]({ id: recordingId })).publications).toEqual([]);
});

test("nor over the head of whoever was not shown what else nobody has dealt with; and it is kept by name", async () => {
  const application = sampleApplication();
  const { handlers } = application;
  const { id: recordingId } = await importSample(application, application);
  const { openConflictKeys } = await handlers["recording.get"]({ id: recordingId });
  const told = { recordingId, openConflictKeys, initials: "RT" };
  expect(() => handlers["recording.publish"]({ ...told, openMatters: [] })).toThrow(/Nothing was published/);
  await handlers["recording.publish"]({ ...told, openMatters: [question] });
  await handlers["matter.note"]({ recordingId, matters: [question], state: "seen", reason: "It has none.", initials: "RT" });
  expect(() => handlers["recording.publish"]({ ...told, openMatters: [question] })).toThrow(/Nothing was published/);
  const { publications } = await handlers["recording.publish"]({ ...told, openMatters: [] });
  expect(publications.map(({ openMatters }) => openMatters)).toEqual([[sampleQuestion.question], []]);
});
