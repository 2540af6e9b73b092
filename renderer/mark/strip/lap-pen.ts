import { pointOn, type TrackPiece } from "./track.ts";

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Draws along the lap strip's way. */
export class LapPen {
  readonly pen: CanvasRenderingContext2D;
  readonly pieces: readonly TrackPiece[];
  readonly radius: number;

  constructor(pen: CanvasRenderingContext2D, pieces: readonly TrackPiece[], radius: number) {
    this.pen = pen;
    this.pieces = pieces;
    this.radius = radius;
  }

  at(along: number, outwards = 0) {
    return pointOn(this.pieces, this.radius, along, outwards);
  }

  /** A ribbon of the way between two lengths of it, from one side to another, as the path to fill or to draw. */
  ribbon(from: number, to: number, inner: number, outer: number): void {
    this.pen.beginPath();
    const side = this.pieces.find((piece) => piece.kind === "side" && piece.from <= from && piece.to >= to);
    if (side) {
      // Along a side it is a rectangle, which costs a canvas far less than a path: most spans of a long recording are.
      const [a, b] = [this.at(from, outer), this.at(to, inner)];
      this.pen.rect(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.abs(b.x - a.x), Math.abs(b.y - a.y));
      return;
    }
    const start = this.at(from, outer);
    this.pen.moveTo(start.x, start.y);
    this.follow(from, to, outer);
    const turn = this.at(to, inner);
    this.pen.lineTo(turn.x, turn.y);
    this.follow(to, from, inner);
    this.pen.closePath();
  }

  /** A line across the way. */
  across(along: number, inner: number, outer: number): void {
    const [a, b] = [this.at(along, inner), this.at(along, outer)];
    this.pen.moveTo(a.x, a.y);
    this.pen.lineTo(b.x, b.y);
  }

  /** Words in the middle of a lane, along the way or, upright, across it. */
  words(text: string, along: number, outwards: number, degrees: number): void {
    const { x, y } = this.at(along, outwards);
    const { pen } = this;
    if (degrees === 0) {
      pen.fillText(text, x, y);
      return;
    }
    pen.save();
    pen.translate(x, y);
    pen.rotate(radians(degrees));
    pen.fillText(text, 0, 0);
    pen.restore();
  }

  private follow(from: number, to: number, outwards: number): void {
    const back = to < from;
    const [low, high] = back ? [to, from] : [from, to];
    const touched = this.pieces.filter((piece) => piece.to > low && piece.from < high);
    for (const piece of back ? touched.toReversed() : touched) {
      const [first, last] = [Math.max(low, piece.from), Math.min(high, piece.to)];
      if (piece.kind === "side") {
        const end = this.at(back ? first : last, outwards);
        // At its very end a side's point is also a corner's: both are the same.
        this.pen.lineTo(end.x, end.y);
        continue;
      }
      const degreesAt = (along: number) => piece.degrees - 90 + ((along - piece.from) / (piece.to - piece.from)) * 90;
      const [a, b] = [radians(degreesAt(back ? last : first)), radians(degreesAt(back ? first : last))];
      this.pen.arc(piece.x, piece.y, this.radius + outwards, a, b, back);
    }
  }
}
