import { expect, test, vi } from "vitest";
import { menuTemplate } from "../../electron/window/application-menu.ts";
import { shellTexts } from "../../electron/window/shell-texts.ts";

// The template is data; only its setting needs Electron.
vi.mock("electron", () => ({ Menu: {} }));

test.for(["darwin", "win32", "linux"] as const)("another language is another table: no English is left in the menus of %s", (platform) => {
  const { menu } = shellTexts;
  const other = Object.fromEntries(Object.keys(menu).map((key) => [key, `«${key}»`])) as Record<keyof typeof menu, string>;
  const nothing = () => {};
  const actions = { importFiles: nothing, openRecording: nothing, print: nothing, savePdf: nothing, showLibrary: nothing };
  const more = { moveLibrary: nothing, otherLibrary: nothing, openHelp: nothing, copyDiagnostics: nothing, showLog: nothing };
  const entries: Electron.MenuItemConstructorOptions[] = [];
  const walk = (items: Electron.MenuItemConstructorOptions[]) => {
    for (const item of items) {
      entries.push(item);
      walk((item.submenu ?? []) as Electron.MenuItemConstructorOptions[]);
    }
  };
  walk(menuTemplate({ menu: other }, { ...actions, ...more }, { recent: [], recordingShown: true }, platform));
  // The menu that macOS names after the application is the system's own, in the system's language.
  const worded = entries.filter(({ type, role }) => type !== "separator" && role !== "appMenu");
  expect(worded.length).toBeGreaterThan(20);
  expect(worded.filter(({ label }) => !/^«\w+»$/.test(label ?? ""))).toEqual([]);
  // The usual roles, each where its system has it.
  const roles = new Set(entries.flatMap(({ role }) => role ?? []));
  for (const role of [
    "cut",
    "copy",
    "paste",
    "selectAll",
    "reload",
    "zoomIn",
    "zoomOut",
    "resetZoom",
    "togglefullscreen",
    "minimize",
    "close",
    "window",
    "help",
  ])
    expect([role, roles.has(role as never)]).toEqual([role, true]);
  expect([roles.has("appMenu"), roles.has("quit"), roles.has("about")]).toEqual(
    platform === "darwin" ? [true, false, false] : [false, true, true],
  );
});
