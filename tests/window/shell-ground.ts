import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished } from "vitest";
import { freshDesktop, freshPage } from "../../electron/launch/build-parts.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { type StandIn, type StandInOptions, startStandIn } from "../support/electron-stand-in/start-stand-in.ts";

// The built main process under the stand-in for Electron; what it shows is answered as a person would. No window is opened.

const own = { origin: "app://roundwalk", top: true };

/** The machine may be busy; what is waited for comes, or never does. */
export const eventually = (look: () => unknown): ReturnType<typeof expect.poll> => expect.poll(look, { timeout: 30_000 });

export async function opened(options: Partial<StandInOptions> & { home: string }): Promise<StandIn> {
  const standIn = startStandIn(options);
  onTestFinished(() => {
    if (standIn.child.exitCode === null) standIn.child.kill("SIGKILL");
  });
  await eventually(() => standIn.of("shown").length || standIn.output()).toBe(1);
  return standIn;
}

export const call = async (standIn: StandIn, name: string, input: unknown) => {
  const reply = await standIn.ask("invoke", { channel: "roundwalk:call", values: [name, input], frame: own });
  if (!reply.ok) throw new Error(reply.problem.message);
  return reply.value;
};

export async function ended(standIn: StandIn): Promise<void> {
  await standIn.ask("quit").catch(() => {});
  expect(await standIn.ended).toBe(0);
  expect(standIn.of("fault")).toEqual([]);
}

export async function importSample(standIn: StandIn, home: string): Promise<string> {
  const transcript = join(home, "walk.txt");
  writeFileSync(transcript, sampleTranscriptText);
  const offered = await standIn.ask("invoke", { channel: "roundwalk:offer-file", values: [transcript], frame: own });
  const vehicle = { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" };
  const files = { transcript: offered.value.id, video: null, stockSheet: null };
  return (await call(standIn, "recording.import", { ...files, title: "Fallow & Kestrel", stockNumber: "S-1", vehicle })).id;
}
/** Built anew where it is old: the window shows the built page, and without one the program says so and ends. */
export async function buildWhatIsOld(): Promise<void> {
  await freshPage("error");
  await freshDesktop("error");
}
