import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import type { RecordingSummary, Reply } from "../../../shared-types/index.ts";
import { callFromPage, offerFromPage } from "./page-powers.ts";

const walk = `WEBVTT

00:00.000 --> 00:06.000
Good morning, here is the 1988 Ossler Pathmark wagon.

00:06.000 --> 00:14.000
Come round to the rear, the rear tires are two fifteen seventy fifteens.

00:14.000 --> 00:24.000
Up on the lift now, underneath, the axle ratio is three fifty five gears.

00:24.000 --> 00:34.000
I think the fuel tank is twenty gallons, the frame is clean.
`;

/** Puts a second, invented vehicle into the library, the way the page itself sends one; with other stock numbers, further ones. */
export async function importSecondVehicle(page: Page, stockNumber = "OP-1988"): Promise<RecordingSummary> {
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-second-"));
  try {
    const file = join(folder, "pathmark.vtt");
    writeFileSync(file, walk);
    const inDesktop = await page.evaluate(() => "roundwalk" in window);
    const transcript = inDesktop ? (await offerFromPage(page, file)).value.id : await sendFile(page);
    const input = {
      transcript,
      video: null,
      stockSheet: null,
      title: "1988 Ossler Pathmark, walk round",
      stockNumber,
      again: true,
      vehicle: { name: "Ossler Pathmark", year: 1988, bodyStyle: "estate", drive: "right-hand" },
    };
    if (inDesktop) return await callFromPage<RecordingSummary>(page, "recording.import", input);
    const reply = await page.evaluate(async (body): Promise<unknown> => {
      const headers = { "content-type": "application/json" };
      return (await fetch("/rpc/recording.import", { method: "POST", headers, body })).json();
    }, JSON.stringify(input));
    const { ok, ...rest } = reply as Reply<RecordingSummary>;
    if (!ok) throw new Error(JSON.stringify(rest));
    return (reply as { value: RecordingSummary }).value;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function sendFile(page: Page): Promise<string> {
  return page.evaluate(async (body) => {
    const offered = await (await fetch("/files?name=pathmark.vtt", { method: "POST", body })).json();
    return offered.value.id as string;
  }, walk);
}
