import { EventEmitter } from "node:events";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type Electron from "electron";
import { tell } from "./controller.ts";
import { becomeReady, closed, isReady, needsReady } from "./strictness.ts";

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

/**
 * As an installed program: no script among its arguments. Set before the application's own first line, since it imports this before.
 */
const packaged = process.env.ROUNDWALK_STAND_IN_PACKAGED === "1";
if (packaged) process.argv.splice(1, 1);

/** What macOS brings before the program is ready, when a file or a link has started it. */
const early = JSON.parse(process.env.ROUNDWALK_STAND_IN_EARLY ?? "[]") as { event: "open-file" | "open-url"; value: string }[];

export class AppStandIn extends EventEmitter {
  readonly isPackaged = packaged;
  name = "Electron";
  /** Set once the windows have been closed for good, as "will-quit" comes only then. */
  closeWindows: () => boolean = () => true;
  private quitting = false;

  readonly commandLine = closed("app.commandLine", {
    hasSwitch: (name: string) => process.argv.some((text) => text === `--${name}` || text.startsWith(`--${name}=`)),
  } satisfies Pick<Electron.CommandLine, "hasSwitch">);

  whenReady(): Promise<void> {
    return new Promise((resolve) => {
      setImmediate(() => {
        for (const { event, value } of isReady() ? [] : early) {
          const brought = preventable();
          this.emit(event, brought, value);
          if (!brought.defaultPrevented) tell("fault", `${event} before ready was not taken: ${value}`);
        }
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
    if (isReady()) throw new Error("Asked for when it is ready, the lock comes too late: two could have begun");
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
        // Neither their order nor their number is kept, and of another user's start they do not come at all: the switches come first,
        // with Chromium's own among them (as on Windows). Only what was given to the lock arrives as it was.
        const [program, ...more] = argv as string[];
        const switches = more.filter((text) => text.startsWith("-"));
        const words = more.filter((text) => !text.startsWith("-")).reverse();
        const mixed = [program, ...switches, "--allow-file-access-from-files", "--original-process-start-time=13400000000", ...words];
        this.emit("second-instance", preventable(), mixed, place, given);
      }
    }, lookMilliseconds).unref();
    return true;
  }
  setAsDefaultProtocolClient(scheme: string): boolean {
    if (!packaged)
      throw new Error("Only an installed application may register a scheme; the machine's other programs would start Electron itself");
    if (scheme === "" || /[^a-z0-9+.-]/.test(scheme)) throw new Error("A scheme is told by its name alone, without ://");
    tell("protocol-client", scheme);
    return true;
  }
  releaseSingleInstanceLock(): void {
    rmSync(join(this.getPath("userData"), "instance"), { force: true });
    tell("lock-released", null);
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
  | "releaseSingleInstanceLock"
  | "setAsDefaultProtocolClient"
  | "setAboutPanelOptions"
  | "relaunch"
  | "quit"
  | "exit";

export const appStandIn = new AppStandIn();
// What the application uses has the types that Electron gives it.
appStandIn satisfies Pick<Electron.App, Used> & { commandLine: Pick<Electron.CommandLine, "hasSwitch"> };

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
