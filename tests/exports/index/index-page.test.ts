import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { describe, expect, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import type { IndexStill } from "../../../electron/exports/html/index-html.ts";
import { escapeHtml } from "../../../electron/exports/html/markup.ts";
import { bodyStyles, type RecordingDetail, zoneLabels } from "../../../shared-types/index.ts";
import { hostileDetail } from "../hostile-detail.ts";
import { sampleDetail } from "../sample-detail.ts";

const writtenAt = "2026-01-07T12:00:00.000Z";
const hashes = { video: null, transcript: "0".repeat(64) };
/** The smallest picture there is: one pixel of GIF's successor, a PNG made by hand (W3C PNG, 5.3). */
const dataUri = "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
const still = (atSeconds: number, uri = dataUri): IndexStill => ({ atSeconds, dataUri: uri, width: 640, height: 360 });
const page = (detail: RecordingDetail, more: { stills?: readonly IndexStill[]; printed?: boolean; videoHref?: string | null } = {}) =>
  buildExport("index-html", { detail, writtenAt, ...more }).text;

const validator = new HtmlValidate(new StaticConfigLoader({ extends: ["html-validate:standard"] }));
async function faults(text: string): Promise<string[]> {
  const { results } = await validator.validateString(text);
  return results.flatMap(({ messages }) => messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`));
}

describe("an HTML validator finds nothing in", () => {
  test.for([
    ["the index", page(sampleDetail())],
    ["the index with hostile words everywhere", page(hostileDetail())],
    ["the index with stills", page(sampleDetail(), { stills: [still(4), still(33), still(80)] })],
    ["the index for paper", page(hostileDetail(), { printed: true, stills: [still(4)] })],
    ["the index of a transcript alone", page({ ...sampleDetail(), videoFile: null })],
    ["the review record", buildExport("record-html", { detail: hostileDetail(), writtenAt, hashes }).text],
  ] as const)("%s", async ([, text]) => {
    expect(await faults(text)).toEqual([]);
  });

  test("and it does find what is wrong", async () => {
    expect(await faults(page(sampleDetail()).replace("</h1>", "</h2>"))).not.toEqual([]);
  });
});

describe("the index page", () => {
  test("carries stills at their chapters and findings, named, and no picture that is not written into it", () => {
    const stills = [
      still(30.2),
      still(33.1),
      still(76, "https://example.invalid/x.png"),
      still(77, 'data:image/svg+xml;base64,PHN2Zz4="><script>'),
    ];
    const text = page(sampleDetail(), { stills });
    const pictures = [...text.matchAll(/<img [^>]*>/g)].map(([tag]) => tag);
    expect(pictures).toHaveLength(2);
    expect(pictures[0]).toContain("at 0:30 in the recording");
    expect(pictures[1]).toContain("at 0:33 in the recording");
    for (const tag of pictures) expect(tag).toContain('width="640" height="360"');
    expect(text).not.toContain("example.invalid");
    expect(text).not.toContain("svg+xml");
  });

  test("is whole without a video, without stills, without findings and without claims", () => {
    const bare = sampleDetail();
    const empty = {
      ...bare,
      videoFile: null,
      findings: [],
      rulings: [],
      openConflictKeys: [],
      analysis: { ...bare.analysis, claims: [], conflicts: [], denials: [] },
    };
    const text = page(empty);
    expect(text).toContain("No conflict is open.");
    expect(text).toContain("does not mean that there is nothing to note");
    expect(text).not.toContain("<button");
    expect(text).not.toContain("<script");
    expect(text).not.toContain("<video");
  });

  test.for(bodyStyles.flatMap((bodyStyle) => (["left-hand", "right-hand"] as const).map((drive) => ({ bodyStyle, drive }))))(
    "draws a $bodyStyle with $drive drive, findings on the driver's side where the driver sits",
    ({ bodyStyle, drive }) => {
      const detail = sampleDetail();
      const at = (position: "driver" | "passenger") =>
        page({
          ...detail,
          summary: { ...detail.summary, vehicle: { ...detail.summary.vehicle, bodyStyle, drive } },
          findings: detail.findings.map((finding) => ({ ...finding, zone: "roof", position })),
        });
      const y = (text: string) => Number(/class="plan-mark[^"]*" transform="translate\([\d.]+ ([\d.]+)\)"/.exec(text)?.[1]);
      // Nose to the left: the vehicle's own left is below.
      const below = drive === "left-hand" ? "driver" : "passenger";
      expect(y(at(below))).toBeGreaterThan(y(at(below === "driver" ? "passenger" : "driver")));
      expect(at("driver")).toContain(`The ${bodyStyle} from above`);
    },
  );

  test("numbers a finding on the drawing as in the list, and names what was never shown", () => {
    const text = page(hostileDetail());
    const marks = [...text.matchAll(/class="plan-mark[^>]*>.*?<text y="[\d.]+">(\d+)<\/text>/g)].map(([, number]) => Number(number));
    const told = /Not on the drawing, in the list alone: ([^.]*)\./.exec(text)?.[1] ?? "";
    const alone = [...told.matchAll(/(\d+) \(/g)].map(([, number]) => Number(number));
    expect([...marks, ...alone]).toEqual(hostileDetail().findings.map((_, position) => position + 1));
    expect(marks.length).toBeGreaterThanOrEqual(6);
    expect(text.replace(/<[^>]*>/g, "")).toContain(
      `No stretch of the recording is marked for: ${escapeHtml(zoneLabels["driver-side"].toLowerCase())}, `,
    );
  });

  const inZone = (zone: "cabin" | "underside", count: number): RecordingDetail => {
    const detail = sampleDetail();
    const [finding] = detail.findings;
    return {
      ...detail,
      findings: Array.from({ length: count }, (_, start) => ({ ...finding!, zone, position: null, start, end: start + 1 })),
    };
  };

  test("keeps marks off the name of the cabin, and tells those that it has no room for", () => {
    const text = page(inZone("cabin", 30));
    const nameY = Number(/<text class="plan-name" x="[\d.]+" y="([\d.]+)">Cabin</.exec(text)?.[1]);
    const heights = [...text.matchAll(/class="plan-mark[^"]*" transform="translate\([\d.]+ ([\d.]+)\)"/g)].map(([, y]) => Number(y));
    expect(new Set(heights).size).toBe(2);
    // A mark reaches ten up and down; the name has its letters above its line and the time below it.
    for (const y of heights) expect(y + 10 < nameY - 8 || y - 10 > nameY + 13).toBe(true);
    expect(text).toContain(`Not on the drawing, in the list alone: ${heights.length + 1} (cabin), `);
    expect(page(inZone("cabin", 4))).not.toContain("Not on the drawing");
  });

  test("tells findings beneath, which the drawing from above cannot show, and what is open there", () => {
    const text = page(inZone("underside", 2));
    expect(text).toContain("Not on the drawing, in the list alone: 1 (underside), 2 (underside).");
    expect(text).toMatch(/<span>Underside: [\d:]+, 2 findings<\/span>/);
    const open = { ...inZone("underside", 1), rulings: [], openConflictKeys: ["measure:axle ratio"] };
    expect(page(open)).toMatch(/<span>Underside: [\d:]+, 1 finding <span class="open-mark">▼ 1 open<\/span><\/span>/);
  });

  test("fills the mark of a grade on the drawing where its sign is filled, and only there", () => {
    const graded = (grade: "worn" | "good") =>
      page({ ...sampleDetail(), findings: sampleDetail().findings.map((one) => ({ ...one, grade })) });
    expect(graded("worn")).toContain('class="plan-mark plan-mark-filled"');
    expect(graded("good")).not.toContain('class="plan-mark plan-mark-filled"');
    expect(graded("good")).toContain(".grade-worn path, .grade-damaged path { fill: currentColor; }");
  });

  test("says when it was published with conflicts open", () => {
    expect(page(hostileDetail())).toContain("Published on 2026-01-06 by &lt;u&gt; with 1 conflict open and 1 other matter not dealt with.");
    expect(page(sampleDetail())).not.toContain("Published");
  });

  test("lets nothing that a person or a file brought in as markup", () => {
    for (const text of [
      page(hostileDetail()),
      page(hostileDetail(), { printed: true }),
      buildExport("record-html", { detail: hostileDetail(), writtenAt, hashes }).text,
    ]) {
      expect(text).not.toMatch(/<script>alert|<img src=x|<b>\)|<u>|<i>/);
      expect(text.match(/<title>/g)).toHaveLength(1);
    }
  });
});
