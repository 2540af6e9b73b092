import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { CDPSession, Page } from "@playwright/test";
import { type Load, type StandIn, type StandInOptions, startStandIn } from "../../support/electron-stand-in/start-stand-in.ts";
import { pageWorld, preloadWorld } from "../../support/electron-stand-in/worlds.ts";

const preloadFile = fileURLToPath(new URL("../../../.build/desktop/preload.cjs", import.meta.url));
const ownOrigin = "app://roundwalk";
const preloadName = "preload";

export interface StandInDesk {
  readonly page: Page;
  readonly standIn: StandIn;
  /** Addresses beyond the application's own that the page tried, and what became of each. */
  readonly outside: { readonly url: string; readonly verdict: string }[];
  /** What the page complained of. */
  readonly complaints: string[];
  /** Runs in the preload's world. */
  readonly inPreload: (expression: string) => Promise<unknown>;
  readonly quit: () => Promise<number | null>;
}

interface World {
  readonly id: number;
  readonly frame: string;
  readonly origin: string;
}

/** Opens the built desktop over the stand-in, with its page in this browser. Resolves when the window is shown. */
export async function openStandInDesk(page: Page, options: Omit<StandInOptions, "load" | "hear" | "input" | "pdf">): Promise<StandInDesk> {
  const protocol = await page.context().newCDPSession(page);
  const worlds = await followWorlds(protocol);
  const { frameTree } = await protocol.send("Page.getFrameTree");
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  let served = "";
  const appAddress = (url: string) => (served !== "" && url.startsWith(served) ? `${ownOrigin}${url.slice(served.length)}` : url);
  const outside: { url: string; verdict: string }[] = [];
  await page.route(
    (url) => url.origin !== served && url.protocol !== "data:" && url.protocol !== "blob:",
    async (route) => {
      const url = route.request().url();
      const asked = route.request().isNavigationRequest() ? "navigate" : "request";
      outside.push({ url, verdict: `${asked} ${await standIn.ask(asked, { url })}` });
      await route.abort();
    },
  );
  page.on("popup", (popup) => {
    void standIn
      .ask("open-window", { url: popup.url() })
      .then((verdict) => outside.push({ url: popup.url(), verdict: `window ${verdict.action}` }));
    void popup.close();
  });

  const evaluate = async (world: World | undefined, expression: string) => {
    if (!world) return undefined;
    const { result, exceptionDetails } = await protocol.send("Runtime.evaluate", {
      contextId: world.id,
      expression,
      awaitPromise: true,
      returnByValue: true,
    });
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value as unknown;
  };
  const mainWorld = () => [...worlds.values()].findLast(({ frame }) => frame === frameTree.frame.id);

  const load = async ({ url, origin, sameDocument }: Load) => {
    if (origin) served = origin;
    if (sameDocument) await page.evaluate((hash) => window.location.assign(hash), new URL(url).hash);
    else await page.goto(`${served}${url.slice(ownOrigin.length)}`);
  };
  const standIn = startStandIn({
    ...options,
    load,
    hear: async ({ channel, values }) => {
      // A page that is just going hears nothing any more, as in Electron.
      await evaluate(mainWorld(), `standInEvent(${JSON.stringify(channel)}, ${JSON.stringify(values)})`).catch(() => {});
    },
    input: ({ type, keyCode }) => (type === "keyDown" ? page.keyboard.down(keyCode) : page.keyboard.up(keyCode)),
    pdf: async ({ url }) => {
      const paper = await page.context().newPage();
      try {
        await paper.goto(url);
        return await paper.pdf({ printBackground: true });
      } finally {
        await paper.close();
      }
    },
  });

  protocol.on("Runtime.bindingCalled", async ({ name, payload, executionContextId }) => {
    if (name !== "standInWire") return;
    const world = worlds.get(executionContextId);
    const { number, channel, values: given } = JSON.parse(payload) as { number: number; channel: string; values: unknown[] };
    const values = await Promise.all(given.map((value) => withPath(executionContextId, value)));
    const frame = world ? { origin: appAddress(world.origin), top: world.frame === frameTree.frame.id } : null;
    const reply = await standIn.ask("invoke", { channel, values, frame }).then(
      (value) => ({ number, value }),
      (failure: Error) => ({ number, failure: `Error invoking remote method '${channel}': ${failure.message}` }),
    );
    await evaluate(world, `standInReply(${JSON.stringify(reply)})`).catch(() => {});
  });
  /** A file's path, as the browser knows it; "" for one that a script has made. */
  const withPath = async (contextId: number, value: unknown): Promise<unknown> => {
    const [, place] = (typeof value === "string" && /^stand-in-file:(\d+)$/.exec(value)) || [];
    if (place === undefined) return value;
    const { result } = await protocol.send("Runtime.evaluate", { contextId, expression: `standInFiles[${place}]` });
    return (await protocol.send("DOM.getFileInfo", { objectId: result.objectId as string })).path;
  };
  const moved = (url: string, sameDocument: boolean) =>
    void standIn.ask("navigated", { url: appAddress(url), sameDocument }).catch(() => {});
  protocol.on("Page.navigatedWithinDocument", ({ url, frameId }) => frameId === frameTree.frame.id && moved(url, true));

  await protocol.send("Runtime.addBinding", { name: "standInWire", executionContextName: preloadName });
  await protocol.send("Page.addScriptToEvaluateOnNewDocument", { source: `(${pageWorld})()` });
  const source = `(${preloadWorld})(${JSON.stringify(readFileSync(preloadFile, "utf8"))})`;
  await protocol.send("Page.addScriptToEvaluateOnNewDocument", { source, worldName: preloadName });

  const shown = await Promise.race([
    standIn.ended.then((code) => `ended with ${code}`),
    (async () => {
      while (standIn.of("shown").length === 0) await new Promise((next) => setTimeout(next, 30));
      return "shown";
    })(),
  ]);
  if (shown !== "shown") throw new Error(`The desktop ${shown} before its window was shown:\n${standIn.output()}`);
  return {
    page,
    standIn,
    outside,
    complaints,
    inPreload: (expression) => evaluate(mainWorld(), expression),
    quit: async () => {
      await standIn.ask("quit").catch(() => {});
      return standIn.ended;
    },
  };
}

/** The preload's worlds that are there now. */
async function followWorlds(protocol: CDPSession): Promise<Map<number, World>> {
  const worlds = new Map<number, World>();
  protocol.on("Runtime.executionContextCreated", ({ context: { id, name, origin, auxData } }) => {
    if (name === preloadName) worlds.set(id, { id, frame: String(auxData?.frameId), origin });
  });
  protocol.on("Runtime.executionContextDestroyed", ({ executionContextId }) => worlds.delete(executionContextId));
  protocol.on("Runtime.executionContextsCleared", () => worlds.clear());
  await protocol.send("Page.enable");
  await protocol.send("Runtime.enable");
  return worlds;
}

export const demoFolder = join(fileURLToPath(new URL("../../..", import.meta.url)), "fixtures", "demo");
