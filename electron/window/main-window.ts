import { BrowserWindow, screen } from "electron";
import { appOrigin } from "./app-scheme.ts";
import { readSmallFile, writeSmallFile } from "./small-file.ts";
import { leastSize, placeOnScreens, readWindowPlace } from "./window-place.ts";

export interface MainWindowOptions {
  /** Path of the built preload. */
  readonly preload: string;
  /** Where the window's place is kept between starts. */
  readonly placeFile: string;
  /** What the page shows first; "" for the library. */
  readonly hash: string;
  /** Before the page is loaded. */
  readonly prepare: (window: BrowserWindow) => void;
}

/** The one window that shows the application; those that print are none of it. */
export function applicationWindow(): BrowserWindow | undefined {
  return BrowserWindow.getAllWindows().find((window) => !window.isDestroyed() && window.webContents.getURL().startsWith(`${appOrigin}/`));
}

/** Opens the one window where it was left, on a screen that is there now. It may be closed again by the time this resolves. */
export async function openMainWindow({ preload, placeFile, hash, prepare }: MainWindowOptions): Promise<BrowserWindow> {
  const primary = screen.getPrimaryDisplay();
  const others = screen.getAllDisplays().filter(({ id }) => id !== primary.id);
  const place = placeOnScreens(
    readWindowPlace(readSmallFile(placeFile)),
    [primary, ...others].map(({ workArea }) => workArea),
  );
  const { x, y, width, height } = place;
  const window = new BrowserWindow({
    x,
    y,
    width,
    height,
    minWidth: leastSize.width,
    minHeight: leastSize.height,
    title: "Roundwalk",
    show: false,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  if (place.maximized) window.maximize();
  if (place.fullScreen) window.setFullScreen(true);
  window.on("close", () => {
    try {
      writeSmallFile(placeFile, { ...window.getNormalBounds(), maximized: window.isMaximized(), fullScreen: window.isFullScreen() });
    } catch {
      // A place that cannot be kept is no reason to keep the window.
    }
  });
  window.once("ready-to-show", () => window.show());
  prepare(window);
  try {
    await window.loadURL(`${appOrigin}/${hash}`);
  } catch (failure) {
    if (!window.isDestroyed()) throw failure;
  }
  return window;
}
