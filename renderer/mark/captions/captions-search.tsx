import type { Ref } from "react";
import { Button } from "../../shared/button.tsx";
import { counted } from "../../shared/count.ts";

export interface CaptionsSearchProps {
  readonly ref: Ref<HTMLInputElement>;
  readonly words: string;
  /** Captions that hold the words. */
  readonly count: number;
  /** Which of them was gone to, from 0; -1 before the first. */
  readonly at: number;
  readonly onWords: (words: string) => void;
  readonly onGo: (direction: 1 | -1) => void;
  readonly onLeave: () => void;
}

/** Words to find in the captions, and the way from hit to hit. */
export function CaptionsSearch({ ref, words, count, at, onWords, onGo, onLeave }: CaptionsSearchProps) {
  const searched = words.trim() !== "";
  return (
    <search className="captions-search">
      <input
        ref={ref}
        type="search"
        className="text-field"
        aria-label="Search the captions"
        aria-keyshortcuts="/"
        placeholder="Search  /"
        autoComplete="off"
        value={words}
        onChange={(event) => onWords(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") onGo(event.shiftKey ? -1 : 1);
          else if (event.key === "Escape") {
            // The words stay, so that the next-hit key goes on through them; Escape in the list then takes them.
            onLeave();
          } else return;
          event.preventDefault();
          event.stopPropagation();
        }}
      />
      <output className="captions-hits small">
        {!searched ? "" : count === 0 ? "no hit" : at < 0 ? counted(count, "hit", "hits") : `${at + 1} of ${count}`}
      </output>
      <Button weight="quiet" disabled={count === 0} onClick={() => onGo(-1)} aria-label="Hit before" tip="Hit before (Shift G)">
        ‹
      </Button>
      <Button weight="quiet" disabled={count === 0} onClick={() => onGo(1)} aria-label="Next hit" tip="Next hit (G)">
        ›
      </Button>
    </search>
  );
}
