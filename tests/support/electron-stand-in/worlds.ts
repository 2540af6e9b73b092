import type Electron from "electron";

/**
 * The two sides of the page as Electron has them: the preload in a world of its own (Chromium's isolated worlds, which Electron uses too),
 * and the page's world, which sees only what `contextBridge` puts there. These run in the browser; they are sent there as text.
 */

/** In the page's own world: makes the exposed functions, each passing on what can be cloned. */
export function pageWorld(): void {
  const callbacks = new Map<number, (...values: unknown[]) => void>();
  const promises = new Map<number, { resolve: (value: unknown) => void; reject: (failure: Error) => void }>();
  let last = 0;
  interface Answer {
    readonly kind: "value" | "promise" | "function" | "failure";
    readonly value?: unknown;
    readonly id?: number;
  }
  const hear = (name: string, listener: (detail: never) => void) =>
    window.addEventListener(`stand-in:${name}`, (event) => listener((event as CustomEvent).detail as never));
  const say = (name: string, detail: unknown) => window.dispatchEvent(new CustomEvent(`stand-in:${name}`, { detail }));
  let answered: Answer | null = null;
  hear("answer", (answer: Answer) => {
    answered = answer;
  });
  hear("settled", ({ id, failure, value }: { id: number; failure?: string; value?: unknown }) => {
    const waiting = promises.get(id);
    promises.delete(id);
    if (failure === undefined) waiting?.resolve(value);
    else waiting?.reject(new Error(failure));
  });
  hear("callback", ({ id, values }: { id: number; values: unknown[] }) => callbacks.get(id)?.(...values));
  const call = (target: { path?: string; held?: number }, values: unknown[]): unknown => {
    const cloned = values.map((value) => {
      if (typeof value !== "function") return { value: structuredClone(value) };
      last += 1;
      callbacks.set(last, value as never);
      return { callback: last };
    });
    answered = null;
    say("call", { ...target, values: cloned });
    const answer = answered as Answer | null;
    if (!answer) throw new Error("The preload does not answer");
    if (answer.kind === "failure") throw new Error(String(answer.value));
    if (answer.kind === "promise") return new Promise((resolve, reject) => promises.set(answer.id as number, { resolve, reject }));
    if (answer.kind === "function") return (...more: unknown[]) => call({ held: answer.id as number }, more);
    return answer.value;
  };
  hear("expose", ({ name, functions }: { name: string; functions: string[] }) => {
    if (Object.hasOwn(window, name)) return;
    const exposed = Object.fromEntries(functions.map((key) => [key, (...values: unknown[]) => call({ path: key }, values)]));
    Object.defineProperty(window, name, { value: Object.freeze(exposed), enumerable: true });
  });
  say("page-ready", null);
}

/** In the preload's world: Electron's modules for a sandboxed preload, and nothing else to require. */
export function preloadWorld(source: string): void {
  const world = globalThis as unknown as {
    standInWire: (text: string) => void;
    standInReply: (reply: { number: number; failure?: string; value?: unknown }) => void;
    standInEvent: (channel: string, values: unknown[]) => void;
    /** Files whose path the preload asked for: the browser alone knows it, and tells it to the test. */
    standInFiles: File[];
  };
  world.standInFiles = [];
  const say = (name: string, detail: unknown) => window.dispatchEvent(new CustomEvent(`stand-in:${name}`, { detail }));
  const hear = (name: string, listener: (detail: never) => void) =>
    window.addEventListener(`stand-in:${name}`, (event) => listener((event as CustomEvent).detail as never));
  /** Stricter than structured clone: what is no JSON would differ between the two hosts. */
  const onlyJson = (value: unknown): unknown => {
    const plain = (each: unknown): boolean =>
      each === null ||
      ["string", "boolean"].includes(typeof each) ||
      (typeof each === "number" && Number.isFinite(each)) ||
      (Array.isArray(each) && each.every(plain)) ||
      (typeof each === "object" &&
        Object.getPrototypeOf(each) === Object.prototype &&
        Object.values(each as object).every((part) => part === undefined || plain(part)));
    if (!plain(value)) throw new Error("An object could not be cloned.");
    return value;
  };
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (failure: Error) => void }>();
  const listeners = new Map<string, ((event: object, ...values: unknown[]) => void)[]>();
  let last = 0;
  world.standInReply = ({ number, failure, value }) => {
    const asker = waiting.get(number);
    waiting.delete(number);
    if (failure === undefined) asker?.resolve(value);
    else asker?.reject(new Error(failure));
  };
  world.standInEvent = (channel, values) => {
    for (const listener of listeners.get(channel) ?? []) listener({}, ...values);
  };
  const exposed: { name: string; functions: Record<string, (...values: unknown[]) => unknown> }[] = [];
  const held = new Map<number, (...values: unknown[]) => unknown>();
  const expose = () => {
    for (const { name, functions } of exposed) say("expose", { name, functions: Object.keys(functions) });
  };
  hear("page-ready", expose);
  hear("call", ({ path, held: heldId, values }: { path?: string; held?: number; values: { value?: unknown; callback?: number }[] }) => {
    const target = heldId === undefined ? exposed[0]?.functions[path as string] : held.get(heldId);
    try {
      const given = values.map(({ value, callback }) =>
        callback === undefined ? value : (...more: unknown[]) => say("callback", { id: callback, values: structuredClone(more) }),
      );
      const value = target?.(...given);
      last += 1;
      const id = last;
      if (value instanceof Promise) {
        say("answer", { kind: "promise", id });
        value.then(
          (settled) => say("settled", { id, value: structuredClone(settled) }),
          (failure) => say("settled", { id, failure: String(failure instanceof Error ? failure.message : failure) }),
        );
      } else if (typeof value === "function") {
        held.set(id, value as never);
        say("answer", { kind: "function", id });
      } else say("answer", { kind: "value", value: structuredClone(value) });
    } catch (failure) {
      say("answer", { kind: "failure", value: String(failure instanceof Error ? failure.message : failure) });
    }
  });
  const electron = {
    contextBridge: {
      exposeInMainWorld(name: string, functions: Record<string, (...values: unknown[]) => unknown>) {
        if (exposed.some((each) => each.name === name))
          throw new Error("Cannot bind an API on top of an existing property on the window object");
        if (Object.values(functions).some((each) => typeof each !== "function")) throw new Error("Only functions are exposed here");
        exposed.push({ name, functions });
        expose();
      },
    },
    ipcRenderer: {
      invoke: (channel: string, ...values: unknown[]) =>
        new Promise((resolve, reject) => {
          last += 1;
          waiting.set(last, { resolve, reject });
          world.standInWire(JSON.stringify({ number: last, channel, values: onlyJson(values) }));
        }),
      on: (channel: string, listener: (event: object, ...values: unknown[]) => void) => {
        listeners.set(channel, [...(listeners.get(channel) ?? []), listener]);
      },
    },
    webUtils: {
      getPathForFile(file: unknown) {
        if (!(file instanceof File)) throw new TypeError("getPathForFile takes a File");
        return `stand-in-file:${world.standInFiles.push(file) - 1}`;
      },
    },
  } satisfies {
    contextBridge: Pick<Electron.ContextBridge, "exposeInMainWorld">;
    ipcRenderer: Pick<Electron.IpcRenderer, "invoke"> & { on: unknown };
    webUtils: Pick<Electron.WebUtils, "getPathForFile">;
  };
  const require = (name: string) => {
    if (name === "electron") return electron;
    throw new Error(`module not found: ${name}`);
  };
  const module = { exports: {} };
  // The preload's text, as a sandboxed preload runs: a function over these names alone.
  new Function("require", "module", "exports", "process", source)(require, module, module.exports, undefined);
}
