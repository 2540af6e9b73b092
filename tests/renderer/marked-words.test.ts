import { expect, test } from "vitest";
import { wordRuns } from "../../renderer/check/marked-words.tsx";

const text = "it will never leak, guaranteed";
const said = (spans: readonly { start: number; end: number }[]) =>
  wordRuns(text, spans)
    .map(({ words, marked }) => (marked ? `[${words}]` : words))
    .join("|");

test("only the words of the promise are marked, and together the runs are the caption", () => {
  expect(said([{ start: 8, end: 13 }])).toBe("it will |[never]| leak, guaranteed");
  expect(
    said([
      { start: 20, end: 30 },
      { start: 0, end: 2 },
    ]),
  ).toBe("[it]| will never leak, |[guaranteed]");
  expect(said([])).toBe(text);
  // A caption whose words were put right since may be shorter than the span says.
  expect(said([{ start: 20, end: 90 }])).toBe("it will never leak, |[guaranteed]");
});
