import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { correctCaptions } from "../../electron/exports/corrections/correct-captions.ts";
import { openApplication } from "../../electron/services/open-application.ts";
import { importSample } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const walk = `[0:00] Morning, this is the Fallow Kestrel, here is the front of the car, the grille is straight.
[0:20] Round at the back now, the rear tires are two thirty five sixty fifteens.
[0:40] Up on the lift now, the frame is clean, no rust at all.
`;
const initials = "RT";

function ground() {
  const folder = temporaryFolder();
  // The real analysis, in its thread: what it reads is the point.
  const application = openApplication({
    host: { name: "browser", version: "0.0.0", reveal: null },
    libraryFile: join(folder, "library.sqlite"),
    log: () => {},
  });
  onTestFinished(() => application.close());
  return { folder, application, handlers: application.handlers };
}

test("a corrected caption is analysed, searched and exported with its new words; the old ones stay beside them", async () => {
  const { folder, application, handlers } = ground();
  const { id: recordingId } = await importSample(application, { folder, text: walk });
  const before = await handlers["recording.get"]({ id: recordingId });
  const sizes = ({ analysis }: typeof before) => analysis.claims.filter(({ attribute }) => attribute === "size").map(({ value }) => value);
  expect(sizes(before)).toEqual(["235/60R15"]);
  const original = before.captions[1]?.text ?? "";

  const words = "Hedge behind us, the rear tires are two fifty five sixty fifteens.";
  const corrected = await handlers["caption.correct"]({ recordingId, caption: 1, words, initials });
  expect(sizes(corrected)).toEqual(["255/60R15"]);
  expect(corrected.captions[1]?.text).toBe(words);
  expect(corrected.captionCorrections).toEqual([{ caption: 1, words, initials, original }]);
  expect(application.parts.library.captions.of(recordingId)[1]?.text).toBe(original);
  const { changes } = correctCaptions(corrected);
  expect(changes).toContainEqual({ caption: 1, start: 20, from: original, to: words, why: "words corrected by RT" });
  const heard = async (query: string) =>
    (await handlers["search.find"]({ query, limit: 50 })).filter(({ start, text }) => start === 20 && text.includes(query));
  expect(await heard("Hedge")).not.toEqual([]);
  expect(await heard("Round")).toEqual([]);

  const undone = await handlers["edit.undo"]({ recordingId, initials });
  expect([sizes(undone), undone.captions[1]?.text, undone.captionCorrections]).toEqual([["235/60R15"], original, []]);
  const redone = await handlers["edit.redo"]({ recordingId, initials });
  expect([sizes(redone), redone.captions[1]?.text]).toEqual([["255/60R15"], words]);
  expect((await handlers["recording.analyse"]({ id: recordingId })).captionCorrections).toHaveLength(1);
});

test("the words it came with take a correction back, and the same words again change nothing", async () => {
  const { folder, application, handlers } = ground();
  const { id: recordingId } = await importSample(application, { folder, text: walk });
  const { captions } = await handlers["recording.get"]({ id: recordingId });
  const original = captions[2]?.text ?? "";
  const same = await handlers["caption.correct"]({ recordingId, caption: 2, words: `  ${original.replaceAll(" ", "\n ")}`, initials });
  expect(same.undoLabel).toBeNull();
  await handlers["caption.correct"]({ recordingId, caption: 2, words: "The frame is clean.", initials });
  const twice = await handlers["caption.correct"]({ recordingId, caption: 2, words: "The frame is clean.", initials: "AB" });
  expect(twice.captionCorrections).toMatchObject([{ initials: "RT" }]);
  const back = await handlers["caption.correct"]({ recordingId, caption: 2, words: original, initials });
  expect([back.captionCorrections, back.undoLabel]).toEqual([[], "put back the words of caption 3"]);
  expect((await handlers["edit.undo"]({ recordingId, initials })).captions[2]?.text).toBe("The frame is clean.");
});

test("two corrections at once are both read by the analysis that answers them", async () => {
  const { folder, application, handlers } = ground();
  const { id: recordingId } = await importSample(application, { folder, text: walk });
  await Promise.all([
    handlers["recording.analyse"]({ id: recordingId }),
    handlers["caption.correct"]({ recordingId, caption: 1, words: "The rear tires are two fifty five sixty fifteens.", initials }),
    handlers["caption.correct"]({ recordingId, caption: 2, words: "The front tires are two oh five seventy fifteens.", initials }),
  ]);
  const { analysis } = await handlers["recording.get"]({ id: recordingId });
  expect(analysis.claims.filter(({ attribute }) => attribute === "size").map(({ value }) => value)).toEqual(["255/60R15", "205/70R15"]);
  expect(application.parts.library.proposals.outdated(analysis.analysisVersion)).toEqual([]);
});
