import { expect, test } from "vitest";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

const vinsIn = (heard: string | readonly string[]) =>
  readNumbers(speechOf(heard))
    .filter((number) => number.readings[0]!.kind === "vin")
    .map((number) => number.readings[0]!.value);

// 1G4AH59H45G118341 is the sample of 49 CFR 565.15 with its check digit; 1M8GDM9AXKP042788 a widely used worked example.
test.for([
  ["the VIN is 1 G 4 A H 5 9 H 4 5 G 1 1 8 3 4 1", "1G4AH59H45G118341", "letter by letter"],
  ["VIN is one gee four A H fifty nine H four five G eleven eighty three forty one", "1G4AH59H45G118341", "pairs of digits"],
  [
    "so the VIN plate reads one G as in golf four alpha hotel five nine hotel four five golf one one eight three four one on the dash",
    "1G4AH59H45G118341",
    "spelling alphabet",
  ],
  ["VIN 1M8 GDM 9AX KP0 42788 on the plate", "1M8GDM9AXKP042788", "in groups"],
  ["1M8GDM9AXKP042788", "1M8GDM9AXKP042788", "written out"],
  ["one M as in mike eight G D M nine A X-ray kilo papa oh four two seven double eight", "1M8GDM9AXKP042788", "double eight"],
  ["1 M 8 G D M 9 A X K P O 4 2 7 8 8", "1M8GDM9AXKP042788", "the letter O is a zero"],
] as const)("%s (%s)", ([heard, vin]) => {
  expect(vinsIn(heard)).toEqual([vin]);
});

test("a number split over captions is one number", () => {
  expect(vinsIn(["so the VIN is 1 G 4 A H", "5 9 H 4 5 G", "1 1 8 3 4 1 right there"])).toEqual(["1G4AH59H45G118341"]);
});

test.for([
  ["we have one a boy and a dog can see", "spelling words in a sentence"],
  ["call 555 014 2377 or 555 014 2378", "telephone numbers"],
  ["235 60 15 and 255 60 15 and 225 70 15", "tire sizes"],
  ["a b c d e f g h i j k l m n o p q", "an alphabet has no digits"],
  ["the last one is a 4 by 4 with a v 8", "letters in passing"],
  ["it's vehicle number 1 2 3 4 5 6 7 8 9 0 1 2 3 4 5 6 7", "digits alone are no spelled number"],
] as const)("%s stays quiet (%s)", ([heard]) => {
  expect(vinsIn(heard)).toEqual([]);
});
