/**
 * How narrators name the places of a walk, as pattern pieces over plain words. Bare adjectives are left out: "the back seat" and "rear end"
 * (the axle) are no places.
 */
const vehicle =
  "(?:it|her|him|(?:the |this |that |your )?(?:car|truck|van|vehicle|thing|motor(?! (?:has|had|is|was|got|mount|seal|oil|and))|wagon|estate|hot rod|roadster|bus|pickup|coupe|ute|old girl|beast|cab))";
const ofTheCar = `(?: of ${vehicle})?`;

const frontThings =
  "(?:seat|tire|tyre|wheel|door|fender|wing|glass|axle|brake|suspension|passenger|driver|of the bed|of the engine|of the motor|of the pan|one|ones|floor|foot|disc|row|pair|on the|two|half|three|inner|window|cover|crossmember|quarter|plate|spring|shock|rotor|pads|cab|subframe|clip is off|has|and rear|and back|or)s?";
const rearThings =
  "(?:seat|tire|tyre|wheel|door|fender|wing|quarter|axle|end|brake|suspension|glass|window|row|bench|one|ones|to|up|in|out|on|at|over|off|when|floor|pair|drum|disc|plate|left|right|spring|shock|driver|passenger|behind|under|deck|half|where|now that|main|diff|bumper is|screen|lights? (?:is|are|work)|corner|arch|panel|and forth|road|way|yard|lot|burner|story|office|room|from)s?";

/** What makes "front" and "back" adjectives of a part and no places. */
export const partsOfTheFront = frontThings;
export const partsOfTheRear = rearThings;

export const places = {
  vehicle,
  front: `(?:the )?(?:very )?(?:front(?: end| bumper(?! (?:matches|was|has|had|is the same))| clip)?(?! ${frontThings}(?![a-z]))|nose|sharp end|pointy end|grille?|face)${ofTheCar}`,
  frontOfTheCar: `(?:the )?front(?: end)? of ${vehicle}`,
  rear: `(?:the )?(?:very )?(?:(?:rear|back)(?: side)?(?! ${rearThings}(?![a-z]))|back end|blunt end|tail end|tail|rear end(?! (?:is|gear|gears|ratio|out|has|housing|seal|a|from|off|and|in|got|was|could|looks))|rear bumper|tail ?lights?)${ofTheCar}`,
  rearOfTheCar: `(?:the )?(?:(?:rear|back|tail|back end|tail end) of ${vehicle}|rear end of (?:the|this) (?:car|truck|van|vehicle))`,
  side: "(?:the |this |that |his |her |your )?(?<side>drivers?|passengers?|near|off|left(?: hand)?|right(?: hand)?|kerb|curb|street|nearside|offside|kerbside|curbside)(?:(?<=nearside|offside|kerbside|curbside)|[ -]?side)(?! (?:mirror|window|door|seat|headlight|headlamp|tail|light|lamp|fender|wing|rear|front|quarter|wheel|tire|tyre|floor|carpet|airbag|visor|corner|bumper|only|rocker|sill|arch|was|has a|has had|got hit|windshield|bolster|switch|of the (?:dash|engine|motor|block|frame|pan|bed|box|windshield|windscreen|hood|bonnet|bumper))(?![a-z]))",
  /** After "down", "along" and the like a side is a place, whatever is named next ("down the right side front fender is straight"). */
  sideGoneTo:
    "(?:the |this |that |his |her |your )?(?<side>drivers?|passengers?|near|off|left(?: hand)?|right(?: hand)?|kerb|curb|street|nearside|offside|kerbside|curbside)(?:(?<=nearside|offside|kerbside|curbside)|[ -]?side)(?! (?:mirror|window|seat|airbag|visor|floor|carpet|switch|bolster|of the (?:dash|engine|motor|block|frame|pan|bed|box|windshield|windscreen|hood|bonnet|bumper))(?![a-z]))",
  /** "Stood at the driver's door": the narrator's place, not the door, is told. */
  sideStoodAt:
    "(?:the )?(?<side>drivers?|passengers?)(?: side)? (?:front |rear |back )?(?:door|wheel|corner)(?! (?:panel|card|glass|seal|jamb|handle|mirror))",
  otherSide:
    "(?:the |that |this )?(?:other|opposite|far) sides?(?! of (?:the )?(?:street|road|town|country|world|coin|engine|motor|block|dash|card|page|river|lot|yard|firewall|that|hill|ridge|bridge|grade)| going down)",
  trunk:
    "(?:the |this |that |her |his |its |your )?(?:trunk|boot(?! (?:up|camp|is torn|on the shift))|load (?:area|bay|space|floor|bed|compartment)|cargo (?:area|bay|space|hold)|tail ?gate|tailgate|lift ?gate(?! (?:rated|works|is|its))|hatch(?:back)?|bed(?! (?:of|side|rail is|mounts?))|truck bed|box(?! of)|back hatch|deck lid|decklid|boot lid|trunk lid|barn doors|back doors|rear doors?(?! (?:is|has|handle|glass|panel|jamb|skin|card|opens|shuts))|tray|rumble seat|rear hatch|gate(?! (?:valve|post|open to|here))|barn doors|dickey seat)",
  hood: "(?:the |this |that |her |his |our |its |your )?(?:hood|bonnet|frunk|engine lid|engine cover|clamshell|engine compartment|doghouse)",
  lift: "(?:the |a |our |his |my |this |their |[a-z]+s )?(?:lift|rack|hoist|ramps?|two post|four post|two poster|four poster|jack ?stands|axle stands|stands)(?! (?:arms?|post arm|pad|over|ticket|gate|operator|kit|height))",
  papers:
    "(?:the |this |that |some |his |her |all |my |its |your |our )*(?:paper ?work|papers|documents|documentation|title(?! (?:is clean|in hand|was|status|said))|log ?book|v5c?|history (?:file|folder|report)|service (?:history|book|records?|printout|file|folder|invoices)|folder|binder|file|records|book(?! (?:value|says|price|on))|receipts|build sheet|build ticket|window sticker|report|invoices|bill of sale)",
} as const;

/** Verbs that take the camera somewhere. */
export const goVerb =
  "(?:brings us|takes us|leads us|come|comes|coming|go|goes|going|gone|walk|walking|swing|swinging|head|heading|move|moving|work(?:ing)?(?: our| my| your)? way|step|stepping|slide|sliding|scoot|scooch|wander|wandering|wandered|pop|jump|hop|get|getting|turn|turning|wheel (?:around|round)|spin|bring|carry on|keep|continue|continuing|make our way|mak(?:e|ing) my way|mosey|shuffle|nip|drop|dropping|ease|back|start|starting|begin|beginning|finish|finishing|hit|take|cover|check out|look at|have a look at|take a look at|look over|show you|tour|onto|on to|over to|across to|lets do|do)";
