import type { BodyStyle } from "../../../shared-types/index.ts";

/**
 * What dealers write for a body style, American and British; common practice. The first row that fits tells: a "convertible coupe" is a
 * convertible, a "crew cab pickup van" is no van. What is drawn for no style of ours (a sport utility, a motorcycle) is left open.
 */
const written: readonly (readonly [RegExp, BodyStyle])[] = [
  [/\b(?:roadster|spider|spyder|speedster|two[- ]seater sports)\b/, "roadster"],
  [/\b(?:convertible|cabriolet|cabrio|drop ?head|dhc|soft ?top|open tourer)\b/, "convertible"],
  [/\b(?:pick[- ]?up|ute|crew cab|extended cab|regular cab|double cab|single cab|king cab|flat ?bed|truck)\b/, "pickup"],
  [/\b(?:(?:station |estate )?wagon|estate|shooting brake|touring wagon|kombi|avant)\b/, "estate"],
  [/\b(?:hatch(?:back)?|lift ?back)\b/, "hatchback"],
  [/\b(?:panel van|mini ?van|cargo van|passenger van|van|mpv|people carrier|camper)\b/, "van"],
  [/\b(?:coupes?|hard ?top coupe|fast ?back|fhc|two[- ]door hard ?top|2[- ]?(?:dr|door)(?: hard ?top)?)\b/, "coupe"],
  [/\b(?:sedan|saloon|limousine|four[- ]door|4[- ]?(?:dr|door)(?: hard ?top)?)\b/, "sedan"],
];

/** The body style that a cell of a stock sheet tells; null where it tells none that is drawn. */
export function bodyStyleOf(cell: string): BodyStyle | null {
  const words = cell.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/_/g, " ");
  if (/\b(?:suv|sport utility|crossover|motorcycle|trailer)\b/.test(words)) return null;
  return written.find(([pattern]) => pattern.test(words))?.[1] ?? null;
}
