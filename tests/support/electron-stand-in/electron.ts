// The parts of Electron that the main process uses, as its documentation describes them (https://www.electronjs.org/docs/latest/api), and
// stricter where it would let something pass. No window is shown: the test at the other end of the wire plays the person and, with a
// browser, the page. Its types are checked against electron.d.ts.
import type Electron from "electron";
import { type AppStandIn, appStandIn, preventable, screenStandIn } from "./app-stand-in.ts";
import { answer, askTest, tell } from "./controller.ts";
import { protocolStandIn } from "./scheme-stand-in.ts";
import { sessionStandIn } from "./session-stand-in.ts";
import { checkDialog, checkMenu, closed, type MenuEntry, needsReady, sent } from "./strictness.ts";
import { WindowStandIn } from "./window-stand-in.ts";

export const app: AppStandIn = closed("app", appStandIn);
export const screen = closed("screen", screenStandIn);
export const protocol = closed("protocol", protocolStandIn);
export const session = closed("session", sessionStandIn);
export const BrowserWindow = WindowStandIn;

type IpcListener = Parameters<Electron.IpcMain["handle"]>[1];
const ipcHandlers = new Map<string, IpcListener>();
export const ipcMain = closed("ipcMain", {
  handle(channel: string, listener: IpcListener) {
    if (ipcHandlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
    ipcHandlers.set(channel, listener);
  },
  removeHandler: (channel: string) => void ipcHandlers.delete(channel),
} satisfies Pick<Electron.IpcMain, "handle" | "removeHandler">);

interface Invocation {
  readonly channel: string;
  readonly values: unknown[];
  /** Null for a frame that has navigated or gone. */
  readonly frame: { readonly origin: string; readonly top: boolean } | null;
}
answer("invoke", async ({ channel, values, frame }: Invocation) => {
  const listener = ipcHandlers.get(channel);
  if (!listener) throw new Error(`No handler registered for '${channel}'`);
  const senderFrame = frame && { origin: frame.origin, url: `${frame.origin}/`, parent: frame.top ? null : {} };
  return sent(await listener({ senderFrame } as unknown as Electron.IpcMainInvokeEvent, ...sent(values)));
});
answer("handled", () => [...ipcHandlers.keys()]);

async function dialogAnswer<Answer>(kind: string, given: unknown[], usual: Answer): Promise<Answer> {
  needsReady("dialog");
  const options = given.at(-1) as Record<string, unknown>;
  const { signal, ...plain } = options;
  checkDialog(kind, plain);
  const withWindow = given.length === 2;
  if (withWindow && given[0] === undefined) throw new TypeError("A dialog's window must be one");
  const aborted = new Promise<Answer>((resolve) => (signal as AbortSignal | undefined)?.addEventListener("abort", () => resolve(usual)));
  return Promise.race([askTest<Answer>("dialog", { kind, options: sent(plain) }), aborted]);
}
export const dialog = closed("dialog", {
  showErrorBox: (title: string, content: string) => tell("error-box", { title, content }),
  showMessageBox: (...given: unknown[]) =>
    dialogAnswer("message", given, {
      response: (given.at(-1) as Electron.MessageBoxOptions).cancelId ?? 0,
      checkboxChecked: false,
    } satisfies Electron.MessageBoxReturnValue),
  showOpenDialog: (...given: unknown[]) =>
    dialogAnswer("open", given, { canceled: true, filePaths: [] } satisfies Electron.OpenDialogReturnValue),
  showSaveDialog: (...given: unknown[]) =>
    dialogAnswer("save", given, { canceled: true, filePath: "" } satisfies Electron.SaveDialogReturnValue),
} satisfies Pick<Electron.Dialog, "showErrorBox" | "showMessageBox" | "showOpenDialog" | "showSaveDialog">);

export const shell = closed("shell", {
  openPath: (path: string) => askTest<string>("open-path", path),
  showItemInFolder: (path: string) => tell("show-item", path),
  openExternal: async (url: string) => {
    // Electron would pass on whatever it gets.
    if (new URL(url).protocol !== "https:") throw new Error(`Only https is opened outside, not ${url}`);
    await askTest("open-outside", url);
  },
} satisfies Pick<Electron.Shell, "openPath" | "showItemInFolder" | "openExternal">);

export const clipboard = closed("clipboard", {
  writeText: async (text: string) => {
    needsReady("clipboard");
    await askTest("clipboard", text);
  },
} satisfies Pick<Electron.Clipboard, "writeText">);

let menu: readonly MenuEntry[] = [];
export const Menu = closed("Menu", {
  buildFromTemplate: (template: Electron.MenuItemConstructorOptions[]) => {
    checkMenu(template as MenuEntry[]);
    return template as unknown as Electron.Menu;
  },
  setApplicationMenu: (built: Electron.Menu | null) => {
    needsReady("Menu");
    menu = (built ?? []) as unknown as MenuEntry[];
  },
} satisfies Pick<typeof Electron.Menu, "buildFromTemplate" | "setApplicationMenu">);

/** The entry at "File > Recent recordings > Title". */
function entryAt(path: string): MenuEntry {
  let entries = menu;
  let found: MenuEntry | undefined;
  for (const label of path.split(" > ")) {
    found = entries.find((entry) => entry.label === label);
    if (!found)
      throw new Error(
        `There is no menu entry ${label} of ${path}; there are: ${entries.map((entry) => entry.label ?? entry.type).join(", ")}`,
      );
    entries = found.submenu ?? [];
  }
  return found as MenuEntry;
}
answer("menu", (path: string) => {
  const entry = entryAt(path);
  return {
    enabled: entry.enabled !== false,
    role: entry.role ?? null,
    below: (entry.submenu ?? []).map(({ label, type }) => label ?? type),
  };
});
answer("choose", (path: string) => {
  const { enabled, click } = entryAt(path);
  if (enabled === false) throw new Error(`The menu entry ${path} cannot be chosen now`);
  click?.();
});
answer("quit", () => {
  setImmediate(() => appStandIn.quit());
});
answer("open-file", (path: string) => {
  const event = preventable();
  appStandIn.emit("open-file", event, path);
  return event.defaultPrevented;
});
answer("open-url", (url: string) => {
  const event = preventable();
  appStandIn.emit("open-url", event, url);
  return event.defaultPrevented;
});
answer("fail", (how: string) => {
  if (how === "promise") void Promise.reject(new Error("a promise that nobody waited for"));
  else
    setImmediate(() => {
      throw new Error("an error that nobody caught");
    });
});
