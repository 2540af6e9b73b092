import { equipment } from "./equipment.ts";
import { history } from "./history.ts";
import type { QualityRule } from "./quality-rule.ts";

/** Whether equipment is there, denied, or shown to be there by what it does. */
export const presenceRules: readonly QualityRule[] = [...equipment, ...history].flatMap((row): QualityRule[] => {
  const about = [{ component: row.component, part: row.part }];
  const named = row.part ?? row.component;
  const deletions = row.names.filter((name) => !/[~!]/.test(name)).map((name) => `${name} delete`);
  // "People ask me about the heat pump": a question says neither yes nor no.
  const asked = row.names
    .filter((name) => !/^~/.test(name))
    .map((name) => `ask/asks/asked/asking/wonder/wonders/wondering/question/questions ..4 about ..1 ${name}`);
  // "Where the radio was there's a hole": its place is empty.
  const emptyPlaces = row.names
    .filter((name) => !/[~!$]/.test(name))
    .map((name) => `where the/a/its ${name.replace(/^(?:the|a|any) /, "")} was/were/should/would/ought/used/went/goes/sat/lived`);
  // "Whoever ordered it didn't tick the box for air con."
  const unordered = row.names
    .filter((name) => !/[~!$]/.test(name))
    .map((name) => `n't/never tick/ticked/check/checked ..1 box for ${name}`);
  const zone = row.zones ? { zone: row.zones[0]! } : {};
  return [
    {
      name: `${named} present${row.zones ? `, seen in the ${row.zones[0]}` : ""}`,
      attribute: "presence",
      value: "present",
      phrases: row.names,
      unless: [...(row.unless ?? []), ...(row.missing ?? []), ...deletions, ...asked, ...emptyPlaces, ...unordered],
      about,
      ...(row.zones ? { zones: row.zones } : {}),
      denial: "turns",
      example: { says: row.says, ...zone, gives: { component: row.component, part: row.part, value: "present" } },
      whenDenied: { says: row.lacks, ...zone, gives: { component: row.component, part: row.part, value: "absent" } },
      quiet: row.quiet,
    },
    ...(row.shown
      ? [
          {
            name: `${named} shown at work`,
            attribute: "presence",
            value: "present",
            phrases: row.shown,
            ...(row.unless ? { unless: row.unless } : {}),
            about,
            // "it does not blow cold" is a fault of what is there.
            denial: "drops",
            example: { says: row.says, gives: { component: row.component, part: row.part, value: "present" } },
            quiet: row.quiet,
          } satisfies QualityRule,
        ]
      : []),
    {
      name: `${named} absent`,
      attribute: "presence",
      value: "absent",
      phrases: [...(row.missing ?? []), ...deletions, ...emptyPlaces, ...unordered],
      ...(row.unless ? { unless: row.unless } : {}),
      about,
      denial: "drops",
      example: { says: `It's a ${deletions[0]} car.`, gives: { component: row.component, part: row.part, value: "absent" } },
      quiet: row.quiet,
    },
  ];
});
