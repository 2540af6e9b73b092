import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";

const root = join(import.meta.dirname, "..", "..");

/** Pixels of a side, and the type that Apple's icon file gives a PNG of that size. */
const appleSizes = [
  [128, "ic07"],
  [256, "ic08"],
  [512, "ic09"],
  [1024, "ic10"],
] as const;
const windowsSizes = [16, 24, 32, 48, 64, 128, 256] as const;
const linuxSizes = [16, 32, 48, 64, 128, 256, 512] as const;

/** Draws the application's sign, the same as the page's, as the icons of the three systems: `icon.icns`, `icon.ico` and `icons/`. */
export function drawIcons(folder: string): void {
  const sign = readFileSync(join(root, "renderer", "public", "mark.svg"), "utf8");
  // A light plate under the sign, so that it shows on a dark ground too.
  const plated = sign
    .replace('viewBox="0 0 32 32"', 'viewBox="-4 -4 40 40"')
    .replace("</title>", '</title><rect x="-2.5" y="-2.5" width="37" height="37" rx="5" fill="#f4f6f8"/>');
  const draw = (side: number) => Buffer.from(new Resvg(plated, { fitTo: { mode: "width", value: side } }).render().asPng());
  mkdirSync(join(folder, "icons"), { recursive: true });
  for (const side of linuxSizes) writeFileSync(join(folder, "icons", `${side}x${side}.png`), draw(side));
  writeFileSync(join(folder, "icon.icns"), appleIcon(appleSizes.map(([side, type]) => ({ type, picture: draw(side) }))));
  writeFileSync(join(folder, "icon.ico"), windowsIcon(windowsSizes.map((side) => ({ side, picture: draw(side) }))));
}

/** Pictures one after another, each behind its type and length with these eight bytes, big end first. */
function appleIcon(pictures: readonly { readonly type: string; readonly picture: Buffer }[]): Buffer {
  const block = (type: string, content: Buffer) => {
    const head = Buffer.alloc(8);
    head.write(type, "latin1");
    head.writeUInt32BE(content.length + 8, 4);
    return Buffer.concat([head, content]);
  };
  return block("icns", Buffer.concat(pictures.map(({ type, picture }) => block(type, picture))));
}

/** A table of contents and PNG pictures, which Windows takes in an icon since Vista; 256 is written as 0. */
function windowsIcon(pictures: readonly { readonly side: number; readonly picture: Buffer }[]): Buffer {
  const head = Buffer.alloc(6);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(pictures.length, 4);
  let offset = head.length + 16 * pictures.length;
  const rows = pictures.map(({ side, picture }) => {
    const row = Buffer.alloc(16);
    row.writeUInt8(side % 256, 0);
    row.writeUInt8(side % 256, 1);
    row.writeUInt16LE(1, 4);
    row.writeUInt16LE(32, 6);
    row.writeUInt32LE(picture.length, 8);
    row.writeUInt32LE(offset, 12);
    offset += picture.length;
    return row;
  });
  return Buffer.concat([head, ...rows, ...pictures.map(({ picture }) => picture)]);
}
