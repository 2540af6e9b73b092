import { commercialRimTenths } from "../../vocabulary/tire-sizes.ts";
import type { Line } from "../pieces.ts";
import type { Find } from "../rule.ts";

/** What follows a size, or stands near it, and is part of it. */
type Stretch = Pick<Find, "first" | "end" | "drafts">;

/** "225 70 19 and a half": the half inch of a commercial rim, said as a fraction. */
export function withHalfInch(line: Line, found: Stretch): Find | undefined {
  const half = /^and (?:a |1 )?half(?= |$)/.exec(line.text.slice(line.starts[found.end]));
  const [draft] = found.drafts;
  const rim = /\/\d\d[A-Z]+(\d\d)$/.exec(String(draft?.value))?.[1];
  if (!half || !draft || rim === undefined || !commercialRimTenths.has(Number(rim) * 10 + 5)) return undefined;
  const parts = draft.parts?.map((part, at, all) => (at === all.length - 1 ? part + 0.5 : part));
  return {
    first: found.first,
    end: found.end + half[0].split(" ").length,
    drafts: [{ ...draft, value: `${draft.value}.5`, parts, repaired: true }],
  };
}

/** "215 65 r 16 c's": the C of a light commercial tire. A British van is shod with them; a letter after a rim is elsewhere a load range. */
export function withCommercialMark(line: Line, found: Stretch): Find | undefined {
  const next = line.pieces[found.end];
  const [draft] = found.drafts;
  if (!draft || !/^\d{3}\/\d\dR1[2-7]$/.test(String(draft.value))) return undefined;
  if (!/^(?:c|c's|cs|commercial|commercials)$/.test(next?.text ?? "")) return undefined;
  return { ...found, end: found.end + 1, drafts: [{ ...draft, value: `${draft.value}C`, repaired: draft.repaired || !next!.glued }] };
}

const smallSpare = /\b(?:space saver|donut|doughnut|temporary|get you home|skinny|compact spare|emergency)\b/;
/** Widest and lowest of the temporary spares (from memory). */
const temporarySpare = { widestMm: 165, lowestAspectPercent: 70 } as const;

/** A space saver's size carries its T, said or not: no road tire of that width has that aspect on that rim. */
export function asTemporarySpare(line: Line, found: Stretch): Find {
  const [draft] = found.drafts;
  const size = /^(\d{3})\/(\d\d)[RDB](\d\d)$/.exec(String(draft?.value));
  if (!draft || !size || Number(size[1]) > temporarySpare.widestMm || Number(size[2]) < temporarySpare.lowestAspectPercent) return found;
  const around = line.text.slice(Math.max(0, line.starts[found.first]! - 60), line.starts[found.end]! + 40);
  if (Number(size[3]) < 15 || !smallSpare.test(around)) return found;
  return { ...found, drafts: [{ ...draft, value: `T${draft.value}` }] };
}
