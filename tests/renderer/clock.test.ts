import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { backwardSpeeds, leadSeconds, rates } from "../../renderer/player/clock.ts";
import { PlainClock } from "../../renderer/player/plain-clock.ts";

/** Milliseconds between frames of the stand-in screen. */
const frameMilliseconds = 20;
let now = 0;
let frames = new Map<number, (now: number) => void>();

beforeEach(() => {
  now = 0;
  frames = new Map();
  let last = 0;
  vi.stubGlobal("requestAnimationFrame", (run: (now: number) => void) => frames.set(++last, run) && last);
  vi.stubGlobal("cancelAnimationFrame", (frame: number) => frames.delete(frame));
  vi.spyOn(performance, "now").mockImplementation(() => now);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

function pass(seconds: number): void {
  for (let step = 0; step < (seconds * 1000) / frameMilliseconds; step++) {
    now += frameMilliseconds;
    const due = [...frames.values()];
    frames.clear();
    for (const run of due) run(now);
  }
}

test("runs at its rate, stops at the end, and starts over from there", () => {
  const clock = new PlainClock(10);
  clock.setRate(2);
  clock.play();
  pass(2);
  expect(clock.read().time).toBeCloseTo(4, 1);
  pass(10);
  expect(clock.read()).toMatchObject({ time: 10, playing: false });
  clock.play();
  pass(0.5);
  expect(clock.read().time).toBeCloseTo(1, 1);
});

test("a seek is held within the recording, and a step pauses", () => {
  const clock = new PlainClock(10);
  clock.seek(-5);
  expect(clock.read().time).toBe(0);
  clock.seek(99);
  expect(clock.read().time).toBe(10);
  clock.seek(5);
  clock.play();
  clock.step(-1);
  expect(clock.read()).toMatchObject({ playing: false, time: 5 - 1 / 25 });
});

test("hearing starts a second early, stops at the stretch's end, and says so once", () => {
  const clock = new PlainClock(100);
  const heardOut = vi.fn();
  clock.hear([{ start: 20, end: 22 }], heardOut);
  expect(clock.read().time).toBe(20 - leadSeconds);
  pass(2.9);
  expect(clock.read().playing).toBe(true);
  expect(heardOut).not.toHaveBeenCalled();
  pass(1);
  expect(clock.read().playing).toBe(false);
  expect(clock.read().time).toBeCloseTo(22, 1);
  pass(5);
  expect(heardOut).toHaveBeenCalledOnce();
});

test("two stretches are heard in turn", () => {
  const clock = new PlainClock(100);
  const heard: number[] = [];
  clock.subscribe(() => heard.push(clock.read().time));
  clock.hear([
    { start: 20, end: 21 },
    { start: 50, end: 51 },
  ]);
  pass(10);
  expect(clock.read()).toMatchObject({ playing: false });
  expect(clock.read().time).toBeCloseTo(51, 1);
  expect(heard.some((time) => time > 21.2 && time < 49)).toBe(false);
});

test.for([
  { name: "pause", act: (clock: PlainClock) => clock.pause() },
  { name: "seek", act: (clock: PlainClock) => clock.seek(60) },
  { name: "play", act: (clock: PlainClock) => clock.play() },
])("$name ends a hearing without calling it heard", ({ act }) => {
  const clock = new PlainClock(100);
  const heardOut = vi.fn();
  clock.hear([{ start: 20, end: 22 }], heardOut);
  pass(0.5);
  act(clock);
  pass(6);
  expect(heardOut).not.toHaveBeenCalled();
});

test("rates go up and down one notch and stop at the ends", () => {
  const clock = new PlainClock(10);
  clock.shiftRate(1);
  expect(clock.read().rate).toBe(1.25);
  clock.shiftRate(-1);
  clock.shiftRate(-1);
  expect(clock.read().rate).toBe(0.75);
  for (let turn = 0; turn < 20; turn++) clock.shiftRate(1);
  expect(clock.read().rate).toBe(rates.at(-1));
});

test("the shuttle runs back, faster at each notch, and stops at the beginning", () => {
  const clock = new PlainClock(100);
  clock.seek(50);
  clock.shuttle(-1);
  pass(2);
  expect(clock.read()).toMatchObject({ backward: 1, playing: false });
  expect(clock.read().time).toBeCloseTo(48, 1);
  clock.shuttle(-1);
  clock.shuttle(-1);
  pass(2);
  expect(clock.read().backward).toBe(4);
  expect(clock.read().time).toBeCloseTo(40, 0);
  for (let press = 0; press < 5; press++) clock.shuttle(-1);
  expect(clock.read().backward).toBe(backwardSpeeds.at(-1));
  pass(10);
  expect(clock.read()).toMatchObject({ time: 0, backward: 0 });
});

test("the shuttle turns round, and whatever else the person does ends it", () => {
  const clock = new PlainClock(100);
  clock.seek(50);
  clock.shuttle(-1);
  clock.shuttle(1);
  expect(clock.read()).toMatchObject({ backward: 0, playing: true, rate: 1 });
  clock.shuttle(1);
  expect(clock.read().rate).toBe(1.25);
  clock.halt();
  expect(clock.read()).toMatchObject({ playing: false, rate: 1 });
  for (const end of [
    () => clock.pause(),
    () => clock.seek(20),
    () => clock.step(1),
    () => clock.toggle(),
    () => clock.hear([{ start: 5, end: 6 }]),
  ]) {
    clock.shuttle(-1);
    end();
    expect(clock.read().backward).toBe(0);
    const { time, playing } = clock.read();
    pass(0.5);
    if (!playing) expect(clock.read().time).toBe(time);
  }
});

test("the volume stays between none and all, and turning it brings back a sound that was off", () => {
  const clock = new PlainClock(10);
  clock.setVolume(0.95);
  clock.setVolume(clock.read().volume + 0.1);
  expect(clock.read().volume).toBe(1);
  clock.setVolume(-1);
  expect(clock.read().volume).toBe(0);
  clock.toggleMuted();
  clock.setVolume(0.3);
  expect(clock.read()).toMatchObject({ volume: 0.3, muted: false });
});
