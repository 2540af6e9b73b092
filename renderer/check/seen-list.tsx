import { momentLabel, type SeenNote } from "../../shared-types/index.ts";
import "./ruling.css";

/** Notes as they were made; superseded ones stay readable and are marked as such. */
export function SeenList({ notes, withTopic }: { readonly notes: readonly SeenNote[]; readonly withTopic?: boolean }) {
  return (
    <ol className="rulings">
      {notes.map((note) => (
        <li
          key={note.id}
          className="ruling-past"
          data-superseded={note.supersededBy !== null || undefined}
          data-open={note.state === "waits" || undefined}
        >
          <p>
            {withTopic ? `${note.topic}: ` : ""}
            <strong>{note.state === "seen" ? "Seen" : "Opened again"}</strong>{" "}
            <span className="chip">{note.supersededBy === null ? "current" : "superseded"}</span>
          </p>
          {withTopic ? <p className="small">{note.told}</p> : null}
          <p>{note.reason}</p>
          <p className="small soft">
            {note.initials}, <time dateTime={note.at}>{momentLabel(note.at)}</time>
          </p>
        </li>
      ))}
    </ol>
  );
}
