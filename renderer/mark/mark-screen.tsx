import { Tabs } from "@base-ui/react/tabs";
import { useCallback, useEffect, useRef, useState } from "react";
import type { RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Picture } from "../player/picture.tsx";
import { Transport } from "../player/transport.tsx";
import { useRecordingClock } from "../player/use-recording-clock.ts";
import { Button } from "../shared/button.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { recordingPlace } from "../shared/place.ts";
import { CaptionsPane } from "./captions/captions-pane.tsx";
import type { FindingDraft } from "./findings/finding-draft.ts";
import { FindingsPane } from "./findings/findings-pane.tsx";
import { MarkBar } from "./mark-bar.tsx";
import { MarkDialogs } from "./mark-dialogs.tsx";
import "./mark-screen.css";
import { PlanView } from "./plan/plan-view.tsx";
import { markActionOf } from "./shortcuts.ts";
import { SpanBar } from "./spans/span-bar.tsx";
import { SpansPane } from "./spans/spans-pane.tsx";
import { LapStrip } from "./strip/lap-strip.tsx";
import { type CaptionsAsk, type FindingAsk, type Pane, useMarkActions } from "./use-mark-actions.ts";
import { useMarks } from "./use-marks.ts";

export interface MarkScreenProps {
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  /** Seconds to start at. */
  readonly startAt: number | null;
}

/** The editor's desk. */
export function MarkScreen({ detail, edit, startAt }: MarkScreenProps) {
  const picture = useRecordingClock(detail.summary);
  const { clock } = picture;
  const keeper = useMarks();
  const [pane, setPane] = useState<Pane>("zones");
  /** The film takes the place of the lap and the page. */
  const [filmLarge, setFilmLarge] = useState(false);
  /** The finding whose form is open: "new", an id, or none. */
  const [editing, setEditing] = useState<string | null>(null);
  const [formPlace, setFormPlace] = useState<HTMLElement | null>(null);
  const [findingAsk, setFindingAsk] = useState<FindingAsk | null>(null);
  /** Half-written findings, as `editing` names them: the form goes from the page while another list is shown. */
  const findingDrafts = useRef(new Map<string, FindingDraft>());
  // The same functions at each drawing: the lap strip is then drawn anew only when what it shows has changed.
  const showPane = useCallback((next: Pane) => {
    setPane(next);
    setFilmLarge(false);
  }, []);
  const openFinding = useCallback((id: string) => {
    setPane("findings");
    setFilmLarge(false);
    setEditing(id);
  }, []);
  const { id: recordingId } = detail.summary;
  const openConflict = useCallback(
    (conflict: string) => {
      window.location.hash = recordingPlace(recordingId, "check", { conflict });
    },
    [recordingId],
  );
  const [ask, setAsk] = useState<CaptionsAsk | null>(null);
  /** The row of the findings list that a key sent the keyboard to. */
  const [findingRow, setFindingRow] = useState<string | null>(null);
  const answered = useCallback(() => setAsk(null), []);
  const findingAnswered = useCallback(() => setFindingAsk(null), []);
  const desk = useMarkActions({
    detail,
    edit,
    clock,
    keeper,
    pane,
    onFinding: (asked) => {
      openFinding(editing ?? "new");
      setFindingAsk(asked);
    },
    onNextProposal: () => {
      const proposals = detail.findingProposals.toSorted((a, b) => a.start - b.start);
      const next = proposals.find(({ start }) => start > clock.read().time + 0.05) ?? proposals[0];
      showPane("findings");
      if (!next) return;
      clock.seek(next.start);
      setFindingRow(next.key);
    },
    onPane: showPane,
    onFilmSize: () => setFilmLarge(!filmLarge),
    onCaptions: setAsk,
  });
  useShortcuts((key) => {
    const action = markActionOf(key);
    if (!action) return false;
    desk.actions[action]();
    return true;
  });
  useEffect(() => {
    if (startAt !== null) clock.seek(startAt);
  }, [clock, startAt]);

  const waiting = detail.lap.filter((span) => span.zoneSpanId === null).length;
  return (
    <main className="mark" data-film={filmLarge ? "large" : undefined}>
      <LapStrip
        detail={detail}
        clock={clock}
        marks={keeper.marks}
        tools={
          <>
            {filmLarge ? null : <MarkBar desk={desk} keeper={keeper} />}
            <Button weight="quiet" shortcut="?" onClick={desk.actions.sheet}>
              Keys
            </Button>
          </>
        }
        onMoveBorder={desk.moveBorder}
        onPickFinding={openFinding}
        onOpenConflict={openConflict}
      >
        <PlanView detail={detail} clock={clock} />
      </LapStrip>
      {/* A finding's form lies over the lap, so that film, words and list stay where they are. */}
      <div className="mark-form" ref={setFormPlace} />
      <div className="mark-page">
        <SpanBar desk={desk} detail={detail} clock={clock} />
        <Tabs.Root className="panes" value={pane} onValueChange={(next: Pane) => setPane(next)}>
          <Tabs.List className="pane-tabs" aria-label="Lists">
            <Tabs.Tab value="findings" className="pane-tab">
              Findings <Waiting count={detail.findingProposals.length} /> <TabKey>2</TabKey>
            </Tabs.Tab>
            <Tabs.Tab value="zones" className="pane-tab">
              Zones <Waiting count={waiting} /> <TabKey>3</TabKey>
            </Tabs.Tab>
          </Tabs.List>
          <Tabs.Panel value="findings" className="pane" tabIndex={-1}>
            <FindingsPane
              detail={detail}
              clock={clock}
              noPicture={picture.noPicture}
              edit={edit}
              keeper={keeper}
              desk={desk}
              editing={editing}
              onEdit={setEditing}
              formPlace={formPlace}
              drafts={findingDrafts.current}
              ask={findingAsk}
              onAnswered={findingAnswered}
              focusRow={findingRow}
              onFocusRow={setFindingRow}
            />
          </Tabs.Panel>
          <Tabs.Panel value="zones" className="pane" tabIndex={-1}>
            <SpansPane detail={detail} clock={clock} desk={desk} keeper={keeper} />
          </Tabs.Panel>
        </Tabs.Root>
      </div>
      <section className="mark-film" aria-label="Player">
        <Picture {...picture} captions={detail.captions} />
        <div className="mark-tools">
          <Transport clock={clock}>
            <Button
              weight="quiet"
              shortcut="V"
              aria-pressed={filmLarge}
              onClick={desk.actions["film-size"]}
              tip="The film over the lap and the page"
            >
              Large
            </Button>
            {filmLarge ? <MarkBar desk={desk} keeper={keeper} /> : null}
          </Transport>
        </div>
      </section>
      <CaptionsPane detail={detail} clock={clock} edit={edit} ask={ask} onAnswered={answered} />
      <MarkDialogs desk={desk} />
    </main>
  );
}

/** The key that shows a list, on its tab. */
function TabKey({ children }: { readonly children: string }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus; the sheet tells the keys
  return <kbd aria-hidden="true">{children}</kbd>;
}

/** How many proposals wait behind a tab. */
function Waiting({ count }: { readonly count: number }) {
  if (count === 0) return null;
  return (
    <span className="pane-waiting">
      {count}
      <span className="visually-hidden"> proposed</span>
    </span>
  );
}
