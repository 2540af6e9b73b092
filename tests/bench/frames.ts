import type { CDPSession, Page } from "@playwright/test";

/** Frames of a page while something is done in it, from Chromium's own trace. Milliseconds. */
export interface Frames {
  readonly count: number;
  readonly median: number;
  readonly percentile95: number;
  readonly longest: number;
  /** The longest that the page's main thread was busy with one thing. */
  readonly longestTask: number;
  /** 95th percentile of the main thread's own time on a processor within a frame: what others on the machine take is not in it. */
  readonly ownWork95: number;
  /** Where the main thread's time went, by the trace's own names, heaviest first; of nested things each has the whole. */
  readonly spent: readonly (readonly [name: string, milliseconds: number])[];
}

/** Names the moment in the trace from which on frames are looked at. */
const startMark = "bench-frames";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
  /** Microseconds on a processor. */
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly type?: string }; readonly name?: string };
}

/** Frames that follow one another without a gap, so that a frame that comes late is seen as late, and one without work is counted too. */
function keepDrawing(page: Page): Promise<void> {
  return page.evaluate((mark) => {
    performance.mark(mark);
    const dot = document.createElement("div");
    dot.setAttribute("aria-hidden", "true");
    dot.className = mark;
    dot.style.cssText = "position:fixed;left:0;top:0;width:2px;height:2px;z-index:99;pointer-events:none";
    document.body.append(dot);
    let on = false;
    const draw = () => {
      if (!dot.isConnected) return;
      on = !on;
      dot.style.backgroundColor = on ? "#777" : "#888";
      requestAnimationFrame(draw);
    };
    requestAnimationFrame(draw);
  }, startMark);
}

function stopDrawing(page: Page): Promise<void> {
  return page.evaluate((mark) => document.querySelector(`.${mark}`)?.remove(), startMark);
}

/** Frames from the page's `Tracing` domain while `work` is done: the time from the start of one frame of the main thread to the next. */
export async function framesDuring(page: Page, session: CDPSession, work: () => Promise<void>): Promise<Frames> {
  const events: TraceEvent[] = [];
  const gather = ({ value }: { value: unknown[] }) => events.push(...(value as TraceEvent[]));
  session.on("Tracing.dataCollected", gather);
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: {
      includedCategories: [
        "devtools.timeline",
        "disabled-by-default-devtools.timeline.frame",
        "devtools.timeline.frame",
        "toplevel",
        "blink.user_timing",
      ],
    },
  });
  await keepDrawing(page);
  await work();
  await stopDrawing(page);
  const done = new Promise<void>((resolve) => session.once("Tracing.tracingComplete", () => resolve()));
  await session.send("Tracing.end");
  await done;
  session.off("Tracing.dataCollected", gather);

  // Every process that draws is in the trace; the page's own thread is the one that set the mark.
  const started = events.find(({ name }) => name === startMark);
  if (!started) throw new Error("The page's own thread is not in the trace.");
  const ours = events.filter(({ pid, tid }) => pid === started.pid && tid === started.tid);
  const starts = ours
    .filter(({ name }) => name === "FireAnimationFrame")
    .map(({ ts }) => ts / 1000)
    .sort((a, b) => a - b)
    // Several callbacks belong to one frame.
    .filter((at, index, all) => index === 0 || at - all[index - 1]! > 2);
  const times = starts.slice(1).map((at, index) => at - starts[index]!);
  times.sort((a, b) => a - b);
  const tasks = ours.filter(({ name, ph }) => ph === "X" && /RunTask$/.test(name));
  const ownWork = new Array<number>(starts.length).fill(0);
  for (const { ts, tdur = 0 } of tasks) {
    const frame = starts.findLastIndex((at) => at <= ts / 1000);
    if (frame >= 0) ownWork[frame] = ownWork[frame]! + tdur / 1000;
  }
  ownWork.sort((a, b) => a - b);
  const spent = new Map<string, number>();
  for (const { name, ph, dur = 0 } of ours) if (ph === "X") spent.set(name, (spent.get(name) ?? 0) + dur / 1000);
  return {
    count: times.length,
    median: times[Math.floor(times.length / 2)] ?? Number.NaN,
    percentile95: times[Math.floor(times.length * 0.95)] ?? Number.NaN,
    longest: times.at(-1) ?? Number.NaN,
    longestTask: Math.max(0, ...tasks.map(({ dur = 0 }) => dur / 1000)),
    ownWork95: ownWork[Math.floor(ownWork.length * 0.95)] ?? Number.NaN,
    spent: [...spent].sort(([, a], [, b]) => b - a),
  };
}
