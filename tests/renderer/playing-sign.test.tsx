import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { PlayingSign } from "../../renderer/check/playing-sign.tsx";

test("only the side that plays says so, in words that name it", () => {
  const words = (playing: boolean) => renderToStaticMarkup(<PlayingSign playing={playing} letter="B" />).replace(/<[^>]*>/g, "");
  expect(words(true)).toContain("playing side B");
  expect(words(false)).toBe("");
});
