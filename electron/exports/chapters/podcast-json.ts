import { z } from "zod";
import { type ChapterEntry, flatChapters, milliseconds, proposedWords } from "./entries.ts";

/** Podcast Namespace JSON chapters 1.2 (Podcastindex-org/podcast-namespace, jsonChapters.md): the fields written here. */
export const PodcastChapters = z.strictObject({
  version: z.literal("1.2.0"),
  title: z.string(),
  description: z.string().optional(),
  fileName: z.string().optional(),
  chapters: z.array(z.strictObject({ startTime: z.number().nonnegative(), endTime: z.number().positive(), title: z.string() })),
});

export function chaptersPodcast(entries: readonly ChapterEntry[], title: string, fileName: string | null): z.infer<typeof PodcastChapters> {
  const proposed = proposedWords(entries);
  return {
    version: "1.2.0",
    title,
    ...(proposed === "" ? {} : { description: proposed }),
    ...(fileName === null ? {} : { fileName }),
    chapters: flatChapters(entries)
      .filter((chapter) => milliseconds(chapter.end) > milliseconds(chapter.start))
      .map(({ start, end, title: name }) => ({
        startTime: milliseconds(start) / 1000,
        endTime: milliseconds(end) / 1000,
        title: name.replaceAll(/\s+/g, " ").trim(),
      })),
  };
}
