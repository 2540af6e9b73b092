import type { Speech } from "../../electron/analysis/model.ts";
import { hearSpeech } from "../../electron/analysis/transcript/hear-speech.ts";

/** Speech of one caption, or of several that follow one another, each four seconds long. */
export function speechOf(words: string | readonly string[]): Speech {
  const texts = typeof words === "string" ? [words] : words;
  const captions = texts.map((text, index) => ({ index, start: index * 4, end: index * 4 + 4, text: text.replace(/\s+/g, " ").trim() }));
  return hearSpeech({ format: "plain", captions, duration: texts.length * 4 });
}
