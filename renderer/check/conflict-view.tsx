import { useRef, useState } from "react";
import type { Conflict, RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { asHeading } from "../shared/claim-words.ts";
import { useShortcuts } from "../shared/keys.ts";
import { checkActionOf } from "./check-shortcuts.ts";
import { ConflictGrounds } from "./conflict-grounds.tsx";
import { EffectView } from "./effect-view.tsx";
import { NextButton, type NextStep } from "./next-button.tsx";
import { rulingsOn } from "./queue.ts";
import type { RulingDrafts } from "./ruling-draft.ts";
import { RulingForm } from "./ruling-form.tsx";
import { RulingList } from "./ruling-list.tsx";
import { type Hearing, SideCard } from "./side-card.tsx";

export interface ConflictViewProps {
  readonly conflict: Conflict;
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  readonly next: NextStep | null;
  readonly drafts: RulingDrafts;
}

/** One conflict: its moments side by side, why they cannot all hold, and the ruling. */
export function ConflictView({ conflict, detail, edit, next, drafts }: ConflictViewProps) {
  /** Which sides stand left and right; a conflict may have more than two. */
  const [pair, setPair] = useState<readonly [number, number]>([0, 1]);
  const hearings = useRef<[Hearing | null, Hearing | null]>([null, null]);
  const open = detail.openConflictKeys.includes(conflict.key);
  const rulings = rulingsOn(detail.rulings, conflict.key);

  const hear = (seat: 0 | 1, heardOut: (() => void) | null = null) => {
    const [own, other] = seat === 0 ? hearings.current : [hearings.current[1], hearings.current[0]];
    // Two voices at once help nobody.
    other?.clock.pause();
    if (own?.stretch) own.clock.hear([own.stretch], heardOut);
  };
  const hearBoth = () => hear(0, () => hear(1));
  const stop = () => {
    for (const hearing of hearings.current) hearing?.clock.pause();
  };
  useShortcuts((key) => {
    const action = checkActionOf(key);
    if (action === "hear-first") hear(0);
    else if (action === "hear-second") hear(1);
    else if (action === "hear-both") hearBoth();
    else if (action === "stop") stop();
    else return false;
    return true;
  });

  return (
    <article className="conflict" aria-labelledby="conflict-topic">
      <header className="conflict-head">
        <div>
          <h2 id="conflict-topic" className="conflict-topic">
            {asHeading(conflict.topic)}
          </h2>
          <p>{conflict.why}</p>
        </div>
        <div className="row">
          <span className="chip" data-kind={open ? "dispute" : "settled"}>
            {open ? "in dispute" : "settled"}
          </span>
          <Button shortcut="H" onClick={hearBoth}>
            Hear both
          </Button>
          <Button weight="quiet" shortcut="S" onClick={stop}>
            Stop
          </Button>
          <NextButton next={next} />
        </div>
      </header>
      <div className="sides">
        {([0, 1] as const).map((seat) => (
          <SideCard
            key={seat}
            conflict={conflict}
            sideIndex={pair[seat]}
            seatKey={seat === 0 ? "A" : "B"}
            detail={detail}
            onSide={(index) => setPair(seat === 0 ? [index, pair[1]] : [pair[0], index])}
            onHear={() => hear(seat)}
            hearingRef={(hearing) => {
              hearings.current[seat] = hearing;
            }}
          />
        ))}
      </div>
      <ConflictGrounds conflict={conflict} detail={detail} pair={pair} />
      <RulingForm conflict={conflict} detail={detail} edit={edit} drafts={drafts} />
      <EffectView conflict={conflict} detail={detail} />
      {rulings.length > 0 ? (
        <section className="check-part" aria-labelledby="rulings-heading">
          <h3 id="rulings-heading">Rulings</h3>
          <RulingList rulings={rulings} />
        </section>
      ) : null}
    </article>
  );
}
