import { z } from "zod";
import { RecordingId } from "./recording.ts";

const none = z.strictObject({});
function method<Input extends z.ZodType, Output extends z.ZodType>(input: Input, output: Output) {
  return { input, output };
}

const UpdateSetting = z.strictObject({
  /** Where a newer version is told of; null, as it is at first, asks nobody. */
  address: z.string().nullable(),
});

/** First minutes, what is new, and the look for a newer version. */
export const startMethods = {
  "start.state": method(
    none,
    z.strictObject({
      /** The first minutes were not ended yet. */
      introduce: z.boolean(),
      /** The demo's recording, while the library has it. */
      demoId: RecordingId.nullable(),
      version: z.string(),
      /** What an update brought and nobody has been told yet. */
      news: z.array(z.strictObject({ version: z.string(), points: z.array(z.string()) })),
    }),
  ),
  /** Ends the first minutes, or the news of this version, for good. */
  "start.told": method(z.strictObject({ what: z.enum(["first-minutes", "news"]) }), none),

  "update.setting": method(none, UpdateSetting),
  /** Refused with `address-not-secure` for anything but an https address. */
  "update.set": method(z.strictObject({ address: z.string().trim().max(500).nullable() }), UpdateSetting),
  /** Asks the address, at most once a day unless `now`; null where none was given, or where it did not answer today. Fetches nothing else and opens nothing. */
  "update.look": method(
    z.strictObject({ now: z.boolean() }),
    z.strictObject({ running: z.string(), newest: z.string(), newer: z.boolean() }).nullable(),
  ),
} as const;
