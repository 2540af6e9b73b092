import { describe, expect, test } from "vitest";
import { captionHits, hitBeside } from "../../renderer/mark/captions/caption-hits.ts";
import { disputeOfFinding } from "../../renderer/mark/findings/finding-dispute.ts";
import { draftOfFinding, findingOfDraft, newFindingDraft, withPart } from "../../renderer/mark/findings/finding-draft.ts";
import { markShortcuts, stripShortcuts } from "../../renderer/mark/shortcuts.ts";
import { stripConflicts } from "../../renderer/mark/strip/conflict-arcs.ts";
import { conflictBeside, conflictName } from "../../renderer/mark/strip/conflict-stops.tsx";
import { proposalAfter } from "../../renderer/mark/use-mark-actions.ts";
import {
  type Claim,
  type Conflict,
  type Finding,
  findingParts,
  partNamed,
  partsMeant,
  proposalKey,
  zoneNames,
} from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

describe("search in the captions", () => {
  const captions = ["The rear tires are to 35 60 15s.", "Here is  the Trunk", "and the trunk pan.", "Nothing here."].map((text, index) => ({
    index,
    start: index * 10,
    end: index * 10 + 10,
    text,
  }));
  const repairs = [{ ...(sampleDetail().analysis.repairs[0] as never as object), caption: 0, meant: "235/60R15" }] as never;
  test.for([
    ["trunk", [1, 2]],
    ["THE TRUNK", [1, 2]],
    ["235/60", [0]],
    ["to 35", [0]],
    ["wagon", []],
    ["   ", []],
    ["", []],
  ] as const)("%j is in captions %j", ([words, places]) => expect(captionHits(captions, repairs, words)).toEqual(places));
  test("goes from hit to hit, round the ends", () => {
    expect(hitBeside([2, 5, 9], 0, 1)).toBe(2);
    expect(hitBeside([2, 5, 9], 5, 1)).toBe(9);
    expect(hitBeside([2, 5, 9], 5, 1, true)).toBe(5);
    expect(hitBeside([2, 5, 9], 9, 1)).toBe(2);
    expect(hitBeside([2, 5, 9], 5, -1)).toBe(2);
    expect(hitBeside([2, 5, 9], 2, -1)).toBe(9);
    expect(hitBeside([], 2, 1)).toBeUndefined();
  });
});

describe("parts by name", () => {
  test("no two are named alike, and each belongs to a zone", () => {
    expect(new Set(findingParts.map(({ part }) => part)).size).toBe(findingParts.length);
    for (const { part, zones } of findingParts) {
      expect(part).toBe(part.toLowerCase());
      expect(zones.length).toBeGreaterThan(0);
    }
  });
  test.for(["door", "hood", "trunk lid", "bumper", "corner"])("%s can be named", (name) =>
    expect(partsMeant(name, "front")).not.toEqual([]),
  );
  test.for([
    ["driver-side", "door", "driver front door"],
    ["passenger-side", "door", "passenger front door"],
    ["rear", "corner", "driver rear corner"],
    ["rear", "bump", "rear bumper"],
    ["front", "bonnet", "hood"],
    ["rear", "boot l", "trunk lid"],
    ["driver-side", "rear door", "driver rear door"],
    ["driver-side", "driver d", "driver front door"],
    ["passenger-side", "wing", "passenger front fender"],
  ] as const)("at %s, “%s” is %s first", ([zone, typed, part]) => expect(partsMeant(typed, zone)[0]?.part).toBe(part));
  test.for(["xylophone", "door xylophone", "oor"])("%j names none", (typed) => expect(partsMeant(typed, "front")).toEqual([]));
  test("before anything is typed, every zone that is filmed for its condition offers parts of its own", () => {
    for (const zone of zoneNames.filter((name) => !["opening", "closing", "drive"].includes(name)))
      expect(partsMeant("", zone)[0]?.zones).toContain(zone);
  });
  test("one of the list brings what it belongs to; free words leave that as it is", () => {
    const draft = newFindingDraft({ stretch: null, markedStart: null, now: 4, duration: 60, zone: "rear" });
    expect(withPart(draft, "Trunk lid", partNamed("Trunk lid"))).toMatchObject({ component: "body", position: "rear" });
    const free = withPart({ ...draft, component: "trim", position: "driver" }, "badge on the pillar", partNamed("badge on the pillar"));
    expect(free).toMatchObject({ part: "badge on the pillar", component: "trim", position: "driver" });
    const saved = findingOfDraft({ ...free, seen: "scratched", grade: "worn", stillAt: 4000 });
    expect(saved).toMatchObject({ part: "badge on the pillar", stillAt: 4000 });
    const kept = { ...saved, id: "00000000-0000-4000-8000-000000000001", proposalKey: null, initials: "AB" };
    expect(draftOfFinding(kept)).toMatchObject({ part: "badge on the pillar", stillAt: 4000 });
    expect(findingOfDraft({ ...free, part: "  ", seen: "x", grade: "worn" }).part).toBeNull();
  });
});

describe("conflicts on the strip, by keyboard", () => {
  const { analysis, openConflictKeys } = sampleDetail();
  const conflicts = stripConflicts(analysis, openConflictKeys);
  const three = [10, 20, 30].map((moment) => ({ ...(conflicts[0] as (typeof conflicts)[number]), moments: [moment, moment + 100] }));
  test("stand in the order of their first moments", () => {
    const firsts = conflicts.map(({ moments }) => moments[0] ?? 0);
    expect(firsts).toEqual(firsts.toSorted((a, b) => a - b));
  });
  test("each is named with its state and its moments", () => {
    expect(conflictName({ ...three[0]!, moments: [62, 62.4, 220], open: true })).toMatch(/, open conflict, at 1:02 and 3:40$/);
    expect(conflictName({ ...three[0]!, moments: [5], open: false })).toMatch(/, settled conflict, at 0:05$/);
  });
  test("next and before go round", () => {
    expect(conflictBeside(three, { seconds: 15 }, 1)).toBe(1);
    expect(conflictBeside(three, { seconds: 15 }, -1)).toBe(0);
    expect(conflictBeside(three, { seconds: 99 }, 1)).toBe(0);
    expect(conflictBeside(three, { seconds: 0 }, -1)).toBe(2);
    expect(conflictBeside(three, { index: 2 }, 1)).toBe(0);
    expect(conflictBeside(three, { index: 0 }, -1)).toBe(2);
  });
});

test("after an accepted finding comes the next in time, whatever the order they are kept in, round to the first", () => {
  const proposals = [
    { key: "late", start: 90 },
    { key: "early", start: 10 },
    { key: "same", start: 40 },
    { key: "mid", start: 40 },
  ];
  expect(proposalAfter(proposals, { key: "early", start: 10 })?.key).toBe("same");
  expect(proposalAfter(proposals, { key: "mid", start: 40 })?.key).toBe("same");
  expect(proposalAfter(proposals, { key: "late", start: 90 })?.key).toBe("early");
  expect(proposalAfter([{ key: "only", start: 3 }], { key: "only", start: 3 })).toBeUndefined();
});

test("a finding read from a disputed claim names its gravest open conflict, proposed or accepted, until that is settled", () => {
  const detail = sampleDetail();
  const [proposal] = detail.findingProposals;
  const claim = detail.analysis.claims.find(({ id }) => id === proposal?.claim) as Claim;
  const [shape] = detail.analysis.conflicts as [Conflict];
  const about = (key: string, weight: number): Conflict => ({
    ...shape,
    key,
    weight,
    sides: shape.sides.map((side, index) => (index === 0 ? { ...side, claims: [claim.id] } : side)),
  });
  const disputed = (openConflictKeys: string[]) => ({
    openConflictKeys,
    analysis: { claims: detail.analysis.claims, conflicts: [about("slight", 20), about("grave", 80)] },
  });
  const accepted: Finding = { ...(detail.findings[0] as Finding), proposalKey: proposalKey(claim) };
  for (const finding of [proposal!, accepted]) {
    expect(disputeOfFinding(finding, disputed(["slight", "grave"]))).toBe("grave");
    expect(disputeOfFinding(finding, disputed(["slight"]))).toBe("slight");
    expect(disputeOfFinding(finding, disputed([]))).toBeNull();
  }
  expect(disputeOfFinding({ ...accepted, proposalKey: null }, disputed(["grave"]))).toBeNull();
});

test("no key of the Mark desk does two things", () => {
  const keys = [...markShortcuts, stripShortcuts].flatMap((group): string[] => group.shortcuts.map(({ key }) => key));
  expect(keys.filter((key, place) => keys.indexOf(key) !== place)).toEqual([]);
  // The strip's own second key, named in the line of its first.
  expect(keys).not.toContain("Shift+C");
});
