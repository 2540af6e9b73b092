import { join } from "node:path";
import fastCheck from "fast-check";
import { describe, expect, test } from "vitest";
import type { RecordingDetail } from "../../shared-types/index.ts";
import { sampleAnalysis } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const initials = "AB";

/** What an edit may change; undone, all of it must be as it was. */
function peoplesWork({ lap, findings, rulings, openConflictKeys, findingProposals }: RecordingDetail) {
  return { lap, findings, standing: rulings.filter(({ supersededBy }) => supersededBy === null), openConflictKeys, findingProposals };
}

type Application = ReturnType<typeof sampleApplication>;

/** Edits of every kind, by numbers: the same numbers make the same edit, refusals included. */
async function makeEdit({ handlers }: Application, recordingId: string, [kind, a, b]: readonly [number, number, number]): Promise<void> {
  const detail = await handlers["recording.get"]({ id: recordingId });
  const borders = detail.lap.slice(1).map(({ start }) => start);
  const border = borders[a % Math.max(1, borders.length)] ?? 0;
  const own = detail.lap.filter(({ zoneSpanId }) => zoneSpanId !== null);
  const ownId = own[a % Math.max(1, own.length)]?.zoneSpanId ?? recordingId;
  const finding = detail.findings[a % Math.max(1, detail.findings.length)];
  const input = {
    start: a,
    end: a + 2,
    zone: "rear",
    component: "body",
    position: null,
    seen: `seen ${b}`,
    grade: "worn",
    note: "",
    initials,
  } as const;
  const edits = [
    () => handlers["zone.paint"]({ recordingId, start: a, end: a + b, zone: "roof", title: null, initials }),
    () => handlers["zone.accept"]({ recordingId, start: a, end: a + b, initials }),
    () => handlers["zone.moveBorder"]({ recordingId, from: border, to: a, initials }),
    () => handlers["zone.split"]({ recordingId, at: a, initials }),
    () => handlers["zone.join"]({ recordingId, border, initials }),
    () => handlers["zone.retitle"]({ recordingId, zoneSpanId: ownId, title: `Title ${b}`, initials }),
    () => handlers["zone.remove"]({ recordingId, zoneSpanId: ownId, initials }),
    () => handlers["finding.add"]({ recordingId, ...input }),
    () => handlers["finding.change"]({ recordingId, ...input, id: finding?.id ?? recordingId }),
    () => handlers["finding.remove"]({ recordingId, id: finding?.id ?? recordingId, initials }),
    () => handlers["finding.accept"]({ recordingId, proposalKeys: detail.findingProposals.slice(0, 1).map(({ key }) => key), initials }),
    () =>
      handlers["conflict.rule"]({
        recordingId,
        conflictKey: "measure/rear tire size",
        decision: b % 2 === 0 ? "side-stands" : "look-at-vehicle",
        side: a % 2,
        reason: `reason ${a}`,
        rightWords: null,
        initials,
      }),
  ];
  try {
    await edits[kind % edits.length]?.();
  } catch (failure) {
    // An edit that does not fit is refused and must leave nothing behind; anything else is a failure of the test.
    if (!(failure instanceof Error && "problem" in failure)) throw failure;
  }
}

describe("undo and redo", () => {
  test("any run of edits is undone step by step to the start and redone to the end", { timeout: 60_000 }, async () => {
    const step = fastCheck.tuple(fastCheck.nat(11), fastCheck.nat(110), fastCheck.integer({ min: 1, max: 60 }));
    await fastCheck.assert(
      fastCheck.asyncProperty(fastCheck.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
        const application = sampleApplication();
        const { id: recordingId } = await importSample(application, application);
        const { handlers } = application;
        const states = [peoplesWork(await handlers["recording.get"]({ id: recordingId }))];
        for (const each of steps) {
          const before = application.parts.library.edits.of(recordingId).length;
          await makeEdit(application, recordingId, each);
          const now = peoplesWork(await handlers["recording.get"]({ id: recordingId }));
          if (application.parts.library.edits.of(recordingId).length > before) states.push(now);
          else expect(now).toEqual(states.at(-1));
        }
        for (const state of states.slice(0, -1).reverse())
          expect(peoplesWork(await handlers["edit.undo"]({ recordingId, initials }))).toEqual(state);
        expect(() => handlers["edit.undo"]({ recordingId, initials })).toThrow(/Nothing has been changed/);
        for (const state of states.slice(1)) expect(peoplesWork(await handlers["edit.redo"]({ recordingId, initials }))).toEqual(state);
        expect(() => handlers["edit.redo"]({ recordingId, initials })).toThrow(/Nothing has been undone/);
        expect(application.parts.library.integrity()).toBe("ok");
        await application.close();
      }),
      { numRuns: 15 },
    );
  });

  test("survive a restart, and analysing again in between", async () => {
    const folder = temporaryFolder();
    const first = sampleApplication({ folder });
    const { id: recordingId } = await importSample(first, { folder });
    const painted = await first.handlers["zone.paint"]({ recordingId, start: 20, end: 40, zone: "roof", title: null, initials });
    const findings = await first.handlers["finding.accept"]({
      recordingId,
      proposalKeys: painted.findingProposals.map(({ key }) => key),
      initials,
    });
    await first.handlers["edit.undo"]({ recordingId, initials });
    await first.close();

    const second = sampleApplication({ folder, answer: () => sampleAnalysis({ analysisVersion: 8 }) });
    await second.handlers["recording.analyse"]({ id: recordingId });
    const present = await second.handlers["recording.get"]({ id: recordingId });
    expect([present.undoLabel, present.redoLabel]).toEqual(["mark Roof 0:20 to 0:40", "accept 2 findings"]);
    expect(present.analysis.analysisVersion).toBe(8);
    const redone = await second.handlers["edit.redo"]({ recordingId, initials });
    expect(redone.findings).toEqual(findings.findings);
    await second.handlers["edit.undo"]({ recordingId, initials });
    const start = await second.handlers["edit.undo"]({ recordingId, initials });
    expect(start.lap.every(({ zoneSpanId }) => zoneSpanId === null)).toBe(true);
    expect(second.parts.library.file).toBe(join(folder, "library.sqlite"));
  });

  test("a new edit ends what could be redone; the history keeps it", async () => {
    const application = sampleApplication();
    const { handlers, parts } = application;
    const { id: recordingId } = await importSample(application, application);
    await handlers["zone.paint"]({ recordingId, start: 1, end: 2, zone: "roof", title: null, initials });
    await handlers["edit.undo"]({ recordingId, initials: "CD" });
    const detail = await handlers["zone.paint"]({ recordingId, start: 3, end: 4, zone: "front", title: null, initials });
    expect(detail.redoLabel).toBeNull();
    expect(parts.library.edits.of(recordingId).map(({ state, label }) => `${state}: ${label}`)).toEqual([
      "dropped: mark Roof 0:01 to 0:02",
      "done: mark Front 0:03 to 0:04",
    ]);
  });

  test("each recording has its own", async () => {
    const application = sampleApplication();
    const { handlers } = application;
    const first = await importSample(application, application);
    const second = await importSample(application, { ...application, again: true });
    await handlers["zone.paint"]({ recordingId: first.id, start: 1, end: 2, zone: "roof", title: null, initials });
    expect(() => handlers["edit.undo"]({ recordingId: second.id, initials })).toThrow(/Nothing has been changed/);
  });
});

describe("rulings under undo", () => {
  test("stay on record: undone, each counts as superseded by the one that stands again, or by itself", async () => {
    const application = sampleApplication();
    const { handlers } = application;
    const { id: recordingId } = await importSample(application, application);
    const rule = (side: number) =>
      handlers["conflict.rule"]({
        recordingId,
        conflictKey: "measure/rear tire size",
        decision: "side-stands",
        side,
        reason: `side ${side}`,
        rightWords: null,
        initials,
      });
    const short = ({ rulings, openConflictKeys }: RecordingDetail) => ({
      rulings: rulings.map(({ reason, supersededBy }) => [reason, rulings.find(({ id }) => id === supersededBy)?.reason ?? null]),
      open: openConflictKeys.length,
    });
    expect(short(await rule(0))).toEqual({ rulings: [["side 0", null]], open: 0 });
    expect(short(await rule(1))).toEqual({
      rulings: [
        ["side 0", "side 1"],
        ["side 1", null],
      ],
      open: 0,
    });
    expect(short(await handlers["edit.undo"]({ recordingId, initials }))).toEqual({
      rulings: [
        ["side 0", null],
        ["side 1", "side 0"],
      ],
      open: 0,
    });
    expect(short(await handlers["edit.undo"]({ recordingId, initials }))).toEqual({
      rulings: [
        ["side 0", "side 0"],
        ["side 1", "side 0"],
      ],
      open: 1,
    });
    expect(short(await handlers["edit.redo"]({ recordingId, initials }))).toEqual({
      rulings: [
        ["side 0", null],
        ["side 1", "side 0"],
      ],
      open: 0,
    });
    expect(short(await handlers["edit.redo"]({ recordingId, initials }))).toEqual({
      rulings: [
        ["side 0", "side 1"],
        ["side 1", null],
      ],
      open: 0,
    });
  });
});
