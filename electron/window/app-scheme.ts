import { protocol } from "electron";
import { secured } from "../transport/security-headers.ts";

export const appScheme = "app";
export const appHost = "roundwalk";

/** The application's own origin in the desktop. */
export const appOrigin = `${appScheme}://${appHost}`;

/** Must run before Electron is ready, and once only. Never bypasses the content security policy. */
export function declareAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
  ]);
}

/** @param serve page, media and exports; see serve-addresses.ts. */
export function serveAppScheme(serve: (request: Request) => Promise<Response>): void {
  protocol.handle(appScheme, async (request) => {
    if (new URL(request.url).host !== appHost) return secured(new Response("There is no such host.", { status: 404 }));
    return secured(await serve(request));
  });
}
