import { expect, test } from "vitest";
import { undoneWords, undoTip } from "../../renderer/shared/undo-words.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const [publication] = sampleDetail().publications;
const published = publication ?? {
  id: "00000000-0000-4000-8000-000000000009",
  at: "2026-11-26T02:31:00.000Z",
  initials: "RT",
  openConflicts: 2,
  openMatters: null,
};
const detail = { undoLabel: "rule on rear tire size", redoLabel: null, publications: [] };

test("undo names what it takes back, before and after", () => {
  expect(undoTip(detail)).toBe("Undo: rule on rear tire size (Ctrl Z).");
  expect(undoneWords(detail)).toBe("Undone: rule on rear tire size");
  expect(undoTip({ ...detail, undoLabel: null })).toBe("Nothing to undo.");
});

test("after a publication undo says that it stays on record, and which", () => {
  const later = { ...detail, publications: [published] };
  expect(undoTip(later)).toMatch(/^Undo: rule on rear tire size \(Ctrl Z\)\. This stays on record: Published .+ by .+ open\.$/);
  expect(undoneWords(later)).toMatch(/^Undone: rule on rear tire size\. This stays on record: Published /);
  expect(undoTip({ ...later, undoLabel: null })).toMatch(/^Nothing to undo\. This stays on record: /);
});
