import { type KeyboardEvent, useRef } from "react";
import { type ComparedMoment, type Comparison, timeLabel, zoneLabels } from "../../shared-types/index.ts";
import { asHeading } from "../shared/claim-words.ts";
import { standingOf } from "./answer-words.ts";
import { vehicleName } from "./vehicle-choice.tsx";

/** A moment of one vehicle. */
export interface ChosenMoment extends ComparedMoment {
  readonly recordingId: string;
  readonly recordingTitle: string;
  readonly stockNumber: string;
  readonly subject: string;
}

export interface CompareTableProps {
  readonly comparison: Comparison;
  readonly onChoose: (moment: ChosenMoment) => void;
  readonly onPlay: (moment: ChosenMoment) => void;
  /** A key that the table itself has no use for; true where it was known. */
  readonly onKey: (event: KeyboardEvent) => boolean;
  /** Up from the first row. */
  readonly onLeave: () => void;
}

/** For each subject one row, for each vehicle one column: the value, when it was said, and how it stands. */
export function CompareTable({ comparison: { vehicles, subjects }, onChoose, onPlay, onKey, onLeave }: CompareTableProps) {
  const table = useRef<HTMLTableElement>(null);
  const step = (from: HTMLElement, key: string): boolean => {
    const moments = [...(table.current?.querySelectorAll<HTMLElement>("[data-column]") ?? [])];
    const at = moments.indexOf(from);
    const column = from.dataset.column;
    const inColumn = (list: HTMLElement[]) => list.find((one) => one.dataset.column === column);
    const next =
      key === "ArrowRight"
        ? moments[at + 1]
        : key === "ArrowLeft"
          ? moments[at - 1]
          : key === "ArrowDown"
            ? (inColumn(moments.slice(at + 1)) ?? moments[at + 1])
            : key === "ArrowUp"
              ? inColumn(moments.slice(0, at).reverse())
              : undefined;
    if (!next && key === "ArrowUp") onLeave();
    next?.focus();
    return next !== undefined || key.startsWith("Arrow");
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const from = (event.target as HTMLElement).closest<HTMLElement>("[data-column]");
    if (from && !event.ctrlKey && !event.altKey && !event.metaKey && step(from, event.key)) event.preventDefault();
    else if (onKey(event)) event.preventDefault();
  };
  return (
    <div className="compare-hold">
      <table className="compare" ref={table} onKeyDown={onKeyDown}>
        <caption className="visually-hidden">What was said of each vehicle. Arrow keys go from moment to moment, Enter plays.</caption>
        <thead>
          <tr>
            <th scope="col">Claim</th>
            {vehicles.map((vehicle) => (
              <th scope="col" key={vehicle.recordingId}>
                {vehicleName(vehicle)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {subjects.map(({ subject, said }) => (
            <tr key={subject}>
              <th scope="row">{asHeading(subject)}</th>
              {vehicles.map((vehicle, column) => {
                const { recordingId } = vehicle;
                const moments = said[column] ?? [];
                return (
                  <td key={recordingId}>
                    {moments.length === 0 ? <span className="soft">nobody said</span> : null}
                    {moments.map((moment) => {
                      const standing = standingOf(moment);
                      const chosen = { ...moment, ...vehicle, subject };
                      return (
                        <button
                          type="button"
                          key={`${moment.start} ${moment.value}`}
                          className="compare-moment"
                          data-column={column}
                          data-standing={moment.withheld?.reason}
                          onFocus={() => onChoose(chosen)}
                          onClick={() => onPlay(chosen)}
                        >
                          <strong>{moment.value}</strong>
                          <span className="small soft">
                            {timeLabel(moment.start)}, {zoneLabels[moment.zone]}
                          </span>
                          {standing ? (
                            <span className="chip" data-kind={moment.withheld?.reason === "disputed" ? "dispute" : undefined}>
                              {standing}
                            </span>
                          ) : null}
                        </button>
                      );
                    })}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
