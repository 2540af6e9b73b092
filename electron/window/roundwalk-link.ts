/** Where a link leads: a recording and a moment of it. There is nothing else that a link can say, so that it can only look. */
export interface LinkPlace {
  readonly recordingId: string;
  /** Seconds from the recording's beginning; null for the beginning itself. */
  readonly atSeconds: number | null;
}

export const linkScheme = "roundwalk";

/**
 * `roundwalk://recording/ID?t=SECONDS`, whole or not at all: the ID a UUID, the seconds with at most six figures and three decimals.
 * A pattern instead of a URL parser, which would mend escapes, dots and odd hosts that no honest link has.
 */
const linkPattern =
  /^roundwalk:\/\/recording\/(?<id>[0-9a-f]{8}-(?:[0-9a-f]{4}-){3}[0-9a-f]{12})\/?(?:\?t=(?<seconds>\d{1,6}(?:\.\d{1,3})?))?$/i;

/** Null for anything that is no such link. */
export function readLink(text: string): LinkPlace | null {
  const { id, seconds } = linkPattern.exec(text)?.groups ?? {};
  if (id === undefined) return null;
  return { recordingId: id.toLowerCase(), atSeconds: seconds === undefined ? null : Number(seconds) };
}

/** The page's address for that place; see renderer/shared/place.ts. */
export function hashOfLink({ recordingId, atSeconds }: LinkPlace): string {
  return `#/recording/${recordingId}/mark${atSeconds === null ? "" : `?at=${atSeconds}`}`;
}

/** The recording that a page's address shows; null where it shows none. */
export function recordingOfAddress(address: string): string | null {
  return /#\/recording\/(?<id>[0-9a-f]{8}-(?:[0-9a-f]{4}-){3}[0-9a-f]{12})(?:[/?]|$)/i.exec(address)?.groups?.id?.toLowerCase() ?? null;
}
