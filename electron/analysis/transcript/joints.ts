/** Words before which a joint is none: "right now", "so so", "and so". */
export const jointGuards = {
  none: [],
  so: [
    "and",
    "or",
    "do",
    "did",
    "think",
    "say",
    "just",
    "not",
    "even",
    "that's",
    "is",
    "was",
    "be",
    "a",
    "so",
    "ever",
    "oh",
    "why",
    "said",
    "hope",
    "i'm",
  ],
  now: ["right", "by", "is", "are", "it", "here", "until", "till", "just", "for", "even", "there", "in", "on"],
  subject: [
    "and",
    "but",
    "that",
    "if",
    "when",
    "where",
    "because",
    "cause",
    "what",
    "how",
    "so",
    "then",
    "okay",
    "alright",
    "now",
    "or",
    "like",
  ],
} as const satisfies Record<string, readonly string[]>;

export interface Joint {
  readonly word: string;
  /** The word must be followed by one of these; absent where any will do. */
  readonly next?: readonly string[];
  readonly guard: keyof typeof jointGuards;
  readonly example: string;
}

const subjects = [
  "the",
  "this",
  "that",
  "that's",
  "it's",
  "its",
  "it",
  "you",
  "you've",
  "i",
  "i'll",
  "i'm",
  "he",
  "they",
  "they're",
  "we",
  "there's",
  "these",
  "then",
  "over",
  "on",
  "up",
  "down",
  "your",
];

/** Where one clause gives way to the next when nobody wrote a full stop. */
export const joints = [
  { word: "okay", guard: "none", example: "it shuts good okay the wheels are steel" },
  { word: "ok", guard: "none", example: "it shuts well ok into the cabin" },
  { word: "alright", guard: "none", example: "no rust in there alright come on around" },
  { word: "anyway", guard: "none", example: "he never sold it anyway the back seat is clean" },
  { word: "anyways", guard: "none", example: "he never sold it anyways the back seat is clean" },
  { word: "anyhow", guard: "none", example: "he never sold it anyhow the back seat is clean" },
  { word: "so", guard: "so", example: "the bumper is straight so down the driver's side" },
  { word: "now", guard: "now", example: "it all works now the dash is out of another one" },
  { word: "and", next: subjects, guard: "none", example: "the hood is flat and the bumper was rechromed" },
  { word: "but", guard: "none", example: "it drives well but the mirror is loose" },
  { word: "let's", guard: "subject", example: "that is the trunk let's get in it" },
  { word: "oh", next: ["and"], guard: "none", example: "it stays cool oh and there's a sheet" },
  { word: "it's", guard: "subject", example: "this one's solid it's had one repaint" },
  { word: "there's", guard: "subject", example: "the seats are clean there's one mark" },
  { word: "this", next: ["is", "one", "one's", "side", "door", "fender"], guard: "subject", example: "no chips this is the driver door" },
  { word: "that's", guard: "subject", example: "one owner that's the receipt" },
  { word: "you've", next: ["got"], guard: "subject", example: "the nose is clean you've got two lamps" },
  { word: "we've", next: ["got"], guard: "subject", example: "the nose is clean we've got two lamps" },
] as const satisfies readonly Joint[] as readonly Joint[];

/** Words that end no sentence: a caption that ends in one was cut in the middle of it. */
export const danglingWords: ReadonlySet<string> = new Set(
  "the a an of to and or in on at with for from by is are was were it's that's there's they're we're i'm you're my your his her our their its this these those been be has have had if as than into but because cause very i we they he she".split(
    " ",
  ),
);
