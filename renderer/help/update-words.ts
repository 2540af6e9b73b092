import type { Output } from "../../shared-types/index.ts";

/** What the look for a newer version found, in a sentence. */
export function updateWords({ running, newest, newer }: NonNullable<Output<"update.look">>): string {
  return newer
    ? `There is a version ${newest}; this is ${running}. Get it from where you got this one.`
    : `This is ${running}, and no newer version is told of.`;
}
