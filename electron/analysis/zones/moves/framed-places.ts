import type { ZoneName } from "../../../../shared-types/index.ts";
import type { MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

/**
 * A place's name in a frame that turns to it ("let me show you …", "that brings us to …", "… next"): any frame may hold any place, so the
 * rules are made of both.
 */
const turn =
  "(?:let me|lets|lemme|ill|well|im going to|im gonna|were going to|were gonna|i may as well|may as well|might as well|time to|id like to|i want to|i wanna|we want to|shall we|can we|gonna|going to|now we|now i|so we|so i|then we|then i|we|ready to)";
/** "I'll show you the inside" is as often a promise as a turn; "let me show you" is none. */
const showNow =
  "(?:let me|lets|lemme|time to|id like to|i want to|i wanna|we want to|shall we|can i)(?: (?:just|now|quickly|also))* show (?:you|yall|them|everyone)";
const show =
  "(?:look (?:at|in|into|inside|over|under|round|around)|see|do|go over|go through|get (?:to|a look at|you|into)|turn(?: my attention)? to|move (?:to|on to|onto|over to)|check(?: out)?|cover|tackle|film|go (?:to|and see|see)|come to|get round to|bring you(?: to| round to)?|take you(?: to| round to| into| in| through)?|(?:have|take|grab) (?:a |another )?(?:[a-z]+ )?(?:look|peek|gander|poke|nosey)(?: (?:at|in|into|inside|over|under|round|around))*|point (?:the|this|my) (?:camera|phone) at|swing (?:the|this) (?:camera|phone) (?:to|round to|over to|onto)|(?:begin|start|finish|end|carry on) (?:with|on|at|in))";
const small = "(?: (?:a|the|that|this|her|his|its|your|our|you|all|at|quickly|quick|up|round|down|now|over|to|on|in))*";
const arrive =
  "(?:(?:we|i|you|that|which|this|it)(?:ve|re|ll|s| have| are)?(?: (?:now|then|just|also))? )(?:come|coming|comes|get|gets|getting|arrive|arriving|move|moving|turn|turning|reach|reached|bring us|brings us|takes us|brings me|leaves|leaves us|leads us|left with)(?: (?:to|on|onto|as far as|at|round|around|down|with|back|just|into|inside|us))*";
const opens =
  "(?:next(?: up| stop| is| comes| we have| on the list| job)?|last(?:ly)?(?: stop| up| bit| thing)?(?: to (?:see|show you|do|show|film))?(?: is)?|finally|onto|on to|onwards|onward|moving on|over to|across to|as for|as to|so whats|whats|what about|how about|whats it like(?: in| under)?|hows|how is|how does|that leaves|leaving|then(?: its| comes| there is| we have)?|now(?: its| comes| for| this is)?|so this is|this is|heres)";
/** What may follow a place's name that is no part of a longer one ("engine light", "boot lid"). */
const nameEnds =
  "(?= (?:\\||and|now|then|next|here|of (?:it|her|him|this|the (?:car|truck|van))|so|first|last|for|with|while|its|we|you|youve|i|ive|ill|the|a|this|thats|theres|which|what|where|before|because|cause|today|again|quickly|quick|real|if|as|please|folks|guys|look|looks|open|up|okay|ok|alright|right|too|after|time|it|is|im|they|theyve|theyre|there|both|two|no|nothing|very|really|everything|still|just|nice|clean|straight|has|got)(?![a-z]))";

interface FramedPlace {
  readonly zone: ZoneName | "side" | "other-side";
  readonly names: string;
  readonly example: string;
  readonly quiet: string;
  readonly neverFrom?: readonly ZoneName[];
}

const framedPlaces: readonly FramedPlace[] = [
  {
    zone: "front",
    names: `(?:(?<=(?:the|her|its|your|this|very) )front(?: end| bumper)?|nose|snout|face|sharp end|grille|headlights|headlamps|front of ${places.vehicle})`,
    neverFrom: ["cabin", "engine-bay", "underside"],
    example: "let me show you the nose of it",
    quiet: "let me show you the front seats",
  },
  { zone: "side", names: places.side, example: "that leaves us with the driver's side", quiet: "the driver's side leaves a gap" },
  { zone: "other-side", names: places.otherSide, example: "that leaves us the other side", quiet: "it is the same on the other side" },
  {
    zone: "rear",
    names: `(?:(?<=(?:the|her|its|your|this|very) )(?:very )?(?:back|rear)(?: end| bumper)?|tail(?: end| ?gate| ?lights| lamps)?|rump|stern|hind end|(?:back|rear|tail) of ${places.vehicle})`,
    neverFrom: ["cabin", "engine-bay", "underside", "cargo", "drive"],
    example: "keep walking and we come to the tailgate",
    quiet: "he came to the back door",
  },
  {
    zone: "roof",
    names: "(?:roof|soft top|pop top|convertible top|roof panel|roof skin)",
    neverFrom: ["cabin"],
    example: "now I'll get you the roof",
    quiet: "the roof is next to the gutter",
  },
  {
    zone: "cargo",
    names: `(?:trunk|boot|load (?:area|bay|space|bed)|cargo (?:area|bay|space|hold)|truck bed|bed|tray|luggage (?:area|space)|back of (?:this|the) (?:van|truck|wagon|box))`,
    neverFrom: ["underside", "engine-bay"],
    example: "let me show you the boot",
    quiet: "let me show you the boot lid",
  },
  {
    zone: "cabin",
    names: "(?:interior|inside|cabin|cockpit|cab|seats|drivers seat|upholstery|furniture)",
    neverFrom: ["cargo"],
    example: "have a look at that cockpit",
    quiet: "have a look at that cab corner",
  },
  {
    zone: "engine-bay",
    names:
      "(?:engine(?: bay| room| compartment)?|motor|under ?hood|under the (?:hood|bonnet)|(?:hood|bonnet) up|lump|mill|power ?plant|frunk)",
    neverFrom: ["underside", "drive", "documents"],
    example: "last thing to see is the engine",
    quiet: "last year he did the engine mounts",
  },
  {
    zone: "underside",
    names: "(?:underneath|underside|undercarriage|underbody|under ?belly|belly|bottom side|chassis from below|whats (?:below|underneath))",
    neverFrom: ["engine-bay"],
    example: "let's look at what's below",
    quiet: "the underside lets water out",
  },
  {
    zone: "documents",
    names:
      "(?:paper ?work|paper side|papers|documents|documentation|history|service history|history file|log ?book|v5c?|folder|file|receipts|service book|title)",
    example: "let's do the paperwork",
    quiet: "his history as a dealer is next to none",
  },
  {
    zone: "drive",
    names: "(?:road test|test drive|driving(?: bit| part)?|drive|road(?= \\|))",
    neverFrom: ["opening"],
    example: "now for the road test",
    quiet: "let me show you the drive shaft",
  },
];

const rule = ({ zone, names, example, quiet, neverFrom }: FramedPlace): MoveRule => ({
  name: `turn-to-the-place: ${zone}`,
  zone,
  strength: 6,
  phrase: [
    `(?:${showNow}|${turn}(?: [^ |]+){0,2}? ${show})${small} ${names}${nameEnds}`,
    `(?:have|take|get|cop) (?:a |another )?(?:[a-z]+ )?(?:look|gander|peek|load|eyeful|glance|squint)(?: (?:at|in|into|under|round|over|of|inside|from))+${small} ${names}${nameEnds}`,
    `${arrive}${small} ${names}${nameEnds}`,
  ].join("|"),
  heading: `${opens}${small} ${names}${nameEnds}|(?:the )?${names} (?:next|time|now then|to (?:do|see|finish)|last)(?= )`,
  ...(neverFrom ? { neverFrom } : {}),
  example,
  quiet,
});

export const framedMoves: readonly MoveRule[] = framedPlaces.map(rule);
