import { useId, useRef, useState } from "react";
import type { Problem, SheetColumns } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient, useHostEvent } from "../client/use-client.ts";
import { isBundle } from "../lot/is-bundle.ts";
import { Button } from "../shared/button.tsx";
import { Ask, Modal } from "../shared/dialog.tsx";
import { recordingPlace } from "../shared/place.ts";
import { ProblemNote } from "../shared/problem-note.tsx";
import { isAsked } from "../sheet/sheet-answers.ts";
import { SheetColumnsDialog } from "../sheet/sheet-columns-dialog.tsx";
import { bySheet, type ChosenStyle, importedStyle } from "./body-styles.ts";
import { DescriptionFields } from "./description-fields.tsx";
import { FileSlot } from "./file-slot.tsx";
import { partAtFault, slots, sortFiles } from "./import-parts.ts";
import { sizeLabel } from "./run/line-words.ts";
import { acceptOf, type ImportPart, titleOfFileName } from "./sort-files.ts";
import { type DescriptionDraft, descriptionOfDraft, emptyDescription, faultsOfDraft, proposedTitle } from "./vehicle-form.ts";

/** What the library has already, and is meant to have twice; null before anybody was asked. */
type Meant = "transcript" | "stock-number" | null;

export interface ImportDialogProps {
  readonly dropped: readonly File[];
  /** What is known of the recording already. */
  readonly described?: Pick<DescriptionDraft, "title" | "stockNumber">;
  /** Files of an earlier try that can no longer be read; they are chosen anew. */
  readonly unreadable?: Partial<Record<ImportPart, Problem>>;
  /** For recordings that come whole, from another machine; without files the person chooses. */
  readonly onBundle: (files: readonly File[]) => void;
  readonly onClose: () => void;
  /** @param transcript its file's name. */
  readonly onImported: (recordingId: string, transcript: string) => void;
}

export function ImportDialog({ dropped, described, unreadable, onBundle, onClose, onImported }: ImportDialogProps) {
  const client = useClient();
  const formId = useId();
  const [parts, setParts] = useState(() => sortFiles(dropped));
  const [draft, setDraft] = useState({
    ...emptyDescription,
    title: parts.transcript ? titleOfFileName(parts.transcript.name) : "",
    ...described,
  });
  /** The title follows what else is typed until the person writes one. */
  const [ownTitle, setOwnTitle] = useState((described?.title ?? "") !== "");
  const keepDraft = (next: DescriptionDraft, transcript = parts.transcript) => {
    const written = ownTitle || next.title !== draft.title;
    setOwnTitle(written);
    setDraft(written ? next : { ...next, title: proposedTitle(next, transcript ? titleOfFileName(transcript.name) : "") });
  };
  /** What runs now and how it is stopped; null while nothing does. */
  const job = useRef<{ readonly ticket: string; readonly stop: AbortController } | null>(null);
  const [style, setStyle] = useState<ChosenStyle>(bySheet);
  /** Files of an earlier try that can no longer be read, each told in its own place. */
  const [gone, setGone] = useState<Partial<Record<ImportPart, Problem>>>(unreadable ?? {});
  const [tried, setTried] = useState(false);
  const [working, setWorking] = useState<string | null>(null);
  const [problem, setProblem] = useState<{ part: ImportPart | null; problem: Problem } | null>(null);
  /** The transcript or the stock number is in the library already; the person is asked whether it is meant. */
  const [known, setKnown] = useState<Problem | null>(null);
  /** The sheet has columns that a person must be asked about; the import goes on with the answers. */
  const [asking, setAsking] = useState<{ readonly sheet: SheetColumns; readonly goOn: (() => void) | null } | null>(null);
  useHostEvent("import.progress", (progress) => {
    if (progress.ticket === job.current?.ticket) setWorking(`Reading: ${progress.pass}, ${progress.done} of ${progress.of}`);
  });

  const faults = tried ? faultsOfDraft(draft) : {};
  const setPart = (part: ImportPart, file: File | null) => {
    if (file && isBundle(file)) {
      onBundle([file]);
      return;
    }
    setParts((before) => ({ ...before, [part]: file }));
    setGone((before) => ({ ...before, [part]: undefined }));
    if (problem?.part === part) setProblem(null);
    if (part === "transcript") keepDraft(draft, file);
  };

  const begin = () => {
    job.current = { ticket: crypto.randomUUID(), stop: new AbortController() };
    return job.current;
  };
  const cancel = () => {
    if (!job.current) return;
    job.current.stop.abort();
    client.call("import.cancel", { ticket: job.current.ticket }).catch(() => undefined);
  };
  /** Hands a file over; null where that failed, which is then shown beside its place. */
  const offer = async (part: ImportPart, label: string, file: File): Promise<string | null> => {
    setWorking(`Handing over the ${label.toLowerCase()}…`);
    try {
      const { stop } = job.current ?? begin();
      const onSent = (bytes: number) =>
        setWorking(`Handing over the ${label.toLowerCase()}: ${sizeLabel(bytes)} of ${sizeLabel(file.size)}`);
      return (await client.offerFile(file, { signal: stop.signal, onSent })).id;
    } catch (thrown) {
      if (!job.current?.stop.signal.aborted) setProblem({ part, problem: problemOf(thrown) });
      job.current = null;
      setWorking(null);
      return null;
    }
  };
  /** The sheet goes first: what its columns mean is asked before a long video is handed over. Null where the import must wait. */
  const offerSheet = async (file: File, meant: Meant): Promise<string | null> => {
    const offered = await offer("stockSheet", "Stock sheet", file);
    if (offered === null) return null;
    try {
      const sheet = await client.call("stockSheet.look", { stockSheet: offered });
      if (!sheet.columns.some(isAsked)) return offered;
      setAsking({ sheet, goOn: () => void run(meant, offered) });
    } catch (thrown) {
      setProblem({ part: "stockSheet", problem: problemOf(thrown) });
    }
    setWorking(null);
    return null;
  };

  /** Whoever chose wrongly must be able to choose again before anything is in the library. */
  const lookAtColumns = async (file: File) => {
    setProblem(null);
    const offered = await offer("stockSheet", "Stock sheet", file);
    if (offered === null) return;
    try {
      setAsking({ sheet: await client.call("stockSheet.look", { stockSheet: offered }), goOn: null });
    } catch (thrown) {
      setProblem({ part: "stockSheet", problem: problemOf(thrown) });
    }
    setWorking(null);
  };

  const run = async (meant: Meant, knownSheet: string | null = null) => {
    setKnown(null);
    setTried(true);
    if (knownSheet === null) job.current = null;
    setProblem(null);
    if (!parts.transcript) {
      setProblem({
        part: "transcript",
        problem: { code: "transcript-missing", message: "Choose a transcript: without the words there is nothing to mark or check." },
      });
      return;
    }
    if (Object.keys(faultsOfDraft(draft)).length > 0) return;
    const ids: Record<ImportPart, string | null> = { transcript: null, video: null, stockSheet: knownSheet };
    if (parts.stockSheet && knownSheet === null) {
      ids.stockSheet = await offerSheet(parts.stockSheet, meant);
      if (ids.stockSheet === null) return;
    }
    for (const { part, label } of slots) {
      const file = parts[part];
      if (!file || ids[part] !== null) continue;
      ids[part] = await offer(part, label, file);
      if (ids[part] === null) return;
    }
    setWorking("Reading the transcript…");
    const { ticket, stop } = job.current ?? begin();
    const given = descriptionOfDraft(draft);
    const { bodyStyle, bodyStyleFromSheet } = importedStyle(style);
    try {
      const summary = await client.call("recording.import", {
        transcript: ids.transcript ?? "",
        video: ids.video,
        stockSheet: ids.stockSheet,
        ...given,
        vehicle: { ...given.vehicle, bodyStyle },
        bodyStyleFromSheet,
        again: meant === "transcript",
        asksOfStockNumber: meant === null,
        ticket,
      });
      onImported(summary.id, parts.transcript.name);
      // Closed too late to be cancelled: it is in the library, and nobody waits for it to open.
      if (stop.signal.aborted) return;
      onClose();
      window.location.hash = recordingPlace(summary.id, "mark");
    } catch (thrown) {
      const met = problemOf(thrown);
      job.current = null;
      const left = Object.values(ids).filter((id) => id !== null);
      // Handed over for nothing: another try hands its files over anew.
      client.call("file.letGo", { files: left }).catch(() => undefined);
      if (met.code === "transcript-known" || met.code === "stock-number-known") setKnown(met);
      else if (!stop.signal.aborted) setProblem({ part: partAtFault(met, parts), problem: met });
      setWorking(null);
    }
  };

  return (
    <Modal
      title="Import a recording"
      open
      onClose={() => {
        cancel();
        onClose();
      }}
      wide
      foot={
        <>
          <span className="soft import-state" role="status">
            {working ?? ""}
          </span>
          {working !== null ? <Button onClick={cancel}>Cancel</Button> : null}
          <Button type="submit" form={formId} weight="main" shortcut="Ctrl+Enter" disabled={working !== null}>
            Import
          </Button>
        </>
      }
    >
      <form
        id={formId}
        className="import-columns"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (working === null) void run(null);
        }}
        // On its way down: a closed choice would open at Enter.
        onKeyDownCapture={(event) => {
          if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
          event.preventDefault();
          event.stopPropagation();
          if (working === null) void run(null);
        }}
      >
        <section className="stack" aria-label="Files">
          {slots.map(({ part, label, hint }) => (
            <FileSlot
              key={part}
              label={label}
              hint={hint}
              accept={acceptOf[part]}
              file={parts[part]}
              onFile={(file) => setPart(part, file)}
              problem={problem?.part === part ? problem.problem : (gone[part] ?? null)}
              more={
                part === "stockSheet" ? (
                  <Button
                    weight="quiet"
                    disabled={working !== null}
                    onClick={() => (parts.stockSheet ? void lookAtColumns(parts.stockSheet) : undefined)}
                  >
                    Columns…
                  </Button>
                ) : null
              }
            />
          ))}
        </section>
        <DescriptionFields draft={draft} faults={faults} onChange={keepDraft} style={style} onStyle={setStyle} />
      </form>
      <p className="small soft">
        Stock number, model year and vehicle that you leave empty are taken from the stock sheet where it has them. Of a sheet of many
        vehicles, the row with the stock number counts.
      </p>
      <div className="row">
        <span className="small soft">A whole recording from another machine, as one file:</span>
        <Button weight="quiet" onClick={() => onBundle([])} disabled={working !== null}>
          Bring in a bundle…
        </Button>
      </div>
      {asking ? (
        <SheetColumnsDialog
          sheet={asking.sheet}
          onClose={() => setAsking(null)}
          onSettled={() => {
            setAsking(null);
            asking.goOn?.();
          }}
        />
      ) : null}
      <Ask
        title={known?.code === "stock-number-known" ? "This stock number is in the library already" : "Import the same transcript again?"}
        open={known !== null}
        yes={known?.code === "stock-number-known" ? "Import it beside it" : "Import it again"}
        no="Do not import"
        onYes={() => void run(known?.code === "stock-number-known" ? "stock-number" : "transcript")}
        onNo={() => setKnown(null)}
      >
        <p>{known?.message}</p>
      </Ask>
      {problem && problem.part === null ? <ProblemNote problem={problem.problem} /> : null}
    </Modal>
  );
}
