import { describe, expect, test } from "vitest";
import { spellingOf } from "../../electron/services/search-spelling.ts";
import type { SearchHit } from "../../shared-types/index.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const spelling = spellingOf(
  Object.entries({
    rear: 40,
    tires: 30,
    tire: 4,
    kestrel: 60,
    underside: 12,
    transmission: 9,
    gauges: 3,
    bumper: 8,
    brakes: 20,
    carpet: 5,
    break: 1,
    "235": 2,
  }).map(([word, places]) => ({ word, places })),
);

describe("a misspelled word is read as the nearest that can be found", () => {
  test.for([
    ["tranmission", "transmission", "a letter left out"],
    ["transmision", "transmission", "one of two letters left out"],
    ["undersied", "underside", "letters the other way round"],
    ["kestral", "kestrel", "another vowel, in a name that only the library knows"],
    ["bumpr", "bumper", "a letter left out of a short word"],
    ["tyers", "tyres", "letters the other way round in a British word"],
    ["rear tyer", "rear tyre", "beside a word that is right"],
    ["guages", "gauges", "a slip that everybody makes"],
    ["chasis", "chassis", "a word of the trade that nobody said"],
    ["winscreen", "windscreen", "a British word of the trade"],
    ["tranmis", "transmission", "while it is still being typed"],
    ["breaks", "brakes", "a word that is another word"],
    ["break", "brake", "a word that is another word, though somebody said it"],
  ])("%s is read as %s: %s", ([typed, read]) => {
    expect(spelling.readings(typed as string)).toContain(read);
  });

  test.for([
    ["tires", "it is found"],
    ["gearbox", "it is a word of the trade that nobody spoke of"],
    ["4.10", "a number is never another number"],
    ["235/60r16", "a size is never another size"],
    ["tir", "it is the beginning of a word"],
    ["hood", "a short word of the trade"],
    ["what about the rear", "question words are no slips"],
    ["xyzzy", "nothing is near"],
    ["", "nothing was asked"],
  ])("%s stays as typed: %s", ([typed]) => {
    expect(spelling.readings(typed as string)).toEqual([]);
  });
});

describe("the library asked with slips", () => {
  async function ground() {
    const application = sampleApplication();
    await importSample(application, { folder: application.folder, text: sampleTranscriptText });
    return async (query: string): Promise<SearchHit[]> => application.handlers["search.find"]({ query, limit: 20 });
  }
  test.for([
    ["undersied", "zone@90"],
    ["kestral chasis", "zone@90"],
    ["rear tyers", "claim@52"],
    ["winscreen", "claim@12"],
  ])("%s finds %s, and says how it was read", async ([query, first]) => {
    const find = await ground();
    const [hit] = await find(query as string);
    expect(`${hit?.kind}@${hit?.start}`).toBe(first);
    expect(hit?.readAs).not.toBeNull();
  });
  test("what is found as typed says nothing of its reading", async () => {
    const find = await ground();
    expect((await find("underside")).every(({ readAs }) => readAs === null)).toBe(true);
  });
  test("a word that came into the library later is known at once", async () => {
    const application = sampleApplication();
    const { id } = await importSample(application, { folder: application.folder, text: sampleTranscriptText });
    const find = (query: string) => application.handlers["search.find"]({ query, limit: 5 });
    expect(await find("pathmrak")).toEqual([]);
    const { vehicle } = (await application.handlers["recording.get"]({ id })).summary;
    await application.handlers["recording.describe"]({ id, title: "Ossler Pathmark", stockNumber: "FK-1971", vehicle });
    expect((await find("pathmrak"))[0]).toMatchObject({ kind: "zone", start: 0, readAs: "pathmark" });
  });
});
