import type { RecordingDetail } from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";
import { recordingPlace } from "../shared/place.ts";
import { type CheckItem, openQuestions, placeOfItem } from "./queue.ts";

/** One thing to read before a recording goes out. */
export interface PublishLine {
  readonly words: string;
  /** Where the first of it is; null where there is none, or no place of its own. */
  readonly href: string | null;
  /** What is told in place. */
  readonly details: readonly string[];
}

/** What has no ruling and is for a person to read, each with the way to it. */
export function alsoLines(detail: RecordingDetail): PublishLine[] {
  const { denials, promises, doubtful } = detail.analysis;
  const { id, counts } = detail.summary;
  const questions = openQuestions(detail);
  const to = (item: CheckItem | null) => (item ? recordingPlace(id, "check", placeOfItem(item)) : null);
  const [denial] = denials;
  const [promise] = promises;
  const [caption] = doubtful;
  const toMark = [...detail.findingProposals, ...detail.lap.filter(({ zoneSpanId }) => zoneSpanId === null)].map(({ start }) => start);
  return [
    {
      words:
        denials.length > 0
          ? `${counted(denials.length, "claim is", "claims are")} denied by the stock sheet.`
          : "The stock sheet denies nothing.",
      href: to(denial ? { kind: "denial", key: denial.key } : null),
      details: [],
    },
    {
      words:
        promises.length > 0
          ? `${counted(promises.length, "stretch of words", "stretches of words")} that a buyer may hold the dealer to.`
          : "No promise was heard.",
      href: to(promise ? { kind: "promise", key: promise.id } : null),
      details: [],
    },
    {
      words: `${counted(questions.length, "question", "questions")} about what was never shown or said.`,
      href: null,
      details: questions.map(({ question }) => question),
    },
    {
      words: `${counted(doubtful.length, "doubtful caption", "doubtful captions")} that nothing was read from.`,
      href: to(caption ? { kind: "doubtful", key: String(caption.caption) } : null),
      details: [],
    },
    {
      words: `${counted(counts.proposals, "proposed finding", "proposed findings")} and ${counted(counts.proposedZones, "proposed zone", "proposed zones")} that nobody accepted.`,
      href:
        counts.proposals + counts.proposedZones > 0
          ? recordingPlace(id, "mark", toMark.length > 0 ? { at: Math.min(...toMark) } : {})
          : null,
      details: [],
    },
  ];
}
