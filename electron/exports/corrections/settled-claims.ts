import {
  type Claim,
  type Conflict,
  claimSubject,
  isOverruled,
  type RecordingDetail,
  type Ruling,
  timeLabel,
  valueLabel,
} from "../../../shared-types/index.ts";
import { chapterTitleText, stamp } from "../chapters/webvtt.ts";
import { claimStanding, isValueOverruled, openMark } from "../claim-standing.ts";

/** A claim that was spoken wrongly, and what a reviewer let stand against it. */
export interface SettledClaim {
  readonly claim: Claim;
  readonly conflict: Conflict;
  readonly ruling: Ruling;
  /** As spoken, and as it should be. */
  readonly said: string;
  readonly right: string;
  /** What the right value is of, where that is another thing than was spoken of: a wheel's diameter against a tire's rim. */
  readonly rightOf: string | null;
  /** What stands against calling it right outright: topics of open conflicts that the standing claims are in, the stock sheet, another ruling. */
  readonly caveat: string;
}

/**
 * Claims that a standing ruling overruled in favour of another side, in spoken order. A recognizer's error is none of them: the speaker
 * was right, and only the captions were wrong.
 */
export function settledClaims(detail: RecordingDetail): SettledClaim[] {
  const { analysis, rulings } = detail;
  const { openTopics } = claimStanding(detail);
  const denied = new Set(analysis.denials.flatMap((denial) => denial.claims));
  const claims = new Map(analysis.claims.map((claim) => [claim.id, claim]));
  const overruled = overruledUnder(detail);
  const settled = analysis.conflicts.flatMap((conflict) => {
    const ruling = rulings.find((one) => one.conflictKey === conflict.key && one.supersededBy === null);
    const standing = ruling?.decision === "side-stands" && ruling.side !== null ? conflict.sides[ruling.side] : undefined;
    if (!ruling || !standing) return [];
    const upheld = claims.get(standing.claims[0] ?? "");
    const right = valueLabel(standing.value, standing.unit, upheld?.attribute ?? null);
    const another = (claim: Claim) => upheld && (upheld.component !== claim.component || upheld.attribute !== claim.attribute);
    const caveat = [
      openMark([...new Set(standing.claims.flatMap(openTopics))]),
      standing.claims.some((id) => denied.has(id)) ? "[the stock sheet says otherwise]" : "",
      overruledMark(standing.claims.flatMap((id) => overruled.get(id) ?? []).filter(({ topic }) => topic !== conflict.topic)),
    ]
      .filter(Boolean)
      .join(" ");
    return conflict.sides
      .filter((_, side) => isOverruled(ruling, side))
      .flatMap((side) => side.claims)
      .flatMap((id) => {
        const claim = claims.get(id);
        const said = claim && valueLabel(claim.value, claim.unit, claim.attribute);
        if (!claim || !said) return [];
        const rightOf = upheld && another(claim) ? claimSubject(upheld) : null;
        return said !== right || rightOf !== null ? [{ claim, conflict, ruling, said, right, rightOf, caveat }] : [];
      });
  });
  // A claim may lose in two conflicts; it is put right once.
  const once = new Map(settled.map((one) => [`${one.claim.id} ${one.right}`, one]));
  return [...once.values()].toSorted((a, b) => a.claim.start - b.claim.start);
}

interface RuledAgainst {
  readonly topic: string;
  readonly misheard: boolean;
  /** Seconds: when the claim that it went against was spoken. */
  readonly start: number;
}

/** The standing rulings that went against a claim, by the claim's id. */
function overruledUnder({ analysis, rulings }: RecordingDetail): Map<string, RuledAgainst[]> {
  const under = new Map<string, RuledAgainst[]>();
  const startOf = new Map(analysis.claims.map(({ id, start }) => [id, start]));
  for (const conflict of analysis.conflicts) {
    const { key, topic, sides } = conflict;
    const ruling = rulings.find((one) => one.conflictKey === key && one.supersededBy === null);
    if (!ruling) continue;
    for (const id of sides.filter((_, side) => isValueOverruled(conflict, ruling, side)).flatMap((side) => side.claims))
      under.set(id, [...(under.get(id) ?? []), { topic, misheard: ruling.decision === "recogniser-error", start: startOf.get(id) ?? 0 }]);
  }
  return under;
}

/**
 * What a reviewer let stand under one conflict and not under another: two rulings that want a second look. Of words that were misheard
 * just the moment is named: what was really said there is told beside it, and the rest stands.
 */
function overruledMark(against: readonly RuledAgainst[]): string {
  const topics = new Set(against.filter(({ misheard }) => !misheard).map(({ topic }) => topic));
  const times = new Set(against.filter(({ misheard }) => misheard).map(({ start }) => timeLabel(start)));
  return [
    topics.size === 0 ? "" : `[another ruling says otherwise: ${[...topics].join(", ")}; ask before you rely on it]`,
    times.size === 0 ? "" : `[the captions misheard it at ${[...times].join(", ")}]`,
  ]
    .filter(Boolean)
    .join(" ");
}

/** Long enough to read a short line; common practice of captioning. */
const shortestOverlaySeconds = 4;

/** Overlay captions that put a settled claim right at the moment it was wrongly spoken, each with a comment that says by whom and why. */
export function overlayWebvtt(detail: RecordingDetail): string {
  const cues = settledClaims(detail).map(({ claim, ruling, said, right, rightOf, caveat }, position) => {
    const end = Math.min(Math.max(claim.end, claim.start + shortestOverlaySeconds), Math.max(detail.summary.duration, claim.start + 1));
    const why = `${said} was said; ${rightOf === null ? right : `${rightOf} ${right}`} stands by ${ruling.initials} on ${ruling.at.slice(0, 10)}: ${ruling.reason}`;
    const rightWords =
      rightOf === null
        ? `${claimSubject(claim)} is ${right}, not ${said}.`
        : `${rightOf} is ${right}; ${claimSubject(claim)} is not ${said}.`;
    return (
      `NOTE\n${why.replaceAll("-->", "→").replaceAll(/\s*\n\s*/g, " ")}\n\n` +
      `correction-${position + 1}\n${stamp(claim.start)} --> ${stamp(end)} line:8% align:center\n` +
      `${chapterTitleText(`Correction: ${rightWords}${caveat && ` ${caveat}`}`)}\n`
    );
  });
  return `WEBVTT\n\n${cues.length === 0 ? "NOTE\nNo claim was settled against what was said; nothing is put right.\n" : cues.join("\n")}`;
}
