import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { freshPage } from "../../electron/launch/build-parts.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const start = join(import.meta.dirname, "..", "..", "electron", "start.ts");

function run(args: readonly string[]) {
  const child = spawn(process.execPath, [start, ...args], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (chunk) => {
      said += chunk;
    });
  }
  const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
  onTestFinished(() => void child.kill("SIGKILL"));
  return { child, ended, said: () => said };
}

describe("npm start", { timeout: 60_000 }, () => {
  beforeAll(async () => {
    await freshPage("error");
  }, 120_000);

  test.for(["SIGINT", "SIGTERM"] as const)("prints an address that lets a browser in, and ends cleanly on %s", async (signal) => {
    const folder = temporaryFolder();
    const { child, ended, said } = run(["--host", "browser", "--no-open", "--no-demo", "--library", join(folder, "library.sqlite")]);
    await expect.poll(said, { timeout: 30_000 }).toMatch(/Roundwalk is at http:\/\/127\.0\.0\.1:\d+\/enter\?token=[\w-]+\n/);
    const address = /http:\S+/.exec(said())?.[0] as string;
    const entered = await fetch(address, { redirect: "manual" });
    const cookie = (entered.headers.get("set-cookie") ?? "").split(";")[0] as string;
    const page = await fetch(new URL("/", address), { headers: { cookie } });
    expect([page.status, page.headers.get("content-type")]).toEqual([200, "text/html; charset=utf-8"]);
    // A page that listens must not keep the host from ending.
    const events = await fetch(new URL("/events", address), { headers: { cookie } });
    expect(events.headers.get("content-type")).toBe("text/event-stream");
    child.kill(signal);
    expect(await ended).toBe(0);
    await events.body?.cancel().catch(() => {});
    // The write-ahead log goes when the last one closes the library: nothing is left half-written.
    expect(existsSync(join(folder, "library.sqlite"))).toBe(true);
    expect(existsSync(join(folder, "library.sqlite-wal"))).toBe(false);
  });

  test("ends when the script that npm runs was ended before it", async () => {
    const folder = temporaryFolder();
    const script = spawn(
      process.execPath,
      [join(start, "..", "run.mjs"), "start", "--host", "browser", "--no-open", "--no-demo", "--library", join(folder, "library.sqlite")],
      { stdio: ["ignore", "pipe", "ignore"], env: { ...process.env, npm_lifecycle_event: "start" } },
    );
    let said = "";
    script.stdout.on("data", (chunk) => {
      said += chunk;
    });
    await expect.poll(() => said, { timeout: 30_000 }).toMatch(/enter\?token=/);
    const origin = new URL(/http:\S+/.exec(said)?.[0] as string).origin;
    expect((await fetch(origin)).status).toBe(401);
    script.kill("SIGTERM");
    const reached = () =>
      fetch(origin).then(
        () => "answers",
        () => "gone",
      );
    await expect.poll(reached, { timeout: 10_000 }).toBe("gone");
    await expect.poll(() => existsSync(join(folder, "library.sqlite-wal")), { timeout: 10_000 }).toBe(false);
  });

  test("on a library that is already open names the running one's address, and starts nothing", async () => {
    const args = ["--host", "browser", "--no-open", "--no-demo", "--library", join(temporaryFolder(), "library.sqlite")];
    const first = run(args);
    await expect.poll(first.said, { timeout: 30_000 }).toMatch(/enter\?token=[\w-]+\n/);
    const address = /http:\S+/.exec(first.said())?.[0] as string;
    const second = run(args);
    expect(await second.ended).toBe(1);
    expect(second.said()).toContain("is already open in another Roundwalk");
    const named = /http:\S+/.exec(second.said())?.[0] as string;
    expect(new URL(named).origin).toBe(new URL(address).origin);
    expect((await fetch(named, { redirect: "manual" })).headers.get("set-cookie")).toBeTruthy();
    first.child.kill("SIGTERM");
    await first.ended;
    // A host that was killed leaves its lock behind; the next one sees that nobody holds it.
    const third = run(args);
    await expect.poll(third.said, { timeout: 30_000 }).toMatch(/enter\?token=/);
    third.child.kill("SIGKILL");
    await third.ended;
    const fourth = run(args);
    await expect.poll(fourth.said, { timeout: 30_000 }).toMatch(/enter\?token=/);
    fourth.child.kill("SIGTERM");
    expect(await fourth.ended).toBe(0);
  });

  test.for([
    { args: ["--host", "phone"], says: '--host takes desktop or browser, not "phone".' },
    { args: ["--port", "99999"], says: "--port takes a number" },
    { args: ["--unheard-of"], says: "--unheard-of" },
    { args: ["--host", "browser", "--library", import.meta.filename], says: "is not a Roundwalk library" },
  ])("$args says what is wrong and starts nothing", async ({ args, says }) => {
    const { ended, said } = run(args);
    expect(await ended).toBe(1);
    expect(said()).toContain(says);
    expect(said()).not.toContain("    at ");
  });
});
