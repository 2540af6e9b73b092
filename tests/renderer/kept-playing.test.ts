import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { PlainClock } from "../../renderer/player/plain-clock.ts";
import { keepPlayingOf } from "../../renderer/player/use-kept-playing.ts";
import type { Playing } from "../../shared-types/index.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A host that keeps in memory, and counts what it was told. */
function hostOf(kept: Playing) {
  const told: Playing[] = [];
  const call = async (name: string, input: unknown) => {
    if (name === "playing.set") told.push(input as Playing);
    return told.at(-1) ?? kept;
  };
  return { told, client: { call } as never };
}
const left = { volume: 0.4, muted: true, rate: 1.5 };

test("a new clock plays as the last one was left, and telling it so is not kept again", async () => {
  const { told, client } = hostOf(left);
  const clock = new PlainClock(10);
  const stop = keepPlayingOf(clock, client);
  await vi.advanceTimersByTimeAsync(1000);
  expect(clock.read()).toMatchObject(left);
  stop();
  expect(told).toEqual([]);
});

test("of a slider's way only where it rests is kept; playing and seeking keep nothing", async () => {
  const { told, client } = hostOf(left);
  const clock = new PlainClock(10);
  keepPlayingOf(clock, client);
  await vi.advanceTimersByTimeAsync(1);
  for (const volume of [0.5, 0.6, 0.7]) clock.setVolume(volume);
  clock.seek(4);
  await vi.advanceTimersByTimeAsync(1000);
  clock.seek(5);
  await vi.advanceTimersByTimeAsync(1000);
  expect(told).toEqual([{ volume: 0.7, muted: false, rate: 1.5 }]);
});

test("a player that goes at once still keeps the last change", async () => {
  const { told, client } = hostOf(left);
  const clock = new PlainClock(10);
  const stop = keepPlayingOf(clock, client);
  await vi.advanceTimersByTimeAsync(1);
  clock.setRate(2);
  stop();
  expect(told).toEqual([{ ...left, rate: 2 }]);
  clock.setRate(3);
  await vi.advanceTimersByTimeAsync(1000);
  expect(told).toHaveLength(1);
});

test("whoever changes it before the host has answered is not overruled", async () => {
  const { told, client } = hostOf(left);
  const clock = new PlainClock(10);
  keepPlayingOf(clock, client);
  clock.setVolume(0.9);
  await vi.advanceTimersByTimeAsync(1);
  expect(clock.read()).toMatchObject({ volume: 0.9, muted: false, rate: 1 });
  expect(told).toEqual([{ volume: 0.9, muted: false, rate: 1 }]);
});

test("a host that cannot answer leaves the clock as it is", async () => {
  const clock = new PlainClock(10);
  const stop = keepPlayingOf(clock, { call: async () => Promise.reject(new Error("away")) } as never);
  await vi.advanceTimersByTimeAsync(1);
  clock.setVolume(0.2);
  await vi.advanceTimersByTimeAsync(1000);
  stop();
  expect(clock.read().volume).toBe(0.2);
});
