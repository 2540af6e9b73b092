import { describe, expect, test } from "vitest";
import type { Analysis } from "../../shared-types/index.ts";
import { sampleAnalysis, sampleClaim, sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const ratio = (id: string, start: number, value: number, rest: object = {}) =>
  sampleClaim(id, 5, start, `gears ${value}`, { component: "final-drive", position: null, attribute: "ratio", value, unit: null, ...rest });

/** Two vehicles, the second with an analysis of its own. */
async function twoVehicles(second: Partial<Analysis>) {
  let imported = 0;
  const application = sampleApplication({
    answer: () => sampleAnalysis(imported++ === 0 ? {} : { conflicts: [], repairs: [], ...second }),
  });
  const ids: string[] = [];
  for (const stockNumber of ["A-100", "B-200"])
    ids.push((await importSample(application, { folder: application.folder, text: sampleTranscriptText, stockNumber, again: true })).id);
  const compare = async (query: string) => application.handlers["search.compare"]({ query, recordingIds: ids });
  return { ...application, ids, compare };
}

describe("two vehicles by one claim", () => {
  test("the value for each with its moment, and a sentence to tell", async () => {
    const { compare } = await twoVehicles({ claims: [ratio("c1", 33, 3.55)] });
    const { vehicles, subjects } = await compare("axle ratio");
    expect(vehicles.map(({ stockNumber }) => stockNumber)).toEqual(["A-100", "B-200"]);
    expect(subjects).toMatchObject([
      {
        subject: "final drive ratio",
        said: [
          [{ start: 70, value: "4.11:1" }],
          [{ start: 33, value: "3.55:1", answer: "Stock B-200: final drive ratio 3.55:1, said at 0:33." }],
        ],
      },
    ]);
  });

  test.for(["axle ratio", "diff ratio", "rear end ratio", "final drive", "ratio", "diff", "axel ratio", "axle raito"])(
    "“%s” is the same question",
    async (query) => {
      const { compare } = await twoVehicles({ claims: [ratio("c1", 33, 3.55)] });
      expect((await compare(query)).subjects.map(({ subject }) => subject)).toEqual(["final drive ratio"]);
    },
  );

  test("where nobody said, the place is empty, and what both said stands first", async () => {
    const { compare } = await twoVehicles({ claims: [sampleClaim("c1", 2, 44, "the rears", { value: "205/70R14" })] });
    const { subjects } = await compare("tire size");
    expect(subjects[0]).toMatchObject({ subject: "rear tire size", said: [[{ start: 30 }, { start: 52 }], [{ value: "205/70R14" }]] });
    expect((await compare("axle ratio")).subjects).toMatchObject([{ said: [[{ start: 70 }], []] }]);
    expect((await compare("headliner color")).subjects).toEqual([]);
  });

  test("its standing is said, and nothing that does not stand has a sentence", async () => {
    const { compare } = await twoVehicles({
      claims: [
        ratio("c1", 33, 3.55, { stance: "hedged" }),
        ratio("c2", 40, 3.73, { time: "former" }),
        ratio("c3", 50, 3.55, { stance: "reported" }),
      ],
    });
    const [, second] = (await compare("axle ratio")).subjects[0]?.said ?? [];
    expect(second?.map(({ withheld, answer }) => [withheld?.reason, answer])).toEqual([
      ["hedged", null],
      ["former", null],
      ["reported", null],
    ]);
    const [first] = (await compare("rear tire size")).subjects[0]?.said ?? [];
    expect(first?.map(({ withheld, conflictKey, answer }) => [withheld?.reason, conflictKey, answer])).toEqual([
      ["disputed", "measure/rear tire size", null],
      ["disputed", "measure/rear tire size", null],
    ]);
  });

  test("a ruling is seen at once", async () => {
    const { compare, handlers, ids } = await twoVehicles({ claims: [] });
    const said = async () =>
      (await compare("rear tire size")).subjects[0]?.said[0]?.map(({ withheld, answer }) => withheld?.reason ?? answer);
    expect(await said()).toEqual(["disputed", "disputed"]);
    const ruling = {
      recordingId: ids[0] as string,
      conflictKey: "measure/rear tire size",
      reason: "Read.",
      rightWords: null,
      initials: "AB",
    };
    await handlers["conflict.rule"]({ ...ruling, decision: "side-stands", side: 1 });
    expect(await said()).toEqual(["overruled", "Stock A-100: rear tire size 255/60R15, said at 0:52."]);
    await handlers["edit.undo"]({ recordingId: ids[0] as string, initials: "AB" });
    expect(await said()).toEqual(["disputed", "disputed"]);
  });

  test.for(["", "?!", "the", "FK-1971"])("“%s” names no claim", async (query) => {
    const { compare } = await twoVehicles({ claims: [] });
    expect((await compare(query)).subjects).toEqual([]);
  });
});
