import { useEffect, useRef, useState } from "react";
import type { BundleLook, MergeChoices, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { type FoundFile, offeredId } from "../library/files/found-file.ts";
import { useFileChoice } from "../library/files/use-file-choice.tsx";
import { sizeLabel } from "../library/run/line-words.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import { Ask, Modal } from "../shared/dialog.tsx";
import { useInitials } from "../shared/initials.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { FolderField } from "./folder-field.tsx";
import { MergeDialog } from "./merge-dialog.tsx";
import { useWork } from "./use-work.ts";
import { WorkBar } from "./work-bar.tsx";
import "./lot.css";

/** A bundle that was looked at, and what has become of it. */
interface BundleLine {
  readonly fileName: string;
  readonly look: BundleLook | null;
  readonly problem: string | null;
  readonly outcome: "imported" | "merged" | "unchanged" | null;
}

export interface BringBundlesDialogProps {
  readonly files: readonly FoundFile[];
  readonly onClose: () => void;
  readonly onChanged: () => void;
}

const outcomeWords = { imported: "brought in", merged: "merged", unchanged: "nothing was changed here" } as const;

/** Bundles from other machines: looked at first, then brought in; where work differs, a person says what counts. */
export function BringBundlesDialog({ files, onClose, onChanged }: BringBundlesDialogProps) {
  const client = useClient();
  const work = useWork();
  const { requireInitials } = useInitials();
  const [folder, setFolder] = useState("");
  const [lines, setLines] = useState<readonly BundleLine[]>([]);
  const [handing, setHanding] = useState<{ readonly words: string; readonly stop: AbortController } | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [merging, setMerging] = useState<BundleLook | null>(null);
  const [beside, setBeside] = useState<BundleLook | null>(null);

  const lookAt = async (found: readonly FoundFile[]) => {
    setProblem(null);
    const bundles = found.filter(({ name }) => name.toLowerCase().endsWith(".zip"));
    if (bundles.length === 0) {
      setProblem({ code: "no-bundle", message: "None of these files is a bundle: their names end with .roundwalk.zip." });
      return;
    }
    const stop = new AbortController();
    for (const file of bundles) {
      const show = (sent: number) =>
        setHanding({ words: `${file.name}: ${sizeLabel(sent)} of ${sizeLabel(file.bytes)} handed over`, stop });
      show(0);
      let line: BundleLine;
      try {
        const id = await offeredId(client, file, { signal: stop.signal, onSent: show });
        line = { fileName: file.name, look: await client.call("bundle.look", { file: id }), problem: null, outcome: null };
      } catch (thrown) {
        if (stop.signal.aborted) break;
        line = { fileName: file.name, look: null, problem: problemOf(thrown).message, outcome: null };
      }
      setLines((before) => [...before.filter(({ fileName }) => fileName !== file.name), line]);
    }
    setHanding(null);
  };
  const lookAtFolder = () => {
    setProblem(null);
    work
      .run((ticket) => client.call("bundle.lookAtFolder", { ticket, folder: folder.trim() || null }))
      .then(
        ({ bundles, folder: place }) => {
          setLines(bundles.map((bundle) => ({ ...bundle, outcome: null })));
          if (bundles.length === 0)
            setProblem({ code: "no-bundle", message: `${place} holds no bundle: their names end with .roundwalk.zip.` });
        },
        (thrown: unknown) => setProblem(problemOf(thrown)),
      );
  };
  const choice = useFileChoice({ accept: ".zip", several: true, onFiles: (found) => void lookAt(found), onProblem: setProblem });
  useEffect(() => {
    client.call("bundle.place", {}).then(
      (place) => setFolder((before) => before || place.folder),
      () => undefined,
    );
  }, [client]);
  const given = useRef(files);
  useEffect(() => {
    const once = given.current;
    given.current = [];
    if (once.length > 0) void lookAt(once);
  });

  /** @returns whether it is in now. */
  const take = async (look: BundleLook, choices: MergeChoices | null, again: boolean): Promise<void> => {
    const initials = await requireInitials();
    if (initials === null) return;
    const settle = (change: Partial<BundleLine>) =>
      setLines((before) => before.map((line) => (line.look?.file === look.file ? { ...line, ...change } : line)));
    settle({ problem: null });
    try {
      const taken = await work.run((ticket) => client.call("bundle.take", { ticket, file: look.file, choices, again, initials }));
      settle({ outcome: taken.outcome });
      onChanged();
    } catch (thrown) {
      settle({ problem: problemOf(thrown).message });
    }
  };
  const waiting = lines.flatMap(({ look, outcome }) =>
    look && outcome === null && look.state === "new" && look.sameWords === null ? [look] : [],
  );
  const takeAll = async () => {
    for (const look of waiting) await take(look, null, false);
  };
  const busy = work.working || handing !== null;

  return (
    <Modal
      title="Bring in bundles"
      open
      onClose={() => {
        handing?.stop.abort();
        // What was only looked at may be a copy of gigabytes that waits at the host.
        const unused = lines.flatMap(({ look, outcome }) => (look && outcome === null ? [look.file] : []));
        if (unused.length > 0) client.call("file.letGo", { files: unused }).catch(() => undefined);
        onClose();
      }}
      wide
      foot={
        work.working ? (
          <WorkBar name="Bringing in bundles" progress={work.progress} onCancel={work.cancel} />
        ) : handing ? (
          <>
            <span className="soft import-state" role="status">
              {handing.words}
            </span>
            <Button onClick={() => handing.stop.abort()}>Cancel</Button>
          </>
        ) : (
          <Button weight="main" onClick={() => void takeAll()} disabled={waiting.length === 0}>
            {waiting.length > 1 ? `Bring in ${waiting.length} new recordings` : "Bring in the new recording"}
          </Button>
        )
      }
    >
      <p className="small soft">
        A bundle is a whole recording from another machine. It is looked at first; nothing is brought in, and no work is merged, before you
        say so.
      </p>
      {choice.inputs}
      <div className="bring-ways">
        <Button onClick={choice.chooseFiles} disabled={busy}>
          Choose bundles…
        </Button>
        <FolderField label="or all of a folder on this machine" value={folder} onChange={setFolder} onProblem={setProblem} />
        <Button onClick={lookAtFolder} disabled={busy}>
          Look in the folder
        </Button>
      </div>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {lines.length > 0 ? (
        <ul className="lot-lines" aria-label="Bundles">
          {lines.map((line) => (
            <BundleRow
              key={line.fileName}
              line={line}
              disabled={busy}
              onTake={(look) => void take(look, {}, false)}
              onBeside={setBeside}
              onMerge={setMerging}
            />
          ))}
        </ul>
      ) : null}
      {merging ? (
        <MergeDialog
          look={merging}
          onClose={() => setMerging(null)}
          onChosen={(choices) => {
            setMerging(null);
            void take(merging, choices, false);
          }}
        />
      ) : null}
      <Ask
        title="Bring it in beside the other?"
        open={beside !== null}
        yes="Bring it in beside it"
        no="Leave it out"
        onYes={() => {
          if (beside) void take(beside, null, true);
          setBeside(null);
        }}
        onNo={() => setBeside(null)}
      >
        <p>{beside?.sameWords} Every answer of a search would come twice.</p>
      </Ask>
    </Modal>
  );
}

interface BundleRowProps {
  readonly line: BundleLine;
  readonly disabled: boolean;
  readonly onTake: (look: BundleLook) => void;
  readonly onBeside: (look: BundleLook) => void;
  readonly onMerge: (look: BundleLook) => void;
}

function BundleRow({ line: { fileName, look, problem, outcome }, disabled, onTake, onBeside, onMerge }: BundleRowProps) {
  return (
    <li className="bundle-row">
      <div className="bundle-what">
        <strong>{look?.title ?? fileName}</strong>
        {look ? (
          <span className="small soft">
            {[look.stockNumber ? `stock ${look.stockNumber}` : "", look.hasVideo ? "with video" : "without video", sizeLabel(look.bytes)]
              .filter(Boolean)
              .join(", ")}
          </span>
        ) : null}
        {look ? <span>{outcome ? outcomeWords[outcome] : stateWords(look)}</span> : null}
      </div>
      {look && outcome === null ? (
        <div className="row">
          {look.state === "new" && look.sameWords !== null ? (
            <Button onClick={() => onBeside(look)} disabled={disabled} aria-label={`Bring in ${look.title} beside the other`}>
              Bring it in…
            </Button>
          ) : null}
          {look.state === "differs" && look.groups.length > 0 ? (
            <Button onClick={() => onMerge(look)} disabled={disabled} aria-label={`See what differs in ${look.title}`}>
              See what differs…
            </Button>
          ) : null}
          {look.state === "differs" && look.groups.length === 0 ? (
            <Button onClick={() => onTake(look)} disabled={disabled} aria-label={`Add to ${look.title}`}>
              Add it
            </Button>
          ) : null}
        </div>
      ) : null}
      {problem ? <ProblemNote problem={{ code: "bundle", message: problem }} /> : null}
    </li>
  );
}

function stateWords({ state, adds, stays, groups, seen, sameWords }: BundleLook): string {
  if (state === "new") return sameWords ?? "new here";
  const staying = stays.length > 0 ? `; ${stays.join("; ")}` : "";
  if (state === "same") return stays.length > 0 ? `already here${staying}` : "already here, and nothing in it is otherwise";
  const count = groups.reduce((sum, { differences }) => sum + differences.length, 0);
  const words = count > 0 ? `already here; ${counted(count, "thing is", "things are")} otherwise` : "already here";
  return `${words}${adds.length > 0 ? `; brings ${adds.join(", ")}` : ""}${staying}${seen ? " (you decided about this very bundle before)" : ""}`;
}
