import fastCheck from "fast-check";
import { describe, expect, test } from "vitest";
import { effectiveLap } from "../../electron/services/effective-lap.ts";
import { cutOut, paintOver } from "../../electron/services/span-algebra.ts";
import { type LapSpan, type ZoneSpan, zoneAt, zoneNames } from "../../shared-types/index.ts";
import { sampleAnalysis } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const initials = "AB";

function counter(): () => string {
  let next = 0;
  return () => `new-${next++}`;
}

function span(id: string, start: number, end: number, rest: Partial<ZoneSpan> = {}): ZoneSpan {
  return { id, zone: "rear", start, end, title: null, initials, ...rest };
}

describe("painting over spans", () => {
  test.for([
    {
      why: "beside",
      at: [20, 30],
      left: [
        ["a", 0, 10],
        ["new", 20, 30],
      ],
    },
    {
      why: "touching",
      at: [10, 30],
      left: [
        ["a", 0, 10],
        ["new", 10, 30],
      ],
    },
    {
      why: "over its end",
      at: [5, 30],
      left: [
        ["a", 0, 5],
        ["new", 5, 30],
      ],
    },
    {
      why: "over its start",
      at: [0, 5],
      left: [
        ["new", 0, 5],
        ["a", 5, 10],
      ],
    },
    { why: "over all of it", at: [0, 10], left: [["new", 0, 10]] },
    {
      why: "in its middle, which leaves two pieces",
      at: [4, 6],
      left: [
        ["a", 0, 4],
        ["new", 4, 6],
        ["new-0", 6, 10],
      ],
    },
  ] as const)("$why", ({ at: [start, end], left }) => {
    expect(paintOver([span("a", 0, 10)], span("new", start, end), counter()).map(({ id, start, end }) => [id, start, end])).toEqual(left);
  });

  test("whatever is painted, spans never overlap, the new one is whole, and outside it nothing changes", () => {
    const brush = fastCheck
      .tuple(fastCheck.nat(100), fastCheck.integer({ min: 1, max: 40 }))
      .map(([start, length]) => ({ start, end: start + length }));
    fastCheck.assert(
      fastCheck.property(fastCheck.array(brush, { maxLength: 12 }), brush, (before, last) => {
        const newId = counter();
        const spans = before.reduce<ZoneSpan[]>(
          (painted, { start, end }, position) => paintOver(painted, span(`p${position}`, start, end), newId),
          [],
        );
        const after = paintOver(spans, span("last", last.start, last.end), newId);
        for (const [position, each] of after.entries()) {
          expect(each.start).toBeLessThan(each.end);
          expect(each.start).toBeGreaterThanOrEqual(after[position - 1]?.end ?? 0);
        }
        expect(after.find(({ id }) => id === "last")).toMatchObject(last);
        expect(new Set(after.map(({ id }) => id)).size).toBe(after.length);
        const covered = (list: readonly ZoneSpan[], at: number) => list.some(({ start, end }) => start <= at && at < end);
        for (let at = 0.5; at < 150; at += 1) {
          if (at < last.start || at >= last.end) expect(covered(after, at)).toBe(covered(spans, at));
        }
      }),
    );
  });

  test("cutting out nothing changes nothing", () => {
    const spans = [span("a", 0, 10), span("b", 10, 20)];
    expect(cutOut(spans, 10, 10, counter())).toEqual(spans);
  });
});

describe("the effective lap", () => {
  const { zones, chapters } = sampleAnalysis();

  function expectCover(lap: readonly LapSpan[], duration: number): void {
    expect(lap[0]?.start).toBe(0);
    expect(lap.at(-1)?.end).toBe(duration);
    for (const [position, each] of lap.entries()) {
      expect(each.start).toBeLessThan(each.end);
      if (position > 0) expect(each.start).toBe(lap[position - 1]?.end);
    }
  }

  test("covers the recording without gap or overlap, whatever people drew and however long the video is", () => {
    const drawn = fastCheck.uniqueArray(fastCheck.integer({ min: 0, max: 200 }), { maxLength: 12 }).map((cuts) => {
      const sorted = cuts.toSorted((a, b) => a - b);
      return sorted.flatMap((start, position) =>
        position % 2 === 0 && sorted[position + 1] !== undefined ? [span(`s${position}`, start, sorted[position + 1] as number)] : [],
      );
    });
    fastCheck.assert(
      fastCheck.property(drawn, fastCheck.integer({ min: 1, max: 250 }), fastCheck.boolean(), (spans, duration, analysed) => {
        expectCover(effectiveLap(duration, spans, analysed ? { zones, chapters } : { zones: [], chapters: [] }), duration);
      }),
    );
  });

  test("a recording of no length has none", () => {
    expect(effectiveLap(0, [], { zones, chapters })).toEqual([]);
  });

  test("titles: the person's, else the zone's own; a proposal takes its chapter's", () => {
    const lap = effectiveLap(
      120,
      [span("5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e01", 0, 10, { zone: "roof" }), span("b", 10, 20, { title: "Tail" })],
      { zones, chapters },
    );
    expect(lap.map(({ title }) => title)).toEqual(["Roof", "Tail", "Front", "Rear", "Underneath"]);
  });

  test("a moment on a border belongs to the later zone", () => {
    const lap = effectiveLap(120, [], { zones, chapters });
    expect([zoneAt(lap, 29.99), zoneAt(lap, 30), zoneAt(lap, 120)]).toEqual(["front", "rear", "underside"]);
  });
});

describe("borders on the lap strip", () => {
  async function ground() {
    const application = sampleApplication();
    const { id } = await importSample(application, application);
    return { ...application, recordingId: id };
  }
  const shape = (lap: readonly LapSpan[]) => lap.map(({ zone, start, zoneSpanId }) => `${zone}@${start}${zoneSpanId ? "*" : ""}`).join(" ");

  test("between proposals, moving makes both the person's", async () => {
    const { handlers, recordingId } = await ground();
    const detail = await handlers["zone.moveBorder"]({ recordingId, from: 30, to: 25, initials });
    expect(shape(detail.lap)).toBe("opening@0 front@10* rear@25* underside@90");
  });

  test("beside a person's span, only that one changes and the proposal fills what is left", async () => {
    const { handlers, recordingId } = await ground();
    await handlers["zone.paint"]({ recordingId, start: 40, end: 60, zone: "cargo", title: null, initials });
    const shrunk = await handlers["zone.moveBorder"]({ recordingId, from: 60, to: 50, initials });
    expect(shape(shrunk.lap)).toBe("opening@0 front@10 rear@30 cargo@40* rear@50 underside@90");
    const grown = await handlers["zone.moveBorder"]({ recordingId, from: 40, to: 35, initials });
    expect(shape(grown.lap)).toBe("opening@0 front@10 rear@30 cargo@35* rear@50 underside@90");
  });

  test.for([10, 5, 90, 95])("a border cannot pass its neighbours: to %d", async (to) => {
    const { handlers, recordingId } = await ground();
    expect(() => handlers["zone.moveBorder"]({ recordingId, from: 30, to, initials })).toThrow(/can move between 0:10 and 1:30/);
  });

  test("a border is found by a time that a player rounds", async () => {
    const { handlers, recordingId } = await ground();
    const detail = await handlers["zone.moveBorder"]({ recordingId, from: 30.004, to: 25, initials });
    expect(detail.lap[2]?.start).toBe(25);
    expect(() => handlers["zone.moveBorder"]({ recordingId, from: 30.02, to: 26, initials })).toThrow(
      /Borders are at 10.00, 25.00, 90.00 s/,
    );
  });

  test("joining keeps the earlier zone and title; splitting gives the later piece no title", async () => {
    const { handlers, recordingId } = await ground();
    await handlers["zone.paint"]({ recordingId, start: 30, end: 60, zone: "cargo", title: "In the back", initials });
    const joined = await handlers["zone.join"]({ recordingId, border: 60, initials });
    expect(joined.lap[2]).toMatchObject({ zone: "cargo", title: "In the back", start: 30, end: 90 });
    const split = await handlers["zone.split"]({ recordingId, at: 70, initials });
    expect(split.lap.slice(2, 4).map(({ title, start }) => [title, start])).toEqual([
      ["In the back", 30],
      ["Load space", 70],
    ]);
  });

  test("accepting a stretch takes its proposals, cut to it, and leaves what people drew", async () => {
    const { handlers, recordingId } = await ground();
    const painted = await handlers["zone.paint"]({ recordingId, start: 40, end: 60, zone: "cargo", title: null, initials: "CD" });
    const accepted = await handlers["zone.accept"]({ recordingId, start: 20, end: 70, initials });
    expect(shape(accepted.lap)).toBe("opening@0 front@10 front@20* rear@30* cargo@40* rear@60* rear@70 underside@90");
    expect(accepted.lap[4]?.zoneSpanId).toBe(painted.lap[3]?.zoneSpanId);
    expect(accepted.undoLabel).toBe("accept 3 zones");
  });

  test("accepting where nothing is proposed is no edit", async () => {
    const { handlers, recordingId } = await ground();
    await handlers["zone.paint"]({ recordingId, start: 40, end: 60, zone: "cargo", title: null, initials });
    const detail = await handlers["zone.accept"]({ recordingId, start: 45, end: 50, initials });
    expect(detail.undoLabel).toBe("mark Load space 0:40 to 1:00");
  });

  test("a finding is proposed, and accepted, in the zone that a person has marked at its moment", async () => {
    const { handlers, recordingId } = await ground();
    const marked = await handlers["zone.paint"]({ recordingId, start: 90, end: 100, zone: "cabin", title: null, initials });
    expect(marked.findingProposals.map(({ component, zone }) => [component, zone])).toEqual([
      ["glass", "front"],
      ["floors", "cabin"],
    ]);
    const key = marked.findingProposals[1]?.key as string;
    const accepted = await handlers["finding.accept"]({ recordingId, proposalKeys: [key], initials });
    expect(accepted.findings).toEqual([expect.objectContaining({ component: "floors", zone: "cabin", proposalKey: key })]);
  });

  test("a claim is filed where a person says the camera was, at every desk and in the search, and back again when that is undone", async () => {
    const { handlers, parts, recordingId } = await ground();
    const zonesOf = async () => {
      const { analysis } = await handlers["recording.get"]({ id: recordingId });
      const hits = await handlers["search.find"]({ query: "rear tire size", limit: 5 });
      const index = await handlers["export.preview"]({ recordingId, format: "index-json", granularity: "zones" });
      const at30 = <Thing extends { start: number }>(things: readonly Thing[]) => things.find(({ start }) => start === 30);
      return [at30(analysis.claims)?.zone, at30(hits)?.zone, at30<{ start: number; zone: string }>(JSON.parse(index.text).claims)?.zone];
    };
    const before = await zonesOf();
    await handlers["zone.paint"]({ recordingId, start: 25, end: 40, zone: "passenger-side", title: null, initials });
    expect(await zonesOf()).toEqual(["passenger-side", "passenger-side", "passenger-side"]);
    expect((await handlers["search.find"]({ query: "passenger side tire", limit: 5 }))[0]).toMatchObject({ kind: "claim", start: 30 });
    // What the analysis said is kept as it was.
    expect(parts.library.proposals.claims(recordingId).find(({ start }) => start === 30)?.zone).toBe(before[0]);
    await handlers["edit.undo"]({ recordingId, initials });
    expect(await zonesOf()).toEqual(before);
  });

  test("an accepted zone keeps the title that was shown", async () => {
    const application = sampleApplication({
      answer: () => sampleAnalysis({ chapters: [{ start: 90, end: 120, zone: "underside", title: "On the lift" }] }),
    });
    const { id: recordingId } = await importSample(application, application);
    const { handlers, parts } = application;
    const { lap } = await handlers["recording.get"]({ id: recordingId });
    const accepted = await handlers["zone.accept"]({ recordingId, start: 0, end: 120, initials });
    expect(accepted.lap.map(({ title }) => title)).toEqual(lap.map(({ title }) => title));
    // A title that is the zone's own label follows the label.
    expect(parts.library.zoneSpans.of(recordingId).map(({ title }) => title)).toEqual([null, null, null, "On the lift"]);
  });

  test("every zone of the list can be marked", async () => {
    const { handlers, recordingId } = await ground();
    for (const zone of zoneNames) {
      const detail = await handlers["zone.paint"]({ recordingId, start: 1, end: 2, zone, title: null, initials });
      expect(detail.lap[1]?.zone).toBe(zone);
    }
  });
});
