import type { RecordingDetail } from "../../shared-types/index.ts";
export function ExportPanel(_: { detail: RecordingDetail; open: boolean; onClose: () => void }) {
  return null;
}
