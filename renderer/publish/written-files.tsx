import { useState } from "react";
import type { Output, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { Button } from "../shared/button.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { bytesLabel, exportWords } from "./export-formats.ts";

/** What has just come is seen without looking for it. */
export const intoView = (section: HTMLElement | null): void => section?.scrollIntoView({ block: "nearest" });

/** What the reader of a file should know before it is used. */
export function Warnings({ of }: { readonly of: readonly string[] }) {
  if (of.length === 0) return null;
  return (
    <ul className="export-warnings small">
      {of.map((warning) => (
        <li key={warning}>{warning}</li>
      ))}
    </ul>
  );
}

export interface WrittenFilesProps {
  readonly written: Output<"export.write">;
  readonly reveal: (() => Promise<unknown>) | null;
}

/** A file's name alone: the folder stands once above them all. */
const nameIn = (path: string): string => path.split(/[\\/]/).at(-1)!;

/** Where the files are, each for download, with what its reader should know. */
export function WrittenFiles({ written, reveal }: WrittenFilesProps) {
  const [problem, setProblem] = useState<Problem | null>(null);
  return (
    <section aria-labelledby="written-heading" ref={intoView}>
      <div className="row">
        <h3 id="written-heading">Written</h3>
        {reveal ? (
          <Button weight="quiet" onClick={() => void reveal().catch((thrown: unknown) => setProblem(problemOf(thrown)))}>
            Show in folder
          </Button>
        ) : null}
      </div>
      <p className="small export-path">{written.folder}</p>
      <ul className="export-files" aria-label="Written files">
        {written.files.map((file) => (
          <li key={file.format}>
            <a href={file.downloadUrl} download>
              Download {exportWords[file.format].name}
            </a>
            <span className="small soft">{bytesLabel(file.bytes)}</span>
            <code className="small export-path">{nameIn(file.path)}</code>
            <Warnings of={file.warnings} />
          </li>
        ))}
      </ul>
      {problem ? <ProblemNote problem={problem} /> : null}
    </section>
  );
}
