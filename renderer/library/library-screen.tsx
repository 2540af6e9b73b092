import { useRef, useState, useSyncExternalStore } from "react";
import { cautions, type Problem, type RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { useLibrary } from "../client/use-library.ts";
import { StartNotes } from "../help/start-notes.tsx";
import { Button } from "../shared/button.tsx";
import { Ask } from "../shared/dialog.tsx";
import { Head } from "../shared/head.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { ProblemNote } from "../shared/problem-note.tsx";
import { DescribeDialog } from "./describe-dialog.tsx";
import { filesOfDrop } from "./files/dropped-files.ts";
import { type FoundFile, foundFiles } from "./files/found-file.ts";
import { readableFiles } from "./files/readable-files.ts";
import { useFileChoice } from "./files/use-file-choice.tsx";
import { useHandedFiles } from "./files/use-handed-files.ts";
import { ImportDialog } from "./import-dialog.tsx";
import "./library.css";
import { isBundle } from "../lot/is-bundle.ts";
import { useLotDialogs } from "../lot/use-lot-dialogs.tsx";
import { keepPlace, placeOfLibrary } from "./keep-place.ts";
import { libraryKeys } from "./library-shortcuts.ts";
import { arrangeRecordings, type RecordingOrder } from "./list/arrange-recordings.ts";
import { ListTools, manyRecordings } from "./list/list-tools.tsx";
import { RecordingList } from "./list/recording-list.tsx";
import { PlanDialog } from "./plan/plan-dialog.tsx";
import { RecordingRow } from "./recording-row.tsx";
import { removalWords } from "./removal-words.ts";
import { importRunOf, type RunLine } from "./run/import-run.ts";
import { RunPanel } from "./run/run-panel.tsx";
import { acceptOf, type ImportPart, isOneRecording } from "./sort-files.ts";
import type { DescriptionDraft } from "./vehicle-form.ts";
import { useVideoDialog } from "./videos/use-video-dialog.tsx";

interface SingleImport {
  readonly files: readonly File[];
  readonly described?: Pick<DescriptionDraft, "title" | "stockNumber">;
  /** Files of an earlier try that can no longer be read. */
  readonly unreadable?: Partial<Record<ImportPart, Problem>>;
  /** The line of the run that it takes the place of. */
  readonly ticket?: string;
}

/** All recordings, with what waits at each desk. */
export function LibraryScreen() {
  const client = useClient();
  const { recordings, problem, reload } = useLibrary();
  const run = importRunOf(client);
  const lines = useSyncExternalStore(run.subscribe, run.lines);
  /** What the window for one recording starts with; that for many has `plan`. */
  const [single, setSingle] = useState<SingleImport | null>(null);
  const [plan, setPlan] = useState<{ readonly files: readonly FoundFile[]; readonly folder: string | null } | null>(null);
  const [describing, setDescribing] = useState<RecordingSummary | null>(null);
  const [removing, setRemoving] = useState<RecordingSummary | null>(null);
  const [problemMet, setProblemMet] = useState<Problem | null>(null);
  const [words, setWords] = useState("");
  const [order, setOrder] = useState<RecordingOrder>("newest");
  const [dragging, setDragging] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const videos = useVideoDialog(recordings ?? [], setProblemMet);

  const lot = useLotDialogs(recordings ?? [], reload);
  const take = (files: readonly FoundFile[], folder: string | null) => {
    // A bundle is a recording already; what lies beside it is imported as ever.
    const bundles = files.filter(isBundle);
    if (bundles.length > 0) {
      lot.bring(bundles);
      if (bundles.length === files.length) return;
      return takeParts(
        files.filter((file) => !isBundle(file)),
        folder,
      );
    }
    takeParts(files, folder);
  };
  const takeParts = (files: readonly FoundFile[], folder: string | null) => {
    const plain = files.flatMap(({ source }) => (typeof source === "string" ? [] : [source]));
    const chosen = folder === null && plain.length === files.length && isOneRecording(plain.map(({ name }) => name));
    if (chosen) setSingle({ files: plain });
    else setPlan({ files, folder });
  };
  useHandedFiles((files) => take(files, null), setProblemMet);
  const choice = useFileChoice({ accept: Object.values(acceptOf).join(","), several: true, onFiles: take, onProblem: setProblemMet });
  useShortcuts((name) => {
    if (name === libraryKeys.recording) setSingle({ files: [] });
    else if (name === libraryKeys.folder) choice.chooseFolder();
    else if (name === libraryKeys.find && field.current) field.current.focus();
    else return lot.take(name);
    return true;
  });

  const remove = (recording: RecordingSummary) => {
    client.call("recording.remove", { id: recording.id }).then(
      () => {
        setProblemMet(null);
        reload();
        // The row goes, and its menu button with it.
        keepPlace(placeOfLibrary);
      },
      (thrown: unknown) => setProblemMet(problemOf(thrown)),
    );
    setRemoving(null);
  };
  const analyse = (recording: RecordingSummary) => {
    client.call("recording.analyse", { id: recording.id }).then(reload, (thrown: unknown) => setProblemMet(problemOf(thrown)));
  };
  const mend = ({ ticket, order: { transcript, video, stockSheet, title, stockNumber } }: RunLine) => {
    const files = [transcript, video, stockSheet].flatMap((file) => (file && typeof file.source !== "string" ? [file.source] : []));
    // What was moved meanwhile would only be refused again: its place is left empty, and says why.
    void readableFiles(files).then(({ readable, unreadable }) =>
      setSingle({ files: readable, unreadable, described: { title, stockNumber }, ticket }),
    );
  };
  const shown = recordings ? arrangeRecordings(recordings, words, order) : [];

  return (
    <div className="screen">
      <Head desk={null} title="Library" subject={<h1>Recordings on this machine</h1>}>
        {lot.menu}
        <Button onClick={choice.chooseFolder} shortcut={libraryKeys.folder}>
          Import a folder…
        </Button>
        <Button weight="main" onClick={() => setSingle({ files: [] })} shortcut={libraryKeys.recording}>
          Import a recording…
        </Button>
      </Head>
      {/* Files may be dropped anywhere on the screen; the buttons do the same from the keyboard. */}
      <main
        className="library"
        tabIndex={-1}
        data-dragging={dragging || undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setDragging(true);
        }}
        onDragLeave={(event) => {
          if (!event.currentTarget.contains(event.relatedTarget as Node | null)) setDragging(false);
        }}
        onDrop={(event) => {
          event.preventDefault();
          setDragging(false);
          const entries = [...event.dataTransfer.items].map((item) => item.webkitGetAsEntry());
          // Of several things that were dropped no single name says what they are.
          const folder = entries.length === 1 && entries[0]?.isDirectory ? entries[0] : null;
          filesOfDrop(event.dataTransfer).then(
            (files) => (files.length > 0 || folder ? take(files, folder?.name ?? null) : undefined),
            (thrown: unknown) => setProblemMet(problemOf(thrown)),
          );
        }}
      >
        {choice.inputs}
        {problem ? <ProblemNote problem={problem} /> : null}
        {problemMet ? <ProblemNote problem={problemMet} onDismiss={() => setProblemMet(null)} /> : null}
        {recordings ? <StartNotes recordings={recordings.length} onImport={() => setSingle({ files: [] })} /> : null}
        <RunPanel run={run} onMend={mend} />
        {videos.note}
        {recordings && recordings.length === 0 && lines.length === 0 ? (
          <EmptyLibrary onImport={() => setSingle({ files: [] })} onFolder={choice.chooseFolder} />
        ) : null}
        {recordings && recordings.length >= manyRecordings ? (
          <ListTools
            words={words}
            order={order}
            shown={shown.length}
            all={recordings.length}
            field={field}
            onWords={setWords}
            onOrder={setOrder}
          />
        ) : null}
        {recordings && recordings.length > 0 && shown.length === 0 ? (
          <section className="library-empty">
            <p>No recording has all of “{words.trim()}” in its title, stock number, vehicle or year.</p>
            <div>
              <Button onClick={() => setWords("")}>Show all recordings</Button>
            </div>
          </section>
        ) : null}
        {shown.length > 0 ? (
          <RecordingList
            recordings={shown}
            row={(recording) => (
              <RecordingRow
                recording={recording}
                onDescribe={() => setDescribing(recording)}
                onAnalyse={() => analyse(recording)}
                onRemove={() => setRemoving(recording)}
                onVideo={(purpose) => videos.open(recording, purpose)}
                onBundle={() => lot.bundle(recording)}
              />
            )}
          />
        ) : null}
        <footer className="library-cautions">
          <p className="caution">{cautions.inspection}</p>
          <p className="caution">{cautions.underside}</p>
        </footer>
      </main>
      {single ? (
        <ImportDialog
          dropped={single.files}
          described={single.described}
          unreadable={single.unreadable}
          onBundle={(files) => {
            setSingle(null);
            lot.bring(foundFiles(files.map((file) => ({ file, folder: "" }))));
          }}
          onClose={() => setSingle(null)}
          onImported={(recordingId, transcript) => {
            run.mended(recordingId, { ticket: single.ticket, transcript });
            reload();
          }}
        />
      ) : null}
      {plan ? (
        <PlanDialog
          files={plan.files}
          folder={plan.folder}
          recordings={recordings ?? []}
          onClose={() => setPlan(null)}
          onImport={(orders) => {
            run.add(orders);
            setPlan(null);
            // Once the window has given the focus back: what comes now is the imports.
            setTimeout(() => document.getElementById("imports")?.focus(), 50);
          }}
        />
      ) : null}
      {videos.dialog}
      {lot.dialog}
      {describing ? <DescribeDialog recording={describing} onClose={() => setDescribing(null)} onSaved={reload} /> : null}
      <Ask
        title={`Remove “${removing?.title ?? ""}” from the library?`}
        open={removing !== null}
        yes="Remove the recording"
        onYes={() => (removing ? remove(removing) : undefined)}
        onNo={() => setRemoving(null)}
      >
        <p>{removing ? removalWords(removing) : ""}</p>
      </Ask>
    </div>
  );
}

function EmptyLibrary({ onImport, onFolder }: { readonly onImport: () => void; readonly onFolder: () => void }) {
  return (
    <section className="library-empty" aria-labelledby="empty-heading">
      <h2 id="empty-heading">No recordings yet</h2>
      <p>
        A recording is one walkaround: its transcript and, where you have it, its video. Drop the files or a whole folder of them here, or
        choose them. Files of one name belong together (walk.mp4, walk.vtt, walk.csv); you see what was put together before anything is
        imported. Zones, claims and conflicts are then proposed; nothing is decided without you.
      </p>
      <div className="row">
        <Button weight="main" onClick={onImport}>
          Import the first recording…
        </Button>
        <Button onClick={onFolder}>Import a folder of recordings…</Button>
      </div>
    </section>
  );
}
