import { BrowserWindow } from "electron";
import { appOrigin } from "./app-scheme.ts";

/** @param preload path of the built preload. */
export async function openMainWindow(preload: string): Promise<BrowserWindow> {
  const window = new BrowserWindow({
    width: 1440,
    height: 900,
    minWidth: 960,
    minHeight: 640,
    title: "Roundwalk",
    show: false,
    webPreferences: { preload, contextIsolation: true, sandbox: true, nodeIntegration: false, webviewTag: false, spellcheck: false },
  });
  window.once("ready-to-show", () => window.show());
  await window.loadURL(`${appOrigin}/`);
  return window;
}
