import { EventEmitter } from "node:events";
import { existsSync } from "node:fs";
import { isAbsolute } from "node:path";
import { pathToFileURL } from "node:url";
import type Electron from "electron";
import { appStandIn, preventable } from "./app-stand-in.ts";
import { answer, askTest, tell } from "./controller.ts";
import { needsPrivileges, schemeReply, serveToBrowser } from "./scheme-stand-in.ts";
import type { SessionStandIn } from "./session-stand-in.ts";
import { checkWindow, closed, needsReady, sent } from "./strictness.ts";

let lastId = 0;
const windows = new Map<number, WindowStandIn>();

class ContentsStandIn extends EventEmitter {
  url = "";
  openHandler: OpenHandler | null = null;
  readonly #window: WindowStandIn;
  constructor(window: WindowStandIn) {
    super();
    this.#window = window;
  }
  isDestroyed(): boolean {
    return this.#window.isDestroyed();
  }
  getURL(): string {
    this.#window.needsLife();
    return this.url;
  }
  send(channel: string, ...values: unknown[]): void {
    this.#window.needsLife();
    tell("send", { window: this.#window.id, channel, values: sent(values) });
  }
  reload(): void {
    this.#window.needsLife();
    void askTest("load", { window: this.#window.id, url: this.url });
  }
  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler;
  }
  sendInputEvent(event: Electron.MouseInputEvent | Electron.MouseWheelInputEvent | Electron.KeyboardInputEvent): void {
    this.#window.needsLife();
    if (!("keyCode" in event)) throw new Error("Only keys are sent here");
    tell("input", { window: this.#window.id, event: sent(event) });
  }
  forcefullyCrashRenderer(): void {
    this.#window.needsLife();
    setImmediate(() => this.emit("render-process-gone", preventable(), { reason: "killed", exitCode: 9 }));
  }
  async printToPDF(options: Electron.PrintToPDFOptions): Promise<Buffer> {
    this.#window.needsLife();
    return Buffer.from(await askTest<Uint8Array>("pdf", { url: this.url, options: sent(options) }));
  }
  print(options: Electron.WebContentsPrintOptions = {}, done: (success: boolean, reason: string) => void = () => {}): void {
    this.#window.needsLife();
    void askTest<string>("print", { url: this.url, options: sent(options) }).then((reason) => done(reason === "", reason));
  }
}

type UsedOfWindows =
  | "id"
  | "loadURL"
  | "loadFile"
  | "show"
  | "focus"
  | "isMinimized"
  | "restore"
  | "maximize"
  | "isMaximized"
  | "setFullScreen"
  | "isFullScreen"
  | "getNormalBounds"
  | "isDestroyed"
  | "close"
  | "destroy";

type OpenHandler = Parameters<Electron.WebContents["setWindowOpenHandler"]>[0];

export class WindowStandIn extends EventEmitter {
  readonly id: number;
  readonly webContents: ContentsStandIn;
  #destroyed = false;
  #maximized = false;
  #fullScreen = false;
  #bounds: Electron.Rectangle;
  #shown = false;
  readonly #session: SessionStandIn | undefined;
  /** Whoever still loads when the window goes is told at once, as by Electron's "destroyed". */
  readonly #gone = Promise.withResolvers<never>();

  constructor(options: Electron.BrowserWindowConstructorOptions = {}) {
    super();
    needsReady("BrowserWindow");
    const { webPreferences = {}, show = true, x = 0, y = 0, width = 800, height = 600 } = options;
    checkWindow(options);
    const { preload } = webPreferences;
    if (preload !== undefined && !(isAbsolute(preload) && existsSync(preload))) throw new Error(`There is no preload at ${preload}`);
    if (![x, y, width, height].every(Number.isInteger)) throw new Error("A window's bounds are whole numbers");
    this.#gone.promise.catch(() => {});
    lastId += 1;
    this.id = lastId;
    this.#bounds = { x, y, width, height };
    this.#shown = show;
    const contents = new ContentsStandIn(this);
    contents satisfies Pick<
      Electron.WebContents,
      | "isDestroyed"
      | "getURL"
      | "send"
      | "reload"
      | "setWindowOpenHandler"
      | "sendInputEvent"
      | "forcefullyCrashRenderer"
      | "printToPDF"
      | "print"
    >;
    this satisfies Pick<Electron.BrowserWindow, UsedOfWindows>;
    this.webContents = closed("webContents", contents);
    windows.set(this.id, this);
    const { session, ...plain } = webPreferences;
    this.#session = session as unknown as SessionStandIn | undefined;
    tell("window", { window: this.id, options: sent({ ...options, webPreferences: plain }) });
    appStandIn.emit("web-contents-created", preventable(), this.webContents);
    if (!contents.openHandler) throw new Error("A window whose page may open others was made");
  }
  static getAllWindows() {
    return [...windows.values()].map((window) => closed("BrowserWindow", window));
  }
  needsLife(): void {
    if (this.#destroyed) throw new TypeError("Object has been destroyed");
  }
  async loadURL(url: string): Promise<void> {
    this.needsLife();
    const address = new URL(url);
    const before = this.webContents.url === "" ? null : new URL(this.webContents.url);
    const sameDocument = before !== null && address.hash !== "" && url.split("#")[0] === before.href.split("#")[0];
    if (!sameDocument) {
      const reply = await schemeReply(new Request(url.split("#")[0] as string));
      await reply.body?.cancel();
      if (reply.status >= 400) throw new Error(`ERR_FAILED (${reply.status}) loading '${url}'`);
    }
    needsPrivileges(address.protocol.slice(0, -1));
    const origin = await this.#servedOrigin(address);
    await Promise.race([askTest("load", { window: this.id, url, origin, sameDocument }), this.#gone.promise]);
    this.navigated(url, sameDocument);
    if (!this.#shown) this.emit("ready-to-show");
  }
  async loadFile(file: string): Promise<void> {
    this.needsLife();
    if (!existsSync(file)) throw new Error(`ERR_FILE_NOT_FOUND (-6) loading '${file}'`);
    const { href: url } = pathToFileURL(file);
    // What the window's own session cancels is not loaded, the page itself not excepted.
    const cancelled = await new Promise((judged) =>
      this.#session ? this.#session.beforeRequest({ url }, ({ cancel }) => judged(cancel)) : judged(false),
    );
    if (cancelled) throw new Error(`ERR_BLOCKED_BY_CLIENT (-20) loading '${url}'`);
    this.webContents.url = url;
  }
  navigated(url: string, sameDocument: boolean): void {
    this.webContents.url = url;
    if (sameDocument) this.webContents.emit("did-navigate-in-page", preventable(), url, true, 1, 1);
    else this.webContents.emit("did-navigate", preventable(), url, 200, "OK");
  }
  static #origins = new Map<string, Promise<string>>();
  #servedOrigin({ protocol, host }: URL): Promise<string> {
    const key = `${protocol}//${host}`;
    const served = WindowStandIn.#origins.get(key) ?? serveToBrowser(protocol.slice(0, -1), host);
    WindowStandIn.#origins.set(key, served);
    return served;
  }
  show(): void {
    this.needsLife();
    this.#shown = true;
    tell("shown", { window: this.id, bounds: this.#bounds, maximized: this.#maximized });
  }
  focus(): void {
    this.needsLife();
    tell("focus", { window: this.id });
  }
  isMinimized(): boolean {
    this.needsLife();
    return false;
  }
  restore(): void {
    this.needsLife();
  }
  maximize(): void {
    this.needsLife();
    this.#maximized = true;
  }
  isMaximized(): boolean {
    this.needsLife();
    return this.#maximized;
  }
  setFullScreen(on: boolean): void {
    this.needsLife();
    this.#fullScreen = on;
  }
  isFullScreen(): boolean {
    this.needsLife();
    return this.#fullScreen;
  }
  getNormalBounds(): Electron.Rectangle {
    this.needsLife();
    return { ...this.#bounds };
  }
  /** As a hand on the frame does. */
  place(bounds: Electron.Rectangle): void {
    this.#bounds = bounds;
  }
  isDestroyed(): boolean {
    return this.#destroyed;
  }
  close(): void {
    this.needsLife();
    const event = preventable();
    this.emit("close", event);
    if (!event.defaultPrevented) this.destroy();
  }
  destroy(): void {
    if (this.#destroyed) return;
    this.#destroyed = true;
    windows.delete(this.id);
    this.#gone.reject(new Error("ERR_FAILED (-2): the window has gone while it was loading"));
    tell("destroyed", { window: this.id });
    this.emit("closed");
    // Also when the last was never shown: a hidden window keeps an application open, and its end ends it.
    if (windows.size === 0) appStandIn.emit("window-all-closed");
  }
}

appStandIn.closeWindows = () => {
  for (const window of [...windows.values()]) window.close();
  return windows.size === 0;
};

const main = () => [...windows.values()][0] as WindowStandIn;
const contentsEvent = (name: string, url: string, more: object = {}) => {
  const event = preventable({ url, ...more });
  main().webContents.emit(name, event, url);
  return event.defaultPrevented ? "stopped" : "allowed";
};
answer("navigate", ({ url }: { url: string }) => contentsEvent("will-navigate", url));
answer("navigate-frame", ({ url }: { url: string }) => contentsEvent("will-frame-navigate", url, { isMainFrame: false }));
answer("redirect", ({ url }: { url: string }) => contentsEvent("will-redirect", url));
answer("webview", () => contentsEvent("will-attach-webview", ""));
answer("open-window", ({ url }: { url: string }) => {
  const verdict = main().webContents.openHandler?.({ url } as Electron.HandlerDetails);
  if (verdict?.action !== "allow" && verdict?.action !== "deny") throw new Error("A window-open handler answers allow or deny");
  return verdict;
});
answer("navigated", ({ url, sameDocument }: { url: string; sameDocument: boolean }) => main().navigated(url, sameDocument));
answer("page-gone", (details: object) => void main().webContents.emit("render-process-gone", preventable(), details));
answer("page-hangs", () => void main().emit("unresponsive"));
answer("page-answers", () => void main().emit("responsive"));
answer("place-window", (bounds: Electron.Rectangle) => main().place(bounds));
answer("close-window", () => main().close());
