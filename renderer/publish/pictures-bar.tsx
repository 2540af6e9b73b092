import { WorkBar } from "../lot/work-bar.tsx";
import type { PicturesUnderWay } from "./index-pictures.ts";

export interface PicturesBarProps {
  readonly underWay: PicturesUnderWay;
  readonly onCancel: () => void;
}

/** Pictures for the index being taken from the page's own player: how many, the last one, and the way to end it. */
export function PicturesBar({ underWay: { title, done, of, last }, onCancel }: PicturesBarProps) {
  const what = `Taking pictures from the video of “${title}”: ${done} of ${of}`;
  return (
    <div className="pictures-bar">
      <div className="pictures-last">{last === null ? null : <img src={last} alt="" />}</div>
      <WorkBar name="Taking pictures" progress={{ what, done, of }} onCancel={onCancel} />
    </div>
  );
}
