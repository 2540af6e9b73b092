import { useState } from "react";
import { cautions, type Problem, type RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { useLibrary } from "../client/use-library.ts";
import { Button } from "../shared/button.tsx";
import { Ask } from "../shared/dialog.tsx";
import { Head } from "../shared/head.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { DescribeDialog } from "./describe-dialog.tsx";
import { ImportDialog } from "./import-dialog.tsx";
import "./library.css";
import { RecordingRow } from "./recording-row.tsx";

/** All recordings, with what waits at each desk. */
export function LibraryScreen() {
  const client = useClient();
  const { recordings, problem, reload } = useLibrary();
  const [importing, setImporting] = useState(false);
  const [dropped, setDropped] = useState<readonly File[]>([]);
  const [describing, setDescribing] = useState<RecordingSummary | null>(null);
  const [removing, setRemoving] = useState<RecordingSummary | null>(null);
  const [problemMet, setProblemMet] = useState<Problem | null>(null);

  const remove = (recording: RecordingSummary) => {
    client.call("recording.remove", { id: recording.id }).then(
      () => {
        setProblemMet(null);
        reload();
      },
      (thrown: unknown) => setProblemMet(problemOf(thrown)),
    );
    setRemoving(null);
  };
  const analyse = (recording: RecordingSummary) => {
    client.call("recording.analyse", { id: recording.id }).then(reload, (thrown: unknown) => setProblemMet(problemOf(thrown)));
  };
  const openImport = (files: readonly File[]) => {
    setDropped(files);
    setImporting(true);
  };

  return (
    <div className="screen">
      <Head desk={null} title="Library" subject={<h1>Recordings on this machine</h1>}>
        <Button weight="main" onClick={() => openImport([])}>
          Import a recording…
        </Button>
      </Head>
      {/* Files may be dropped anywhere on the screen; the button does the same from the keyboard. */}
      <main
        className="library"
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          event.preventDefault();
          if (event.dataTransfer.files.length > 0) openImport([...event.dataTransfer.files]);
        }}
      >
        {problem ? <ProblemNote problem={problem} /> : null}
        {problemMet ? <ProblemNote problem={problemMet} onDismiss={() => setProblemMet(null)} /> : null}
        {recordings && recordings.length === 0 ? <EmptyLibrary onImport={() => openImport([])} /> : null}
        {recordings && recordings.length > 0 ? (
          <ul className="recordings" aria-label="Recordings">
            {recordings.map((recording) => (
              <RecordingRow
                key={recording.id}
                recording={recording}
                onDescribe={() => setDescribing(recording)}
                onAnalyse={() => analyse(recording)}
                onRemove={() => setRemoving(recording)}
              />
            ))}
          </ul>
        ) : null}
        <footer className="library-cautions">
          <p className="caution">{cautions.inspection}</p>
          <p className="caution">{cautions.underside}</p>
        </footer>
      </main>
      {importing ? <ImportDialog dropped={dropped} onClose={() => setImporting(false)} onImported={reload} /> : null}
      {describing ? <DescribeDialog recording={describing} onClose={() => setDescribing(null)} onSaved={reload} /> : null}
      <Ask
        title={`Remove “${removing?.title ?? ""}” from the library?`}
        open={removing !== null}
        yes="Remove the recording"
        onYes={() => (removing ? remove(removing) : undefined)}
        onNo={() => setRemoving(null)}
      >
        <p>
          Its zone spans, findings and rulings go with it and cannot be brought back. The video and transcript files stay where they are.
        </p>
      </Ask>
    </div>
  );
}

function EmptyLibrary({ onImport }: { readonly onImport: () => void }) {
  return (
    <section className="library-empty" aria-labelledby="empty-heading">
      <h2 id="empty-heading">No recordings yet</h2>
      <p>
        A recording is one walkaround: its transcript and, where you have it, its video. Drop the files here, or choose them in the import
        window. Zones, claims and conflicts are then proposed; nothing is decided without you.
      </p>
      <div>
        <Button weight="main" onClick={onImport}>
          Import the first recording…
        </Button>
      </div>
    </section>
  );
}
