import { type ConditionIndex } from "../../../shared-types/index.ts";
import { type Markup } from "./markup.ts";

type IndexClaim = ConditionIndex["claims"][number];
type IndexConflict = ConditionIndex["conflicts"][number];
type IndexFinding = ConditionIndex["findings"][number];
/** A picture of the video as a page carries it. */
export interface IndexStill {
  readonly atSeconds: number;
  /** `data:image/jpeg;base64,…`, or PNG or WebP. */
  readonly dataUri: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}
/** A time that plays where there is a video, and is only read where there is none. */
export type Jump = (seconds: number) => Markup;
export declare function jumpFor(plays: boolean): Jump;
/** The still nearest after the beginning of a stretch of time, within it; a moment before counts too, since a person may have stopped early. */
export declare function stillWithin(stills: readonly IndexStill[], start: number, end: number): IndexStill | undefined;
export declare function stillPicture(still: IndexStill | undefined, of: string): Markup | false;
export declare function openMarkup(topics: readonly string[]): Markup | false;
export declare function findingList(findings: readonly IndexFinding[], stills: readonly IndexStill[], jump: Jump): Markup;
export declare function claimLists(claims: readonly IndexClaim[], jump: Jump): Markup;
export declare function supportList({ supports }: ConditionIndex, jump: Jump): Markup;
export declare function denialBlock(denial: ConditionIndex["denials"][number], jump: Jump): Markup;
export declare function conflictBlock(conflict: IndexConflict, jump: Jump): Markup;
