import { parseTireSize } from "../../vocabulary/tire-geometry.ts";

/** A size in one spelling: no service prefix, speed letters or load range ("P235/60ZR15 98H" and "235/60-15" are 235/60R15). */
export function plainTireSize(spoken: string): string {
  return (
    spoken
      .toUpperCase()
      // A service description ("98H", "120/116Q") or load range after the size.
      .replace(/(?<=\d)\s+\d{2,3}(?:\/\d{2,3})?\s?[A-Z]\b.*$/, "")
      .replace(/[\s,]+/g, "")
      .replace(/^(P|LT|ST|T)(?=\d)/, "")
      .replace(/^(\d{3}\/\d{2})(?:Z?R|TR|HR|SR|VR|D|B|-)?(3[1469][05]|415|\d{2}(?:\.5)?).*$/, "$1R$2")
      .replace(
        /^(\d{2}(?:\.\d)?)X(\d{1,2})\.?(\d{0,2})(?:R|-)?(\d{2})(?:LT)?$/,
        (_, diameter, whole, fraction, rim) => `${diameter}X${whole}.${fraction.padEnd(2, "0")}R${rim}`,
      )
      .replace(/^([A-N])R?(\d{2})-?(\d{2})$/, "$1$2-$3")
  );
}

/** A rim named in a size: inches where it is an inch rim, else millimetres. */
export function rimNamedIn(spoken: string): { readonly inches: number; readonly metric: boolean; readonly named: number } | undefined {
  const size = parseTireSize(spoken.replace(/\s+/g, "")) ?? parseTireSize(plainTireSize(spoken).replace("X", "x"));
  if (!size) return undefined;
  return { inches: size.rim.inches, metric: size.rim.metric, named: size.rim.metric ? size.rim.millimetres : size.rim.inches };
}

/** Whether the text names only width and aspect ("215/70"), or only width: it agrees with every full size that begins so. */
export function isPartialTireSize(plain: string): boolean {
  return /^\d{3}(\/\d{2})?$/.test(plain) || /^\d{2}(\.\d)?X\d{1,2}(\.\d{2})?$/.test(plain);
}
