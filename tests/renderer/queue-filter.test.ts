import { describe, expect, test } from "vitest";
import { checkActionOf, checkShortcuts, filterShortcuts, filterStepOf } from "../../renderer/check/check-shortcuts.ts";
import type { CheckItem } from "../../renderer/check/queue.ts";
import {
  emptyQueueLine,
  filterChoices,
  isShownIn,
  keptBackLine,
  leftByKind,
  shownConflicts,
  shownItems,
  stepped,
  steppedState,
  wholeQueue,
  zonesOf,
} from "../../renderer/check/queue-filter.ts";
import { hashOfPlace, placeOfHash, recordingPlace } from "../../renderer/shared/place.ts";
import { type Conflict, publicationLine } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();
const [tires, axle] = detail.analysis.conflicts as [Conflict, Conflict];
const topics = (filter: Partial<typeof wholeQueue>) => shownConflicts(detail, { ...wholeQueue, ...filter }).map(({ topic }) => topic);

describe("what of the queue is shown", () => {
  test("everything, gravest first, without a filter", () => {
    expect(topics({})).toEqual([tires.topic, axle.topic]);
  });
  test("by state, kind, zone and weight, and by several at once", () => {
    expect(topics({ state: "open" })).toEqual([tires.topic]);
    expect(topics({ state: "settled" })).toEqual([axle.topic]);
    for (const conflict of [tires, axle]) {
      expect(topics({ kind: conflict.kind })).toContain(conflict.topic);
      for (const zone of zonesOf(conflict, detail)) expect(topics({ zone })).toContain(conflict.topic);
    }
    expect(topics({ kind: "hedge" })).toEqual([]);
    expect(topics({ zone: "roof" })).toEqual([]);
    expect(topics({ weight: "serious" })).toEqual([tires.topic]);
    expect(topics({ weight: "serious", state: "settled" })).toEqual([]);
  });
  test("only choices that show something are offered", () => {
    const { kind, zone, weight } = filterChoices(detail);
    for (const one of kind) expect(topics({ kind: one }).length).toBeGreaterThan(0);
    for (const one of zone) expect(topics({ zone: one }).length).toBeGreaterThan(0);
    for (const one of weight) expect(topics({ weight: one }).length).toBeGreaterThan(0);
    expect(kind).not.toContain("hedge");
  });
  test("a zone also narrows what is no conflict, and leaves out what was said nowhere", () => {
    const doubtful: CheckItem = { kind: "doubtful", key: "0" };
    const [first] = detail.lap;
    const elsewhere = detail.lap.find(({ zone }) => zone !== first?.zone);
    expect(isShownIn(doubtful, detail, null)).toBe(true);
    expect(isShownIn(doubtful, detail, first?.zone ?? null)).toBe(true);
    expect(isShownIn(doubtful, detail, elsewhere?.zone ?? null)).toBe(false);
    expect(isShownIn({ kind: "silence", key: "x" }, detail, first?.zone ?? null)).toBe(false);
    expect(shownItems(detail, { ...wholeQueue, zone: "roof" }).filter(({ kind }) => kind === "conflict")).toEqual([]);
  });
  test("what a zone keeps back is counted, so that it does not read as none", () => {
    const doubtful: CheckItem[] = detail.captions.map(({ index }) => ({ kind: "doubtful", key: String(index) }));
    const zone = detail.lap.find((span) => detail.captions.some(({ start }) => start >= span.start && start < span.end))?.zone ?? null;
    const shown = doubtful.filter((item) => isShownIn(item, detail, zone)).length;
    expect(shown).toBeGreaterThan(0);
    expect(shown).toBeLessThan(doubtful.length);
    expect(keptBackLine(doubtful, detail, zone)).toMatch(new RegExp(`^${shown} in .+, ${doubtful.length - shown} elsewhere\\.$`));
    expect(keptBackLine(doubtful, detail, "roof")).toBe(`None in Roof, ${doubtful.length} elsewhere.`);
    expect(keptBackLine(doubtful, detail, null)).toBeNull();
    expect(keptBackLine([], detail, "roof")).toBeNull();
    expect(keptBackLine([{ kind: "silence", key: "x" }], detail, "roof")).toBe("1, spoken of in no zone: shown under “Any zone”.");
  });
  test("keys go round through every choice and back", () => {
    expect([null, "a", "b"].map((now) => stepped(["a", "b"], now, 1))).toEqual(["a", "b", null]);
    expect([null, "a", "b"].map((now) => stepped(["a", "b"], now, -1))).toEqual(["b", null, "a"]);
    expect(stepped(["a"], "gone", 1)).toBe("a");
    expect(steppedState("open", 1)).toBe("settled");
    expect(steppedState("open", -1)).toBe("all");
  });
  test("what is left is told by kind", () => {
    const color = { ...axle, key: "c", kind: "color" as const };
    expect(leftByKind([tires, { ...tires, key: "t2" }, color], [tires.key, "t2", "c"])).toBe("2 measures, 1 color");
    expect(leftByKind([tires], [])).toBe("");
  });
});

test("an empty list says whether there is none, or the filters keep some back", () => {
  const { conflicts } = detail.analysis;
  const line = (state: "open" | "settled" | "all", open: readonly Conflict[], among: readonly Conflict[] = conflicts) =>
    emptyQueueLine({ analysis: { conflicts: [...among] }, openConflictKeys: open.map(({ key }) => key) }, { state });
  expect(line("open", [])).toBe("No conflict is open.");
  expect(line("settled", conflicts)).toBe("No conflict is settled yet.");
  expect(line("all", [], [])).toBe("No conflict was found.");
  // Some are there, of another kind, zone or weight.
  expect(line("open", [tires])).toBe("None under these filters.");
  expect(line("settled", [tires])).toBe("None under these filters.");
  expect(line("all", [])).toBe("None under these filters.");
});

describe("the desk's keys", () => {
  test("each key has one meaning", () => {
    const keys = [...checkShortcuts, ...filterShortcuts].map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { key } of filterShortcuts) expect(checkActionOf(`Shift+${key}`), key).toBeUndefined();
  });
  test("with Shift a filter steps back", () => {
    expect(filterStepOf("K")).toEqual({ action: "filter-kind", by: 1 });
    expect(filterStepOf("Shift+K")).toEqual({ action: "filter-kind", by: -1 });
    for (const key of ["P", "Shift+P", "Ctrl+Z", "1"]) expect(filterStepOf(key)).toBeNull();
  });
});

describe("addresses", () => {
  const id = "00000000-0000-4000-8000-000000000000";
  const other = "11111111-1111-4111-8111-111111111111";
  test("name recording, desk and conflict, and come back the same", () => {
    for (const conflict of ["measure/rear tire size", "hedge/a&b=c?d#e", "größe/ü"]) {
      expect(placeOfHash(recordingPlace(id, "check", { conflict }))).toMatchObject({ screen: "recording", desk: "check", id, conflict });
    }
  });
  test.for([
    ["conflict=%00%01", "what cannot be seen"],
    ["conflict=", "nothing"],
    [`conflict=${"x".repeat(601)}`, "longer than any name"],
    ["conflict=a%E2%80%AEb", "a mark that turns the writing round"],
  ])("%s names none: %s", ([query]) => {
    expect(placeOfHash(`#/recording/${id}/check?${query}`)).toMatchObject({ conflict: null });
  });
  test("vehicles side by side: ids alone, each once, no more than can be read", () => {
    const compared = [id, other];
    expect(placeOfHash(hashOfPlace({ screen: "call", query: "axle ratio", compared }))).toEqual({
      screen: "call",
      query: "axle ratio",
      compared,
    });
    expect(placeOfHash(`#/call?compare=${id},nonsense,${id},<script>`)).toMatchObject({ compared: [id] });
    expect(placeOfHash("#/call?compare=")).toMatchObject({ compared: [] });
    expect(placeOfHash("#/call?ask=x")).toMatchObject({ compared: null });
    const many = Array.from({ length: 9 }, (_, at) => `${at}${id.slice(1)}`);
    expect(placeOfHash(`#/call?compare=${many.join(",")}`)).toMatchObject({ compared: many.slice(0, 6) });
  });
});

test("a publication reads the same everywhere", () => {
  const at = "2026-11-26T02:31:09.000Z";
  expect([0, 1, 5].map((openConflicts) => publicationLine({ at, initials: "RT", openConflicts, openMatters: null }))).toEqual([
    "Published 2026-11-26 02:31 UTC by RT, with no conflict open",
    "Published 2026-11-26 02:31 UTC by RT, with 1 conflict open",
    "Published 2026-11-26 02:31 UTC by RT, with 5 conflicts open",
  ]);
  const matters = [[], ["“never”"], ["“never”", "Is there a spare wheel?"]];
  expect(matters.map((openMatters) => publicationLine({ at, initials: "RT", openConflicts: 0, openMatters }))).toEqual([
    "Published 2026-11-26 02:31 UTC by RT, with no conflict open",
    "Published 2026-11-26 02:31 UTC by RT, with no conflict open and 1 other matter not dealt with",
    "Published 2026-11-26 02:31 UTC by RT, with no conflict open and 2 other matters not dealt with",
  ]);
});
