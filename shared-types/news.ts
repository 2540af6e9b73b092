/** What a version brought, in words for whoever works with it. */
export interface VersionNews {
  readonly version: string;
  readonly points: readonly string[];
}

/** Newest first; the newest is the version in package.json. Told once after an update, and always in the help. */
export const news: readonly VersionNews[] = [
  {
    version: "0.1.0",
    points: [
      "Mark: captions beside the recording, zones and findings proposed and accepted, stills at the playhead.",
      "Check: both moments of a conflict side by side, with the published rule and the stock sheet.",
      "Call: one field over the whole library, and vehicles side by side.",
      "Out: chapters, captions put right, the condition index and the review record, bundles for another machine.",
    ],
  },
];

/** Negative where `one` is the older: numbers of major, minor and patch one after another, as Semantic Versioning 2.0.0 orders releases. */
export function compareVersions(one: string, other: string): number {
  const numbers = (version: string) => version.split("-")[0]!.split(".").map(Number);
  const [left, right] = [numbers(one), numbers(other)];
  for (const place of [0, 1, 2]) {
    const difference = (left[place] || 0) - (right[place] || 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** What came after the version that was told last, up to the one that runs. */
export function newsSince(told: string, running: string, list: readonly VersionNews[] = news): VersionNews[] {
  return list.filter(({ version }) => compareVersions(version, told) > 0 && compareVersions(version, running) <= 0);
}
