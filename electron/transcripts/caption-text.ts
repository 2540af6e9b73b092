import { decodeHTML } from "entities";

/** Tags of WebVTT and SRT (`<b>`, `<c.loud>`, `<v Ann>`, `<font color=red>`, `<00:01:02.000>`) and SRT's style overrides (`{\an8}`). */
const markup = /<\/?[a-z][^<>]*>|<\d[\d:.]*>|<\/>|\{\\[^{}]*\}/gi;

/**
 * The words a caption shows: markup removed, entities decoded once, white space folded.
 * "<" that starts no tag ("<3", "a < b") is a character like any other. A byte that was NUL stays visible as U+FFFD.
 */
export function captionText(marked: string): string {
  const bare = marked.replace(markup, "");
  return (bare.includes("&") ? decodeHTML(bare) : bare).replace(/\s+/g, " ").trim();
}
