import { createHash } from "node:crypto";

/** What a page that we write may run, by hash, and show from beside it. */
export interface PageContent {
  readonly style: string;
  readonly script?: string;
  /** True where the page shows the video that lies beside it, or one that a person opens. */
  readonly video?: boolean;
  /** True where pictures are written into the page itself. */
  readonly pictures?: boolean;
}

/** The content security policy of an exported page: nothing from elsewhere, and no script or style but its own, by their hashes (W3C CSP 3). */
export function policyFor({ style, script, video = false, pictures = false }: PageContent): string {
  return [
    "default-src 'none'",
    `style-src '${hashOf(style)}'`,
    ...(script === undefined ? [] : [`script-src '${hashOf(script)}'`]),
    ...(video ? ["media-src 'self' file: blob:"] : []),
    ...(pictures ? ["img-src data:"] : []),
  ].join("; ");
}

function hashOf(text: string): string {
  return `sha256-${createHash("sha256").update(text).digest("base64")}`;
}
