import type { FixedPart, NamedPart, QualityRule } from "./quality-rule.ts";
import { kinds } from "./type-kinds.ts";

const tireRows = [
  {
    value: "radial",
    phrases: ["radial", "radials"],
    says: "They're radials all of them.",
    quiet: ["The bias plies.", "No radials for this car."],
  },
  {
    value: "bias-ply",
    phrases: ["bias ply", "bias plies", "bias belted"],
    says: "The tires are bias ply.",
    quiet: ["The bias of a buyer."],
  },
  {
    value: "cross-ply",
    phrases: ["cross ply", "cross plies", "crossply", "crossplies"],
    says: "These tyres are cross plies.",
    quiet: ["The cross member."],
  },
  {
    value: "all-season",
    phrases: ["all season", "all seasons", "all weather tires"],
    says: "The tires are an all season.",
    quiet: ["We ran it all of the season."],
  },
  { value: "all-terrain", phrases: ["all terrain", "all terrains"], says: "Tires are all terrains.", quiet: ["All over the terrain."] },
  {
    value: "mud-terrain",
    phrases: ["mud terrain", "mud terrains", "mud tires", "mudders"],
    says: "Tires are mud terrains.",
    quiet: ["Mud in the wheel well."],
  },
  {
    value: "summer",
    phrases: ["summer tires/tire/rubber", "summers on it"],
    says: "It's on summer tires.",
    quiet: ["Last summer we did the tires."],
  },
  {
    value: "winter",
    phrases: ["winter tires/tire/rubber", "snow tires/tire"],
    says: "It's on winter tires.",
    quiet: ["It sat all winter."],
  },
] as const;

/** A source of light is the headlight's unless another lamp is named. */
const lamps: NamedPart = { among: ["lights"], order: "quality", otherwise: { component: "lights", part: "headlight", position: "front" } };
const windshield: readonly FixedPart[] = [{ component: "glass", part: "windshield", position: "front" }];
const sideWindows: readonly FixedPart[] = [{ component: "glass", part: "side window", position: "all" }];

/** Tires, wheels, lights, glass. */
export const outsideTypeRules: readonly QualityRule[] = [
  ...kinds("tire", tireRows),
  ...kinds("wheel", [
    { value: "metric", phrases: ["metric wheel", "metric wheels"], says: "These are that metric wheel.", quiet: ["Metric bolts."] },
    {
      value: "wire",
      phrases: ["wire wheels", "wire wheel", "wires are", "wire spoke wheels"],
      says: "It's on wire wheels.",
      quiet: ["The plug wires work."],
    },
    {
      value: "artillery-style",
      phrases: ["artillery look", "artillery wheels", "artillery style"],
      says: "They've got that artillery look.",
      quiet: ["Old artillery range."],
    },
  ]),
  ...kinds("lights", [
    {
      part: "headlight",
      about: lamps,
      value: "halogen",
      phrases: ["halogen", "halogens"],
      says: "Headlights, they're the halogen projectors.",
      at: "front",
      quiet: ["The LEDs."],
    },
    {
      part: "headlight",
      about: lamps,
      value: "sealed beam",
      phrases: ["sealed beam", "sealed beams"],
      says: "Headlights are sealed beams.",
      at: "front",
      quiet: ["A steel beam."],
    },
    {
      part: "headlight",
      about: lamps,
      value: "xenon",
      phrases: ["xenon", "xenons", "hid headlights", "hids"],
      says: "Headlights are xenons.",
      at: "front",
      quiet: ["He hid it."],
    },
    {
      part: "headlight",
      about: lamps,
      value: "led",
      phrases: ["led", "leds", "led headlights", "led lamps"],
      unless: ["led me", "led us", "led to", "led by", "led down", "led it", "they led", "he led"],
      says: "Headlights have got an LED in them now.",
      at: "front",
      quiet: ["He led me round the back."],
    },
  ]),
  ...kinds("glass", [
    {
      parts: windshield,
      value: "laminated",
      phrases: ["laminated !it/them/that/card/cards/sheet/sheets/page/copy/copies/sign/list"],
      says: "Windscreen is the laminated one.",
      at: "front",
      quiet: ["The toughened one."],
    },
    {
      parts: windshield,
      value: "toughened",
      phrases: ["toughened", "tempered glass", "tempered windshield/windscreen"],
      unless: ["bad tempered", "good tempered", "re tempered", "re-tempered"],
      says: "Windscreen is the toughened one.",
      at: "front",
      quiet: ["Springs re-tempered."],
    },
    {
      parts: windshield,
      value: "crank-out",
      phrases: ["crank out windshield", "opening windscreen"],
      says: "It has the crank out windshield.",
      at: "front",
      quiet: ["The crank is good."],
    },
    {
      parts: sideWindows,
      value: "power",
      phrases: [
        "power windows",
        "electric windows",
        "windows are ..2 power/electric",
        "windows ..6 they 're all power/electric",
        "power window",
        "window/windows ..5 on/off/with/at/by the/a switch/switches/button/buttons",
        "switch/switches/button/buttons for the windows/window",
      ],
      unless: ["sticker/stickers ..6 switch/switches/button", "wash/washer/demister/defrost/heated/heater ..4 switch/button"],
      says: "Windows, there's four and they're all power.",
      quiet: ["Crank windows.", "Power seats."],
    },
    {
      parts: sideWindows,
      value: "manual",
      phrases: [
        "manual windows",
        "crank windows",
        "crank up windows",
        "wind up windows",
        "roll up windows",
        "keep fit windows",
        "hand crank windows",
        "wind/winds/crank/cranks/winding/cranking your/my/the own? windows",
        "wind/winds/crank/cranks/winding/cranking your/my/the own? window up/down",
        "window winder/winders/crank/cranks",
        "winder/winders for the windows/window",
        "windows are ..2 manual/cranks",
      ],
      says: "It has crank windows.",
      quiet: ["Power windows.", "Roll up the window."],
    },
  ]),
];
