// npm run bench, or this file alone: frames of the page over a recording of 10,000 captions and 2,000 marks, against an empty page in the
// same run. With --profile, what took the time.
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "@playwright/test";
import { buildPage, pageIsOld } from "../../electron/launch/build-parts.ts";
import { openLoopback } from "../../electron/loopback.ts";
import { lapOf } from "../e2e/support/lap.ts";
import { findOrGetBrowser } from "../support/runner/find-browser.ts";
import { type Frames, framesDuring } from "./frames.ts";
import { makeLongRecording } from "./long-recording.ts";

/** A frame of 60 in a second lasts 16.7 ms. */
const leastMilliseconds = 17;
/** Where the machine itself is slower, a frame may take this much of an empty page's. */
const mostOfEmpty = 1.25;
const size = { captions: 10_000, marks: 2000 };
/** How long each thing is done. */
const seconds = 4;

const folder = mkdtempSync(join(tmpdir(), "roundwalk-bench-"));
const libraryFile = join(folder, "library.sqlite");

/** Does a step over and over until the time is up, about as often as a hand would. */
async function over(step: (turn: number) => Promise<unknown>, pause = 15): Promise<void> {
  const end = performance.now() + seconds * 1000;
  for (let turn = 0; performance.now() < end; turn++) {
    await step(turn);
    await new Promise((later) => setTimeout(later, pause));
  }
}

const letters = "trunk lid and rear tires two fifteen ";
/** Moves the hand back and forth over a part of the window, with the button held down or not. */
const swept = (page: Page, box: { x: number; y: number; width: number; height: number }, part = 1) =>
  over((turn) => {
    const way = Math.abs(((turn * 0.013) % 2) - 1);
    return page.mouse.move(box.x + 4 + way * (box.width - 8) * part, box.y + box.height * 0.5);
  });

async function boxOf(page: Page, selector: string) {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`There is no ${selector} on the page.`);
  return box;
}

const tasks: readonly { name: string; work: (page: Page) => Promise<void> }[] = [
  {
    name: "scrubbing",
    work: async (page) => {
      const lap = await lapOf(page);
      const goTo = (share: number) => {
        const { x, y } = lap(share);
        return page.mouse.move(x, y);
      };
      await goTo(0.01);
      await page.mouse.down();
      await over((turn) => goTo(0.005 + Math.abs(((turn * 0.013) % 2) - 1) * 0.99));
      await page.mouse.up();
    },
  },
  {
    name: "zooming the lap strip",
    work: async (page) => {
      const { x, y } = (await lapOf(page))(0.4);
      await page.mouse.move(x, y);
      await page.keyboard.down("Control");
      await over((turn) => page.mouse.wheel(0, Math.floor(turn / 20) % 2 === 0 ? -100 : 100), 30);
      await page.keyboard.up("Control");
    },
  },
  {
    name: "scrolling captions",
    work: async (page) => {
      const box = await boxOf(page, ".captions-scroll");
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await over((turn) => page.mouse.wheel(0, Math.floor(turn / 60) % 2 === 0 ? 240 : -240));
    },
  },
  {
    name: "typing in the captions' search",
    work: async (page) => {
      await page.keyboard.press("/");
      await over((turn) => (turn % 40 === 39 ? page.keyboard.press("Control+a") : page.keyboard.type(letters[turn % letters.length]!)), 60);
    },
  },
  {
    name: "asking at the Call desk",
    work: async (page) => {
      await page.evaluate(() => {
        window.location.hash = "#/call";
      });
      await page.getByRole("combobox", { name: "Ask the library" }).waitFor();
      await over((turn) => (turn % 40 === 39 ? page.keyboard.press("Control+a") : page.keyboard.type(letters[turn % letters.length]!)), 60);
    },
  },
];

const columns = ["frames", "median ms", "95th p. ms", "longest", "longest task", "own work 95th p.", "95th p./empty"] as const;
const line = (name: string, frames: Frames, empty: Frames): string => {
  const { count, median, percentile95, longest, longestTask, ownWork95 } = frames;
  const cells = [
    String(count),
    ...[median, percentile95, longest, longestTask, ownWork95].map((value) => value.toFixed(1)),
    (percentile95 / empty.percentile95).toFixed(2),
  ];
  return name.padEnd(32) + cells.map((cell, at) => cell.padStart((columns[at]?.length ?? 0) + 3)).join("");
};

try {
  if (pageIsOld()) await buildPage("warn");
  const id = await makeLongRecording(libraryFile, size);
  const loopback = await openLoopback({ libraryFile, version: "0.0.0", demoFolder: null });
  const root = process.getuid?.() === 0;
  const browser = await chromium.launch({ executablePath: findOrGetBrowser().executablePath, args: root ? ["--no-sandbox"] : [] });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const session = await page.context().newCDPSession(page);

  // An empty page of its own, looked at right before each thing that is done: the machine may be busier at one time than at another.
  const blank = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const blankSession = await blank.context().newCDPSession(blank);
  await page.goto(loopback.entryAddress());
  await page.goto(`${loopback.origin}/#/recording/${id}/mark`);
  await page.locator(".captions-scroll li").first().waitFor();
  await page.waitForTimeout(2000);
  const profiled = process.argv.includes("--profile");
  const rows: { name: string; frames: Frames; empty: Frames }[] = [];
  for (const { name, work } of tasks) {
    await blank.bringToFront();
    const empty = await framesDuring(blank, blankSession, () => swept(blank, { x: 0, y: 0, width: 1440, height: 900 }));
    await page.bringToFront();
    await page.waitForTimeout(300);
    if (profiled) {
      await session.send("Profiler.enable");
      await session.send("Profiler.start");
    }
    const frames = await framesDuring(page, session, () => work(page));
    rows.push({ name, frames, empty });
    if (profiled) {
      console.log(`\n${name}:\n${heaviest((await session.send("Profiler.stop")).profile)}`);
      for (const [what, milliseconds] of frames.spent.slice(0, 14)) console.log(`${milliseconds.toFixed(0).padStart(7)} ms  ${what}`);
    }
    await page.waitForTimeout(500);
  }
  const version = browser.version();
  await browser.close();
  await loopback.close();

  console.log(
    `${size.captions} captions, ${size.marks} marks, no video; Chromium ${version} without a screen; ${availableParallelism()} cores, load ${loadavg()[0]!.toFixed(1)}.`,
  );
  console.log(`\n${"".padEnd(32)}${columns.map((column) => `   ${column}`).join("")}`);
  for (const { name, frames, empty } of rows) {
    console.log(line(name, frames, empty));
    console.log(line("  an empty page right before", empty, empty));
  }
  const late = rows.filter(
    ({ frames: { percentile95 }, empty }) => percentile95 >= leastMilliseconds && percentile95 > empty.percentile95 * mostOfEmpty,
  );
  console.log(
    late.length === 0
      ? `\nHeld: the 95th percentile is under ${leastMilliseconds} ms, or within ${mostOfEmpty} of the empty page's.`
      : `\nNot held by: ${late.map(({ name }) => name).join(", ")}.`,
  );
  if (late.length > 0) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}

interface Profile {
  readonly nodes: readonly {
    readonly id: number;
    readonly callFrame: { readonly functionName: string; readonly lineNumber: number; readonly columnNumber: number };
  }[];
  readonly samples?: readonly number[];
  readonly timeDeltas?: readonly number[];
}

/** The functions that took most of the main thread's time themselves. */
function heaviest({ nodes, samples = [], timeDeltas = [] }: Profile): string {
  const names = new Map(
    nodes.map(({ id, callFrame }) => [id, `${callFrame.functionName || "(anonymous)"}:${callFrame.lineNumber}:${callFrame.columnNumber}`]),
  );
  const spent = new Map<string, number>();
  for (const [at, sample] of samples.entries()) {
    const name = names.get(sample) ?? "";
    spent.set(name, (spent.get(name) ?? 0) + (timeDeltas[at] ?? 0) / 1000);
  }
  return [...spent]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 14)
    .map(([name, milliseconds]) => `${milliseconds.toFixed(0).padStart(7)} ms  ${name}`)
    .join("\n");
}
