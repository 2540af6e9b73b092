import { describe, expect, test } from "vitest";
import { WebVTTParser } from "webvtt-parser";
import { chapterEntries, flatChapters } from "../../../electron/exports/chapters/entries.ts";
import { chaptersList } from "../../../electron/exports/chapters/plain-list.ts";
import { chaptersWebvtt } from "../../../electron/exports/chapters/webvtt.ts";
import { chapterGranularities } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

describe("what becomes a chapter", () => {
  test("findings stand inside their zone, claims with their doubt, and nothing overruled or merely proposed is there", () => {
    const titles = (granularity: (typeof chapterGranularities)[number]) =>
      chapterEntries(sampleDetail(), granularity).flatMap(({ inside }) => inside.map(({ title }) => title));
    expect(titles("zones")).toEqual([]);
    expect(titles("findings")).toHaveLength(1);
    const everything = titles("everything");
    expect(everything).toContain("Rear tire size: 235/60R15 [open conflict: rear tire size]");
    expect(everything).toContain("Final drive ratio: 4.11:1");
    expect(everything.join("\n")).not.toContain("3.73");
    expect(everything.join("\n")).not.toContain("302");
    expect(everything.join("\n")).not.toContain("UNACCEPTED PROPOSAL");
    expect(everything).toContain("Front glass condition: good (said with doubt) [the stock sheet says otherwise]");
  });

  test.for([...chapterGranularities])("%s: chapters lie in order, inside or beside one another", (granularity) => {
    const entries = chapterEntries(sampleDetail(), granularity);
    for (const [position, entry] of entries.entries()) {
      expect(entry.start).toBe(entries[position - 1]?.end ?? 0);
      for (const [at, inner] of entry.inside.entries()) {
        expect(inner.start).toBeGreaterThanOrEqual(entry.inside[at - 1]?.end ?? entry.start);
        expect(inner.end).toBeLessThanOrEqual(entry.end);
        expect(inner.end).toBeGreaterThan(inner.start);
      }
    }
    const flat = flatChapters(entries);
    for (const [position, chapter] of flat.entries()) expect(chapter.start).toBe(flat[position - 1]?.end ?? 0);
    expect(flat.at(-1)?.end).toBe(120);
  });

  test.for([...chapterGranularities])("%s: the reference parser reads the nested cues without an error", (granularity) => {
    const { cues, errors } = new WebVTTParser().parse(chaptersWebvtt(chapterEntries(sampleDetail(), granularity)), "chapters");
    expect(errors).toEqual([]);
    // W3C bug 25737: of any two cues the intersection is empty or one of them, and no two have the same times.
    for (const [at, a] of cues.entries()) {
      for (const b of cues.slice(at + 1)) {
        const apart = a.endTime <= b.startTime || b.endTime <= a.startTime;
        const nested = (a.startTime <= b.startTime && b.endTime <= a.endTime) || (b.startTime <= a.startTime && a.endTime <= b.endTime);
        expect(apart || nested).toBe(true);
        expect(a.startTime === b.startTime && a.endTime === b.endTime).toBe(false);
      }
    }
  });
});

describe("the plain list keeps the players' rules", () => {
  const chapter = (start: number, end: number, title: string, inside: { start: number; end: number; title: string }[] = []) => ({
    start,
    end,
    title,
    inside,
  });

  test("what would make a chapter of under ten seconds is left out, and said", () => {
    const { text, warnings } = chaptersList([
      chapter(0, 40, "Front", [
        { start: 4, end: 20, title: "Dent" },
        { start: 20, end: 35, title: "Chip" },
        { start: 35, end: 40, title: "Scratch" },
      ]),
      chapter(40, 80, "Rear"),
      chapter(80, 120, "Cabin"),
    ]);
    expect(text).toBe("0:00 Front\n0:20 Front: Chip\n0:40 Rear\n1:20 Cabin\n");
    expect(warnings).toEqual(["2 entries are left out of the list: players refuse chapters of under 10 seconds."]);
  });

  test("fewer than three entries are written, and the warning says that players show none", () => {
    const { text, warnings } = chaptersList([chapter(0, 40, "Front"), chapter(40, 80, "Rear")]);
    expect(text).toBe("0:00 Front\n0:40 Rear\n");
    expect(warnings).toEqual(["Players show chapters from 3 entries on; this list has 2. Mark more zones, or let the list be."]);
  });
});
