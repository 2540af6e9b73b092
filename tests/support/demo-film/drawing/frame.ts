import { frameHeight, frameWidth } from "./perspective.ts";

/** Colours that run, shared by all drawings. */
const gradients = `<defs>
<linearGradient id="sky" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#a9c3cf"/><stop offset=".6" stop-color="#dfe2d6"/><stop offset="1" stop-color="#efe6d2"/></linearGradient>
<linearGradient id="ground" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#a3a195"/><stop offset="1" stop-color="#7c7a73"/></linearGradient>
<linearGradient id="metal" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#eef0f1"/><stop offset=".5" stop-color="#9ba2a8"/><stop offset="1" stop-color="#d6dadd"/></linearGradient>
<linearGradient id="pipe" x1="0" y1="0" x2="1" y2="0"><stop offset="0" stop-color="#6f6a62"/><stop offset=".4" stop-color="#c6c0b4"/><stop offset="1" stop-color="#6a645c"/></linearGradient>
<radialGradient id="lamp" cx=".5" cy=".4" r=".75"><stop offset="0" stop-color="#fff3d2" stop-opacity=".10"/><stop offset="1" stop-color="#000" stop-opacity=".38"/></radialGradient>
</defs>`;

/** A whole frame as an SVG document. */
export function frameDocument(content: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${frameWidth}" height="${frameHeight}" viewBox="0 0 ${frameWidth} ${frameHeight}">${gradients}${content}</svg>`;
}
