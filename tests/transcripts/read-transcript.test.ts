import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import iconv from "iconv-lite";
import { describe, expect, test } from "vitest";
import { readTranscript } from "../../electron/transcripts/read-transcript.ts";
import { TranscriptError, type TranscriptErrorCode } from "../../electron/transcripts/transcript-error.ts";
import { Transcript } from "../../shared-types/index.ts";

const encode = (text: string) => new TextEncoder().encode(text);
const read = (text: string, fileName = "lap.txt") => readTranscript(encode(text), fileName);
const brief = (transcript: Transcript) => transcript.captions.map((caption) => [caption.start, caption.end, caption.text]);

const twoCaptions = [
  [0, 7.5, "Come on up to the nose"],
  [7.5, 9, "the grille is straight"],
];
const forms: readonly { why: string; text: string; format: Transcript["format"] }[] = [
  { why: "brackets, words below", text: "[0:00]\nCome on up to the nose\n\n[0:07.5]\nthe grille is straight\n", format: "plain" },
  { why: "brackets, words beside", text: "[00:00] Come on up to the nose\n[00:07.5] the grille is straight", format: "plain" },
  { why: "parentheses", text: "(0:00) Come on up\nto the nose\n(0:07.50) the grille is straight", format: "plain" },
  { why: "no brackets", text: "0:00 Come on up to the nose\n0:07.5 the grille is straight", format: "plain" },
  { why: "no brackets, words below", text: "0:00\nCome on up to the nose\n0:07,5\nthe grille is straight", format: "plain" },
  { why: "en dash after the time", text: "0:00 – Come on up to the nose\n0:07.5 – the grille is straight", format: "plain" },
  { why: "hours", text: "[0:00:00] Come on up to the nose\n[0:00:07.500] the grille is straight", format: "plain" },
  { why: "a heading above", text: "Stock 4411\n\n[0:00] Come on up to the nose\n[0:07.5] the grille is straight", format: "plain" },
  {
    why: "start and end in brackets",
    text: "[00:00.000 --> 00:07.500]  Come on up to the nose\n[00:07.500 --> 00:09.000]  the grille is straight",
    format: "plain",
  },
  {
    why: "SRT",
    text: "1\n00:00:00,000 --> 00:00:07,500\n<i>Come on up</i>\nto the nose\n\n2\n00:00:07,500 --> 00:00:09,000\n{\\an8}the grille is straight\n",
    format: "srt",
  },
  {
    why: "SRT, full stops, one digit, wrong counters, coordinates, blank lines",
    text: "\n\n7\n0:0:0.0 --> 0:0:7.5 X1:100 X2:100 Y1:100 Y2:100\nCome on up\n\nto the nose\n\n\n7\n0:00:07.5-->0:00:09\nthe grille is straight",
    format: "srt",
  },
  {
    why: "SRT without counters",
    text: "00:00:00,000 --> 00:00:07,500\nCome on up to the nose\n00:00:07,500 --> 00:00:09,000\nthe grille is straight",
    format: "srt",
  },
  {
    why: "WebVTT with a voice and entities",
    text: "WEBVTT\n\n00:00.000 --> 00:07.500\n<v Ann>Come on up to&nbsp;the <00:00:05.000><c>nose</c>\n\n00:07.500 --> 00:09.000 line:0\nthe grille is straight",
    format: "webvtt",
  },
  {
    why: "JSON object",
    text: '{"language":"en","segments":[{"id":0,"start":0,"end":7.5,"text":" Come on up to the nose"},{"start":7.5,"end":9,"text":"the grille is straight"}]}',
    format: "recogniser-json",
  },
  {
    why: "JSON array, one end missing, numbers in quotes",
    text: '[{"start":"0","text":"Come on up to the nose"},\n{"start":7.5,"end":"9.0","text":"the grille is straight"}]',
    format: "recogniser-json",
  },
  {
    why: "JSON with words alone",
    text: '[{"words":[{"word":"Come","start":0,"end":1},{"word":"on up to the nose","start":1,"end":7.5}]},{"start":7.5,"end":9,"text":"the grille is straight"}]',
    format: "recogniser-json",
  },
];

describe("every form gives the same captions", () => {
  test.for(forms)("$why", ({ text, format }) => {
    const transcript = read(text, "said.anything");
    expect(transcript.format).toBe(format);
    const got = brief(transcript);
    const endGiven = format !== "plain" || text.includes("-->");
    // Where the last end is not given it is four words at 2.7 words a second: 1.481 s.
    expect(got).toEqual(endGiven ? twoCaptions : [twoCaptions[0], [7.5, 8.981, "the grille is straight"]]);
    expect(transcript.duration).toBe(endGiven ? 9 : 8.981);
    expect(() => Transcript.parse(transcript)).not.toThrow();
  });
});

describe("the end of a last caption that gives none", () => {
  const plain = (captions: number, words: number) =>
    Array.from(
      { length: captions },
      (_, index) => `[0:${String(index * 4).padStart(2, "0")}] ${Array(words).fill("straight").join(" ")}`,
    ).join("\n\n");
  test("comes as soon as the narrator's own pace has it", () => {
    // Eight words every four seconds: the last eight take four more.
    expect(read(plain(12, 8), "said.txt").duration).toBe(48);
    expect(read(plain(12, 12), "said.txt").duration).toBe(48);
  });
  test("is told by the usual pace where there are few captions to tell another", () => {
    expect(read(plain(4, 8), "said.txt").duration).toBeCloseTo(12 + 8 / 2.7, 2);
  });
});

describe("what looks like a time and is words", () => {
  const rows = [
    { why: "closing time in a bracketed file", text: "[0:00] we shut at\n5:30 pm most days\n[0:09] come by", captions: 2 },
    {
      why: "an SRT badge of digits",
      text: "1\n00:00:00,000 --> 00:00:04,000\nthe badge says\n390\n\n2\n00:00:04,000 --> 00:00:08,000\ndone",
      captions: 2,
    },
    {
      why: "an arrow in words",
      text: "00:00:00,000 --> 00:00:04,000\nthe lever goes P --> D\n\n00:00:04,000 --> 00:00:08,000\ndone",
      captions: 2,
    },
    { why: "a caption without words keeps its index", text: "[0:00] come by\n[0:04]\n[0:09] done", captions: 3 },
    { why: "less than is no tag", text: "[0:00] gap is < 5 and > 3, I <3 it", captions: 1 },
  ];
  test.for(rows)("$why", ({ text, captions }) => {
    expect(read(text).captions).toHaveLength(captions);
  });
  test("the words are kept", () => {
    expect(brief(read(rows[0]?.text ?? "")).map((row) => row[2])).toEqual(["we shut at 5:30 pm most days", "come by"]);
    expect(brief(read(rows[1]?.text ?? "")).map((row) => row[2])).toEqual(["the badge says 390", "done"]);
    expect(brief(read(rows[4]?.text ?? "")).map((row) => row[2])).toEqual(["gap is < 5 and > 3, I <3 it"]);
  });
});

describe("encodings and line ends", () => {
  const said = "[0:00]\nthe bonnet’s been up – £500 – café crème\n[0:09]\ndone";
  const wanted = ["the bonnet’s been up – £500 – café crème", "done"];
  const encodings = [
    ["utf-8", false],
    ["utf-8", true],
    ["utf-16le", true],
    ["utf-16le", false],
    ["utf-16be", true],
    ["utf-16be", false],
    ["windows-1252", false],
  ] as const;
  for (const [encoding, mark] of encodings) {
    for (const [name, lineEnd] of [
      ["LF", "\n"],
      ["CRLF", "\r\n"],
      ["CR", "\r"],
    ] as const) {
      test(`${encoding}${mark ? " with a byte order mark" : ""}, ${name}`, () => {
        const bytes = iconv.encode(said.replaceAll("\n", lineEnd), encoding, { addBOM: mark });
        expect(readTranscript(new Uint8Array(bytes), "lap.txt").captions.map((caption) => caption.text)).toEqual(wanted);
      });
    }
  }
});

const refusals: readonly { why: string; text: string; code: TranscriptErrorCode; line: number; says: RegExp }[] = [
  { why: "nothing in it", text: "", code: "empty-file", line: 1, says: /empty/ },
  { why: "white space only", text: " \r\n\t\n", code: "empty-file", line: 1, says: /white space/ },
  { why: "no times", text: "come on up to the nose", code: "unknown-format", line: 1, says: /begins with "come on up to the nose"/ },
  { why: "header alone", text: "WEBVTT\n\nNOTE nothing\n", code: "no-captions", line: 1, says: /no captions/ },
  { why: "times alone", text: "[0:00]\n[0:09]\n", code: "no-words", line: 1, says: /no words/ },
  {
    why: "backwards, plain",
    text: "[0:10] one\n\n[0:05] two",
    code: "time-goes-backwards",
    line: 3,
    says: /0:05, before the one above it \(0:10\)/,
  },
  {
    why: "backwards, SRT",
    text: "1\n00:01:15,500 --> 00:01:20,000\none\n\n2\n00:01:10,000 --> 00:01:30,000\ntwo",
    code: "time-goes-backwards",
    line: 6,
    says: /1:10, before the one above it \(1:15\.5\)/,
  },
  {
    why: "end before start",
    text: "WEBVTT\n\n00:01.000 --> 00:00.999\none",
    code: "ends-before-start",
    line: 3,
    says: /ends at 0:00\.999, before it starts at 0:01/,
  },
  { why: "75 seconds", text: "[0:10] one\n[1:75] two", code: "broken-time", line: 2, says: /"\[1:75\] two" starts with no time/ },
  {
    why: "a stamp with a semicolon",
    text: "[0:10] one\n[1:99:0;25] Rear tires",
    code: "broken-time",
    line: 2,
    says: /"\[1:99:0;25\] Rear tires" starts with no time/,
  },
  { why: "a stamp without minutes", text: "[0:10] one\n[:25] two", code: "broken-time", line: 2, says: /"\[:25\] two"/ },
  {
    why: "a stamp without its closing bracket",
    text: "[0:10] one\ntwo\n[0:25 three",
    code: "broken-time",
    line: 3,
    says: /"\[0:25 three"/,
  },
  { why: "a stamp with a letter for a nought", text: "(0:10) one\n(1:2O) two", code: "broken-time", line: 2, says: /"\(1:2O\) two"/ },
  { why: "a stamp cut short", text: "[0:10] one\n[1:] two", code: "broken-time", line: 2, says: /"\[1:\] two"/ },
  { why: "a bare stamp with a semicolon", text: "0:10 one\n1:05;25 two", code: "broken-time", line: 2, says: /"1:05;25 two"/ },
  { why: "a bare stamp parted by a semicolon", text: "0:10 one\n1;25 two", code: "broken-time", line: 2, says: /"1;25 two"/ },
  {
    why: "SRT time cut short",
    text: "00:00:01,000 --> 00:00:02,000\none\n\n00:00:03,000 --> 00:\ntwo",
    code: "broken-time",
    line: 4,
    says: /"00:00:03,000 --> 00:"/,
  },
  {
    why: "JSON cut short",
    text: '{"segments":[\n{"start":0,"end":1,"text":"one"},\n{"start":1,',
    code: "broken-json",
    line: 3,
    says: /cannot be read/,
  },
  { why: "NaN", text: '[{"start":0,"end":1,"text":"a"},\n{"start":NaN,"end":1,"text":"b"}]', code: "broken-json", line: 2, says: /NaN/ },
  { why: "NaN in quotes", text: '[{"start":"NaN","text":"a"}]', code: "broken-segment", line: 1, says: /"start" is "NaN", not a number/ },
  { why: "endless time", text: '[{"start":1e999,"text":"a"}]', code: "broken-time", line: 1, says: /Infinity seconds/ },
  { why: "negative time", text: '[{"start":-1,"text":"a"}]', code: "broken-time", line: 1, says: /-1 seconds/ },
  { why: "no start", text: '{"segments":[\n\n{"text":"a"}]}', code: "broken-segment", line: 3, says: /no "start"/ },
  { why: "no text", text: '[{"start":0}]', code: "broken-segment", line: 1, says: /no "text"/ },
  { why: "no segments", text: '{"result":\n[]}', code: "broken-segment", line: 1, says: /no array of segments/ },
  { why: "empty segments", text: '{"segments":[]}', code: "no-captions", line: 1, says: /no captions/ },
  { why: "JSON of numbers", text: "[1, 2]", code: "broken-segment", line: 1, says: /a segment is "1"/ },
  { why: "JSON without bottom", text: "[".repeat(200_000), code: "broken-json", line: 1, says: /deep/ },
];

function refusal(bytes: Uint8Array): TranscriptError {
  try {
    readTranscript(bytes, "lap.txt");
  } catch (error) {
    if (error instanceof TranscriptError) return error;
    throw error;
  }
  throw new Error("the file was not refused");
}

describe("what is refused, with file, line, what was found and what to do", () => {
  test.for(refusals)("$why", ({ text, code, line, says }) => {
    const error = refusal(encode(text));
    expect(error.code).toBe(code);
    expect(error.line).toBe(line);
    expect(error.message).toMatch(says);
    expect(error.message).toMatch(/^lap\.txt, line \d+: [^\n\r]+\.$/);
  });

  test("a video in place of the transcript", () => {
    // The first bytes of an MP4 file: box length, "ftyp", brand (ISO/IEC 14496-12, section 4.3), then other bytes.
    const video = Uint8Array.from(
      { length: 3000 },
      (_, at) => [0, 0, 0, 24, 0x66, 0x74, 0x79, 0x70, 0x69, 0x73, 0x6f, 0x6d][at] ?? (at * 73) % 256,
    );
    expect(refusal(video)).toMatchObject({ code: "binary-file", message: expect.stringContaining("this is a video") });
    // Bytes that are neither text nor a video are not called one.
    const scrambled = Buffer.from(Array.from({ length: 400 }, (_, at) => (at * 7) % 32));
    expect(refusal(scrambled)).toMatchObject({ code: "binary-file", message: expect.not.stringContaining("video") });
  });
});

describe("any bytes", () => {
  const holds = (bytes: Uint8Array) => {
    try {
      const transcript = readTranscript(bytes, "any.txt");
      expect(() => Transcript.parse(transcript)).not.toThrow();
      for (const [index, caption] of transcript.captions.entries()) {
        expect(caption.index).toBe(index);
        expect(caption.end).toBeGreaterThanOrEqual(caption.start);
        expect(transcript.duration).toBeGreaterThanOrEqual(caption.end);
      }
    } catch (error) {
      if (!(error instanceof TranscriptError)) throw error;
      expect(error.message).toMatch(/^any\.txt, line \d+: /);
    }
  };

  test("give a transcript or a TranscriptError", () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), holds), { numRuns: 1000 });
  }, 60_000);

  test("also where they are nearly a transcript", () => {
    const pieces = fc.constantFrom(
      "WEBVTT",
      "\n",
      "\r\n",
      "\r",
      "\n\n",
      "00:00:01.000",
      " --> ",
      "0:01",
      "[1:02]",
      "[",
      "{",
      '"segments":',
      '"start":',
      "1",
      ":",
      ",",
      "]",
      "}",
      "words",
      "<b>",
      "&amp;",
      "\0",
      "\uFEFF",
      "9999999999",
      "-",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (parts) => holds(encode(parts.join("")))),
      { numRuns: 2000 },
    );
  }, 60_000);

  test("also where a good file was cut or a byte changed", () => {
    const good = forms.map((form) => encode(form.text));
    fc.assert(
      fc.property(fc.constantFrom(...good), fc.nat(), fc.nat(), fc.nat(255), (bytes, cut, at, byte) => {
        const broken = bytes.slice(0, 1 + (cut % bytes.length));
        broken[at % broken.length] = byte;
        holds(broken);
      }),
      { numRuns: 1000 },
    );
  }, 60_000);

  test("and large ones in time that grows with them", () => {
    const large = (line: string) => encode(line.repeat(Math.ceil(2_000_000 / line.length)));
    const started = performance.now();
    for (const line of ["<", "<a ", "[0:00] ", "-->", "0:0", "\n", " ", "{\\", "&", "[[", "00:00:01,000 --> 00:00:02,000\nx\n", "1\n"])
      holds(large(line));
    expect(performance.now() - started).toBeLessThan(20_000);
  }, 30_000);
});

describe("the development cases", () => {
  const folder = new URL("../../fixtures/corpus/dev/", import.meta.url);
  const files = readdirSync(folder).filter((name) => /\.(?:txt|srt|vtt|json)$/.test(name) && !name.endsWith(".gold.json"));

  /** The annotation guide's own reading of a case, made apart from the reader: gold files count captions by it. */
  function annotatedCaptions(name: string): { start: number; text: string }[] {
    const text = readFileSync(new URL(name, folder), "utf8").replaceAll("\r", "");
    const seconds = (clock: string) => clock.split(":").reduce((sum, part) => sum * 60 + Number.parseFloat(part.replace(",", ".")), 0);
    if (name.endsWith(".txt")) {
      return [...text.matchAll(/^\[([\d:]+)\]\s*([^[]*(?:\[(?!\d+:)[^[]*)*)/gm)].map((match) => ({
        start: seconds(match[1] ?? ""),
        text: (match[2] ?? "").trim().replace(/\s+/g, " "),
      }));
    }
    return text.split(/\n\n+/).flatMap((block) => {
      const match = /([\d:.,]+) --> .*\n([\s\S]*)/.exec(block);
      return match ? [{ start: seconds(match[1] ?? ""), text: (match[2] ?? "").replace(/\s+/g, " ").trim() }] : [];
    });
  }

  test.for(files)("%s has the captions the annotator counted", (name) => {
    const transcript = readTranscript(readFileSync(new URL(name, folder)), name);
    expect(transcript.captions.map(({ start, text }) => ({ start, text }))).toEqual(annotatedCaptions(name));
  });
  test("are all there", () => expect(files).toHaveLength(5));
});

/** Lines that a second caption begins with and that are no stamp, for all their figures. */
const wordsLikeStamps = [
  { first: "[0:00]", words: "(3.73:1) gears" },
  { first: "[0:00]", words: "[2 of 4] the keys" },
  { first: "[0:00]", words: "[engine noise: idle]" },
  { first: "[0:00]", words: "[about 10:1] squeeze" },
  { first: "(0:00)", words: "(3.73:1) gears" },
  { first: "0:00", words: "3:73 gears" },
  { first: "0:00", words: "12; 4 of them good" },
] as const;

describe("words that begin with figures", () => {
  test.for(wordsLikeStamps)("$first then $words", ({ first, words }) => {
    const { captions } = read(`${first} Come on up\n${words}`, "said.txt");
    expect(captions.map(({ text }) => text.replaceAll("\n", " "))).toEqual([`Come on up ${words}`]);
  });
});
