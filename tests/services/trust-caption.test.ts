import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { openApplication } from "../../electron/services/open-application.ts";
import { importSample } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** A walk with one caption that the recognizer wrote over a song, and a size in it all the same. */
const walk = `[0:00] Morning, this is the Fallow Kestrel, here is the front of the car, the grille is straight.
[0:20] Round at the back now, the rear tires are two thirty five sixty fifteens.
[0:40] la la la baby baby baby la la la the rear tires are two fifty five sixty fifteens la la la baby baby baby la la la la
[1:00] Up on the lift now, the frame is clean, no rust at all.
`;

test("a doubtful caption gives claims once a person holds it for speech, over undo and redo", async () => {
  const folder = temporaryFolder();
  // The real analysis, in its thread: what it is told is the point.
  const application = openApplication({
    host: { name: "browser", version: "0.0.0", reveal: null },
    libraryFile: join(folder, "library.sqlite"),
    log: () => {},
  });
  onTestFinished(() => application.close());
  const { handlers } = application;
  const summary = await importSample(application, { folder, text: walk });
  const recordingId = summary.id;
  const before = await handlers["recording.get"]({ id: recordingId });
  const claimsOf = ({ analysis }: typeof before) => analysis.claims.filter(({ captions }) => captions.includes(2));
  expect(before.analysis.doubtful.map(({ caption }) => caption)).toEqual([2]);
  expect(claimsOf(before)).toEqual([]);

  const trusted = await handlers["caption.trust"]({ recordingId, caption: 2, trusted: true, initials: "RT" });
  expect(trusted.trustedCaptions).toEqual([{ caption: 2, initials: "RT" }]);
  expect(trusted.analysis.doubtful).toEqual([]);
  expect(claimsOf(trusted).map(({ value }) => value)).toContain("255/60R15");
  expect(trusted.undoLabel).toBe("hold caption 3 for speech");

  const undone = await handlers["edit.undo"]({ recordingId, initials: "RT" });
  expect(undone.analysis.doubtful.map(({ caption }) => caption)).toEqual([2]);
  expect(claimsOf(undone)).toEqual([]);
  const redone = await handlers["edit.redo"]({ recordingId, initials: "RT" });
  expect(claimsOf(redone).map(({ value }) => value)).toContain("255/60R15");

  // Another analysis does not forget what a person said.
  const again = await handlers["recording.analyse"]({ id: recordingId });
  expect(again.trustedCaptions).toHaveLength(1);
  expect(claimsOf(again)).toHaveLength(claimsOf(redone).length);
});
