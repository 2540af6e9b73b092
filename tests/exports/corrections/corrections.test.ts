import { parseText } from "media-captions";
import { describe, expect, test } from "vitest";
import { WebVTTParser } from "webvtt-parser";
import { changesList, correctedSrt, correctedWebvtt } from "../../../electron/exports/corrections/caption-files.ts";
import { correctCaptions } from "../../../electron/exports/corrections/correct-captions.ts";
import { correctionText } from "../../../electron/exports/corrections/correction-text.ts";
import { overlayWebvtt } from "../../../electron/exports/corrections/settled-claims.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";
import { placeOfRightWords, type RecordingDetail } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

/** The sample with two repairs, one of them doubtful, and its first conflict ruled the recognizer's error about its second side. */
function repairedDetail(): RecordingDetail {
  const detail = sampleDetail();
  const second = detail.analysis.claims[1]!;
  const heard = "to 35 60 15s";
  const at = detail.captions[0]!.text.indexOf(heard);
  const ratio = "four eleven";
  const ratioAt = detail.captions[1]!.text.indexOf(ratio);
  return {
    ...detail,
    analysis: {
      ...detail.analysis,
      claims: detail.analysis.claims.map((claim) =>
        claim.id === second.id ? { ...claim, spans: [{ caption: 1, start: 0, end: "two fifty five sixty fifteens".length }] } : claim,
      ),
      repairs: [
        {
          id: "r1",
          caption: 0,
          spans: [{ caption: 0, start: at, end: at + heard.length }],
          heard,
          meant: "235/60R15",
          rule: "tire-size-homophone",
          sure: true,
        },
        {
          id: "r2",
          caption: 1,
          spans: [{ caption: 1, start: ratioAt, end: ratioAt + ratio.length }],
          heard: ratio,
          meant: "4.11",
          rule: "ratio",
          sure: false,
        },
      ],
    },
    rulings: [
      ...detail.rulings,
      {
        ...detail.rulings[0]!,
        id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e09",
        conflictKey: "measure:rear tire size",
        decision: "recogniser-error",
        side: 1,
        rightWords: "two thirty five --> sixty fifteens",
        reason: "Heard twice.",
        topic: "rear tire size",
        sideValues: ["235/60R15", "255/60R15"],
      },
    ],
    openConflictKeys: [],
  };
}

describe("corrected captions", () => {
  const corrected = correctCaptions(repairedDetail());

  test("sure repairs and ruled words are put in, doubtful repairs are not, and every change says why", () => {
    expect(corrected.captions.map(({ text }) => text)).toEqual([
      "the rears are 235/60R15",
      "two thirty five --> sixty fifteens in the back & <b>four eleven</b> gears",
      "this has the three seventy three",
    ]);
    expect(changesList(corrected)).toBe(
      'Caption 1 (0:00): "to 35 60 15s" is now "235/60R15"; number repaired (tire-size-homophone).\n' +
        'Caption 2 (0:30): "two fifty five sixty fifteens" is now "two thirty five --> sixty fifteens"; ruled a recognizer\'s error by RT: Heard twice.\n',
    );
  });

  test("a recording without repairs or rulings keeps its captions, and says that nothing changed", () => {
    const detail = sampleDetail();
    const plain = correctCaptions(detail);
    expect(plain.captions.map(({ text }) => text)).toEqual(detail.captions.map(({ text }) => text));
    // What is in dispute is said where the words are listed, although they stay as they were spoken.
    const disputed = (caption: string) =>
      `Caption ${caption} stands as it was spoken; do not rely on it [open conflict: rear tire size].\n`;
    expect(changesList(plain)).toBe(`No caption was changed.\n${disputed("1 (0:00)")}${disputed("2 (0:30)")}`);
    expect(correctedWebvtt(plain)).toContain("do not rely on it [open conflict: rear tire size]");
    expect(correctedSrt(plain).warnings).toEqual([expect.stringContaining("2 captions speak of what is in dispute")]);
    expect(correctedSrt({ ...plain, disputed: [] }).warnings).toEqual([]);
  });

  test("the reference parser reads the WebVTT, comments and all, without an error", () => {
    const { cues, errors } = new WebVTTParser().parse(correctedWebvtt(corrected));
    expect(errors).toEqual([]);
    expect(cues.map(({ startTime, endTime }) => [startTime, endTime])).toEqual([
      [0, 30],
      [30, 75],
      [75, 120],
    ]);
  });

  test("another library reads both files alike, with the words as they were meant", async () => {
    // media-captions 1.0.4, SRT and WebVTT parsers.
    const unescaped = (text: string) => text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
    const vtt = await parseText(correctedWebvtt(corrected), { type: "vtt" });
    const srt = await parseText(correctedSrt(corrected).text, { type: "srt" });
    expect(vtt.errors).toEqual([]);
    expect(srt.errors).toEqual([]);
    expect(srt.cues.map(({ startTime, endTime }) => [startTime, endTime])).toEqual(
      vtt.cues.map(({ startTime, endTime }) => [startTime, endTime]),
    );
    expect(vtt.cues.map(({ text }) => unescaped(text))).toEqual(corrected.captions.map(({ text }) => text));
    // SRT has no escapes: the arrow that would end a timing line is written as one character.
    expect(srt.cues.map(({ text }) => text)).toEqual(corrected.captions.map(({ text }) => text.replace("-->", "→")));
  });

  test("SRT has its counter, comma and hours", () => {
    // FACTS 7.3: "HH:MM:SS,mmm --> HH:MM:SS,mmm" (srt-validator's doc/srt-spec.md).
    expect(correctedSrt(corrected).text.split("\n").slice(0, 4)).toEqual([
      "1",
      "00:00:00,000 --> 00:00:30,000",
      "the rears are 235/60R15",
      "",
    ]);
  });
});

test.for(["vtt", "srt"] as const)("corrected captions that come in as a transcript go out again as the same bytes: %s", (ending) => {
  const hostile = ["first & second", "a < b > c", "1\u00a0000 miles", "עברית 🚙", "-- > not an arrow", "Sentence. Another?"];
  const detail = repairedDetail();
  const written = (of: RecordingDetail) =>
    ending === "vtt" ? correctedWebvtt(correctCaptions(of)) : correctedSrt(correctCaptions(of)).text;
  const first = {
    ...detail,
    captions: [
      ...detail.captions,
      ...hostile.map((text, place) => ({ ...detail.captions[0]!, start: 120 + place * 2.345, end: 122 + place * 2.345, text })),
    ],
  };
  const out = written(first);
  const { captions } = readTranscript(Buffer.from(out), `walk.${ending}`);
  expect(captions).toHaveLength(first.captions.length);
  // Nothing is left to put right in them: the repairs and rulings are in their words.
  const heard = captions.map((caption) => ({ ...detail.captions[0]!, ...caption }));
  const again = { ...first, captions: heard, rulings: [], analysis: { ...first.analysis, repairs: [], conflicts: [], claims: [] } };
  const cues = (text: string) => text.replace(/NOTE\n(?:.+\n)+\n/, "");
  // SRT has no escapes: what looks like a tag of its own is one to whoever reads it.
  const asRead = ending === "srt" ? out.replaceAll(/<\/?b>/g, "") : out;
  expect(cues(written(again))).toBe(cues(asRead));
});

describe("what was settled", () => {
  test("overlay captions put the overruled claim right at its moment, and the reference parser reads them", () => {
    const { cues, errors } = new WebVTTParser().parse(overlayWebvtt(sampleDetail()));
    expect(errors).toEqual([]);
    expect(cues).toHaveLength(1);
    expect(cues[0]).toMatchObject({ id: "correction-1", startTime: 80, text: "Correction: final drive ratio is 4.11:1, not 3.73:1." });
    expect(cues[0]!.endTime - cues[0]!.startTime).toBeGreaterThanOrEqual(4);
    expect(overlayWebvtt(sampleDetail())).toContain(
      "NOTE\n3.73:1 was said; 4.11:1 stands by RT on 2026-01-06: Tag on the cover reads 37 over 9.",
    );
  });

  test("what stands may be of another thing than what was said wrongly: each is named as what it is", () => {
    const detail = sampleDetail();
    const [standing] = detail.analysis.conflicts.find(({ topic }) => topic === "axle ratio")!.sides;
    const claims = detail.analysis.claims.map((claim) =>
      standing!.claims.includes(claim.id) ? { ...claim, component: "engine" as const, attribute: "year" as const, part: null } : claim,
    );
    const crossed = { ...detail, analysis: { ...detail.analysis, claims } };
    const { cues } = new WebVTTParser().parse(overlayWebvtt(crossed));
    expect(cues[0]?.text).toMatch(/^Correction: engine year is 4\.11(?::1)?; final drive ratio is not 3\.73:1\.$/);
    expect(correctionText(crossed)).toMatch(/1:20 Final drive ratio: 3\.73:1 was said; engine year 4\.11(?::1)? is right \(/);
  });

  test("what stands under one conflict and was overruled under another is not called right without saying so", () => {
    const detail = sampleDetail();
    const ratio = detail.analysis.conflicts.find(({ topic }) => topic === "axle ratio")!;
    const ruling = detail.rulings.find(({ conflictKey }) => conflictKey === ratio.key)!;
    const other = { ...ratio, id: "x9", key: "measure:cover tag", topic: "cover tag" };
    const against = { ...ruling, id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e77", conflictKey: other.key, side: 1 };
    const crossed = {
      ...detail,
      analysis: { ...detail.analysis, conflicts: [...detail.analysis.conflicts, other] },
      rulings: [...detail.rulings, against],
    };
    expect(correctionText(crossed)).toMatch(
      /1:20 Final drive ratio: 3\.73:1 was said; 4\.11:1 is right \(.*\)\. \[another ruling says otherwise: cover tag; ask before you rely on it\]/,
    );
    expect(overlayWebvtt(crossed)).toContain("[another ruling says otherwise: cover tag; ask before you rely on it]");
    expect(correctionText(detail)).not.toContain("another ruling");
  });

  test("a moment is named once, however many claims of it are on a side", () => {
    const detail = sampleDetail();
    const twice = {
      ...detail,
      analysis: {
        ...detail.analysis,
        conflicts: detail.analysis.conflicts.map((conflict) => ({
          ...conflict,
          sides: conflict.sides.map((side) => ({ ...side, claims: [...side.claims, ...side.claims] })),
        })),
      },
    };
    expect(correctionText(twice)).toContain("Rear tire size (0:12, 0:31)\n");
  });

  test("a recognizer's error puts nothing right over the video: the speaker said it well", () => {
    expect(overlayWebvtt(repairedDetail())).not.toContain("235/60R15");
  });

  test("the text names what is right with its reason, and what is still open without a value", () => {
    expect(correctionText(sampleDetail())).toBe(
      "Corrections to what is said in this video:\n" +
        "1:20 Final drive ratio: 3.73:1 was said; 4.11:1 is right (Tag on the cover reads 37 over 9).\n" +
        "\n" +
        "Not yet checked; ask before you rely on it:\n" +
        "Rear tire size (0:12, 0:31)\n" +
        "\n" +
        "The stock sheet says otherwise: The stock sheet says cracked; good was said.\n",
    );
  });

  test("without a ruling nothing is put right, and the files say so", () => {
    const detail = { ...sampleDetail(), rulings: [], openConflictKeys: [] };
    expect(correctionText(detail)).toBe(
      "No correction to what is said in this video.\n\nThe stock sheet says otherwise: The stock sheet says cracked; good was said.\n",
    );
    const undenied = { ...detail, analysis: { ...detail.analysis, denials: [] } };
    expect(correctionText(undenied)).toBe("No correction to what is said in this video.\n");
    const { cues, errors } = new WebVTTParser().parse(overlayWebvtt(detail));
    expect([cues, errors]).toEqual([[], []]);
  });
});

describe("where right words go", () => {
  const text = "235/60R15 on the rear, two hundred and thirty there, and that just fills up the wheel well";
  const captions = [{ text }];
  const span = (words: string) => ({ caption: 0, start: text.indexOf(words), end: text.indexOf(words) + words.length });
  const repair = { id: "r", caption: 0, spans: [span("235/60R15")], heard: "235/60R15", meant: "235/60R15", rule: "r", sure: true };
  test.for<{ phrase: string; value: string | number; repairs: string[]; right: string; place: string | null }>([
    { phrase: "235/60R15 on the rear", value: "255/60R15", repairs: ["r"], right: "255/60R15", place: "235/60R15" },
    { phrase: "235/60R15 on the rear", value: "235/60R15", repairs: [], right: "255/60R15", place: "235/60R15" },
    { phrase: "235/60R15 on the rear", value: "235/60R15", repairs: [], right: "255/60R15 on the rear", place: "235/60R15 on the rear" },
    { phrase: "two hundred and thirty there", value: 230, repairs: [], right: "240", place: "two hundred and thirty" },
    { phrase: "that just fills up the wheel well", value: "good", repairs: [], right: "poor", place: null },
    {
      phrase: "that just fills up the wheel well",
      value: "good",
      repairs: [],
      right: "that never fills it",
      place: "that just fills up the wheel well",
    },
    { phrase: text, value: 99, repairs: [], right: "98", place: null },
  ])("“$right” for “$phrase”: in place of $place", ({ phrase, value, repairs, right, place }) => {
    const spans = placeOfRightWords(right, { spans: [span(phrase)], repairs, value }, [repair], captions);
    expect(spans?.map(({ start, end }) => text.slice(start, end)) ?? null).toEqual(place === null ? null : [place]);
  });

  test("a ruling of a bare value leaves the rest of the phrase, and one without a place leaves the caption and says so", () => {
    const detail = repairedDetail();
    const withWords = (rightWords: string, value: string): RecordingDetail => ({
      ...detail,
      analysis: {
        ...detail.analysis,
        claims: detail.analysis.claims.map((claim) =>
          claim.id === "c2" ? { ...claim, value, spans: [{ caption: 1, start: 0, end: detail.captions[1]!.text.indexOf(" &") }] } : claim,
        ),
      },
      rulings: detail.rulings.map((ruling) => (ruling.decision === "recogniser-error" ? { ...ruling, rightWords } : ruling)),
    });
    expect(correctCaptions(withWords("235/60R15", "255/60R15")).captions[1]!.text).toMatch(/^235\/60R15 in the back & /);
    const homeless = correctCaptions(withWords("bald", "new"));
    expect(homeless.captions[1]!.text).toBe(detail.captions[1]!.text);
    expect(changesList(homeless)).toContain('stands as it was recognized: RT ruled "two fifty five sixty fifteens in the back" misheard');
  });
});

test("the description names what was misheard, with what was said and why, apart from what was spoken wrongly", () => {
  const text = correctionText(repairedDetail());
  expect(text).toContain(
    "\n\nMisheard in the captions; the speaker was right:\n0:31 Rear tire size: 255/60R15 is misheard; said: “two thirty five --> sixty fifteens” (Heard twice).\n",
  );
  expect(text.match(/is misheard/g)).toHaveLength(1);
  expect(correctionText(sampleDetail())).not.toContain("isheard");
});
