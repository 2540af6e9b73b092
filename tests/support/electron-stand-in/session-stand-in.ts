import { EventEmitter } from "node:events";
import type Electron from "electron";
import { preventable } from "./app-stand-in.ts";
import { answer } from "./controller.ts";
import { closed, needsReady } from "./strictness.ts";

type PermissionRequest = Parameters<Electron.Session["setPermissionRequestHandler"]>[0];
type PermissionCheck = Parameters<Electron.Session["setPermissionCheckHandler"]>[0];
type DevicePermission = Parameters<Electron.Session["setDevicePermissionHandler"]>[0];
type BeforeRequest = (details: { url: string }, answer: (verdict: { cancel?: boolean }) => void) => void;

/** Without a handler Electron grants every permission and lets every request through; so does this, and the tests then fail. */
export class SessionStandIn extends EventEmitter {
  request: PermissionRequest = null;
  check: PermissionCheck = null;
  device: DevicePermission = null;
  beforeRequest: BeforeRequest = (_, verdict) => verdict({});
  spellChecker = true;
  readonly webRequest = closed("session.webRequest", {
    onBeforeRequest: (listener: BeforeRequest) => {
      this.beforeRequest = listener;
    },
  });
  setPermissionRequestHandler(handler: PermissionRequest): void {
    this.request = handler;
  }
  setPermissionCheckHandler(handler: PermissionCheck): void {
    this.check = handler;
  }
  setDevicePermissionHandler(handler: DevicePermission): void {
    this.device = handler;
  }
  setSpellCheckerEnabled(on: boolean): void {
    this.spellChecker = on;
  }
}

const usual = new SessionStandIn();
usual satisfies Pick<
  Electron.Session,
  "setPermissionRequestHandler" | "setPermissionCheckHandler" | "setDevicePermissionHandler" | "setSpellCheckerEnabled"
>;

export const sessionStandIn = {
  get defaultSession() {
    needsReady("session");
    return closed("session", usual);
  },
  fromPartition(partition: string) {
    needsReady("session");
    if (partition === "") throw new Error("A partition needs a name");
    return closed("session", new SessionStandIn());
  },
};

const contentsAt = (url: string) => ({ getURL: () => url }) as Electron.WebContents;

answer("permission", ({ url, permission }: { url: string; permission: string }) => {
  const asked = new Promise<boolean>((resolve) => {
    if (usual.request) usual.request(contentsAt(url), permission as never, resolve, {} as never);
    else resolve(true);
  });
  const checked = usual.check ? usual.check(contentsAt(url), permission as never, url, {} as never) : true;
  const withoutContents = usual.check ? usual.check(null, permission as never, url, {} as never) : true;
  return asked.then((granted) => ({ granted, checked, withoutContents }));
});
answer("device", () => (usual.device ? usual.device({ deviceType: "usb" } as never) : true));
answer(
  "request",
  ({ url }: { url: string }) =>
    new Promise((resolve) => usual.beforeRequest({ url }, ({ cancel = false }) => resolve(cancel ? "cancelled" : "sent"))),
);
answer("download", ({ url, fileName }: { url: string; fileName: string }) => {
  let options: unknown = null;
  const event = preventable();
  usual.emit("will-download", event, {
    getURL: () => url,
    getFilename: () => fileName,
    setSaveDialogOptions: (given: unknown) => {
      options = given;
    },
  });
  return event.defaultPrevented ? "prevented" : options;
});
