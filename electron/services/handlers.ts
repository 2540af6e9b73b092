import type { Handlers, Output } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import { createCancellableImports } from "./cancellable-imports.ts";
import { chooseFolder, placeFolder } from "./choose-folder.ts";
import { correctCaption } from "./correct-caption.ts";
import { acceptFindings, addFinding, changeFinding, removeFinding } from "./edit-findings.ts";
import { acceptZones, joinZones, moveBorder, paintZone, removeZone, retitleZone, splitZone } from "./edit-zones.ts";
import { cancelExports, previewExport, revealExports, writeExports } from "./export-recording.ts";
import type { HandedFiles } from "./handed-files.ts";
import { keepPlaying, playingKept } from "./keep-playing.ts";
import { createRecordingList } from "./list-recordings.ts";
import { lotHandlers } from "./lot-handlers.ts";
import { describeRecording, removeRecording, takeMeasuredLength } from "./manage-recordings.ts";
import { columnsOfRecording, lookAtSheet, mapSheet } from "./map-stock-sheet.ts";
import { noteMatters } from "./note-matters.ts";
import type { Parts, PdfPrinter } from "./parts.ts";
import { publishRecording } from "./publish-recording.ts";
import { concernsAnalysis, redo, undo } from "./record-edit.ts";
import { findRecording, recordingDetail } from "./recording-detail.ts";
import { claimComparison } from "./search-compare.ts";
import { librarySearch } from "./search-library.ts";
import { settleConflict } from "./settle-conflict.ts";
import { startHandlers } from "./start/start-handlers.ts";
import { keepStill, stillOf } from "./stills/keep-still.ts";
import { wantedStills } from "./stills/take-stills.ts";
import { trustCaption } from "./trust-caption.ts";
import { takeVideo, wantedVideos } from "./videos/take-video.ts";

/** What differs between the hosts. */
export interface HostSide {
  readonly name: Output<"host.abilities">["host"];
  readonly version: string;
  /** Shows a folder in the system's own window; null where there is none. */
  readonly reveal: ((folder: string) => Promise<void>) | null;
  /** How pages become PDFs here; left out where they cannot. */
  readonly pdf?: PdfPrinter;
  /** Asks for a folder in the system's own window; null when the person chose none. Absent where there is no such window. */
  readonly chooseFolder?: () => Promise<string | null>;
}

/** One function for each method of the contract. */
export function createHandlers(parts: Parts, analyst: Analyst, host: HostSide, handed: HandedFiles): Handlers {
  const { library } = parts;
  const searchLibrary = librarySearch();
  const compareClaims = claimComparison();
  const imports = createCancellableImports(parts, analyst);
  const listRecordings = createRecordingList(parts);
  return {
    "host.abilities": () => ({
      host: host.name,
      revealFiles: host.reveal !== null,
      whyNoPdf: parts.pdf.whyNot(),
      chooseFolder: host.chooseFolder !== undefined,
      libraryFile: library.file,
      version: host.version,
    }),
    "settings.get": () => ({ initials: library.settings.get("initials") ?? "" }),
    "settings.set": ({ initials }) => {
      library.transaction(() => library.settings.put("initials", initials));
      return { initials };
    },
    "playing.get": () => playingKept(parts),
    "playing.set": (playing) => keepPlaying(parts, playing),
    "recording.list": listRecordings,
    "recording.get": ({ id }) => recordingDetail(parts, id),
    "recording.import": imports.run,
    "import.cancel": imports.cancel,
    "file.letGo": (input) => {
      parts.files.letGo(input.files);
      return {};
    },
    "file.handedOver": handed.take,
    "folder.choose": () => chooseFolder(parts, host.chooseFolder),
    "folder.place": () => placeFolder(host.chooseFolder),
    "video.wanted": () => wantedVideos(parts),
    "video.take": (input) => takeVideo(parts, input),
    "recording.describe": (input) => describeRecording(parts, input),
    "recording.remove": (input) => removeRecording(parts, analyst, input),
    "recording.analyse": ({ id }) => analyst.analyse(id),
    "recording.measured": (input) => takeMeasuredLength(parts, input),
    "stockSheet.look": (input) => lookAtSheet(parts, input),
    "stockSheet.columns": (input) => columnsOfRecording(parts, input),
    "stockSheet.map": (input) => mapSheet(parts, analyst, input),
    "zone.paint": (input) => paintZone(parts, input),
    "zone.accept": (input) => acceptZones(parts, input),
    "zone.moveBorder": (input) => moveBorder(parts, input),
    "zone.split": (input) => splitZone(parts, input),
    "zone.join": (input) => joinZones(parts, input),
    "zone.retitle": (input) => retitleZone(parts, input),
    "zone.remove": (input) => removeZone(parts, input),
    "finding.add": (input) => addFinding(parts, input),
    "finding.change": (input) => changeFinding(parts, input),
    "finding.remove": (input) => removeFinding(parts, input),
    "finding.accept": (input) => acceptFindings(parts, input),
    "conflict.rule": (input) => settleConflict(parts, input),
    "matter.note": (input) => noteMatters(parts, input),
    "caption.trust": (input) => trustCaption(parts, analyst, input),
    "caption.correct": (input) => correctCaption(parts, analyst, input),
    "still.keep": (input) => keepStill(parts, input),
    "still.get": (input) => stillOf(parts, input),
    "still.wanted": (input) => wantedStills(parts, input),
    "edit.undo": ({ recordingId, initials }) => {
      findRecording(parts, recordingId);
      const again = concernsAnalysis(library.edits.lastDone(recordingId)?.changes ?? []);
      const detail = undo(parts, recordingId, initials);
      return again ? analyst.analyseAnew(recordingId) : detail;
    },
    "edit.redo": ({ recordingId, initials }) => {
      findRecording(parts, recordingId);
      const again = concernsAnalysis(library.edits.firstUndone(recordingId)?.changes ?? []);
      const detail = redo(parts, recordingId, initials);
      return again ? analyst.analyseAnew(recordingId) : detail;
    },
    "recording.publish": (input) => publishRecording(parts, input),
    "search.find": (input) => searchLibrary(parts, input),
    "search.compare": (input) => compareClaims(parts, input),
    "export.preview": (input) => previewExport(parts, input),
    "export.write": (input) => writeExports(parts, input),
    "export.cancel": (input) => cancelExports(parts, input),
    "export.reveal": (input) => revealExports(parts, input, host.reveal),
    ...lotHandlers(parts, analyst),
    ...startHandlers(parts, host.version),
  };
}
