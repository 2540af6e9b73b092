import { useEffect } from "react";
import type { Playing } from "../../shared-types/index.ts";
import type { Client } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import type { Clock, ClockReading } from "./clock.ts";

/** A slider passes many volumes on its way; the one it rests at is kept. Milliseconds. */
const restMilliseconds = 400;

const playingOf = ({ volume, muted, rate }: ClockReading): Playing => ({ volume, muted, rate });
const same = (a: Playing, b: Playing): boolean => a.volume === b.volume && a.muted === b.muted && a.rate === b.rate;

/** Gives a clock the volume, mute and rate that were last kept, and keeps what the person makes of them. @returns what ends it. */
export function keepPlayingOf(clock: Clock, client: Pick<Client, "call">): () => void {
  let kept: Playing | null = null;
  let over = false;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    clearTimeout(rest);
    rest = undefined;
    const now = playingOf(clock.read());
    if (kept === null || same(kept, now)) return;
    kept = now;
    // Nothing of the person's work hangs on it: where it cannot be kept, it is as it was the next time.
    client.call("playing.set", now).catch(() => {});
  };
  const begun = playingOf(clock.read());
  client.call("playing.get", {}).then(
    (found) => {
      if (over) return;
      kept = found;
      // Whoever was quicker than the answer has said what they want.
      if (same(begun, playingOf(clock.read()))) clock.playAs(found);
      else keep();
    },
    () => {},
  );
  const stop = clock.subscribe(() => {
    if (kept === null || same(kept, playingOf(clock.read()))) return;
    rest ??= setTimeout(keep, restMilliseconds);
  });
  return () => {
    over = true;
    stop();
    keep();
  };
}

/** For players that show volume and rate; others would keep what nobody sees there. */
export function useKeptPlaying(clock: Clock): void {
  const client = useClient();
  useEffect(() => keepPlayingOf(clock, client), [clock, client]);
}
