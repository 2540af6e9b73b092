/** Words for colors, as a seller says them. The value of a claim is the color's own word: "dark red metallic" is red. */
export const colorNames: ReadonlySet<string> = new Set(
  "red blue green black white gray silver gold yellow orange brown purple pink maroon burgundy oxblood claret wine crimson scarlet bronze primrose tangerine mustard taupe cream ivory magnolia tan cognac caramel camel biscuit beige fawn sand parchment champagne chocolate navy turquoise teal aqua charcoal graphite anthracite gunmetal pewter olive violet mahogany butterscotch saddle palomino sandstone".split(
    " ",
  ),
);
/** Words that go with a color and are none by themselves. */
export const shades = new Set(
  "dark light deep bright pale mid medium metallic satin gloss flat matte matt soft pearl willow racing british midnight sky royal candy apple cherry fire lime forest emerald hunter powder baby ice dove slate steel smoke saddle old english two tone".split(
    " ",
  ),
);
/** Words between a color and its part: "the black vinyl buckets". */
export const stuff = new Set(
  "guts innards vinyl leather cloth hide hides velour mohair wool carpet painted wire steel alloy original factory bucket front rear back cotton canvas soft nice perforated".split(
    " ",
  ),
);
export const leatherWords = new Set([
  "guts",
  "innards",
  "leather",
  "hide",
  "hides",
  "vinyl",
  "cloth",
  "velour",
  "upholstery",
  "trim",
  "interior",
]);

/** Words after a color that make it something else: "red light", "black box", "the green stuff". */
export const notAColorBefore = new Set(
  "light lights stuff tooth book flag letter letters box tape line lines one ones code wire wires smoke ice tie pine oak market sea hat dog cat coupe sedan truck van wagon car cars convertible marks mark stripe stripes pinstripe bracket needle dot dots plate hammer blanket soap bag bags tank tanks panel screen face faces numbers tips cap caps envelope envelopes folder binder pouch sleeve wallet paper sheet ink marker pen crayon chalk shirt jacket house building barn rag towel dust mud piping pipings stitching stitch edging beading".split(
    " ",
  ),
);
/** Words before a color that only compare: "looks about black in here". */
export const comparing = new Set([
  "look",
  "looks",
  "looking",
  "looked",
  "like",
  "than",
  "not",
  "n't",
  "said",
  "code",
  "call",
  "or",
  "says",
]);
export const copulas = new Set([
  "is",
  "are",
  "was",
  "were",
  "'s",
  "'re",
  "be",
  "been",
  "in",
  "painted",
  "sprayed",
  "finished",
  "done",
  "trimmed",
  "redone",
  "color",
  "went",
  "green",
  "under",
  "over",
  "against",
  "factory",
  "left",
  "born",
]);
export const fillers = new Set([
  "a",
  "an",
  "this",
  "that",
  "all",
  "really",
  "kind",
  "of",
  "sort",
  "just",
  "it",
  "very",
  "nice",
  "lovely",
  "beautiful",
  "real",
  "pretty",
  "still",
  "original",
  "with",
  "works",
  "your",
  "some",
  "see",
  "too",
  "good",
]);

/** What a color is asked of, by example; walked by a test. */
export const colorExamples = [
  { says: "Now the color, it's a dark red metallic.", component: "paint", value: "red" },
  { says: "It left the factory willow green.", component: "paint", value: "green" },
  { says: "This is the black vinyl buckets.", component: "seats", value: "black" },
  { says: "It has the pearl grey roof.", component: "top", value: "gray" },
  { says: "And the red hide, which is the way to have one.", component: "seats", value: "red" },
  { says: "It has red guts in it.", component: "seats", value: "red" },
  { says: "Carpet's navy too.", component: "carpet", value: "navy" },
  { says: "The wheels are steel, painted a cream.", component: "wheel", value: "cream" },
  { says: "You can see that oxblood leather.", component: "seats", value: "oxblood" },
  { says: "It's a red truck.", component: "paint", value: "red" },
  { says: "The top is black.", component: "top", value: "black" },
  { says: "It's in the pearl white and it shows well.", component: "paint", value: "white" },
  { says: "Where it says color, it says silver.", component: "paint", value: "silver" },
  { says: "The logbook says blue.", component: "paint", value: "blue" },
  { says: "It's canvas, not vinyl, the mohair kind, black, and the bows are fine.", component: "top", value: "black" },
] as const;

export const colorQuiet = [
  "The red light is on.",
  "It looks silver on your screen.",
  "It is not blue.",
  "It's a gray market car.",
  "It has blue tooth.",
  "White letters on the tires.",
  "The brake fluid is the green stuff.",
  "It looks about black in here.",
  "They're in the white envelope.",
  "The trim code says blue.",
  "My wife says blue.",
  "Everything else is in this folder, which is pink.",
] as const;
