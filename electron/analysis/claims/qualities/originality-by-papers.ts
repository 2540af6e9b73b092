import { lastingComponents } from "../lexicon/lasting-components.ts";
import type { QualityRule } from "./quality-rule.ts";

const sure = "is/be/was/'s/'d/been";
const keeps = "car/truck/van/it/she/wagon/pickup";

/** What papers, former owners and hearsay say about a part being the maker's own. Common practice of the trade. */
export const originalityByPapersRules: readonly QualityRule[] = [
  {
    name: "the one it always had",
    attribute: "originality",
    value: "original",
    phrases: [
      `same/very one/ones the? ${keeps} 's/has/have ..1 always had`,
      "same/very one/ones it/she/he 's/has/have always had/worn/run",
      `${sure} the ..1 one/ones it/she/he 's/has always had`,
      `always had this/that same? _ in/on it`,
      "the very _ it was delivered/sold/shipped/born/ordered with",
      "the very one it was delivered/sold/shipped/born/ordered with",
      "never parted from its/the _",
    ],
    unless: ["same one/ones i/we/he/they 's/have/'ve always had", "same trouble/problem/color/look"],
    about: { among: lastingComponents, order: "subject" },
    denial: "turns",
    example: {
      says: "Now the gearbox number, I can't find it. I'd think the gearbox is the same one the car's always had.",
      gives: { component: "transmission", value: "original" },
    },
    quiet: ["It's the same dealer she's always had.", "We always had this same trouble with the phone."],
  },
  {
    name: "written down as the original",
    attribute: "originality",
    value: "original",
    phrases: [
      "may/might/could be the original one/ones/_",
      "wrote/writes/noted/says/put ..1 down? _ ..2 may/might/could/should be the? original",
      "_ ..1 quote ..4 original one/_",
      "papers/paperwork/folder/invoice/notes/card/letter/owner say/says/calls/call ..1 the _ ..1 is/as/'s original",
      "_ original question mark",
      "original _ question mark",
    ],
    unless: [
      "may/might/could be the original owner/color/paint/colour/sticker/receipt/price/bill/invoice/photo",
      "may/might/could be the original one/ones that/which ..1 broke/went/failed",
      "original owner",
    ],
    about: { among: ["engine", "transmission", "final-drive", "frame", "glass", "seats", "top", "body"], order: "before" },
    denial: "turns",
    example: {
      says: "She wrote down, engine, quote, may be the original one, not certain, there was some talk of a swap.",
      zone: "documents",
      gives: { component: "engine", value: "original" },
    },
    quiet: ["He may be the original owner.", "That might be the original sticker."],
  },
  {
    name: "another one by the papers",
    attribute: "originality",
    value: "replaced",
    phrases: [
      "bill/receipt/invoice/ticket/docket ..2 for? an? used/secondhand/exchange/recon/reconditioned/remanufactured/crate/junkyard/salvage _",
      "engine/motor/block/gearbox number amended/changed/altered",
      "exchange/recon/reconditioned/remanufactured/rebuilt unit ..3 #/pounds/dollars/invoice/bill",
      "engine/motor change/changed ..3 on/in the v5/logbook/log/book/registration/paper/card",
      "change of engine ..4 v5/logbook/log/registration",
      "engine/motor number ..2 does n't/not match/agree/tally",
      "engine/motor number ..2 's/is not/n't the one on",
    ],
    unless: ["exchange unit/battery/starter/alternator ..1 starter/alternator/battery", "no bill/receipt/invoice"],
    about: { among: ["engine", "transmission", "final-drive"], order: "before" },
    denial: "drops",
    tellsOfToday: true,
    example: {
      says: "And look at this line on the log book, engine number amended 1983, from a reconditioning firm.",
      zone: "documents",
      gives: { component: "engine", value: "replaced" },
    },
    quiet: ["There's a receipt for an oil change.", "The engine number matches the log book."],
  },
];
