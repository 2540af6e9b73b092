import { type Caption, misheardClaims, placeOfRightWords, type RecordingDetail, type TextSpan } from "../../../shared-types/index.ts";
import { claimStanding } from "../claim-standing.ts";

/** One stretch of a caption that is written otherwise than the recognizer wrote it. */
export interface CaptionChange {
  readonly caption: number;
  /** Seconds. */
  readonly start: number;
  readonly from: string;
  readonly to: string;
  readonly why: string;
}

export interface CorrectedCaptions {
  readonly captions: readonly Pick<Caption, "start" | "end" | "text">[];
  /** In the order of captions and of their words. */
  readonly changes: readonly CaptionChange[];
  /** Words ruled misheard whose right words have no sure place in the caption: it is left as it was recognized. */
  readonly unplaced: readonly UnplacedWords[];
  /** Captions that speak of something in an open conflict; their words are quoted, not vouched for. */
  readonly disputed: readonly DisputedCaption[];
}

export interface UnplacedWords {
  readonly caption: number;
  /** Seconds. */
  readonly start: number;
  readonly from: string;
  readonly rightWords: string;
  readonly initials: string;
}

export interface DisputedCaption {
  readonly caption: number;
  /** Seconds. */
  readonly start: number;
  readonly topics: readonly string[];
}

interface Edit {
  readonly spans: readonly TextSpan[];
  readonly to: string;
  readonly why: string;
}

/**
 * The captions with what is known to be wrong in them put right: words that a reviewer ruled to be the recognizer's error, and numbers
 * whose repair is sure. Words that a person corrected stand in the captions already, and are listed with what stood there before. A repair that asks to be checked is left as it was heard. The transcript in the library is not touched.
 */
export function correctCaptions(detail: RecordingDetail): CorrectedCaptions {
  const { captions, analysis, rulings, captionCorrections } = detail;
  const byPerson = new Map(captionCorrections.map((correction) => [correction.caption, correction]));
  const misheard = misheardClaims(analysis.conflicts, rulings);
  const rulingOf = new Map(
    analysis.conflicts.flatMap((conflict) => {
      const ruling = rulings.find((one) => one.conflictKey === conflict.key && one.supersededBy === null);
      return ruling ? conflict.sides.flatMap((side) => side.claims.map((id) => [id, ruling] as const)) : [];
    }),
  );
  const unplaced: UnplacedWords[] = [];
  const leftAsHeard = new Set<string>();
  const ruled = analysis.claims.flatMap((claim): Edit[] => {
    const words = misheard.get(claim.id);
    const ruling = rulingOf.get(claim.id);
    if (!words || !ruling) return [];
    const spans = placeOfRightWords(words, claim, analysis.repairs, captions);
    if (spans) return [{ spans, to: words, why: `ruled a recognizer's error by ${ruling.initials}: ${ruling.reason.replace(/\.$/, "")}` }];
    const caption = claim.spans[0]?.caption ?? 0;
    const { quote: from } = claim;
    for (const repair of claim.repairs) leftAsHeard.add(repair);
    unplaced.push({ caption, start: captions[caption]?.start ?? claim.start, from, rightWords: words, initials: ruling.initials });
    return [];
  });
  const repaired = analysis.repairs
    .filter((repair) => repair.sure && !leftAsHeard.has(repair.id))
    .map((repair): Edit => ({ spans: repair.spans, to: repair.meant, why: `number repaired (${repair.rule})` }));
  const pieces = withoutOverlap([...ruled, ...repaired]);
  const changes: CaptionChange[] = [];
  const corrected = captions.map(({ index, start, end, text }) => {
    const correction = byPerson.get(index);
    if (correction) {
      const { original, words, initials } = correction;
      changes.push({ caption: index, start, from: original, to: words, why: `words corrected by ${initials}` });
    }
    let written = "";
    let from = 0;
    for (const { span, to, why } of pieces.filter((piece) => piece.span.caption === index)) {
      const heard = text.slice(span.start, span.end);
      written += text.slice(from, span.start) + to;
      from = span.end;
      if (heard !== to) changes.push({ caption: index, start, from: heard, to, why });
    }
    return { start, end, text: (written + text.slice(from)).replaceAll(/ {2,}/g, " ").trim() };
  });
  const { openTopics } = claimStanding(detail);
  const disputed = captions.flatMap(({ index, start }): DisputedCaption[] => {
    const said = analysis.claims.filter((claim) => claim.captions.includes(index));
    const topics = [...new Set(said.flatMap(({ id }) => openTopics(id)))];
    return topics.length > 0 ? [{ caption: index, start, topics }] : [];
  });
  return { captions: corrected, changes, unplaced, disputed };
}

/** Each edit's words stand in its first span and its further spans are emptied; of two that overlap the earlier in the list stands. */
function withoutOverlap(edits: readonly Edit[]): { span: TextSpan; to: string; why: string }[] {
  const taken: TextSpan[] = [];
  const overlaps = (span: TextSpan) =>
    taken.some((other) => other.caption === span.caption && other.start < span.end && span.start < other.end);
  const kept = edits.flatMap(({ spans, to, why }) => {
    if (spans.some(overlaps)) return [];
    taken.push(...spans);
    return spans.map((span, position) => ({ span, to: position === 0 ? to : "", why }));
  });
  return kept.toSorted((a, b) => a.span.caption - b.span.caption || a.span.start - b.span.start);
}
