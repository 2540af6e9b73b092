/**
 * Words by which speech about a vehicle is told from what a recogniser makes of music and silence. Stems match whole words and their
 * plural, "-ed" and "-ing" forms. The list is wide on purpose: one hit speaks for a caption, so a missing word only costs certainty.
 */
const stems = `
  car truck van wagon vehicle coupe sedan saloon estate roadster convertible hatchback pickup motor engine block head cylinder piston valve cam crank
  carb carburetor carburettor injector intake manifold exhaust muffler silencer header tailpipe tip radiator coolant hose belt alternator dynamo battery
  starter plug coil distributor filter oil gasket seal leak seep drip gearbox transmission clutch shifter gear axle differential diff driveshaft propshaft
  overdrive automatic manual stick brake disc drum rotor caliper pad shoe spring shock strut damper bushing steering rack wheel tire tyre tread sidewall
  rim hubcap lug spare jack hood bonnet trunk boot tailgate hatch bed bumper grille grill headlight headlamp taillight lamp fender wing quarter rocker sill
  door window glass windshield windscreen mirror wiper roof sunroof pillar panel paint primer clearcoat chrome trim molding moulding badge decal dent ding
  scratch chip rust corrosion patina bondo filler weld patch seat leather vinyl cloth carpet mat dash gauge tach speedo speedometer odometer clock radio
  stereo speaker heater headliner visor console glovebox horn switch key fob airbag floor pan frame chassis crossmember subframe rail undercoat underside
  lift ramp pit hoist tank fuel petrol diesel gas mile mileage kilometer owner title paperwork receipt invoice manual handbook logbook vin plate sticker
  horsepower torque litre liter cc cubic inch psi volt amp price dollar pound euro finance trade warranty dealer restored rebuilt original factory stock
  charger charging cable port turbo supercharger blower hitch towbar tonneau winch camper bumperette skirt spoiler scoop stripe pinstripe camera
  photo video website drive driver passenger nearside offside front rear back side corner underneath undercarriage mechanic inspection service serviced
  frunk canopy awning galley fridge drawer racking bulkhead snorkel kilowatt range cluster display fascia latch weatherstrip louver grease frame crossmember
  pickup tray deck plate ramp compressor bin shelf ladder gooseneck receiver pintle fifth dually axle overload tread ply
`;
export const vehicleStems: ReadonlySet<string> = new Set(stems.trim().split(/\s+/));

/** Commonest words of English, by which six words in a row are told to be English at all. */
export const commonWords: ReadonlySet<string> = new Set(
  `the a an and or but so if of to in on at for from by with about up down out over under off i i'm i've i'll i'd you you're you'll you've your he he's she she's it
  it's its we we're we've we'll they they're they've this that that's these those there there's here here's what what's which who when where why how is are was
  were be been being am do does did don't doesn't didn't have has had can can't could will won't would should not no yes yeah okay ok well all some any one two
  three four five six seven eight nine ten just like get got go going know see look come take put say said want really very right good nice new old now then as
  than too my me us him her them our his their because cause into back little bit lot got gonna ain't y'all uh um only more most much other same still even also`
    .trim()
    .split(/\s+/),
);

/**
 * Words that English never puts after an article or a possessive: two in a row are a slip of the tongue, three are music. A comma or a
 * sound of hesitation between them makes it a narrator looking for his word.
 */
export const openers: ReadonlySet<string> = new Set("the a an my your his our their".split(" "));
export const impossibleAfterOpener: ReadonlySet<string> = new Set(
  "the a an my your his our their and or of to in on at for when is are was we i they he she them us if than no yeah hold go gonna it there then with from by be because but any some every each having does did isn't ain't wasn't".split(
    " ",
  ),
);
/** Prepositions, and the words that no preposition of these takes after it. */
export const prepositions: ReadonlySet<string> = new Set("of to in on at for from with by".split(" "));
export const impossibleAfterPreposition: ReadonlySet<string> = new Set("of and or was is were are i we he she they if than".split(" "));

/** What a recogniser writes when nobody speaks: sign-offs and credits it has learnt from other films. */
export const stockPhrases = [
  { pattern: /^(?:thanks|thank you)(?: so much| very much)? for watching(?: everyone| guys)?$/, example: "Thanks for watching!" },
  {
    pattern: /^(?:please )?(?:like and |don't forget to )?subscribe(?: to (?:my|our|the) channel)?$/,
    example: "Please subscribe to my channel",
  },
  { pattern: /^(?:thank you|thanks|you|bye|bye bye|okay|oh|so|yeah|hmm|the end)$/, example: "you" },
  {
    pattern: /^(?:sub(?:titles?|titled)|captions?|captioned|transcri(?:bed|ption)|translat(?:ed|ion))\b.*\bby\b.*$/,
    example: "Subtitles by the community",
  },
  { pattern: /^(?:see you|i'll see you)(?: guys)? (?:in the )?next (?:video|time|one)$/, example: "See you in the next video" },
] as const satisfies readonly { readonly pattern: RegExp; readonly example: string }[];

/** Whether a word is on the list or a plain form of one that is. */
export function isVehicleWord(word: string): boolean {
  const bare = without(word, "'s");
  if (vehicleStems.has(bare)) return true;
  if (bare.endsWith("s"))
    return (
      vehicleStems.has(bare.slice(0, -1)) ||
      (bare.endsWith("es") && vehicleStems.has(bare.slice(0, -2))) ||
      (bare.endsWith("ies") && vehicleStems.has(`${bare.slice(0, -3)}y`))
    );
  if (bare.endsWith("d")) return vehicleStems.has(bare.endsWith("ed") ? bare.slice(0, -2) : bare.slice(0, -1));
  return bare.endsWith("ing") && vehicleStems.has(bare.slice(0, -3));
}

const without = (word: string, ending: string): string => (word.endsWith(ending) ? word.slice(0, -ending.length) : word);
