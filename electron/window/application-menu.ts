import { Menu, type MenuItemConstructorOptions } from "electron";
import type { ShellTexts } from "./shell-texts.ts";

/** What the menus do. */
export interface MenuActions {
  readonly importFiles: () => void;
  readonly openRecording: (recordingId: string) => void;
  readonly print: () => void;
  readonly savePdf: () => void;
  readonly showLibrary: () => void;
  /** Absent where the start named a library of its own: another start would not follow. */
  readonly moveLibrary?: () => void;
  readonly otherLibrary?: () => void;
  readonly openHelp: () => void;
  readonly copyDiagnostics: () => void;
  readonly showLog: () => void;
}

export interface MenuState {
  /** Opened last, the latest first. */
  readonly recent: readonly { readonly id: string; readonly title: string }[];
  /** Whether the page shows a recording, so that its condition index can be printed. */
  readonly recordingShown: boolean;
}

/** The system's usual entries and the shell's own. Undo and redo are left to the page: there they are the library's edits, not a text field's. */
export function menuTemplate(
  { menu: texts }: Pick<ShellTexts, "menu">,
  actions: MenuActions,
  { recent, recordingShown }: MenuState,
  platform: NodeJS.Platform,
): MenuItemConstructorOptions[] {
  const mac = platform === "darwin";
  const line: MenuItemConstructorOptions = { type: "separator" };
  const recentItems: MenuItemConstructorOptions[] =
    recent.length === 0
      ? [{ label: texts.noRecent, enabled: false }]
      : recent.map(({ id, title }) => ({ label: plainLabel(title), click: () => actions.openRecording(id) }));
  const { moveLibrary, otherLibrary } = actions;
  const file: MenuItemConstructorOptions[] = [
    { label: texts.importFiles, accelerator: "CmdOrCtrl+O", click: () => actions.importFiles() },
    { label: texts.recent, submenu: recentItems },
    line,
    { label: texts.print, accelerator: "CmdOrCtrl+P", enabled: recordingShown, click: () => actions.print() },
    { label: texts.savePdf, enabled: recordingShown, click: () => actions.savePdf() },
    line,
    { label: texts.showLibrary, click: () => actions.showLibrary() },
    { label: texts.moveLibrary, enabled: moveLibrary !== undefined, click: () => moveLibrary?.() },
    { label: texts.otherLibrary, enabled: otherLibrary !== undefined, click: () => otherLibrary?.() },
    line,
    mac ? { role: "close", label: texts.close } : { role: "quit", label: texts.quit },
  ];
  const edit: MenuItemConstructorOptions[] = [
    { role: "cut", label: texts.cut },
    { role: "copy", label: texts.copy },
    { role: "paste", label: texts.paste },
    { role: "pasteAndMatchStyle", label: texts.pastePlain },
    { role: "delete", label: texts.remove },
    line,
    { role: "selectAll", label: texts.selectAll },
  ];
  const view: MenuItemConstructorOptions[] = [
    { role: "reload", label: texts.reload },
    line,
    { role: "resetZoom", label: texts.actualSize },
    { role: "zoomIn", label: texts.larger },
    { role: "zoomOut", label: texts.smaller },
    line,
    { role: "togglefullscreen", label: texts.fullScreen },
  ];
  const windowItems: MenuItemConstructorOptions[] = [
    { role: "minimize", label: texts.minimize },
    mac ? { role: "zoom", label: texts.zoom } : { role: "close", label: texts.close },
  ];
  const help: MenuItemConstructorOptions[] = [
    // The key is the page's own: it is shown here, and never taken from the page. macOS would take it.
    { label: texts.openHelp, ...(mac ? {} : { accelerator: "F1", registerAccelerator: false }), click: () => actions.openHelp() },
    line,
    { label: texts.copyDiagnostics, click: () => actions.copyDiagnostics() },
    { label: texts.showLog, click: () => actions.showLog() },
    ...(mac ? [] : [line, { role: "about", label: texts.about } satisfies MenuItemConstructorOptions]),
  ];
  return [
    ...(mac ? [{ role: "appMenu" } satisfies MenuItemConstructorOptions] : []),
    { label: texts.file, submenu: file },
    { label: texts.edit, submenu: edit },
    { label: texts.view, submenu: view },
    { label: texts.window, role: "window", submenu: windowItems },
    { label: texts.help, role: "help", submenu: help },
  ];
}

export function setApplicationMenu(template: MenuItemConstructorOptions[]): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}

/** A title as a menu shows it: an ampersand would else mark a key, and a very long one widen the menu. */
function plainLabel(title: string): string {
  const short = title.length > 60 ? `${title.slice(0, 59)}…` : title;
  return short.replaceAll("&", "&&");
}
