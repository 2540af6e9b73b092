import { EventEmitter } from "node:events";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type Electron from "electron";
import { tell } from "./controller.ts";
import { becomeReady, isReady, needsReady } from "./strictness.ts";

/** A preventable event as Electron's listeners get it. */
export function preventable(more: object = {}) {
  const event = {
    ...more,
    defaultPrevented: false,
    preventDefault: () => {
      event.defaultPrevented = true;
    },
  };
  return event;
}

const home = process.env.ROUNDWALK_STAND_IN_HOME ?? process.cwd();

/** How often the first instance looks for what a second has left. */
const lookMilliseconds = 50;

export class AppStandIn extends EventEmitter {
  isPackaged = false;
  name = "Electron";
  /** Set once the windows have been closed for good, as "will-quit" comes only then. */
  closeWindows: () => boolean = () => true;
  private quitting = false;

  whenReady(): Promise<void> {
    return new Promise((resolve) => {
      setImmediate(() => {
        becomeReady();
        resolve();
      });
    });
  }
  isReady(): boolean {
    return isReady();
  }
  setName(name: string): void {
    this.name = name;
  }
  getPath(name: string): string {
    const userData = join(home, "user-data", this.name);
    const places: Record<string, string> = { userData, logs: join(userData, "logs"), downloads: join(home, "downloads") };
    const place = places[name];
    if (place === undefined) throw new Error(`Failed to get '${name}' path`);
    mkdirSync(place, { recursive: true });
    return place;
  }
  /** The first holds a file with its number; what a second leaves beside it reaches the first as "second-instance". */
  requestSingleInstanceLock(data: Record<string, unknown> = {}): boolean {
    const folder = this.getPath("userData");
    const lock = join(folder, "instance");
    const first = existsSync(lock) ? Number(readFileSync(lock, "utf8")) : 0;
    if (first && runs(first)) {
      const message = structuredClone({ argv: process.argv, folder: process.cwd(), data });
      writeFileSync(join(folder, `second-${process.pid}.json.part`), JSON.stringify(message));
      writeFileSync(join(folder, `second-${process.pid}.json`), JSON.stringify(message));
      rmSync(join(folder, `second-${process.pid}.json.part`));
      return false;
    }
    writeFileSync(lock, String(process.pid));
    process.once("exit", () => rmSync(lock, { force: true }));
    setInterval(() => {
      if (!isReady()) return;
      for (const name of readdirSync(folder).filter((each) => /^second-\d+\.json$/.test(each))) {
        const { argv, folder: place, data: given } = JSON.parse(readFileSync(join(folder, name), "utf8"));
        rmSync(join(folder, name));
        // Chromium puts switches of its own among a second instance's arguments.
        this.emit("second-instance", preventable(), [argv[0], "--allow-file-access-from-files", ...argv.slice(1)], place, given);
      }
    }, lookMilliseconds).unref();
    return true;
  }
  setAsDefaultProtocolClient(): boolean {
    throw new Error("Only an installed application may register a scheme; a test must not change the machine");
  }
  setAboutPanelOptions(): void {}
  relaunch(options: { args?: string[] } = {}): void {
    tell("relaunch", options);
  }
  /** "before-quit", then each window's "close", then "will-quit": any of them may keep the application from ending. */
  quit(): void {
    if (this.quitting) return;
    const before = preventable();
    this.emit("before-quit", before);
    if (before.defaultPrevented || !this.closeWindows()) return;
    const last = preventable();
    this.emit("will-quit", last);
    if (last.defaultPrevented) return;
    this.quitting = true;
    this.emit("quit", preventable(), 0);
    process.exit(0);
  }
  exit(code = 0): void {
    process.exit(code);
  }
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

type Used =
  | "isPackaged"
  | "whenReady"
  | "isReady"
  | "setName"
  | "getPath"
  | "requestSingleInstanceLock"
  | "setAsDefaultProtocolClient"
  | "setAboutPanelOptions"
  | "relaunch"
  | "quit"
  | "exit";

export const appStandIn = new AppStandIn();
// What the application uses has the types that Electron gives it.
appStandIn satisfies Pick<Electron.App, Used>;

const usualDisplay = { x: 0, y: 0, width: 1920, height: 1080 };

export const screenStandIn = {
  getAllDisplays(): Electron.Display[] {
    needsReady("screen");
    const areas = JSON.parse(process.env.ROUNDWALK_STAND_IN_DISPLAYS ?? JSON.stringify([usualDisplay])) as (typeof usualDisplay)[];
    return areas.map((workArea, id) => ({ id, workArea, bounds: workArea }) as unknown as Electron.Display);
  },
  getPrimaryDisplay(): Electron.Display {
    return screenStandIn.getAllDisplays()[0] as Electron.Display;
  },
} satisfies Pick<Electron.Screen, "getAllDisplays" | "getPrimaryDisplay">;
