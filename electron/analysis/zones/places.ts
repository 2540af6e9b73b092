/**
 * How narrators name the places of a walk, as pattern pieces over plain words. Bare adjectives are left out: "the back seat" and "rear end"
 * (the axle) are no places.
 */
const ofTheCar = "(?: of (?:the |this |that )?(?:car|truck|van|vehicle|thing|it|her|him|motor|wagon|estate|house|hot rod|roadster|bus))?";

export const places = {
  front: `(?:the )?(?:very )?(?:front(?: end| bumper| clip)?(?! (?:seat|tire|tyre|wheel|door|fender|wing|glass|axle|brake|suspension|passenger|driver|of the bed|of the engine|of the motor|of the pan|one|ones|floor|foot|disc|row|pair))|nose|sharp end|pointy end|grille?|business end)${ofTheCar}`,
  rear: `(?:the )?(?:very )?(?:(?:rear|back)(?: of it| side)?(?! (?:seat|tire|tyre|wheel|door|fender|wing|quarter|axle|end|brake|bumper is|suspension|glass|window|row|bench|one|ones|to|up|in|out|on|at|over|off|down|here|there|when|door|floor|pair|drum|disc|plate|left|right|spring|shock|driver|passenger|behind|under|deck|half|where|now that))|back end|blunt end|tail end|tail|rear end(?! (?:is|gear|gears|ratio|out|has|housing|seal|a|from|off|and|in|got|was))|rear bumper|tail ?lights?)${ofTheCar}`,
  side: "(?:the |this |that |his |her )?(?<side>drivers?|passengers?|near|off|left(?: hand)?|right(?: hand)?|kerb|curb|street|nearside|offside)(?:[ -]?side|(?<=nearside)|(?<=offside))(?! (?:mirror|window|door|seat|headlight|headlamp|tail|light|lamp|fender|wing|rear|front|quarter|wheel|tire|tyre|floor|carpet|airbag|visor|corner|bumper|only|of the (?:dash|engine|motor|block|frame|pan|bed|box)))",
  otherSide:
    "(?:the |that )?(?:other|opposite|far) side(?! of (?:the )?(?:street|road|town|country|world|coin|engine|motor|block|dash|card|page|river|lot|yard))",
  engine:
    "(?:the |this |that |her |his |our )?(?:engine bay|engine compartment|engine room|motor bay|hood|bonnet|frunk|froot|engine lid|engine cover up|business under here)",
  trunk:
    "(?:the |this |that |her |his |its )?(?:trunk|boot(?! (?:up|camp|is torn|on the shift))|load (?:area|bay|space|floor|bed)|cargo (?:area|bay|space|hold)|tail ?gate|tailgate|lift ?gate|hatch(?:back)?|bed(?! (?:of|side|rail is))|truck bed|box|back hatch|deck lid|boot lid|trunk lid|barn doors|tray|rumble seat)",
  cabin:
    "(?:the |this )?(?:car|cab|cabin|interior|cockpit|inside|drivers seat|front seat|passenger seat|saloon|drivers door|passenger door)",
  lift: "(?:the |a |our |his |my |this )?(?:lift|rack|hoist|ramps?|two post|four post|two poster|four poster|jack ?stands|axle stands|stands)(?! (?:arms?|post|pad|over|ticket|gate|operator|kit))",
  papers:
    "(?:the |this |that |some |his |her |all |my |its )?(?:paper ?work|papers|paper(?! (?:floor|mat|towel|cup|thin))|documents|documentation|title|log ?book|v5c?|history (?:file|folder|report)|service (?:history|book|records?)|folder|binder|file|records|receipts|build sheet|build ticket|window sticker|report|documentation)",
} as const;

/** Verbs that take the camera somewhere. */
export const goVerb =
  "(?:come|comes|coming|go|goes|going|gonna go|walk|walking|swing|swinging|head|heading|move|moving|work(?: our| my)? way|step|stepping|slide|sliding|scoot|scooch|wander|wandering|pop|jump|hop|get|getting|turn|turning|wheel|spin|bring|carry|keep|continue|make our way|makes? my way|mosey|shuffle|nip|drop|dropping|ease|back|start|starting|begin|beginning|finish|finishing|hit|do|doing|take|cover|check out|look at|have a look at|take a look at|look over|show you|tour|onto|on to|now|next|over to|round to|around to|up to|down to|first)";
