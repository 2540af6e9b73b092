/**
 * Capitals, digits and a few signs as pen strokes on a grid 4 wide and 6 high, so that the film needs no font installed
 * and looks the same wherever it is made. Strokes are parted by "|", points by spaces.
 */
const strokes: Readonly<Record<string, string>> = {
  A: "0,6 0,2 2,0 4,2 4,6|0,4 4,4",
  B: "0,0 0,6 3,6 4,5 4,4 3,3 0,3|0,0 3,0 4,1 4,2 3,3",
  C: "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5",
  D: "0,0 0,6 2.5,6 4,4.5 4,1.5 2.5,0 0,0",
  E: "4,0 0,0 0,6 4,6|0,3 3,3",
  F: "4,0 0,0 0,6|0,3 3,3",
  G: "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5 4,3 2.5,3",
  H: "0,0 0,6|4,0 4,6|0,3 4,3",
  I: "1,0 3,0|2,0 2,6|1,6 3,6",
  J: "4,0 4,5 3,6 1,6 0,5",
  K: "0,0 0,6|4,0 0,3.5|1.2,2.6 4,6",
  L: "0,0 0,6 4,6",
  M: "0,6 0,0 2,3 4,0 4,6",
  N: "0,6 0,0 4,6 4,0",
  O: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0",
  P: "0,6 0,0 3,0 4,1 4,2.4 3,3.4 0,3.4",
  Q: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0|2.6,4.4 4,6.4",
  R: "0,6 0,0 3,0 4,1 4,2.2 3,3.2 0,3.2|2,3.2 4,6",
  S: "4,1 3,0 1,0 0,1 0,2 1,3 3,3 4,4 4,5 3,6 1,6 0,5",
  T: "0,0 4,0|2,0 2,6",
  U: "0,0 0,5 1,6 3,6 4,5 4,0",
  V: "0,0 2,6 4,0",
  W: "0,0 1,6 2,2 3,6 4,0",
  X: "0,0 4,6|4,0 0,6",
  Y: "0,0 2,3 4,0|2,3 2,6",
  Z: "0,0 4,0 0,6 4,6",
  "0": "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0",
  "1": "1,1 2,0 2,6|1,6 3,6",
  "2": "0,1 1,0 3,0 4,1 4,2.3 0,6 4,6",
  "3": "0,0 4,0 2,2.4 3,2.4 4,3.4 4,5 3,6 1,6 0,5",
  "4": "3,6 3,0 0,4 4,4",
  "5": "4,0 0,0 0,2.5 3,2.5 4,3.5 4,5 3,6 0,6",
  "6": "3,0 1,0 0,1.5 0,5 1,6 3,6 4,5 4,3.8 3,2.8 0,2.8",
  "7": "0,0 4,0 1.5,6",
  "8": "1,0 3,0 4,1 4,2 3,3 1,3 0,4 0,5 1,6 3,6 4,5 4,4 3,3 1,3 0,2 0,1 1,0",
  "9": "4,3.2 1,3.2 0,2.2 0,1 1,0 3,0 4,1 4,4.5 3,6 1,6",
  "-": "1,3 3,3",
  ".": "1.8,5.8 2.2,5.8 2.2,6 1.8,6 1.8,5.8",
  "'": "2,0 2,1.4",
  "&": "4,6 1,2 1,1 1.7,0 2.5,1 0,4.2 0,5.2 1,6 2.2,6 4,3.6",
};

const advance = 5.6;

/** Width of the words in pixels, for letters `height` pixels high. */
export function wordsWidth(words: string, height: number): number {
  return Math.max(0, words.length * advance - (advance - 4)) * (height / 6);
}

/**
 * An SVG path of the words, top left corner at (x, y), capitals `height` pixels high.
 * @throws when a sign has no strokes, because a missing letter would pass unseen in a film.
 */
export function wordsPath(words: string, x: number, y: number, height: number): string {
  const unit = height / 6;
  const path: string[] = [];
  [...words.toUpperCase()].forEach((letter, index) => {
    if (letter === " ") return;
    const shape = strokes[letter];
    if (!shape) throw new Error(`The film's lettering has no "${letter}" (in "${words}"): add its strokes in stroke-letters.ts.`);
    const left = x + index * advance * unit;
    for (const stroke of shape.split("|")) {
      const points = stroke.split(" ").map((point) => {
        const [across = 0, down = 0] = point.split(",").map(Number);
        return `${(left + across * unit).toFixed(1)} ${(y + down * unit).toFixed(1)}`;
      });
      path.push(`M${points.join("L")}`);
    }
  });
  return path.join("");
}

/** The words as an SVG element. */
export function words(text: string, x: number, y: number, height: number, color: string, weight = height / 7): string {
  return `<path d="${wordsPath(text, x, y, height)}" fill="none" stroke="${color}" stroke-width="${weight.toFixed(2)}" stroke-linecap="round" stroke-linejoin="round"/>`;
}
