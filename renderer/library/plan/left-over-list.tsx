import { Button } from "../../shared/button.tsx";
import { counted } from "../../shared/count.ts";
import { placeOfFile } from "../files/found-file.ts";
import type { LeftOver } from "./import-plan.ts";

/** So many are named; of a folder full of pictures nobody reads every name. */
const mostNamed = 40;

export interface LeftOverListProps {
  readonly rest: readonly LeftOver[];
  readonly onAdd: (key: string) => void;
}

export function LeftOverList({ rest, onAdd }: LeftOverListProps) {
  if (rest.length === 0) return <p className="soft">No file is left over.</p>;
  return (
    <section aria-labelledby="left-over-heading" className="left-over">
      <h3 id="left-over-heading">{counted(rest.length, "file is", "files are")} left over</h3>
      <ul aria-label="Files left over">
        {rest.slice(0, mostNamed).map(({ file, why, canBeRecording }) => (
          <li key={file.key}>
            <span>
              <strong>{placeOfFile(file)}</strong>: {why}.
            </span>
            {canBeRecording ? (
              <Button weight="quiet" onClick={() => onAdd(file.key)} aria-label={`Make ${file.name} a recording of its own`}>
                A recording of its own
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      {rest.length > mostNamed ? <p className="small soft">and {rest.length - mostNamed} more.</p> : null}
    </section>
  );
}
