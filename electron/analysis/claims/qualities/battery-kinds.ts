import type { FixedPart } from "./quality-rule.ts";
import type { KindByUse } from "./type-rules-by-use.ts";

/**
 * Parts are named apart: the battery that starts the engine, the one that drives the vehicle and those for living in it differ rightly.
 * Here are the ones for living in it, which is where both kinds are met (common practice).
 */
const leisure: FixedPart = { component: "electrical", part: "leisure battery" };

/** What the batteries of a camper are made of, by name and by how they are looked after. */
export const batteryKinds: readonly KindByUse[] = [
  {
    about: leisure,
    value: "lithium",
    phrases: [
      "they 're/are lithium/lithiums",
      "lithium leisure battery/batteries",
      "leisure battery/batteries 's/is/are lithium",
      "run them/'em/em right down and they do n't mind",
      "two/three/pair lithium/lithiums",
    ],
    beside: ["leisure/bench/solar/habitation/domestic/house/hook"],
    unless: ["they 're lithium grease", "not lithium"],
    says: "Two leisure batteries under the bench and they're lithium.",
    quiet: ["The hinge takes lithium grease.", "The traction pack's lithium and it's under the floor."],
  },
  {
    about: leisure,
    value: "lead-acid",
    phrases: [
      "old/plain/ordinary/standard/cheap wet kind/ones/type/cells/sort",
      "wet/flooded/lead battery/batteries",
      "caps you top up",
      "top them/'em/em up with distilled/deionised/deionized",
      "lead acid",
    ],
    beside: ["leisure/solar/habitation/domestic/house/hook/amp"],
    unless: ["instead of the old wet kind", "used to be", "not the old wet kind", "threw/took ..2 lead acid"],
    says: "The leisure batteries are the old wet kind with the caps you top up.",
    quiet: ["Weather's the old wet kind.", "Instead of the old wet kind he fitted leisure batteries that look after themselves."],
  },
];
