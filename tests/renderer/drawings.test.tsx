import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { BodyLines } from "../../renderer/mark/plan/body-drawing.tsx";
import { captionNotes } from "../../renderer/shared/caption-segments.ts";
import { MarkedCaption } from "../../renderer/shared/marked-caption.tsx";
import { patternId, ZonePatterns } from "../../renderer/shared/zone-patterns.tsx";
import { bodyStyles, gradeShapes, zoneNames } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

test("every zone has a pattern, and no two look alike without their ink", () => {
  const drawn = renderToStaticMarkup(<ZonePatterns />);
  const patterns = zoneNames.map((zone) => {
    const found = new RegExp(`<pattern id="${patternId(zone)}"[^>]*>(.*?)</pattern>`).exec(drawn);
    return (found?.[1] ?? "").replace(/data-zone="[^"]*"/, "");
  });
  expect(patterns).not.toContain("");
  expect(new Set(patterns).size).toBe(zoneNames.length);
});

test("every grade has a shape of its own", () => {
  expect(new Set(Object.values(gradeShapes)).size).toBe(Object.keys(gradeShapes).length);
});

test.for(bodyStyles)("the wheel of a %s is on the driver's side", (bodyStyle) => {
  const wheelY = (drive: "left-hand" | "right-hand") =>
    Number(/<ellipse[^>]* cy="([\d.]+)"/.exec(renderToStaticMarkup(<BodyLines bodyStyle={bodyStyle} drive={drive} />))?.[1]);
  // Nose to the left: the vehicle's left is below.
  expect(wheelY("left-hand")).toBeGreaterThan(wheelY("right-hand"));
});

test("a marked caption still reads as it came, with the reading named for the ear", () => {
  const { captions, analysis } = sampleDetail();
  const [caption] = captions;
  if (!caption) throw new Error("The sample has a caption.");
  const repair = {
    id: "r",
    caption: 0,
    spans: [{ caption: 0, start: 14, end: 26 }],
    heard: "to 35 60 15s",
    meant: "235/60R15",
    rule: "sample",
    sure: false,
  };
  const notes = captionNotes({ ...analysis, repairs: [repair] }, [])(0);
  const drawn = renderToStaticMarkup(<MarkedCaption caption={caption} notes={notes} disputed={new Set(["c1"])} />);
  const read = drawn.replace(/<[^>]*>/g, "");
  expect(read).toBe("the rears are to 35 60 15s repair, meant 235/60R15?, to be checked");
  expect(drawn).toContain('data-kind="disputed"');
});

test("what was really said stands beside a misheard caption as that, not as what was misheard", () => {
  const { captions, analysis, rulings } = sampleDetail();
  const ruling = {
    ...rulings[0]!,
    conflictKey: "measure:rear tire size",
    decision: "recogniser-error",
    side: 0,
    rightWords: "255/60R15",
  } as const;
  const drawn = (ruled: readonly (typeof ruling)[]) =>
    renderToStaticMarkup(<MarkedCaption caption={captions[0]!} notes={captionNotes(analysis, ruled)(0)} disputed={new Set()} />);
  expect(drawn([ruling]).replace(/<[^>]*>/g, "")).toBe("the rears are to 35 60 15smisheard; said: “255/60R15”");
  expect(drawn([])).not.toContain("misheard");
});
