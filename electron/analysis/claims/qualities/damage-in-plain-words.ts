import type { Damage } from "./damage.ts";

/** A mark that is called just that, on whatever it is. Marks made on purpose, and those that other rules name, are none. */
export const plainDamages: readonly Damage[] = [
  {
    kind: "marks",
    among: [
      "body",
      "paint",
      "bumper",
      "trim",
      "wheel",
      "glass",
      "lights",
      "dash",
      "top",
      "headliner",
      "seats",
      "carpet",
      "steering",
      "cargo-floor",
      "electrical",
    ],
    phrases: [
      "a/an/one/another/any/single/little/small/slight/faint/tiny/bad/nasty/ugly/big/black/white/dirty/greasy mark on/in/across/along",
      "marks on/in/across/along",
    ],
    unless: [
      "tide/pen/burn/water/curb/kerb/key/rub/check/paint/chalk/timing/date/casting/cast/inspection/index/witness/wear/grease/pencil/crayon/build/assembly/factory/hallmark/question/exclamation mark/marks",
      "mark/marks on/in/across/along ..2 dipstick/stick/gauge/ruler/road/ground/floor/wall/map/paper/papers/sheet/bolts/bolt/pulley/damper/belt/tire/tires/sidewall",
      "mark/marks in ..1 favor/favour/history/time",
      "make/made/makes/put/left/leave/leaves a mark on",
    ],
    says: "There's a mark on the headlining.",
    of: "headliner",
    denies: "There's no marks on the front bumper.",
    ofDenied: "bumper",
    quiet: ["There's a chalk mark on the frame rail.", "The bolts have got their paint marks on."],
  },
];
