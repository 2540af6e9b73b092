import { app, type Session, type WebContents } from "electron";
import { appOrigin } from "./app-scheme.ts";

/** The page asks for nothing of the machine; full screen is the player's. */
const grantedPermissions: ReadonlySet<string> = new Set(["fullscreen", "clipboard-sanitized-write"]);

/** Nothing but the application itself is ever shown, whatever a page or a link asks for. */
export function guardContents(): void {
  app.on("web-contents-created", (_, contents: WebContents) => {
    contents.on("will-navigate", (event) => {
      if (!isOwn(event.url)) event.preventDefault();
    });
    contents.on("will-redirect", (event) => {
      if (!isOwn(event.url)) event.preventDefault();
    });
    contents.on("will-attach-webview", (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: "deny" }));
  });
}

export function guardSession(session: Session): void {
  session.setPermissionRequestHandler((contents, permission, answer) =>
    answer(isOwn(contents.getURL()) && grantedPermissions.has(permission)),
  );
  session.setPermissionCheckHandler(
    (contents, permission) => contents !== null && isOwn(contents.getURL()) && grantedPermissions.has(permission),
  );
  // Exports go where the person says; everything else that would be saved is none of the application's.
  session.on("will-download", (event, item) => {
    if (!isOwn(item.getURL()) && !item.getURL().startsWith(`blob:${appOrigin}`)) event.preventDefault();
  });
}

function isOwn(url: string): boolean {
  return url === appOrigin || url.startsWith(`${appOrigin}/`);
}
