import { protocol } from "electron";
import { secured } from "../transport/security-headers.ts";

/** The application's own origin in the desktop. */
export const appOrigin = "app://roundwalk";

/** Must run before Electron is ready, and once only. Never bypasses the content security policy. */
export function declareAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: "app", privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
  ]);
}

/** @param serve page, media and exports; see serve-addresses.ts. */
export function serveAppScheme(serve: (request: Request) => Promise<Response>): void {
  protocol.handle("app", async (request) => {
    if (new URL(request.url).origin !== appOrigin && !request.url.startsWith(`${appOrigin}/`)) {
      return new Response("There is no such host.", { status: 404 });
    }
    return secured(await serve(request));
  });
}
