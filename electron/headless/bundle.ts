// npm run bundle -- export | import | look: whole recordings as files, without a window.
import { randomUUID } from "node:crypto";
import { existsSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import {
  type BundleLook,
  bundleEnding,
  type MergeChoice,
  type MergeChoices,
  type MergeGroup,
  mergeChoices,
  mergeGroupLabels,
} from "../../shared-types/index.ts";
import { defaultLibraryFile } from "../library/default-place.ts";
import { type Application, openApplication } from "../services/open-application.ts";
import { Refusal } from "../services/refusals.ts";
import { describeFailure, failingFile } from "./describe-failure.ts";
import { type ProgressLine, showProgress } from "./show-progress.ts";

const usage = `Usage: npm run bundle -- export --to FOLDER [--all | --ready | --stock TEXT …] [options]
       npm run bundle -- look FILE-OR-FOLDER …
       npm run bundle -- import FILE-OR-FOLDER … [options]
  --library FILE       another library than your own
  --ready              recordings without an open conflict (the usual); --all takes every one, --stock those with the number
  --without-video      leaves the videos behind; they are found again by their content
  --replace            also over bundles that were written elsewhere and never brought in here
  --merge WHICH        of work that differs: mine, theirs or both; without it such a bundle is told and left.
                       Of one stretch, finding, caption or title both cannot stand: “both” keeps what is here, and says so
  --initials TEXT      sign a merge; else the library's own
  --beside             import although another recording has the same transcript
Ends with 0 when all was done; 3 when “both” was asked for and not everything of theirs could stand; 1 when something failed; 2 for a mistake
in the command.`;

const options = {
  library: { type: "string" },
  to: { type: "string" },
  all: { type: "boolean" },
  ready: { type: "boolean" },
  stock: { type: "string", multiple: true },
  "without-video": { type: "boolean" },
  replace: { type: "boolean" },
  merge: { type: "string" },
  initials: { type: "string" },
  beside: { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

type Values = ReturnType<typeof parseArgs<{ options: typeof options; allowPositionals: true }>>["values"];

async function main(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
  const [task, ...places] = positionals;
  if (values.help) {
    console.log(usage);
    return 0;
  }
  const fault = faultOf(task, places, values);
  if (fault !== null) {
    console.error(`${fault}\n${usage}`);
    return 2;
  }
  const progress = showProgress(process.stderr);
  const application = openApplication({
    host: { name: "desktop", version: "headless", reveal: null },
    libraryFile: values.library ? resolve(values.library) : defaultLibraryFile(),
  });
  application.parts.events.subscribe((event) => {
    if (event.name === "work.progress" && event.payload.what !== "") progress.say(event.payload.what);
  });
  try {
    if (task === "export") return await exportBundles(application, values, progress);
    const files = await bundlesIn(application, places);
    return task === "look" ? await look(application, files, progress) : await take(application, files, values, progress);
  } finally {
    progress.end();
    await application.close();
  }
}

function faultOf(task: string | undefined, places: readonly string[], values: Values): string | null {
  if (task !== "export" && task !== "import" && task !== "look") return `There is no "${task ?? ""}".`;
  if (task === "export") {
    if (!values.to) return "--to FOLDER is missing.";
    return places.length > 0 ? `export takes no "${places[0]}"; name the folder with --to.` : null;
  }
  if (places.length === 0) return "No bundle and no folder was named.";
  const missing = places.find((place) => !existsSync(place));
  if (missing !== undefined) return `${missing}: there is no such file or folder.`;
  if (values.merge !== undefined && !mergeChoices.some((choice) => choice === values.merge))
    return `--merge takes ${mergeChoices.join(", ")}, not "${values.merge}".`;
  return null;
}

async function exportBundles({ handlers }: Application, values: Values, progress: ProgressLine): Promise<number> {
  const recordings = await handlers["recording.list"]({});
  const wanted = values.stock ? recordings.filter(({ stockNumber }) => values.stock?.includes(stockNumber)) : recordings;
  const lacking = values.stock?.find((number) => !wanted.some(({ stockNumber }) => stockNumber === number));
  if (lacking !== undefined) {
    console.error(`No recording has the stock number "${lacking}".`);
    return 1;
  }
  const named = values.all || values.stock ? wanted.map(({ id }) => id) : null;
  if (named?.length === 0) {
    console.log("The library holds no recording.");
    return 0;
  }
  const kept = await handlers["bundle.keep"]({
    ticket: randomUUID(),
    recordingIds: named,
    withVideo: !values["without-video"],
    folder: resolve(values.to as string),
    overwrite: values.replace ?? false,
  });
  progress.end();
  for (const { fileName, bytes } of kept.written) console.log(`written    ${join(kept.folder, fileName)} (${bytes} bytes)`);
  for (const { fileName } of kept.unchanged) console.log(`unchanged  ${join(kept.folder, fileName)}`);
  for (const { title, why } of kept.failed) console.error(`not written: ${title}: ${why}`);
  if (kept.written.length + kept.unchanged.length + kept.failed.length === 0)
    console.log("No recording is ready: all have open conflicts. --all takes them too.");
  return kept.failed.length > 0 ? 1 : 0;
}

interface FoundBundle {
  readonly path: string;
  readonly look: BundleLook | null;
  readonly problem: string | null;
}

async function bundlesIn({ handlers, parts }: Application, places: readonly string[]): Promise<FoundBundle[]> {
  const found: FoundBundle[] = [];
  for (const place of places.map((each) => resolve(each))) {
    if (statSync(place).isDirectory()) {
      const { bundles } = await handlers["bundle.lookAtFolder"]({ ticket: randomUUID(), folder: place });
      if (bundles.length === 0) console.error(`${place} holds no file that ends with ${bundleEnding}.`);
      found.push(...bundles.map(({ fileName, look, problem }) => ({ path: join(place, fileName), look, problem })));
      continue;
    }
    try {
      found.push({ path: place, look: await handlers["bundle.look"]({ file: parts.files.offerPath(place).id }), problem: null });
    } catch (failure) {
      if (!(failure instanceof Refusal)) throw failure;
      found.push({ path: place, look: null, problem: failure.message });
    }
  }
  return found;
}

async function look(_: Application, bundles: readonly FoundBundle[], progress: ProgressLine): Promise<number> {
  progress.end();
  for (const { path, look: seen, problem } of bundles) {
    if (!seen) console.error(problem);
    else for (const line of lookLines(path, seen)) console.log(line);
  }
  return bundles.some(({ problem }) => problem !== null) ? 1 : 0;
}

/** What one of the two sides says, and whose it is. */
function side(words: string | null, by: string): string {
  return `${words ?? "nothing"}${by ? ` (${by})` : ""}`;
}

const states = { new: "new", same: "nothing new", differs: "differs" } as const;

function lookLines(path: string, { title, stockNumber, state, adds, stays, groups, sameWords, hasVideo }: BundleLook): string[] {
  return [
    `${path}: “${title}”${stockNumber ? `, stock ${stockNumber}` : ""}, ${hasVideo ? "with video" : "without video"}: ${states[state]}`,
    ...(sameWords ? [`  ${sameWords}`] : []),
    ...adds.map((words) => `  adds ${words}`),
    ...stays.map((words) => `  not merged: ${words}`),
    ...groups.flatMap(({ group, differences }) => [
      `  ${mergeGroupLabels[group]}`,
      ...differences.map(
        ({ what, mine, theirs, mineBy, theirsBy }) => `    ${what}: here ${side(mine, mineBy)}; in the bundle ${side(theirs, theirsBy)}`,
      ),
    ]),
  ];
}

async function take(application: Application, bundles: readonly FoundBundle[], values: Values, progress: ProgressLine): Promise<number> {
  const { handlers } = application;
  const initials = values.initials ?? ((await handlers["settings.get"]({})).initials || null);
  let failures = 0;
  let left = 0;
  const fail = (words: string) => {
    failures += 1;
    progress.end();
    console.error(words);
  };
  for (const { path, look: seen, problem } of bundles) {
    if (!seen) {
      fail(problem ?? path);
      continue;
    }
    if (seen.state === "differs" && seen.seen && values.merge === undefined) {
      console.log(`decided before  ${path}`);
      continue;
    }
    const choices = choicesOf(seen, values.merge as MergeChoice | undefined);
    if (choices !== null && Object.keys(choices).length > 0 && initials === null) {
      fail(`${path}: a merge is signed. Give your initials with --initials.`);
      continue;
    }
    try {
      const { title, outcome } = await handlers["bundle.take"]({
        ticket: randomUUID(),
        file: seen.file,
        choices,
        again: values.beside ?? false,
        initials: initials ?? "-",
      });
      progress.end();
      console.log(`${outcome.padEnd(10)} “${title}” (${path})`);
      const lines = values.merge === "both" ? leftOutLines(seen) : [];
      left += lines.length;
      for (const line of lines) console.log(line);
    } catch (failure) {
      if (!(failure instanceof Refusal)) throw failure;
      const advice =
        failure.problem.code === "bundle-differs"
          ? " (--merge mine, theirs or both; “look” shows what differs.)"
          : failure.problem.code === "transcript-known"
            ? " (--beside brings it in.)"
            : "";
      fail(`${failure.message}${advice}`);
    }
  }
  if (left > 0)
    console.error(
      `Both could not stand ${left} ${left === 1 ? "time" : "times"}: what is here stands, as listed. --merge theirs takes theirs.`,
    );
  return failures > 0 ? 1 : left > 0 ? 3 : 0;
}

/** What of a bundle does not stand after a merge of both, beside what stands instead. */
function leftOutLines({ groups }: BundleLook): string[] {
  return groups.flatMap(({ group, takesBoth, clashes, differences }) =>
    differences
      .filter(({ what, mine, theirs }) => {
        if (theirs === null) return false;
        // Of two rulings on one conflict one stands; the other stays on record.
        if (supersedes(group)) return mine !== null;
        return !takesBoth || (clashes.includes(what) && (mine !== null || group === "zones"));
      })
      .map(
        ({ what, mine, theirs, mineBy, theirsBy }) =>
          `  ${mergeGroupLabels[group]}, ${what}: kept ${mine === null && group === "zones" ? "what is drawn there" : side(mine, mineBy)}; ${
            supersedes(group) ? "on record, superseded:" : "not taken:"
          } ${side(theirs, theirsBy)}`,
      ),
  );
}

/** Whose rows all stay on record, one standing for each subject. */
function supersedes(group: MergeGroup): boolean {
  return group === "rulings" || group === "seen";
}

/** One choice for every group; where both cannot stand, what is here stays. */
function choicesOf({ groups }: BundleLook, merge: MergeChoice | undefined): MergeChoices | null {
  if (merge === undefined) return null;
  return Object.fromEntries(groups.map(({ group, takesBoth }) => [group, merge === "both" && !takesBoth ? "mine" : merge]));
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (failure) {
  console.error(describeFailure(failingFile(failure) ?? "bundle", failure));
  process.exitCode = 1;
}
