import { app, type Session, type WebContents } from "electron";
import { appHost, appScheme } from "./app-scheme.ts";

/** The page asks for nothing of the machine; full screen is the player's, copying the Call desk's. */
const grantedPermissions: ReadonlySet<string> = new Set(["fullscreen", "clipboard-sanitized-write"]);

/**
 * Nothing but the application itself is ever shown, whatever a page or a link asks for.
 * @param askOutside is given https addresses alone; it asks the person before anything is opened.
 */
export function guardContents(askOutside: (address: string) => void): void {
  app.on("web-contents-created", (_, contents: WebContents) => {
    contents.on("will-navigate", (event) => {
      if (!isOwn(event.url)) event.preventDefault();
    });
    // Of a frame within the page too; the page has none.
    contents.on("will-frame-navigate", (event) => {
      if (!event.isMainFrame || !isOwn(event.url)) event.preventDefault();
    });
    contents.on("will-redirect", (event) => {
      if (!isOwn(event.url)) event.preventDefault();
    });
    contents.on("will-attach-webview", (event) => event.preventDefault());
    contents.setWindowOpenHandler(({ url }) => {
      if (isOutside(url)) setImmediate(() => askOutside(url));
      return { action: "deny" };
    });
  });
}

/** @param saveAs is told of each download of the application's own, before it begins. */
export function guardSession(session: Session, saveAs: (item: Electron.DownloadItem) => void): void {
  session.setPermissionRequestHandler((contents, permission, answer) =>
    answer(isOwn(contents.getURL()) && grantedPermissions.has(permission)),
  );
  session.setPermissionCheckHandler(
    (contents, permission) => contents !== null && isOwn(contents.getURL()) && grantedPermissions.has(permission),
  );
  // No USB, serial, HID or Bluetooth device is ever the page's.
  session.setDevicePermissionHandler(() => false);
  // What the page's policy forbids does not leave the machine either, should the policy ever fail.
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !mayLoad(details.url) }));
  session.setSpellCheckerEnabled(false);
  session.on("will-download", (event, item) => {
    const url = item.getURL();
    if (isOwn(url) || url.startsWith(`blob:${appScheme}://${appHost}/`)) saveAs(item);
    else event.preventDefault();
  });
}

/** By a parser, since app://roundwalk.example/ begins like the application's own origin. */
export function isOwn(address: string): boolean {
  const url = URL.parse(address);
  return url !== null && url.protocol === `${appScheme}:` && url.host === appHost && url.username === "" && url.password === "";
}

/** An address that may be offered to the person's browser: https, without a name and password inside. */
export function isOutside(address: string): boolean {
  const url = URL.parse(address);
  return url !== null && url.protocol === "https:" && url.username === "" && url.password === "" && address.length <= 2000;
}

function mayLoad(address: string): boolean {
  return isOwn(address) || /^(?:data|blob|devtools):/i.test(address);
}
