import { expect, type Page } from "@playwright/test";

/** What the page's own scripts can do beyond showing the application; tried from within the page. */
export async function expectNoPowers(page: Page): Promise<void> {
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  const found = await page.evaluate(async () => {
    // What runs at once runs as the test's, which the page's policy does not bind; what runs later is the page's own.
    await new Promise((later) => setTimeout(later, 20));
    const tried = async (work: () => unknown) => {
      try {
        return String(await work());
      } catch (failure) {
        return (failure as Error).name;
      }
    };
    const bridge = (window as unknown as { roundwalk: Record<string, (...values: unknown[]) => unknown> }).roundwalk;
    return {
      globals: ["require", "process", "module", "Buffer", "global", "ipcRenderer", "electron"].filter((name) => name in globalThis),
      bridge: Object.keys(bridge).sort(),
      evaluated: await tried(() => (Reflect.get(globalThis, "eval") as (text: string) => unknown)("1 + 1")),
      made: await tried(() => new Function("return 1")()),
      fetched: await tried(() => fetch("https://other.example/")),
      // Electron's own element for a page within the page.
      webview: "getWebContentsId" in document.createElement("webview"),
      // A script that nobody shipped.
      inline: await tried(() => {
        const script = document.createElement("script");
        script.textContent = "window.inlineRan = true";
        document.head.append(script);
        return "inlineRan" in window;
      }),
    };
  });
  expect(found).toEqual({
    globals: [],
    bridge: ["call", "mediaUrl", "offerFile", "on"],
    evaluated: "EvalError",
    made: "EvalError",
    fetched: "TypeError",
    webview: false,
    inline: "false",
  });
}

export interface PageBridge {
  readonly call: (name: string, input: unknown) => Promise<{ readonly value: unknown }>;
  readonly offerFile: (file: File) => Promise<{ readonly value: { readonly id: string } }>;
}

/** Chooses a file as a person does, and offers it to the application as the page does. */
export async function offerFromPage(page: Page, path: string): Promise<{ readonly value: { readonly id: string } }> {
  const field = await page.evaluateHandle(() => {
    const made = document.createElement("input");
    made.type = "file";
    document.body.append(made);
    return made;
  });
  await field.setInputFiles(path);
  return field.evaluate(async (chosen) => {
    const { roundwalk } = window as unknown as { roundwalk: PageBridge };
    const [file] = chosen.files ?? [];
    chosen.remove();
    return roundwalk.offerFile(file as File);
  });
}

/** Begins an import of a transcript and does not wait for it. */
export async function beginImport(page: Page, transcript: string): Promise<void> {
  const { value } = await offerFromPage(page, transcript);
  await page.evaluate(
    ([id]) => {
      const { roundwalk } = window as unknown as { roundwalk: PageBridge };
      const vehicle = { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" };
      const files = { transcript: id, video: null, stockSheet: null };
      void roundwalk.call("recording.import", { ...files, title: "Half way", stockNumber: "", vehicle, again: true });
    },
    [value.id],
  );
}

/** Asks the application as the page itself does. */
export async function callFromPage<Value>(page: Page, name: string, input: unknown): Promise<Value> {
  const reply = await page.evaluate(
    ([method, given]) => (window as unknown as { roundwalk: PageBridge }).roundwalk.call(method as string, given),
    [name, input] as const,
  );
  return reply.value as Value;
}

/** Resolves when the demo is in the library with its analysis: the desktop brings it in while its window already stands. */
export async function demoAnalysed(page: Page): Promise<void> {
  await expect
    .poll(async () => (await callFromPage<{ counts: { conflicts: number } }[]>(page, "recording.list", {}))[0]?.counts.conflicts ?? 0, {
      timeout: 60_000,
    })
    .toBeGreaterThan(0);
}
