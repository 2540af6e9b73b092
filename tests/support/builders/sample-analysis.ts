import type { Analysis, Claim, CoverageQuestion, Transcript } from "../../../shared-types/index.ts";

/** An invented walk: 120 seconds, four zones, two rear tire sizes, one axle ratio, a rusty floor. */
export const sampleTranscriptText = `[0:00] Morning, this is the Fallow Kestrel, stock FK-1971.
[0:10] From the front the windshield is perfect.
[0:30] The rears are to 35 60 15s.
[0:50] Back here you can see the two fifty five sixty fifteens.
[1:10] Four eleven gears in the rear end, I think.
[1:30] Underneath there is a rust hole in the driver floor.
[1:50] Thanks for watching.
`;

/** What nobody spoke of in it. */
export const sampleQuestion: CoverageQuestion = {
  id: "q1",
  key: "item:spare",
  about: "item",
  topic: "spare wheel",
  question: "The spare is never spoken of. Is there one, and does it hold air?",
};

export function sampleClaim(id: string, caption: number, start: number, quote: string, rest: Partial<Claim> = {}): Claim {
  return {
    id,
    captions: [caption],
    start,
    end: start + 4,
    quote,
    spans: [{ caption, start: 0, end: quote.length }],
    component: "tire",
    part: null,
    position: "rear",
    attribute: "size",
    value: "235/60R15",
    unit: null,
    stance: "stated",
    time: "today",
    circumstance: null,
    zone: "rear",
    rule: "sample",
    repairs: [],
    ...rest,
  };
}

export function sampleAnalysis(rest: Partial<Analysis> = {}): Analysis {
  return {
    analysisVersion: 7,
    zones: [
      { zone: "opening", start: 0, end: 10, confidence: 0.5, evidence: [] },
      {
        zone: "front",
        start: 10,
        end: 30,
        confidence: 0.9,
        evidence: [{ caption: 1, quote: "from the front", reason: "names the place" }],
      },
      { zone: "rear", start: 30, end: 90, confidence: 0.8, evidence: [{ caption: 3, quote: "back here", reason: "" }] },
      {
        zone: "underside",
        start: 90,
        end: 120,
        confidence: 0.9,
        evidence: [{ caption: 5, quote: "underneath", reason: "names the place" }],
      },
    ],
    repairs: [
      {
        id: "r1",
        caption: 2,
        spans: [{ caption: 2, start: 14, end: 26 }],
        heard: "to 35 60 15s",
        meant: "235/60R15",
        rule: "sample",
        sure: true,
      },
    ],
    claims: [
      sampleClaim("c1", 2, 30, "The rears are to 35 60 15s", { repairs: ["r1"] }),
      sampleClaim("c2", 3, 52, "the two fifty five sixty fifteens", { value: "255/60R15" }),
      sampleClaim("c3", 4, 70, "Four eleven gears in the rear end, I think", {
        component: "final-drive",
        position: null,
        attribute: "ratio",
        value: 4.11,
        stance: "hedged",
      }),
      sampleClaim("c4", 1, 12, "the windshield is perfect", {
        component: "glass",
        position: "front",
        attribute: "condition",
        value: "good",
        zone: "front",
      }),
      sampleClaim("c5", 5, 92, "a rust hole in the driver floor", {
        component: "floors",
        position: "driver",
        attribute: "condition",
        value: "flawed",
        zone: "underside",
      }),
      sampleClaim("c6", 0, 3, "stock FK-1971", {
        component: "vehicle",
        position: null,
        attribute: "year",
        value: 1971,
        zone: "opening",
      }),
    ],
    conflicts: [
      {
        id: "k1",
        key: "measure/rear tire size",
        kind: "measure",
        topic: "rear tire size",
        why: "Two sizes are given for the rear tires.",
        rule: "sample",
        standard: null,
        weight: 70,
        sides: [
          { value: "235/60R15", unit: null, claims: ["c1"] },
          { value: "255/60R15", unit: null, claims: ["c2"] },
        ],
      },
    ],
    remarks: [{ id: "m1", key: "promise/perfect", topic: "promise", why: "Nothing is perfect.", claims: ["c4"], rule: "sample" }],
    denials: [],
    supports: [],
    silences: [],
    promises: [],
    questions: [sampleQuestion],
    doubtful: [{ caption: 6, why: "words over music" }],
    chapters: [{ start: 90, end: 120, zone: "underside", title: "Underneath" }],
    ...rest,
  };
}

/** Stands in for the worker thread: the same answer for every transcript, after telling of two passes. */
export function sampleAnalysisRunner(answer: (transcript: Transcript) => Analysis = () => sampleAnalysis()) {
  return {
    run: async ({
      transcript,
      onPass,
    }: {
      readonly transcript: Transcript;
      readonly onPass?: (pass: string, done: number, of: number) => void;
    }): Promise<Analysis> => {
      onPass?.("transcript", 1, 2);
      onPass?.("claims", 2, 2);
      return answer(transcript);
    },
    version: async () => answer({ format: "plain", captions: [], duration: 0 }).analysisVersion,
    close: async () => {},
  };
}
