import type { Claim, Conflict, LapSpan, RecordingDetail } from "../../shared-types/index.ts";

/** An invented recording with one open and one settled conflict, a finding, a proposal, and text that tries to break each format. */
export function sampleDetail(): RecordingDetail {
  const captions = [
    { index: 0, start: 0, end: 30, text: "the rears are to 35 60 15s" },
    { index: 1, start: 30, end: 75, text: "two fifty five sixty fifteens in the back & <b>four eleven</b> gears" },
    { index: 2, start: 75, end: 120, text: "this has the three seventy three" },
  ];
  const claims = [
    claim("c1", 0, 12, "the rears are to 35 60 15s", "tire", "size", "235/60R15", "rear"),
    claim("c2", 1, 31, "two fifty five sixty fifteens in the back", "tire", "size", "255/60R15", "rear"),
    claim("c3", 1, 50, "four eleven", "final-drive", "ratio", 4.11, null),
    claim("c4", 2, 80, "three seventy three", "final-drive", "ratio", 3.73, null),
    { ...claim("c5", 2, 90, "it came with a 302", "engine", "displacement", 302, null), time: "former" as const },
    { ...claim("c6", 2, 95, '=HYPERLINK("x")', "glass", "condition", "good", "front"), stance: "hedged" as const },
  ];
  const conflicts: Conflict[] = [
    {
      id: "k1",
      key: "measure:rear tire size",
      kind: "measure",
      topic: "rear tire size",
      why: "Two sizes are given for the rear tires.",
      rule: "two-values",
      standard: null,
      weight: 70,
      sides: [
        { value: "235/60R15", unit: null, claims: ["c1"] },
        { value: "255/60R15", unit: null, claims: ["c2"] },
      ],
    },
    {
      id: "k2",
      key: "measure:axle ratio",
      kind: "measure",
      topic: "axle ratio",
      why: "Two axle ratios are given.",
      rule: "two-values",
      standard: null,
      weight: 60,
      sides: [
        { value: 4.11, unit: null, claims: ["c3"] },
        { value: 3.73, unit: null, claims: ["c4"] },
      ],
    },
  ];
  const lap: LapSpan[] = [
    span("opening", 0, 4, "Opening"),
    span("front", 4, 30, "Front", "6f0f9c3e-6f0a-4a0b-9a3a-0d7f6f1f2a01"),
    span("rear", 30, 75, 'Tires & "wheels" <rear> a --> b', "6f0f9c3e-6f0a-4a0b-9a3a-0d7f6f1f2a02"),
    span("underside", 75, 120, "Underside"),
  ];
  return {
    summary: {
      id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e01",
      title: 'Fallow "Kestrel" <coupe> & more',
      stockNumber: "FK-1971",
      vehicle: { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" },
      duration: 120,
      importedAt: "2026-01-05T10:00:00.000Z",
      published: null,
      hasVideo: true,
      videoFound: true,
      videoKept: false,
      counts: {
        captions: 3,
        claims: 6,
        findings: 1,
        proposals: 1,
        proposedZones: 0,
        conflicts: 2,
        openConflicts: 1,
        openDenials: 1,
        openPromises: 0,
        openQuestions: 0,
      },
    },
    transcriptFile: "kestrel.vtt",
    transcriptFormat: "webvtt",
    videoFile: "kestrel walk.webm",
    stockSheet: null,
    sheetMeanings: null,
    captions,
    analysis: {
      analysisVersion: 1,
      zones: [],
      repairs: [],
      claims,
      conflicts,
      remarks: [],
      denials: [
        {
          id: "d1",
          key: "glass",
          field: "windshield",
          sheetValue: "cracked",
          claims: ["c6"],
          why: "The stock sheet says cracked; good was said.",
        },
      ],
      supports: [],
      silences: [],
      promises: [],
      questions: [],
      doubtful: [],
      chapters: [],
    },
    lap,
    findings: [
      {
        id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e02",
        start: 33,
        end: 38,
        zone: "rear",
        component: "bumper",
        position: "rear",
        seen: "</td><script>alert(1)</script>",
        grade: "worn",
        note: '+cmd|" /C calc"!A0\r\nsecond line, ümlaut, עברית, 🚙',
        part: null,
        stillAt: null,
        proposalKey: null,
        initials: "MK",
      },
    ],
    findingProposals: [
      {
        key: "p1",
        claim: "c6",
        start: 95,
        end: 99,
        zone: "underside",
        component: "glass",
        position: "front",
        seen: "UNACCEPTED PROPOSAL",
        grade: "good",
      },
    ],
    captionCorrections: [],
    trustedCaptions: [],
    seenNotes: [],
    rulings: [
      {
        id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e03",
        conflictKey: "measure:axle ratio",
        decision: "side-stands",
        side: 0,
        reason: "Tag on the cover reads 37 over 9.",
        rightWords: null,
        initials: "RT",
        at: "2026-01-06T09:00:00.000Z",
        supersededBy: null,
        topic: "axle ratio",
        sideValues: ["4.11", "3.73"],
      },
    ],
    openConflictKeys: ["measure:rear tire size"],
    publications: [],
    undoLabel: null,
    redoLabel: null,
  };
}

function claim(
  id: string,
  caption: number,
  start: number,
  quote: string,
  component: Claim["component"],
  attribute: Claim["attribute"],
  value: string | number,
  position: Claim["position"],
): Claim {
  return {
    id,
    captions: [caption],
    start,
    end: start + 3,
    quote,
    spans: [{ caption, start: 0, end: 5 }],
    component,
    part: null,
    position,
    attribute,
    value,
    unit: component === "engine" ? "cu in" : null,
    stance: "stated",
    time: "today",
    circumstance: null,
    zone: caption === 2 ? "underside" : "rear",
    rule: "sample",
    repairs: [],
  };
}

function span(zone: LapSpan["zone"], start: number, end: number, title: string, zoneSpanId: string | null = null): LapSpan {
  return { zone, start, end, title, zoneSpanId, confidence: zoneSpanId ? 1 : 0.7, evidence: [] };
}
