import type { Claim } from "../../../../shared-types/index.ts";

interface Annotation {
  readonly case: string;
  readonly captions: readonly number[];
  /** Tested on "component attribute value quote". */
  readonly claim: RegExp;
  readonly part?: string;
  readonly circumstance?: string;
  readonly time?: Claim["time"];
}

/**
 * What the annotated cases leave to the words around a claim: which part it is about, when it held, under which circumstance.
 * Read from the transcripts by hand; only where a careful listener needs it to compare two claims.
 */
export const annotations: readonly Annotation[] = [
  { case: "dev01", captions: [4, 23], claim: /^paint color green/, time: "former" },
  { case: "dev01", captions: [29], claim: /^paint color (black|green)/, part: "engine bay" },
  { case: "dev01", captions: [17], claim: /^transmission color white/, time: "former" },
  { case: "dev01", captions: [23], claim: /^price price 3681/, circumstance: "new" },
  { case: "dev02", captions: [12], claim: /^(wheel diameter 16|tire size 215)/, time: "former" },
  { case: "dev02", captions: [4], claim: /^price price 12495/, time: "former" },
  { case: "dev02", captions: [36], claim: /^bumper originality/, part: "bumper bar" },
  { case: "dev03", captions: [7], claim: /^tire (size 6.40-15|type cross-ply)/, time: "former" },
  { case: "dev03", captions: [5], claim: /toughened/, time: "former" },
  { case: "dev03", captions: [27], claim: /(dynamo|positive earth)/, time: "former" },
  { case: "dev04", captions: [2], claim: /^price price 21000/, time: "former" },
  { case: "dev04", captions: [31], claim: /^odometer mileage/, time: "former" },
  { case: "dev04", captions: [21], claim: /vinyl$|vinyl when it was new|map pockets/, part: "seat back" },
  { case: "dev05", captions: [6], claim: /mechanical|every corner|twelve inch/, time: "former" },
  { case: "dev05", captions: [7], claim: /flathead|85|283/, time: "former" },
  { case: "dev05", captions: [9], claim: /^exhaust diameter/, part: "header" },
  { case: "dev05", captions: [20], claim: /^odometer mileage 61000/, time: "former" },
  { case: "dev05", captions: [31], claim: /leaf springs|52 bannock/, time: "former" },
  { case: "dev05", captions: [13], claim: /^paint color (blue|black)/, time: "former" },
  { case: "dev05", captions: [18], claim: /mohair/, circumstance: "as built" },
  { case: "dev05", captions: [32], claim: /308s/, time: "former" },
  { case: "dev05", captions: [37], claim: /thirty one thousand|over eighty/, circumstance: "receipts" },
];
