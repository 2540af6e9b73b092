import { describe, expect, test } from "vitest";
import { saidOfDrivelineAndBelow } from "./said-measures/driveline-and-below.ts";
import { saidInTheEngineRoom } from "./said-measures/engine-room.ts";
import { saidInside } from "./said-measures/inside.ts";
import { saidInListsAndShortForms } from "./said-measures/lists-and-short-forms.ts";
import { saidOutside } from "./said-measures/outside.ts";
import { saidOfPapersAndMoney } from "./said-measures/papers.ts";
import { saidOfRunningGear } from "./said-measures/running-gear.ts";
import { notRead, saidRows } from "./said-measures/said.ts";
import { saidByTurnsOfPhrase } from "./said-measures/turns-of-phrase.ts";

const tables = {
  "what it rolls, stops and rides on": saidOfRunningGear,
  "the engine room": saidInTheEngineRoom,
  "driveline and below": saidOfDrivelineAndBelow,
  outside: saidOutside,
  inside: saidInside,
  "papers and money": saidOfPapersAndMoney,
  "turns of phrase": saidByTurnsOfPhrase,
  "lists and short forms": saidInListsAndShortForms,
};

// Every part a dealer would measure, by every attribute it is told in, as a working dealer might say it.
describe.for(Object.entries(tables))("%s", ([, table]) => {
  test.for(saidRows(table))("$heard", (row) => {
    expect(notRead(row)).toEqual([]);
  });
});
