import { randomUUID } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { chooseFolder } from "../../electron/services/choose-folder.ts";
import type { HostEvent } from "../../shared-types/index.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { sampleApplication, sampleVehicle } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const streamOf = (text: string) => new Blob([text]).stream() as ReadableStream<Uint8Array>;
const webm = "\u001aEß£ and no more";

async function offeredImport(application: ReturnType<typeof sampleApplication>, ticket: string) {
  const { files } = application.parts;
  const bytes = Uint8Array.from(Buffer.from(webm, "latin1"));
  return {
    transcript: (await files.receive("walk.txt", streamOf(sampleTranscriptText), null)).id,
    video: (await files.receive("walk.webm", new Blob([bytes]).stream() as ReadableStream<Uint8Array>, null)).id,
    stockSheet: null,
    title: "Kestrel",
    stockNumber: "FK-1971",
    vehicle: sampleVehicle,
    ticket,
  };
}

describe("an import with a ticket", () => {
  test("tells its passes by the ticket, and only its own", async () => {
    const application = sampleApplication();
    const heard: HostEvent[] = [];
    application.parts.events.subscribe((event) => heard.push(event));
    const [one, other] = [randomUUID(), randomUUID()];
    await application.handlers["recording.import"](await offeredImport(application, one));
    await application.handlers["recording.import"]({ ...(await offeredImport(application, other)), again: true });
    const told = heard.flatMap(({ name, payload }) => (name === "import.progress" ? [[payload.ticket, payload.done, payload.of]] : []));
    expect(told).toEqual([
      [one, 1, 2],
      [one, 2, 2],
      [other, 1, 2],
      [other, 2, 2],
    ]);
  });

  test.for(["before its call arrives", "while it is analyzed"] as const)("cancelled %s leaves nothing behind", async (when) => {
    const application = sampleApplication();
    const { handlers, parts, folder } = application;
    const ticket = randomUUID();
    const input = await offeredImport(application, ticket);
    if (when === "before its call arrives") handlers["import.cancel"]({ ticket });
    else {
      parts.events.subscribe(({ name }) => {
        if (name === "import.progress") handlers["import.cancel"]({ ticket });
      });
    }
    await expect(handlers["recording.import"](input)).rejects.toMatchObject({
      problem: { code: "import-cancelled", message: expect.stringContaining("Nothing of it is in the library") },
    });
    handlers["file.letGo"]({ files: [input.transcript, input.video] });
    expect(await handlers["recording.list"]({})).toEqual([]);
    expect(await handlers["search.find"]({ query: "chassis", limit: 5 })).toEqual([]);
    expect(existsSync(join(folder, "media")) ? readdirSync(join(folder, "media")) : []).toEqual([]);
    expect(readdirSync(join(folder, ".roundwalk-incoming", String(process.pid)))).toEqual([]);
  });

  test("that is done stays when it is cancelled afterwards", async () => {
    const application = sampleApplication();
    const ticket = randomUUID();
    await application.handlers["recording.import"](await offeredImport(application, ticket));
    application.handlers["import.cancel"]({ ticket });
    expect(await application.handlers["recording.list"]({})).toHaveLength(1);
  });

  test("of several at once with the same words, one comes in", async () => {
    const application = sampleApplication();
    const inputs = [await offeredImport(application, randomUUID()), await offeredImport(application, randomUUID())];
    const outcomes = await Promise.allSettled(inputs.map((input) => application.handlers["recording.import"](input)));
    expect(outcomes.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    expect(outcomes.find(({ status }) => status === "rejected")).toMatchObject({ reason: { problem: { code: "transcript-known" } } });
    expect(readdirSync(join(application.folder, "media"))).toHaveLength(1);
  });
});

describe("a folder that the host asks for", () => {
  test("is offered with where each file lies; hidden ones are passed over", async () => {
    const { parts } = sampleApplication();
    const folder = join(temporaryFolder(), "walks");
    for (const place of ["", "FK-1971", "FK-1971/raw", ".trash"]) mkdirSync(join(folder, place), { recursive: true });
    for (const name of ["lot.csv", "FK-1971/walk.mp4", "FK-1971/raw/walk.txt", ".DS_Store", ".trash/old.mp4"])
      writeFileSync(join(folder, name), "x");
    const chosen = await chooseFolder(parts, async () => folder);
    expect(chosen.folder).toBe("walks");
    expect(chosen.more).toBe(false);
    expect(chosen.files.map((file) => [file.folder, file.name, file.bytes])).toEqual([
      ["", "lot.csv", 1],
      ["FK-1971", "walk.mp4", 1],
      ["FK-1971/raw", "walk.txt", 1],
    ]);
    expect(chosen.files.map(({ id }) => parts.files.find(id).received)).toEqual([false, false, false]);
  });

  test("and that is not chosen offers nothing", async () => {
    const { parts } = sampleApplication();
    expect(await chooseFolder(parts, async () => null)).toEqual({ folder: null, files: [], more: false });
  });
});
