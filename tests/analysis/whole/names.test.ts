import { describe, expect, test } from "vitest";
import { analysed, devWalks, findings, withText } from "./dev-walks.ts";

/** Every proper name of the development walks, read from them by hand: people, firms, places, makes, models. All are invented. */
const properNames: Readonly<Record<string, string>> = {
  dev01: "Dale Lantern Dunmore Kenny Tolland Halyard Pruitt Brightwell Ida Kessler Hadley Jimmy Connie",
  dev02: "Tasha Willacy Dre Ardenne Solace Terrell Calder Ronnie Macksburg Manny",
  dev03: "Hilary Tewford Colin Aldersley Merganser Pellworth Ludmere Marjorie Harker Pruett Bexcombe Scarrow Christian",
  dev04: "Jolene Askew Palmetto Desmond Falkenrath Dominus Whitcomb Curtis",
  dev05: "rollie dutch waffles merriwell bannock fennick tolland larry",
};

/** Invented, and no word of English. */
const otherNames = [
  "Quorvel",
  "Brenthik",
  "Zandrumel",
  "Oskerby",
  "Vithane",
  "Ullmorick",
  "Drasby",
  "Fenquist",
  "Halbrune",
  "Jorvett",
  "Kestlow",
  "Morvane",
  "Nystrel",
];

describe.for(devWalks)("$id", ({ id, transcript, vehicleName }) => {
  const names = properNames[id]!.split(" ");
  const nameOf = (found: string): string => {
    const other = otherNames[names.findIndex((name) => name.toLowerCase() === found.toLowerCase())]!;
    return found === found.toLowerCase() ? other.toLowerCase() : other;
  };
  const anyName = new RegExp(`\\b(?:${names.join("|")})(?=s?\\b|'s\\b)`, "gi");
  const renamed = withText(transcript, ({ text }) => text.replaceAll(anyName, nameOf));

  test("the names are there to be changed, the vehicle's among them", () => {
    const told = transcript.captions.map(({ text }) => text).join(" ");
    for (const name of names) expect(told.toLowerCase()).toContain(name.toLowerCase());
    expect(vehicleName.split(" ").some((word) => names.some((name) => name.toLowerCase() === word.toLowerCase()))).toBe(true);
    expect(renamed.captions.some(({ text }) => anyName.test(text))).toBe(false);
  });

  test("other names for everybody and everything change nothing", () => {
    expect(findings(analysed(renamed))).toEqual(findings(analysed(transcript)));
  });
});
