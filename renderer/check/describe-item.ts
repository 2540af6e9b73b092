import { promiseLabels, type RecordingDetail, type TextSpan, timeLabel } from "../../shared-types/index.ts";
import type { CheckItem } from "./queue.ts";

/** Something to check that has no sides: what it is, and its moments. */
export interface DescribedItem {
  readonly heading: string;
  readonly kind: string;
  readonly why: string;
  readonly claims: readonly string[];
  /** Words to show where there are no claims; `spans` are those that count, none where all do. */
  readonly words: { readonly captions: readonly number[]; readonly start: number; readonly spans: readonly TextSpan[] } | null;
  /** The published rule behind it. */
  readonly rule?: { readonly name: string; readonly source: string };
  /** What else a person can do about it, in words. */
  readonly hint?: string;
}

export type LoneItem = Exclude<CheckItem, { kind: "publish" } | { kind: "conflict" }>;

/** What an item of the list is about; null where the analysis no longer finds it. */
export function describeItem(item: LoneItem, { analysis, captions, trustedCaptions }: RecordingDetail): DescribedItem | null {
  if (item.kind === "denial") {
    const denial = analysis.denials.find(({ key }) => key === item.key);
    return denial
      ? { heading: denial.field, kind: `The stock sheet says ${denial.sheetValue}`, why: denial.why, claims: denial.claims, words: null }
      : null;
  }
  if (item.kind === "support") {
    const support = analysis.supports.find(({ key }) => key === item.key);
    return support
      ? {
          heading: support.topic,
          kind: `Borne out by the stock sheet, “${support.field}”`,
          why: support.why,
          claims: support.claims,
          words: null,
        }
      : null;
  }
  if (item.kind === "silence") {
    const silence = analysis.silences.find(({ key }) => key === item.key);
    return silence
      ? {
          heading: silence.topic,
          kind: `On the stock sheet, “${silence.field}”, and not spoken`,
          why: `${silence.why} There is no moment to play. Words that the recognizer lost may still have told it: look through the captions before it is said anew.`,
          claims: [],
          words: null,
        }
      : null;
  }
  if (item.kind === "promise") {
    const promise = analysis.promises.find(({ id }) => id === item.key);
    return promise
      ? {
          heading: `“${promise.quote}”`,
          kind: promiseLabels[promise.kind],
          why: promise.why,
          claims: [],
          words: { captions: [...new Set(promise.captions)], start: promise.start, spans: promise.spans },
          rule: promise.rule,
        }
      : null;
  }
  if (item.kind === "question") {
    const question = analysis.questions.find(({ key }) => key === item.key);
    return question
      ? {
          heading: question.question,
          kind: "Not named in the words",
          why: "There is no moment to play. Only the words were read, never the picture: it may be in the film without a word about it.",
          claims: [],
          words: null,
          ...(question.about === "zone"
            ? { hint: "Where the film shows it, mark that zone at the Mark desk: the question is then answered." }
            : {}),
        }
      : null;
  }
  if (item.kind === "remark") {
    const remark = analysis.remarks.find(({ key }) => key === item.key);
    return remark ? { heading: remark.topic, kind: "Remark", why: remark.why, claims: remark.claims, words: null } : null;
  }
  const wholeCaption = (caption: number) => ({ captions: [caption], start: captions[caption]?.start ?? 0, spans: [] });
  const heading = (caption: number) => `Caption at ${timeLabel(captions[caption]?.start ?? 0)}`;
  const trusted = trustedCaptions.find(({ caption }) => String(caption) === item.key);
  if (trusted) {
    return {
      heading: heading(trusted.caption),
      kind: `Held for speech by ${trusted.initials}`,
      why: "It was doubtful; its words are now read like any other.",
      claims: [],
      words: wholeCaption(trusted.caption),
    };
  }
  const doubtful = analysis.doubtful.find(({ caption }) => String(caption) === item.key);
  return doubtful
    ? { heading: heading(doubtful.caption), kind: "Doubtful caption", why: doubtful.why, claims: [], words: wholeCaption(doubtful.caption) }
    : null;
}
