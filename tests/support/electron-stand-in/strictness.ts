import type Electron from "electron";

/** Where Electron would let something pass or fail later, the stand-in throws at once, with what its documentation says. */

const state = { ready: false };

export function becomeReady(): void {
  state.ready = true;
}

export function isReady(): boolean {
  return state.ready;
}

/** @throws before the application is ready. */
export function needsReady(what: string): void {
  if (!state.ready) throw new Error(`${what} can only be used after the app is ready`);
}

/** @throws after the application is ready. */
export function needsUnready(what: string): void {
  if (state.ready) throw new Error(`${what} should be called before app is ready`);
}

/** A value as it arrives in another process. @throws DataCloneError where it cannot be sent. */
export function sent<Value>(value: Value): Value {
  return structuredClone(value);
}

/** What is not in the stand-in is not used by the application unnoticed. */
export function closed<Thing extends object>(name: string, thing: Thing): Thing {
  return new Proxy(thing, {
    get(target, key) {
      if (typeof key === "string" && !(key in target) && key !== "then" && key !== "toJSON") {
        throw new Error(`electron.${name}.${key} is not in the stand-in; add it with the manners that its documentation names`);
      }
      const value = Reflect.get(target, key);
      return typeof value === "function" ? value.bind(target) : value;
    },
  });
}

const knownPreferences = new Set([
  "preload",
  "session",
  "contextIsolation",
  "sandbox",
  "nodeIntegration",
  "nodeIntegrationInWorker",
  "nodeIntegrationInSubFrames",
  "webSecurity",
  "allowRunningInsecureContent",
  "experimentalFeatures",
  "webviewTag",
  "navigateOnDragDrop",
  "spellcheck",
  "javascript",
]);

const knownOptions = new Set("x y width height minWidth minHeight title show webPreferences".split(" "));

/** @throws where a window is asked for with options that the stand-in does not know, or that are not safe. */
export function checkWindow({ webPreferences = {}, ...options }: Electron.BrowserWindowConstructorOptions): void {
  const unknown = Object.keys(options).filter((key) => !knownOptions.has(key));
  if (unknown.length > 0) throw new Error(`A window has no option ${unknown.join(", ")} that the stand-in knows`);
  checkPreferences(webPreferences as Record<string, unknown>);
}

/** @throws where a window's preferences open what Electron's security checklist wants closed, or are unknown. */
function checkPreferences(preferences: Record<string, unknown>): void {
  const unknown = Object.keys(preferences).filter((key) => !knownPreferences.has(key));
  if (unknown.length > 0) throw new Error(`webPreferences has no ${unknown.join(", ")} that the stand-in knows`);
  for (const key of ["contextIsolation", "sandbox"]) if (preferences[key] !== true) throw new Error(`webPreferences.${key} must be on`);
  for (const key of [
    "nodeIntegration",
    "nodeIntegrationInWorker",
    "nodeIntegrationInSubFrames",
    "allowRunningInsecureContent",
    "experimentalFeatures",
    "webviewTag",
  ]) {
    if (preferences[key] === true) throw new Error(`webPreferences.${key} must be off`);
  }
  if (preferences.webSecurity === false) throw new Error("webPreferences.webSecurity must be on");
}

const roles = new Set(
  "appMenu window help cut copy paste pasteAndMatchStyle delete selectAll reload resetZoom zoomIn zoomOut togglefullscreen minimize zoom close quit about".split(
    " ",
  ),
);

const macRoles = new Set(["appMenu", "zoom"]);

export interface MenuEntry {
  readonly label?: string;
  readonly role?: string;
  readonly type?: string;
  readonly enabled?: boolean;
  readonly accelerator?: string;
  readonly submenu?: readonly MenuEntry[];
  readonly click?: () => void;
}

/** @throws where Electron would show an empty entry, or fail only when the menu is opened. */
export function checkMenu(template: readonly MenuEntry[]): void {
  for (const { label, role, type, accelerator, submenu, click } of template) {
    if (type === "separator") continue;
    if (role !== undefined && !roles.has(role)) throw new Error(`There is no menu role ${role}`);
    if (role !== undefined && macRoles.has(role) && process.platform !== "darwin")
      throw new Error(`The menu role ${role} is macOS's alone`);
    if (role !== undefined && click !== undefined) throw new Error(`The menu role ${role} acts by itself: its click is never called`);
    if (role === undefined && (label ?? "") === "") throw new Error("A menu entry needs a label or a role");
    if (accelerator !== undefined && !/^(?:(?:CmdOrCtrl|Shift|Alt)\+)*(?:[A-Z0-9]|F[1-9])$/.test(accelerator))
      throw new Error(`${accelerator} is no accelerator`);
    if (role === undefined && submenu === undefined && click === undefined) {
      // An entry that is only to be read.
      if (template.find((entry) => entry.label === label)?.enabled !== false) throw new Error(`The menu entry ${label} does nothing`);
    }
    if (submenu) checkMenu(submenu);
  }
}

const openProperties = new Set(["openFile", "openDirectory", "multiSelections", "createDirectory", "showHiddenFiles"]);

/** @throws where a dialog's options are not what its documentation takes. */
export function checkDialog(kind: string, options: Record<string, unknown>): void {
  const {
    properties = [],
    filters = [],
    buttons,
    defaultId,
    cancelId,
  } = options as {
    properties?: string[];
    filters?: { name: string; extensions: string[] }[];
    buttons?: string[];
    defaultId?: number;
    cancelId?: number;
  };
  for (const property of properties) if (!openProperties.has(property)) throw new Error(`${kind} has no property ${property}`);
  if (properties.includes("openFile") && properties.includes("openDirectory"))
    throw new Error("On Windows and Linux a dialog chooses files or folders, never both");
  // "No wildcards or dots": "*" alone stands for every file.
  for (const { name, extensions } of filters) {
    if (!name || extensions.some((ending) => ending !== "*" && /[.*]/.test(ending))) throw new Error(`${kind} has a filter that is none`);
  }
  if (kind === "message") {
    if (!buttons || buttons.length === 0) throw new Error("A message needs a button");
    for (const id of [defaultId, cancelId])
      if (id !== undefined && !(id >= 0 && id < buttons.length)) throw new Error(`There is no button ${id}`);
    if (typeof options.message !== "string" || options.message === "") throw new Error("A message needs a text");
  }
}
