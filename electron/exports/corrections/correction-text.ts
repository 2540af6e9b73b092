import { claimSubject, misheardClaims, type RecordingDetail, timeLabel, valueLabel } from "../../../shared-types/index.ts";
import { denialWords, lastPublication, notAnalyzed, publicationWords } from "../publication-words.ts";
import { settledLines } from "./settled-lines.ts";

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Lines for the video's description: what was said wrongly and what is right; then what is still open, which is stated as nothing at all. */
export function correctionText(detail: RecordingDetail): string {
  const settled = settledLines(detail, "claim");
  const open = detail.analysis.conflicts.filter(({ key }) => detail.openConflictKeys.includes(key));
  const claims = new Map(detail.analysis.claims.map((claim) => [claim.id, claim]));
  const lines = [
    detail.analysis.analysisVersion === 0
      ? notAnalyzed
      : settled.length === 0
        ? "No correction to what is said in this video."
        : "Corrections to what is said in this video:",
    ...settled,
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
  const denied = denialWords(detail.analysis.denials);
  if (denied !== "") lines.push("", denied);
  const published = publicationWords(lastPublication(detail));
  if (published !== "" && open.length > 0) lines.push("", published);
  return `${lines.join("\n")}\n`;
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
