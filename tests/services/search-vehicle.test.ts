import { describe, expect, test } from "vitest";
import { sampleClaim } from "../support/builders/sample-analysis.ts";
import { asVehicles, cooling } from "../support/builders/two-vehicles.ts";

describe("a question that names a vehicle by a word", () => {
  test.for([
    { query: "does the AC work on the pickup", first: "K4103 claim@40", why: "the part on the vehicle, never its opening" },
    { query: "how many miles on the pickup", first: "K4103 claim@20", why: "words that only ask do not count" },
    { query: "pickup ac", first: "K4103 claim@40", why: "the vehicle first" },
    { query: "ac pickup", first: "K4103 claim@40", why: "the vehicle last" },
    { query: "k4102 mileage", first: "K4102 claim@20", why: "its stock number" },
    { query: "underside of the pickup", first: "K4103 zone@90", why: "a zone that was asked for" },
    { query: "pickup", first: "K4103 zone@0", why: "the vehicle alone is its recording from the start" },
  ])("$query: $why", async ({ query, first }) => {
    const { find } = await asVehicles({ K4102: cooling(), K4103: cooling() });
    expect((await find(query))[0]).toBe(first);
  });

  test("the vehicle's words leave the others out", async () => {
    const { find } = await asVehicles({ K4102: cooling(), K4103: cooling() });
    expect((await find("does the AC work on the pickup")).filter((place) => !place.startsWith("K4103"))).toEqual([]);
    expect((await find("does the AC work")).map((place) => place.slice(0, 5))).toContain("K4102");
  });

  test("some of what was asked is found on that vehicle; nothing said of it is answered by no other", async () => {
    const { find } = await asVehicles({ K4102: cooling(), K4103: [] });
    expect(await find("does the AC work on the pickup")).toEqual([]);
    expect((await find("van ac compressor clutch"))[0]).toBe("K4102 claim@40");
  });

  test("a word of place narrows nothing, though a recording is called so", async () => {
    const { find } = await asVehicles({ K4102: cooling(), K4103: cooling() }, { K4102: "Rear and underside" });
    expect((await find("rear tire size")).filter((place) => place.endsWith("claim@30")).toSorted()).toEqual([
      "K4102 claim@30",
      "K4103 claim@30",
    ]);
  });
});

describe("whether a thing works", () => {
  const air = { component: "air-conditioning", position: null, zone: "cabin" } as const;
  const blowing = sampleClaim("c9", 3, 44, "the air blows cold I think", {
    ...air,
    ...{ attribute: "condition", value: "good", stance: "hedged" },
  });

  test.for(["does the air work", "does the AC work", "is the ac working", "does the air conditioning work on the pickup"])(
    "“%s” is answered by how it was found to be, with its doubt, before that it is there",
    async (query) => {
      const { hits } = await asVehicles({ K4102: [], K4103: [...cooling(), blowing] });
      const [first, second] = (await hits(query)).filter(({ kind }) => kind === "claim");
      expect(first).toMatchObject({ start: 44, hedged: true, withheld: { reason: "hedged" }, answer: null });
      expect(second).toMatchObject({ start: 40 });
    },
  );

  test("a question that does not ask it keeps its order, and a thing that is only there is still told", async () => {
    const { hits } = await asVehicles({ K4102: cooling(), K4103: [...cooling(), blowing] });
    expect((await hits("does the air work on the van"))[0]).toMatchObject({ start: 40, stockNumber: "K4102" });
    const order = (await hits("ac pickup")).map(({ start }) => start);
    expect(order[0]).toBe(40);
  });
});
