import type { CDPSession, Page } from "@playwright/test";

/** Frames of a page while something is done in it, from Chromium's own trace. Milliseconds. */
export interface Frames {
  readonly count: number;
  readonly median: number;
  readonly percentile95: number;
  readonly longest: number;
  /** The longest that the page's main thread was busy with one thing. */
  readonly longestTask: number;
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
  readonly args?: { readonly data?: { readonly type?: string }; readonly name?: string };
}

/** Starts frames that follow one another without a gap, so that a frame that comes late is seen as late, and one without work is counted too. */
export function keepDrawing(page: Page): Promise<void> {
  return page.evaluate(() => {
    const dot = document.createElement("div");
    dot.setAttribute("aria-hidden", "true");
    dot.style.cssText = "position:fixed;left:0;top:0;width:2px;height:2px;z-index:99;pointer-events:none";
    document.body.append(dot);
    let on = false;
    const draw = () => {
      on = !on;
      dot.style.backgroundColor = on ? "#777" : "#888";
      requestAnimationFrame(draw);
    };
    requestAnimationFrame(draw);
  });
}

/** Frames from the page's `Tracing` domain while `work` is done: the time from the start of one frame of the main thread to the next. */
export async function framesDuring(page: Page, session: CDPSession, work: () => Promise<void>): Promise<Frames> {
  const events: TraceEvent[] = [];
  const gather = ({ value }: { value: unknown[] }) => events.push(...(value as TraceEvent[]));
  session.on("Tracing.dataCollected", gather);
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: {
      includedCategories: ["devtools.timeline", "disabled-by-default-devtools.timeline.frame", "devtools.timeline.frame", "toplevel"],
    },
  });
  await page.evaluate(() => performance.mark("bench-from"));
  await work();
  const done = new Promise<void>((resolve) => session.once("Tracing.tracingComplete", () => resolve()));
  await session.send("Tracing.end");
  await done;
  session.off("Tracing.dataCollected", gather);

  // Frames are begun in every process that draws; the page's is the one that ran most animation frames.
  const fired = new Map<string, number>();
  for (const { name, pid, tid } of events)
    if (name === "FireAnimationFrame") fired.set(`${pid} ${tid}`, (fired.get(`${pid} ${tid}`) ?? 0) + 1);
  const [thread] = [...fired].sort(([, a], [, b]) => b - a)[0] ?? [];
  if (!thread) throw new Error("The trace holds no animation frame.");
  const ours = events.filter(({ pid, tid }) => `${pid} ${tid}` === thread);
  const starts = ours
    .filter(({ name }) => name === "FireAnimationFrame")
    .map(({ ts }) => ts / 1000)
    .sort((a, b) => a - b)
    // Several callbacks belong to one frame.
    .filter((at, index, all) => index === 0 || at - all[index - 1]! > 2);
  const times = starts.slice(1).map((at, index) => at - starts[index]!);
  times.sort((a, b) => a - b);
  const tasks = ours.filter(({ name, ph }) => ph === "X" && /RunTask/.test(name)).map(({ dur = 0 }) => dur / 1000);
  return {
    count: times.length,
    median: times[Math.floor(times.length / 2)] ?? Number.NaN,
    percentile95: times[Math.floor(times.length * 0.95)] ?? Number.NaN,
    longest: times.at(-1) ?? Number.NaN,
    longestTask: Math.max(0, ...tasks),
  };
}
