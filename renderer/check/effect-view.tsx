import type { Conflict, RecordingDetail } from "../../shared-types/index.ts";
import { effectLines } from "./effect-lines.ts";
import "./effect-view.css";

/** What the index and the Call desk say of each side now: a ruling changes it at once. */
export function EffectView({ conflict, detail }: { readonly conflict: Conflict; readonly detail: RecordingDetail }) {
  return (
    <section className="check-part" aria-labelledby="effect-heading">
      <h3 id="effect-heading">What is told of it now</h3>
      <table className="effect">
        <thead>
          <tr>
            <th scope="col">Side</th>
            <th scope="col">Condition index</th>
            <th scope="col">Call desk</th>
          </tr>
        </thead>
        <tbody>
          {effectLines(conflict, detail).map(({ letter, value, index, call }) => (
            <tr key={letter}>
              <th scope="row">
                {letter} {value}
              </th>
              <td>{index}</td>
              <td>{call}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
