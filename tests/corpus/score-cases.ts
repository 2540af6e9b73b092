// npm run score -- DIR [--json] [--verbose]: the analysis measured on a folder of annotated cases.
// npm run score -- --sentences [--verbose]: on the bank of labelled sentences.
// npm run score -- --mutations [--verbose]: contradictions planted into quiet walks, the share found for each kind.
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { plantedShares, shareTable } from "../analysis/mutations/planted-share.ts";
import { readCases } from "./read-cases.ts";
import { analyseCase, scoreCases } from "./scorer.ts";
import { readSentences } from "./sentences/read-sentences.ts";
import { scoreSentences } from "./sentences/score-sentences.ts";
import { scoreByTrait, traitLine } from "./style-traits.ts";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { json: { type: "boolean" }, verbose: { type: "boolean" }, mutations: { type: "boolean" }, sentences: { type: "boolean" } },
});
if (values.mutations) {
  const sentencesOfARow = 3;
  console.log(shareTable(plantedShares(sentencesOfARow), values.verbose ?? false).join("\n"));
  process.exit(0);
}
if (values.sentences) {
  const { labels, read, quiet, notQuiet, missed } = scoreSentences(readSentences());
  if (values.verbose) for (const line of missed) console.log(line);
  console.log(
    `${read} of ${labels} labels read (${((100 * read) / labels).toFixed(1)} %); ${notQuiet} of ${quiet} quiet sentences gave a claim.`,
  );
  process.exit(0);
}
const folder = positionals[0];
if (!folder) {
  console.error("Name the folder of cases: npm run score -- fixtures/corpus/dev");
  process.exit(2);
}
const cases = readCases(resolve(folder));
if (cases.length === 0) {
  console.error(`${folder}: no *.gold.json with a transcript beside it was found there.`);
  process.exit(1);
}
const { perCase, total } = scoreCases(cases.map((one) => ({ ...one, output: analyseCase(one) })));
if (values.json) console.log(JSON.stringify({ perCase, byTrait: scoreByTrait(perCase), total }));
else {
  for (const one of perCase) {
    console.log(
      `${one.id} (${one.style}): zones ${Math.round(one.zoneSecondsRight * 100)} %, conflicts ${one.conflictsFound}/${one.conflicts} found, ` +
        `${one.falseConflicts.length} false, measures missed ${one.missedMeasures.length}/${one.measures}`,
    );
    if (values.verbose) {
      for (const line of one.missedConflicts) console.log(`   missed conflict ${line}`);
      for (const line of one.falseConflicts) console.log(`   false conflict ${line}`);
      for (const line of one.missedMeasures) console.log(`   missed measure ${line}`);
      for (const line of one.missedRepairs) console.log(`   missed repair ${line}`);
    }
  }
  console.log("");
  for (const score of scoreByTrait(perCase)) console.log(traitLine(score));
  console.log(JSON.stringify(total, null, 2));
}
