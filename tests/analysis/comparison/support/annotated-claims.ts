import type { Claim, ClaimValue, UnitName } from "../../../../shared-types/index.ts";
import type { AnnotatedCase } from "../../../corpus/read-cases.ts";
import { annotations } from "./annotations.ts";

/**
 * The claims of an annotated case as the claims pass would hand them on: the annotation's own, with the part, circumstance and time that
 * the annotation leaves to the words (see `annotations.ts`), placed in time by the words they quote.
 */
export function annotatedClaims({ gold, transcript }: AnnotatedCase): Claim[] {
  const captionText = (index: number): string => transcript.captions[index]?.text ?? "";
  const momentOf = (index: number, quote: string): number => {
    const caption = transcript.captions[index]!;
    const at = Math.max(0, caption.text.toLowerCase().indexOf(quote.toLowerCase()));
    return caption.start + (caption.end - caption.start) * (at / Math.max(1, caption.text.length));
  };
  const zones = gold.zones.map((zone, position) => ({ zone: zone.zone, start: position === 0 ? 0 : momentOf(zone.i, zone.from) }));
  return gold.claims.map((claim, position) => {
    const start = momentOf(claim.i, claim.quote);
    const added = annotations.find(
      (row) =>
        row.case === gold.id &&
        row.captions.includes(claim.i) &&
        row.claim.test(`${claim.component} ${claim.attribute} ${claim.value} ${claim.quote}`),
    );
    return {
      id: `c${position + 1}`,
      captions: [claim.i],
      start,
      end: start + 2,
      quote: claim.quote,
      spans: [{ caption: claim.i, start: 0, end: captionText(claim.i).length }],
      component: claim.component,
      part: added?.part ?? null,
      position: claim.position,
      attribute: claim.attribute,
      value: claim.value as ClaimValue,
      unit: claim.unit as UnitName | null,
      stance: claim.stance,
      time: added?.time ?? "today",
      circumstance: added?.circumstance ?? null,
      zone: zones.filter((zone) => zone.start <= start + 0.5).at(-1)!.zone,
      rule: "annotation",
      repairs: [],
    };
  });
}
