import { type ChildProcess, fork } from "node:child_process";
import { join } from "node:path";
import { type Ask, createRpc } from "./rpc.ts";

const root = join(import.meta.dirname, "..", "..", "..");
export const builtMain = join(root, ".build", "desktop", "main.mjs");

/** A dialog that the application shows, and what the person does: the answer that Electron's promise would have. */
export interface ShownDialog {
  readonly kind: "message" | "open" | "save";
  readonly options: {
    readonly title?: string;
    readonly message?: string;
    readonly detail?: string;
    readonly buttons?: string[];
    readonly cancelId?: number;
    readonly properties?: string[];
    readonly defaultPath?: string;
    readonly filters?: { name: string; extensions: string[] }[];
  };
}

export interface Load {
  readonly window: number;
  readonly url: string;
  readonly origin?: string;
  readonly sameDocument?: boolean;
}

export interface StandInOptions {
  /** Holds user data, logs and downloads. */
  readonly home: string;
  readonly args?: readonly string[];
  readonly displays?: readonly object[];
  /** As an installed program: `app.isPackaged`, and no script among its arguments. */
  readonly packaged?: boolean;
  /** What macOS brings before the program is ready. */
  readonly early?: readonly { readonly event: "open-file" | "open-url"; readonly value: string }[];
  readonly env?: NodeJS.ProcessEnv;
  /** Plays the page. */
  readonly load?: (load: Load) => Promise<void>;
  readonly hear?: (message: { window: number; channel: string; values: unknown[] }) => Promise<void> | void;
  /** A key that the application presses for the person. */
  readonly input?: (event: { readonly type: string; readonly keyCode: string }) => Promise<void> | void;
  readonly pdf?: (asked: { url: string }) => Promise<Uint8Array>;
}

export interface StandIn {
  readonly ask: Ask;
  readonly child: ChildProcess;
  /** Everything the application told: windows, shown items, what went on the clipboard, faults. */
  readonly told: { readonly what: string; readonly value: unknown }[];
  /** Dialogs that were shown, answered in order by what `answers` holds; without one they are left as by Escape. */
  readonly dialogs: ShownDialog[];
  readonly answers: unknown[];
  readonly output: () => string;
  /** Resolves with the exit code. */
  readonly ended: Promise<number | null>;
  readonly of: <Value>(what: string) => Value[];
}

/** Starts the built main process under the stand-in. */
export function startStandIn(options: StandInOptions): StandIn {
  const {
    home,
    args = [],
    displays,
    packaged = false,
    early = [],
    env = {},
    load = async () => {},
    hear = () => {},
    input = () => {},
    pdf,
  } = options;
  const child = fork(builtMain, [...args], {
    execArgv: ["--import", join(import.meta.dirname, "register.mjs")],
    serialization: "advanced",
    stdio: ["ignore", "pipe", "pipe", "ipc"],
    cwd: home,
    env: {
      ...process.env,
      // The user's own folders are those of the test.
      HOME: home,
      XDG_DATA_HOME: join(home, "data"),
      XDG_CONFIG_HOME: join(home, "config"),
      ROUNDWALK_STAND_IN_HOME: home,
      ROUNDWALK_STAND_IN_PACKAGED: packaged ? "1" : "0",
      ROUNDWALK_STAND_IN_EARLY: JSON.stringify(early),
      ...(displays ? { ROUNDWALK_STAND_IN_DISPLAYS: JSON.stringify(displays) } : {}),
      ...env,
    },
  });
  let output = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => (output += String(chunk)));
  const told: { what: string; value: unknown }[] = [];
  const dialogs: ShownDialog[] = [];
  const answers: unknown[] = [];
  const keep = (what: string) => [what, (value: unknown) => void told.push({ what, value })] as const;
  const kept = [
    "window",
    "shown",
    "focus",
    "destroyed",
    "relaunch",
    "fault",
    "error-box",
    "show-item",
    "clipboard",
    "open-outside",
    "print",
    "protocol-client",
    "lock-released",
  ];
  const ask = createRpc(
    {
      send: (message) => {
        // Who is just ending hears nothing any more, and has no answer to give.
        if (child.connected) child.send(message as object, () => {});
      },
      listen: (listener) => void child.on("message", listener),
      ended: (listener) => void child.once("exit", (code) => listener(`The application has ended with ${code}; it said:\n${output}`)),
    },
    {
      ...Object.fromEntries(kept.map(keep)),
      print: (value: unknown) => {
        told.push({ what: "print", value });
        return "";
      },
      "open-path": (value: unknown) => {
        told.push({ what: "open-path", value });
        return "";
      },
      load: async (asked: Load) => {
        told.push({ what: "load", value: asked });
        await load(asked);
      },
      send: hear,
      input: async ({ event }: { event: { type: string; keyCode: string } }) => {
        told.push({ what: "input", value: event });
        await input(event);
      },
      pdf: async (asked: { url: string }) => (pdf ? pdf(asked) : Buffer.from("%PDF-1.4 of the stand-in")),
      dialog: (shown: ShownDialog) => {
        dialogs.push(shown);
        const given = answers.shift();
        if (typeof given === "function") return given(shown);
        return (
          given ??
          (shown.kind === "message"
            ? { response: shown.options.cancelId ?? 0, checkboxChecked: false }
            : { canceled: true, filePaths: [], filePath: "" })
        );
      },
    },
  );
  const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
  return {
    ask,
    child,
    told,
    dialogs,
    answers,
    output: () => output,
    ended,
    of: <Value>(what: string) => told.filter((each) => each.what === what).map(({ value }) => value as Value),
  };
}
