import { type ImportPart, partOfKnownEnding } from "../sort-files.ts";
import type { FoundFile } from "./found-file.ts";

/** How a file came to its transcript: by its name, or because no other was in the folder. */
export type PairedBy = "name" | "folder";

export interface PairedRecording {
  /** Keys of files. */
  readonly transcript: string;
  readonly video: string | null;
  readonly videoBy: PairedBy | null;
  readonly stockSheet: string | null;
  readonly sheetBy: PairedBy | null;
}

export interface Pairing {
  readonly recordings: readonly PairedRecording[];
  /** The one stock sheet that belongs to no recording by name: it may hold them all. */
  readonly lotSheet: string | null;
}

/** Words in a file's name that say what it is and not of which vehicle. */
const roleWords = new Set(
  "transcript transcription captions caption subtitles subtitle subs words text speech recording video film movie stock sheet stocksheet data".split(
    " ",
  ),
);
/** A language's tag at the end, as recognisers add it: "walk.en", "walk.en-US". */
const languageTag = /[._-](?:en|de|fr|es|it|nl)(?:[._-](?:us|gb|au|ca|ie|nz))?$/i;

/** What files of one recording have in common: the name without ending, language and role, in small letters. May be empty. */
export function pairName(name: string): string {
  const stem = name.replace(/\.[^.]+$/, "").replace(languageTag, "");
  const words = stem
    .normalize("NFKC")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u);
  return words.filter((word) => word !== "" && !roleWords.has(word)).join(" ");
}

/** Of several transcripts of one name the first kind is taken: the one that knows most about time. */
const transcriptOrder = ["json", "vtt", "srt", "txt"];
const endingOf = (name: string) => name.slice(name.lastIndexOf(".") + 1).toLowerCase();

/** Puts together what belongs together. What is left over is whatever no recording names. */
export function pairFiles(files: readonly FoundFile[]): Pairing {
  const ofPart = (part: ImportPart) => files.filter((file) => file.bytes > 0 && partOfKnownEnding(file.name) === part);
  const transcripts = firstOfEachName(ofPart("transcript"));
  const videos = match(transcripts, ofPart("video"));
  const allSheets = ofPart("stockSheet");
  const sheets = match(transcripts, allSheets);
  const taken = new Set([...sheets.values()].map(({ key }) => key));
  const rest = allSheets.filter(({ key }) => !taken.has(key));
  return {
    recordings: transcripts.map(({ key }) => ({
      transcript: key,
      video: videos.get(key)?.key ?? null,
      videoBy: videos.get(key)?.by ?? null,
      stockSheet: sheets.get(key)?.key ?? null,
      sheetBy: sheets.get(key)?.by ?? null,
    })),
    lotSheet: rest.length === 1 ? (rest[0]?.key ?? null) : null,
  };
}

function firstOfEachName(transcripts: readonly FoundFile[]): FoundFile[] {
  const rank = ({ name }: FoundFile) => transcriptOrder.indexOf(endingOf(name));
  const taken = new Map<string, FoundFile>();
  for (const file of transcripts) {
    const named = pairName(file.name);
    const place = `${file.folder}/${named === "" ? file.name : named}`;
    const before = taken.get(place);
    if (!before || rank(file) < rank(before)) taken.set(place, file);
  }
  return transcripts.filter((file) => [...taken.values()].includes(file));
}

/** For each transcript's key the file that goes with it; each file goes with one. */
function match(transcripts: readonly FoundFile[], files: readonly FoundFile[]): Map<string, { key: string; by: PairedBy }> {
  const found = new Map<string, { key: string; by: PairedBy }>();
  const used = new Set<string>();
  const take = (transcript: FoundFile, file: FoundFile, by: PairedBy) => {
    found.set(transcript.key, { key: file.key, by });
    used.add(file.key);
  };
  /** Takes wherever a place holds one transcript and one file that are both still free. */
  const pass = (place: (file: FoundFile) => string | null, by: PairedBy) => {
    const freeTranscripts = grouped(
      transcripts.filter(({ key }) => !found.has(key)),
      place,
    );
    const freeFiles = grouped(
      files.filter(({ key }) => !used.has(key)),
      place,
    );
    for (const [at, [transcript, ...others]] of freeTranscripts) {
      const [file, ...more] = freeFiles.get(at) ?? [];
      if (transcript && file && others.length === 0 && more.length === 0) take(transcript, file, by);
    }
  };
  const named = ({ name }: FoundFile) => pairName(name) || null;
  pass((file) => (named(file) === null ? null : `${file.folder}/${named(file)}`), "name");
  pass(named, "name");
  // Alone together in a folder, whatever else lies elsewhere; what was taken by name counts as being there too.
  const crowd = (all: readonly FoundFile[]) => grouped(all, ({ folder }) => folder);
  const [allTranscripts, allFiles] = [crowd(transcripts), crowd(files)];
  pass(({ folder }) => (allTranscripts.get(folder)?.length === 1 && allFiles.get(folder)?.length === 1 ? folder : null), "folder");
  return found;
}

function grouped(files: readonly FoundFile[], place: (file: FoundFile) => string | null): Map<string, FoundFile[]> {
  const groups = new Map<string, FoundFile[]>();
  for (const file of files) {
    const at = place(file);
    if (at !== null) groups.set(at, [...(groups.get(at) ?? []), file]);
  }
  return groups;
}
