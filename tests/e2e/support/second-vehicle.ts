import type { Page } from "@playwright/test";
import type { RecordingSummary, Reply } from "../../../shared-types/index.ts";

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
  const reply = await page.evaluate(
    async ({ text, stock }): Promise<unknown> => {
      const offered = await (await fetch("/files?name=pathmark.vtt", { method: "POST", body: text })).json();
      const answer = await fetch("/rpc/recording.import", {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({
          transcript: offered.value.id,
          video: null,
          stockSheet: null,
          title: "1988 Ossler Pathmark, walk round",
          stockNumber: stock,
          again: true,
          vehicle: { name: "Ossler Pathmark", year: 1988, bodyStyle: "estate", drive: "right-hand" },
        }),
      });
      return answer.json();
    },
    { text: walk, stock: stockNumber },
  );
  const { ok, ...rest } = reply as Reply<RecordingSummary>;
  if (!ok) throw new Error(JSON.stringify(rest));
  return (reply as { value: RecordingSummary }).value;
}
