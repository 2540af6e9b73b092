import { useVirtualizer } from "@tanstack/react-virtual";
import { useId, useMemo, useRef } from "react";
import { Choice } from "../../shared/choice.tsx";
import { TextField } from "../../shared/text-field.tsx";
import { bySheetOption, styleOptions } from "../body-styles.ts";
import { type FoundFile, placeOfFile } from "../files/found-file.ts";
import { type ImportPart, partOfKnownEnding } from "../sort-files.ts";
import type { ImportPlan, PlanRow } from "./import-plan.ts";

export interface PlanRowsProps {
  readonly plan: ImportPlan;
  readonly onChange: (transcript: string, change: Partial<PlanRow>) => void;
}

const byWords = { name: "by its name", folder: "the only ones in their folder", person: "by you" } as const;

/** Height of a row before it is measured, in pixels. */
const likelyHeight = 128;

/** A row for each recording to come; hundreds stay quick. */
export function PlanRows({ plan, onChange }: PlanRowsProps) {
  const scroller = useRef<HTMLElement>(null);
  const rows = useVirtualizer({
    count: plan.rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => likelyHeight,
    overscan: 4,
    getItemKey: (index) => plan.rows[index]?.transcript ?? index,
  });
  const byKey = useMemo(() => new Map(plan.files.map((file) => [file.key, file])), [plan.files]);
  const videos = useMemo(() => filesOfPart(plan.files, "video"), [plan.files]);
  const sheets = useMemo(() => filesOfPart(plan.files, "stockSheet"), [plan.files]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable from the keyboard
    <section ref={scroller} className="plan-scroll" tabIndex={0} aria-label="Recordings to import">
      <ul className="plan-rows" style={{ height: rows.getTotalSize() }} aria-label="Recordings to import">
        {rows.getVirtualItems().map(({ key, index, start }) => {
          const row = plan.rows[index];
          const transcript = row && byKey.get(row.transcript);
          if (!row || !transcript) return null;
          return (
            <li
              key={key}
              ref={rows.measureElement}
              data-index={index}
              aria-setsize={plan.rows.length}
              aria-posinset={index + 1}
              style={{ transform: `translateY(${start}px)` }}
            >
              <Row
                row={row}
                transcript={transcript}
                videos={videos}
                sheets={sheets}
                hasLotSheet={plan.lotSheet !== null}
                onChange={(change) => onChange(row.transcript, change)}
              />
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function filesOfPart(files: readonly FoundFile[], part: ImportPart): FoundFile[] {
  return files.filter((file) => file.bytes > 0 && partOfKnownEnding(file.name) === part);
}

interface RowProps {
  readonly row: PlanRow;
  readonly transcript: FoundFile;
  readonly videos: readonly FoundFile[];
  readonly sheets: readonly FoundFile[];
  readonly hasLotSheet: boolean;
  readonly onChange: (change: Partial<PlanRow>) => void;
}

function Row({ row, transcript, videos, sheets, hasLotSheet, onChange }: RowProps) {
  const id = useId();
  const options = (files: readonly FoundFile[]) => files.map((file) => ({ value: file.key, label: placeOfFile(file) }));
  const noSheet = hasLotSheet
    ? [
        { value: "", label: "the one for all" },
        { value: "none", label: "none" },
      ]
    : [{ value: "", label: "none" }];
  const sheetValue = row.stockSheet ?? (row.fromLot || !hasLotSheet ? "" : "none");
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would bring its own frame; the group names the controls inside
    <div className="plan-row" role="group" aria-label={row.title || transcript.name} data-taken={row.taken || undefined}>
      <input
        id={`${id}-taken`}
        type="checkbox"
        checked={row.taken}
        aria-label={`Import ${row.title || transcript.name}`}
        onChange={(event) => onChange({ taken: event.target.checked })}
      />
      <div className="plan-transcript">
        <span className="field-name">Transcript</span>
        <label htmlFor={`${id}-taken`}>{placeOfFile(transcript)}</label>
      </div>
      <TextField
        label="Title"
        value={row.title}
        maxLength={200}
        fault={row.taken && row.title.trim() === "" ? "A title is needed." : undefined}
        onChange={(title) => onChange({ title })}
      />
      <TextField
        label="Stock number"
        value={row.stockNumber}
        maxLength={60}
        hint={
          row.stockNumber.trim() === "" && hasLotSheet && row.stockSheet === null && row.fromLot ? "Picks the row of the sheet" : undefined
        }
        onChange={(stockNumber) => onChange({ stockNumber })}
      />
      <div className="plan-video">
        <Choice
          label={row.videoBy ? `Video, ${byWords[row.videoBy]}` : "Video"}
          value={row.video ?? ""}
          options={[{ value: "", label: "none: transcript only" }, ...options(videos)]}
          onChange={(key) => onChange({ video: key || null, videoBy: key ? "person" : null })}
        />
      </div>
      <div className="plan-sheet">
        <Choice
          label={row.sheetBy ? `Stock sheet, ${byWords[row.sheetBy]}` : "Stock sheet"}
          value={sheetValue}
          options={[...noSheet, ...options(sheets)]}
          onChange={(key) =>
            onChange(
              key === "" || key === "none"
                ? { stockSheet: null, sheetBy: null, fromLot: key === "" }
                : { stockSheet: key, sheetBy: "person" },
            )
          }
        />
      </div>
      <div className="plan-style">
        <Choice
          label="Body style"
          value={row.bodyStyle ?? ""}
          options={[{ value: "", label: "as for all" }, bySheetOption, ...styleOptions]}
          onChange={(style) => onChange({ bodyStyle: style === "" ? null : style })}
        />
      </div>
    </div>
  );
}
