import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { areaLabel } from "../../renderer/mark/plan/area-label.ts";
import { BodyLines } from "../../renderer/mark/plan/body-drawing.tsx";
import { cabinLabelY } from "../../renderer/mark/plan/plan-view.tsx";
import { bodyStyles } from "../../shared-types/index.ts";

const told = { seconds: 32, findings: 3, proposals: 0, openConflicts: 1 };
const linesOf = (name: string, tally: typeof told, room: number) =>
  areaLabel(name, tally, room).lines.map(({ words, disputes }) => [words, disputes].filter(Boolean).join(" "));

test("a label takes a further line before it grows out of its area", () => {
  expect(linesOf("Driver's side", told, 300)).toEqual(["Driver's side 0:32 ◆3 ▼1"]);
  expect(linesOf("Engine bay", told, 90)).toEqual(["Engine bay", "0:32 ◆3 ▼1"]);
  expect(linesOf("Front", told, 52)).toEqual(["Front", "0:32", "◆3 ▼1"]);
  expect(linesOf("Front", { ...told, findings: 0, openConflicts: 0 }, 52)).toEqual(["Front", "0:32"]);
  expect(linesOf("Load space", told, 64)).toEqual(["Load space", "0:32", "◆3 ▼1"]);
});

test("the nose's label fits its piece with two figures of everything", () => {
  const { width } = areaLabel("Front", { seconds: 599, findings: 12, proposals: 0, openConflicts: 11 }, 52);
  expect(width).toBeLessThanOrEqual(52);
});

for (const drive of ["left-hand", "right-hand"] as const)
  test.for(bodyStyles)(`the cabin's label leaves the steering wheel of a ${drive} drive %s in sight`, (bodyStyle) => {
    const [, cy, ry] =
      /<ellipse[^>]* cy="([\d.]+)"[^>]* ry="([\d.]+)"/
        .exec(
          renderToStaticMarkup(<BodyLines bodyStyle={bodyStyle} drive={drive} />).replace(
            /<ellipse([^>]*) ry="([\d.]+)"([^>]*) cy="([\d.]+)"/,
            '<ellipse$1 cy="$4" ry="$2"$3',
          ),
        )
        ?.map(Number) ?? [];
    if (cy === undefined || ry === undefined) throw new Error("The drawing has no wheel.");
    const label = areaLabel("Cabin", { seconds: 599, findings: 12, proposals: 0, openConflicts: 11 }, 60);
    const y = cabinLabelY(drive, label.height);
    expect(Math.abs(y - cy)).toBeGreaterThan(label.height / 2 + ry);
  });
