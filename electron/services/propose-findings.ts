import { type Claim, type FindingProposal, type Grade, proposalKey } from "../../shared-types/index.ts";

/**
 * Words that grade a condition, gravest first; the first that is found decides. A faultless statement is good, not as new,
 * unless the speaker says so: an index must not promise more than was said.
 */
const gradeWords = [
  {
    grade: "damaged",
    pattern:
      /\b(?:rust(?:ed)?[ -]?through|holes?|crack(?:s|ed)?|broken|torn|tears?|rips?|ripped|dent(?:s|ed)?|leak(?:s|ing|y)?|bent|missing|smashed|rotten|rotted|split)\b/i,
    example: "there is a rust hole in the trunk pan",
  },
  {
    grade: "as-new",
    pattern: /\b(?:brand[ -]new|like new|as new|mint|showroom|flawless|perfect)\b/i,
    example: "the carpet is like new",
  },
] as const satisfies readonly { grade: Grade; pattern: RegExp; example: string }[];

export const findingGradeWords = gradeWords;

const longestSeen = 300;

/**
 * Findings that the claims suggest: one for each condition that is stated of the vehicle today. Claims that judge the same part alike in
 * the same breath ("straight", "straight as a string") make one, by the longest words. Accepted ones are left out.
 * A key names the place of the words in the transcript, which a new analysis does not move.
 */
export function proposeFindings(claims: readonly Claim[], acceptedKeys: ReadonlySet<string>): FindingProposal[] {
  const conditions = claims.filter(isConditionToday);
  const proposed = new Set<string>();
  return conditions.flatMap((claim) => {
    const key = proposalKey(claim);
    if (acceptedKeys.has(key) || proposed.has(key) || conditions.some((other) => saysMore(other, claim))) return [];
    proposed.add(key);
    return {
      key,
      claim: claim.id,
      start: claim.start,
      end: Math.max(claim.end, claim.start),
      zone: claim.zone,
      component: claim.component,
      position: claim.position,
      seen: seen(claim),
      grade: gradeOf(claim),
    };
  });
}

/** True where another claim says the same of the same part in words that take these words in; of two equal ones the first stands. */
function saysMore(other: Claim, claim: Claim): boolean {
  if (other === claim || other.component !== claim.component || other.position !== claim.position || other.value !== claim.value)
    return false;
  if (!claim.captions.some((caption) => other.captions.includes(caption)) || !other.quote.includes(claim.quote)) return false;
  return (
    other.quote.length > claim.quote.length ||
    (other.quote === claim.quote && other.id.localeCompare(claim.id, "en", { numeric: true }) < 0)
  );
}

export function isConditionToday(claim: Claim): boolean {
  return claim.attribute === "condition" && claim.time === "today";
}

export function gradeOf(claim: Pick<Claim, "quote" | "value">): Grade {
  const words = gradeWords.find(({ pattern }) => pattern.test(claim.quote));
  if (claim.value === "good") return words?.grade === "as-new" ? "as-new" : "good";
  return words?.grade === "damaged" ? "damaged" : "worn";
}

function seen(claim: Claim): string {
  const words = claim.quote.trim() || String(claim.value);
  return words.length > longestSeen ? `${words.slice(0, longestSeen - 1)}…` : words;
}
