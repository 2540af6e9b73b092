import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { openApplication } from "../../electron/services/open-application.ts";
import { importSample } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

// Nobody films after the import: without a date of its own a recording is at most as young as the day it came into the library.
test("tires are told to be old though nobody said when the recording was made", async () => {
  const folder = temporaryFolder();
  const application = openApplication({
    host: { name: "browser", version: "0.0.0", reveal: null },
    libraryFile: join(folder, "library.sqlite"),
    log: () => {},
  });
  onTestFinished(() => application.close());
  const text = "[0:00] Morning, this is the Fallow Kestrel. Tires are all four the same, date code is 2214, so week twenty two of 2014.\n";
  const { id } = await importSample(application, { folder, text });
  const { analysis } = await application.handlers["recording.get"]({ id });
  const age = analysis.remarks.find(({ topic }) => topic === "tire age");
  expect(age?.why).toMatch(
    /^The tires dated 2214 were 1\d years old by 20\d\d-\d\d-\d\d; makers commonly advise replacement at 6 to 10 years/,
  );
});
