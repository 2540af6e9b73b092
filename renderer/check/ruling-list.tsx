import { decisionLabels, type Ruling } from "../../shared-types/index.ts";
import { sideLetter } from "../shared/claim-words.ts";
import "./ruling.css";

/** What a ruling decided, in words: "B stands: 255/60R15". */
function rulingLine(ruling: Ruling): string {
  if (ruling.side === null || (ruling.decision !== "side-stands" && ruling.decision !== "recogniser-error"))
    return decisionLabels[ruling.decision];
  const value = ruling.sideValues[ruling.side];
  const side = `${sideLetter(ruling.side)} ${ruling.decision === "side-stands" ? "stands" : "was misheard"}`;
  return value === undefined ? side : `${side}: ${value}`;
}

/** Rulings as they were made; superseded ones stay readable and are marked as such. */
export function RulingList({ rulings, withTopic }: { readonly rulings: readonly Ruling[]; readonly withTopic?: boolean }) {
  return (
    <ol className="rulings">
      {rulings.map((ruling) => (
        <li key={ruling.id} className="ruling-past" data-superseded={ruling.supersededBy !== null || undefined}>
          <p>
            {withTopic ? `${ruling.topic}: ` : ""}
            <strong>{rulingLine(ruling)}</strong> <span className="chip">{ruling.supersededBy === null ? "current" : "superseded"}</span>
          </p>
          <p>{ruling.reason}</p>
          {ruling.rightWords ? <p>Right words: “{ruling.rightWords}”</p> : null}
          <p className="small soft">
            {ruling.initials}, <time dateTime={ruling.at}>{ruling.at.slice(0, 16).replace("T", " ")} UTC</time>
          </p>
        </li>
      ))}
    </ol>
  );
}
