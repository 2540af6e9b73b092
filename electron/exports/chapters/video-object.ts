import type { RecordingDetail } from "../../../shared-types/index.ts";
import { openWords } from "../publication-words.ts";
import { type ChapterEntry, flatChapters, milliseconds, proposedWords } from "./entries.ts";

/** Whole seconds as an ISO 8601 duration: PT7M40S. */
export function isoDuration(seconds: number): string {
  const whole = Math.round(seconds);
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  return `PT${hours ? `${hours}H` : ""}${minutes ? `${minutes}M` : ""}${whole % 60 || whole === 0 ? `${whole % 60}S` : ""}`;
}

/**
 * The video and its chapters for a web page, as schema.org `VideoObject` with a `Clip` for each chapter (schema.org/Clip: name,
 * startOffset, endOffset in seconds, url). A clip's address points into the video as W3C Media Fragments writes it (`#t=12,40`).
 * The day of uploading is the one on which somebody recorded that it was published; nobody's clock stands in for it.
 * @param videoHref Where the video lies as seen from the page; the page's author puts in the public address.
 */
export function videoObject(detail: RecordingDetail, entries: readonly ChapterEntry[], videoHref: string | null): object {
  const { summary } = detail;
  const address = videoHref ?? (detail.videoFile === null ? null : encodeURIComponent(detail.videoFile));
  const published = detail.publications.at(-1);
  const open = detail.openConflictKeys.length;
  const vehicle = [summary.vehicle.year, summary.vehicle.name].filter(Boolean).join(" ");
  return {
    "@context": "https://schema.org",
    "@type": "VideoObject",
    name: summary.title,
    description: [
      `Walk round of a ${vehicle || "vehicle"}, stock number ${summary.stockNumber || "not given"}, in chapters.`,
      open > 0 ? openWords(open) : "",
      proposedWords(entries),
    ]
      .filter(Boolean)
      .join(" "),
    duration: isoDuration(summary.duration),
    ...(published ? { uploadDate: published.at } : {}),
    ...(address === null ? {} : { contentUrl: address }),
    hasPart: flatChapters(entries)
      .filter((chapter) => milliseconds(chapter.end) > milliseconds(chapter.start))
      .map(({ start, end, title }) => ({
        "@type": "Clip",
        name: title,
        startOffset: milliseconds(start) / 1000,
        endOffset: milliseconds(end) / 1000,
        ...(address === null ? {} : { url: `${address}#t=${milliseconds(start) / 1000},${milliseconds(end) / 1000}` }),
      })),
  };
}

/** What the page's author has to put in before a search engine takes the description of a video. */
export function videoObjectWarnings({ publications, videoFile }: Pick<RecordingDetail, "publications" | "videoFile">): string[] {
  const lacking = [
    ...(videoFile === null
      ? ["contentUrl, since this recording has no video"]
      : ["the video's public address in place of the one beside this file"]),
    "a thumbnailUrl",
    ...(publications.length === 0 ? ["the uploadDate, since nobody has recorded that it was published"] : []),
  ];
  return [`Before it goes onto a page, put in ${lacking.slice(0, -1).join(", ")} and ${lacking.at(-1)}.`];
}
