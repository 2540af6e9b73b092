import { existsSync, readdirSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { extname, join, relative, sep } from "node:path";

const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".webmanifest": "application/manifest+json",
  ".txt": "text/plain; charset=utf-8",
};

const notBuilt = `The page is not built yet. Run "npm run build", then load this address again.`;

/**
 * The built page. Addresses are looked up in a list of the folder's own files, so that no address can lead out of it.
 * The list is read again with every load of the page, which a new build has changed.
 */
export function createAppServer(pageFolder: string): (request: Request) => Promise<Response> {
  let files = listFiles(pageFolder);
  return async (request) => {
    if (request.method !== "GET" && request.method !== "HEAD") {
      return new Response("Only GET and HEAD.", { status: 405, headers: { allow: "GET, HEAD" } });
    }
    const { pathname } = new URL(request.url);
    const address = pathname === "/" ? "/index.html" : pathname;
    if (address === "/index.html") files = listFiles(pageFolder);
    const path = files.get(address);
    const content = path === undefined ? undefined : await contentOf(path);
    if (path === undefined || content === undefined) {
      const isPage = address === "/index.html";
      return new Response(isPage ? notBuilt : "There is nothing at this address.", {
        status: isPage ? 503 : 404,
        headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
      });
    }
    const headers = new Headers({
      "content-type": contentTypes[extname(path)] ?? "application/octet-stream",
      "content-length": String(content.length),
      // Names under assets/ carry a digest of what is in them.
      "cache-control": address.startsWith("/assets/") ? "private, max-age=31536000, immutable" : "no-store",
    });
    return new Response(request.method === "HEAD" ? null : content, { headers });
  };
}

/** Undefined where a new build has taken the file away since the list was read. */
async function contentOf(path: string): Promise<Buffer<ArrayBuffer> | undefined> {
  try {
    return await readFile(path);
  } catch (failure) {
    if ((failure as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw failure;
  }
}

function listFiles(folder: string): Map<string, string> {
  if (!existsSync(folder)) return new Map();
  return new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [`/${relative(folder, path).split(sep).map(encodeURIComponent).join("/")}`, path]),
  );
}
