/** What songs and machines sound like to a recogniser, and what narrators say when they are over. */

/** Cries, hums and machine sounds, and the words songs are made of that no narrator needs. */
export const soundWords: ReadonlySet<string> = new Set(
  `la na da doo ooh oh ah aah wah woah whoa hey yeah baby boom bang ding dong clang beep bleep peep whirr whir buzz hum hymn hush hallelujah hallowed heaven lord
  moon tonight forever lonely lover darling heart dream dreams sky river harbor harbour ocean island fire dance dancing sing singing song glory amen`
    .trim()
    .split(/\s+/),
);

const source =
  "compressor|radio|stereo|music|song|band|bells?|church|siren|ambulance|helicopter|plane|aeroplane|airplane|jet|duster|train|freight|tractor|loader|forklift|mower|blower|strimmer|saw|chainsaw|grinder|sander|drill|impact|impact gun|air gun|hammer|machine|washer|pressure washer|generator|motorcycle|motorbike|bike|bus|lorry|truck|trailer|van|alarm|horn|phone|telephone|doorbell|intercom|tannoy|speaker|dog|kids|neighbou?rs?|wind|rain|hail|thunder|fan|heater|bay door|roller door|hoist|crane|fireworks|parade|practi[sc]e|practi[sc]ing|rehears(?:al|ing)|choir|football|match|raceway|runway|airport|crossing|service bay";
/**
 * Explanations of a noise, over plain words from a caption's first word: `sorry` ones count wherever noise came before, `named` ones name what made it.
 */
export const noiseExplained = [
  {
    pattern: /^(?:oh |so |okay |ok |well |and |yeah )*(?:sorry|pardon|excuse|beg your pardon|apologi[sz]e|apologies|forgive)(?![a-z])/,
    example: "sorry about that folks",
  },
  {
    pattern: new RegExp(
      `^(?:oh |so |okay |ok |well |and |yeah |all right )*(?:(?:that|this|there) (?:was|were|is|goes)|thats|theres|heres|its)(?: [^ ]+){0,5} (?:${source})(?![a-z])`,
    ),
    example: "that was the compressor",
  },
  { pattern: /^(?:oh |so |okay |ok |well |yeah |thank you [a-z]+ |thanks [a-z]+ )*that was (?:[a-z]+ ?){1,3}$/, example: "that was Barry" },
  {
    pattern:
      /^(?:crop duster|forklift|compressor|air compressor|radio|train|freight|tractor|helicopter|siren|bells|lawn mower|leaf blower|motorcycle|the radio|the train|the compressor)(?![a-z])/,
    example: "Compressor. Sorry.",
  },
  {
    pattern: new RegExp(
      `^(?:[^ ]+ ){0,10}(?:practi[sc]ing|practi[sc]e night|turn (?:that|it|the ${source}) (?:off|down)|kill the radio|who is playing|same song|going by|flying over|come over just here)(?![a-z])`,
    ),
    example: "they are practising",
  },
] as const satisfies readonly { readonly pattern: RegExp; readonly example: string }[];

/** Digits, number words and single letters: said twice in a row they spell a number or a VIN and are no refrain. */
export const spelledOut =
  /^(?:\d.*|\p{L}|oh|zero|one|two|three|four|for|five|six|seven|eight|nine|ten|eleven|twelve|.*teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|double|alpha|bravo|charlie|delta)$/u;
