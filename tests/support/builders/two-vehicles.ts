import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Claim } from "../../../shared-types/index.ts";
import { sampleAnalysis, sampleClaim } from "./sample-analysis.ts";
import { sampleApplication } from "./sample-application.ts";

const words = (stockNumber: string) => `[0:00] Morning, this is ${stockNumber}.
[0:20] It shows sixty eight thousand miles.
[0:30] The rears are to 35 60 15s.
[0:40] Let us sit in it.
[1:30] Underneath.
`;

/** What is said of a vehicle's mileage, rear tires and air conditioning. */
export function cooling(): Claim[] {
  const general = { position: null, zone: "cabin" } as const;
  const air = { ...general, component: "air-conditioning" } as const;
  return [
    sampleClaim("c1", 1, 20, "sixty eight thousand miles", {
      ...general,
      ...{ component: "odometer", attribute: "mileage", value: 68000, unit: "mi" },
    }),
    sampleClaim("c2", 2, 30, "the rears are to 35 60 15s"),
    sampleClaim("c3", 3, 40, "it has AC", { ...air, attribute: "presence", value: "present" }),
  ];
}

const bodies = { K4102: "van", K4103: "pickup" } as const;
type Stock = keyof typeof bodies;

/** A van (K4102) and a pickup (K4103) with these claims; `find` gives each place as "K4103 claim@40". */
export async function asVehicles(claims: Record<Stock, readonly Claim[]>, titles: Partial<Record<Stock, string>> = {}) {
  const application = sampleApplication({
    answer: ({ captions }) => {
      const stock = captions[0]?.text.includes("K4102") ? "K4102" : "K4103";
      return sampleAnalysis({ claims: [...claims[stock]], conflicts: [], repairs: [], remarks: [] });
    },
  });
  for (const stockNumber of ["K4102", "K4103"] as const) {
    const path = join(application.folder, `${stockNumber}.txt`);
    writeFileSync(path, words(stockNumber));
    await application.handlers["recording.import"]({
      transcript: application.parts.files.offerPath(path).id,
      ...{ video: null, stockSheet: null, again: false },
      title: titles[stockNumber] ?? `Walk of ${stockNumber}`,
      stockNumber,
      vehicle: { name: "Fallow Hauler", year: 2009, bodyStyle: bodies[stockNumber], drive: "left-hand" },
    });
  }
  const hits = (query: string) => application.handlers["search.find"]({ query, limit: 40 });
  const find = async (query: string) => (await hits(query)).map(({ stockNumber, kind, start }) => `${stockNumber} ${kind}@${start}`);
  return { ...application, hits, find };
}
