import {
  type Claim,
  type Conflict,
  claimSubject,
  isOverruled,
  misheardClaims,
  type RecordingDetail,
  type Ruling,
  timeLabel,
  valueLabel,
} from "../../../shared-types/index.ts";
import { chapterTitleText, stamp } from "../chapters/webvtt.ts";
import { claimStanding, isValueOverruled, openMark } from "../claim-standing.ts";
import { lastPublication, notAnalyzed, publicationWords } from "../publication-words.ts";

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
      overruledMark([...new Set(standing.claims.flatMap((id) => overruled.get(id) ?? []))].filter((topic) => topic !== conflict.topic)),
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

/** Topics of the conflicts in which a standing ruling went against a claim, by the claim's id. */
function overruledUnder({ analysis, rulings }: RecordingDetail): Map<string, string[]> {
  const under = new Map<string, string[]>();
  for (const conflict of analysis.conflicts) {
    const { key, topic, sides } = conflict;
    const ruling = rulings.find((one) => one.conflictKey === key && one.supersededBy === null);
    if (!ruling) continue;
    for (const id of sides.filter((_, side) => isValueOverruled(conflict, ruling, side)).flatMap((side) => side.claims))
      under.set(id, [...(under.get(id) ?? []), topic]);
  }
  return under;
}

/** What a reviewer let stand under one conflict and not under another: two rulings that want a second look. */
function overruledMark(topics: readonly string[]): string {
  return topics.length === 0 ? "" : `[but overruled under: ${topics.join(", ")}]`;
}

/** Claims whose words a standing ruling calls the recognizer's error: what was really said, and by which ruling. */
function misheardLines({ analysis, rulings }: RecordingDetail): string[] {
  const misheard = misheardClaims(analysis.conflicts, rulings);
  const standing = rulings.filter(({ decision, supersededBy }) => decision === "recogniser-error" && supersededBy === null);
  return analysis.claims
    .filter(({ id }) => misheard.has(id))
    .toSorted((a, b) => a.start - b.start)
    .map((claim) => {
      const ruling = standing.find(({ conflictKey }) =>
        analysis.conflicts.some(({ key, sides }) => key === conflictKey && sides.some((side) => side.claims.includes(claim.id))),
      );
      const why = ruling ? ` (${ruling.reason.replaceAll(/\s+/g, " ").replace(/\.$/, "")})` : "";
      const captions = valueLabel(claim.value, claim.unit, claim.attribute);
      return `${timeLabel(claim.start)} ${capital(claimSubject(claim))}: ${captions} is misheard; said: “${misheard.get(claim.id)}”${why}.`;
    });
}

/** Long enough to read a short line; common practice of captioning. */
const shortestOverlaySeconds = 4;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

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

/** Lines for the video's description: what was said wrongly and what is right; then what is still open, which is stated as nothing at all. */
export function correctionText(detail: RecordingDetail): string {
  const settled = settledClaims(detail);
  const open = detail.analysis.conflicts.filter(({ key }) => detail.openConflictKeys.includes(key));
  const claims = new Map(detail.analysis.claims.map((claim) => [claim.id, claim]));
  const lines = [
    detail.analysis.analysisVersion === 0
      ? notAnalyzed
      : settled.length === 0
        ? "No correction to what is said in this video."
        : "Corrections to what is said in this video:",
    ...settled.map(
      ({ claim, said, right, rightOf, ruling, caveat }) =>
        `${timeLabel(claim.start)} ${capital(claimSubject(claim))}: ${said} was said; ${rightOf === null ? right : `${rightOf} ${right}`} is right (${ruling.reason.replaceAll(/\s+/g, " ").replace(/\.$/, "")}).${caveat && ` ${caveat}`}`,
    ),
  ];
  const misheard = misheardLines(detail);
  if (misheard.length > 0) lines.push("", "Misheard in the captions; the speaker was right:", ...misheard);
  if (open.length > 0) {
    lines.push("", "Not yet checked; ask before you rely on it:");
    for (const { topic, sides } of open) {
      const moments = sides.flatMap((side) => side.claims.flatMap((id) => claims.get(id)?.start ?? [])).toSorted((a, b) => a - b);
      lines.push(`${capital(topic)} (${[...new Set(moments.map(timeLabel))].join(", ")})`);
    }
  }
  const published = publicationWords(lastPublication(detail));
  if (published !== "" && open.length > 0) lines.push("", published);
  return `${lines.join("\n")}\n`;
}
