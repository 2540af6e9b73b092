import { z } from "zod";
import { addresses, ChapterGranularity, copyAddress, ExportFormat, IndexTemplate, Paper, RecordingId } from "../../shared-types/index.ts";
import { type MediaFile, serveMedia } from "./serve-media.ts";

export interface ExportedFile {
  readonly fileName: string;
  readonly mediaType: string;
  /** Text is sent as UTF-8. */
  readonly content: string | Uint8Array;
}

/** What the addresses that both hosts have lead to. */
export interface ServedThings {
  readonly page: (request: Request) => Promise<Response>;
  readonly mediaFile: (recordingId: string) => MediaFile | undefined;
  /** The copy of the video with its chapters inside; left out where none can be made. */
  readonly copyFile?: (recordingId: string) => (MediaFile & { readonly fileName: string }) | undefined;
  readonly download: (
    recordingId: string,
    format: ExportFormat,
    granularity: ChapterGranularity,
    paper: Paper,
    /** Of an index text, by name. */
    template?: string,
  ) => Promise<ExportedFile | undefined>;
}

const ExportAddress = z.strictObject({
  recordingId: RecordingId,
  format: ExportFormat,
  granularity: ChapterGranularity,
  paper: Paper,
  template: IndexTemplate.shape.name.optional(),
});

/** The page, the videos and the exports: the addresses that both hosts have. */
export function createAddressServer({ page, mediaFile, copyFile, download }: ServedThings): (request: Request) => Promise<Response> {
  return async (request) => {
    const { pathname } = new URL(request.url);
    if (pathname.startsWith(addresses.media)) {
      const id = RecordingId.safeParse(pathname.slice(addresses.media.length));
      return serveMedia(request, id.success ? mediaFile(id.data) : undefined);
    }
    if (pathname.startsWith(addresses.exports)) {
      const [recordingId, format, granularity = "zones", paper = "letter", named, ...rest] = pathname
        .slice(addresses.exports.length)
        .split("/");
      if (format === copyAddress) {
        const id = RecordingId.safeParse(recordingId);
        return serveCopy(request, id.success ? copyFile?.(id.data) : undefined);
      }
      const asked = ExportAddress.safeParse({ recordingId, format, granularity, paper, template: named && decoded(named) });
      const file =
        asked.success && rest.length === 0
          ? await download(asked.data.recordingId, asked.data.format, asked.data.granularity, asked.data.paper, asked.data.template)
          : undefined;
      return serveExport(request, file);
    }
    return page(request);
  };
}

/** A piece of an address as it was before it was put there; "" for what is none, which no template is called. */
function decoded(piece: string): string {
  try {
    return decodeURIComponent(piece);
  } catch {
    return "";
  }
}

async function serveCopy(request: Request, file: (MediaFile & { readonly fileName: string }) | undefined): Promise<Response> {
  const response = await serveMedia(request, file);
  if (file && response.ok) response.headers.set("content-disposition", attachment(file.fileName));
  return response;
}

const attachment = (fileName: string): string => `attachment; filename="${fileName.replaceAll(/[^\w.-]/g, "_")}"`;

function serveExport(request: Request, file: ExportedFile | undefined): Response {
  if (request.method !== "GET" && request.method !== "HEAD") {
    return new Response("Only GET and HEAD.", { status: 405, headers: { allow: "GET, HEAD" } });
  }
  if (!file) return new Response("There is no export at this address.", { status: 404 });
  const isText = typeof file.content === "string";
  const content = isText ? Buffer.from(file.content as string, "utf8") : Buffer.from(file.content as Uint8Array);
  const headers = new Headers({
    "content-type": isText ? `${file.mediaType}; charset=utf-8` : file.mediaType,
    "content-length": String(content.length),
    "content-disposition": attachment(file.fileName),
    // An exported page is a stranger here, should a browser show it after all.
    "content-security-policy": "sandbox",
    "cache-control": "no-store",
  });
  return new Response(request.method === "HEAD" ? null : content, { headers });
}
