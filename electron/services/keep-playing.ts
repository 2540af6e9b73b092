import { Playing } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";

const atFirst: Playing = { volume: 1, muted: false, rate: 1 };

/** How the films were last heard; what an older or a newer program kept otherwise counts as nothing. */
export function playingKept({ library }: Pick<Parts, "library">): Playing {
  const kept = library.settings.get("playing");
  if (kept === undefined) return atFirst;
  try {
    return Playing.safeParse(JSON.parse(kept)).data ?? atFirst;
  } catch {
    return atFirst;
  }
}

export function keepPlaying({ library }: Pick<Parts, "library">, playing: Playing): Playing {
  library.transaction(() => library.settings.put("playing", JSON.stringify(playing)));
  return playing;
}
