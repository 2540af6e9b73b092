import type { RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
export function CheckScreen(_: { detail: RecordingDetail; edit: Edit; conflictKey: string | null }) {
  return null;
}
