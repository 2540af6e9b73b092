// The one door of every npm script. Plain JavaScript, so that a Node too old for the rest can still say so.
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Earliest Node that runs TypeScript as it stands, and that better-sqlite3 13 does not crash. */
const leastNode = [22, 18];

const root = join(dirname(fileURLToPath(import.meta.url)), "..");

/** Each task: the files to run, in order, with Node, or a tool from node_modules/.bin with its arguments. */
const tasks = {
  start: [["node", "electron/start.ts"]],
  analyze: [["node", "electron/headless/analyze.ts"]],
  index: [["node", "electron/headless/index-recording.ts"]],
  bundle: [["node", "electron/headless/bundle.ts"]],
  "index-lot": [["node", "electron/headless/index-lot.ts"]],
  build: [["node", "electron/build.ts"]],
  package: [["node", "electron/packaging/package.ts"]],
  smoke: [["node", "electron/packaging/smoke.ts"]],
  score: [["node", "tests/corpus/score-cases.ts"]],
  bench: [
    ["node", "tests/bench/bench.ts"],
    ["node", "tests/bench/screens.ts"],
  ],
  "make-demo": [["node", "tests/support/demo-film/make-demo.ts"]],
  check: [
    ["tsc", "-b"],
    ["biome", "check", "."],
  ],
  test: [["node", "tests/run-tests.ts"]],
  "test-e2e": [["node", "tests/run-tests.ts", "--only", "e2e"]],
};

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < leastNode[0] || (major === leastNode[0] && minor < leastNode[1])) {
  console.error(
    `Roundwalk needs Node ${leastNode.join(".")} or later, and this is ${process.versions.node}. ` +
      "Run it through npm (npm start, npm test, …): the project brings its own Node, which npm's scripts find first. " +
      'If npm started this, that Node is missing: run "npm ci" again without --ignore-scripts.',
  );
  process.exit(1);
}

const [name, ...extra] = process.argv.slice(2);
const steps = Object.hasOwn(tasks, name) ? tasks[name] : undefined;
if (!steps) {
  console.error(`There is no task "${name ?? ""}". Choose one of: ${Object.keys(tasks).join(", ")}.`);
  process.exit(2);
}
for (const [position, [program, ...args]] of steps.entries()) {
  const last = position === steps.length - 1;
  const command = program === "node" ? process.execPath : join(root, "node_modules", ".bin", program);
  // Paths a person names are relative to where they stand; npm sets INIT_CWD to that folder.
  const place = program === "node" && process.env.INIT_CWD ? process.env.INIT_CWD : root;
  const files = program === "node" ? [join(root, args[0]), ...args.slice(1)] : args;
  const result = spawnSync(command, [...files, ...(last ? extra : [])], {
    cwd: place,
    stdio: "inherit",
    shell: program !== "node" && process.platform === "win32",
  });
  if (result.error) throw result.error;
  if (result.status !== 0) process.exit(result.status ?? 1);
}
