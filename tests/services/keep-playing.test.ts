import { expect, test } from "vitest";
import { keepPlaying, playingKept } from "../../electron/services/keep-playing.ts";

/** The settings of a library, as far as these need them. */
function libraryOf(kept: Record<string, string>) {
  const settings = new Map(Object.entries(kept));
  return {
    settings: { get: (name: string) => settings.get(name), put: (name: string, value: string) => void settings.set(name, value) },
    transaction: <Done>(work: () => Done) => work(),
  } as never;
}

test("volume, mute and rate are what was last kept", () => {
  const library = libraryOf({});
  expect(playingKept({ library })).toEqual({ volume: 1, muted: false, rate: 1 });
  keepPlaying({ library }, { volume: 0.3, muted: true, rate: 2 });
  expect(playingKept({ library })).toEqual({ volume: 0.3, muted: true, rate: 2 });
});

test.for(["", "nothing", "null", '{"volume":7,"muted":false,"rate":1}', '{"volume":0.5}'])(
  "%j in an old library is no reason to fail",
  (kept) => {
    expect(playingKept({ library: libraryOf({ playing: kept }) })).toEqual({ volume: 1, muted: false, rate: 1 });
  },
);
