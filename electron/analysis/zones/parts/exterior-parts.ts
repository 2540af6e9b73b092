import { type PartRow, sides, type ZoneWeights } from "./part-row.ts";

/** "Driver side front fender" in all the ways it is said: the side's words, an end, the panel. */
function panelsOf(side: "driver" | "passenger"): string {
  const names = [side, `${side}s`, `${side} side`, `${side}s side`];
  const panels = ["fender", "wing", "quarter", "quarter panel", "rocker", "sill", "cab corner", "bedside", "door skin", "running board"];
  const ended = ["fender", "wing", "quarter", "door", "wheel", "tire", "arch", "corner", "fender flare", "wheel well"];
  return names
    .flatMap((name) => [
      ...panels.map((panel) => `${name} ${panel}`),
      ...["front", "rear", "back"].flatMap((end) => ended.map((panel) => `${name} ${end} ${panel}`)),
    ])
    .join("|");
}

/** Marks in paint show that the camera is outside, and little more. */
const outside = (weight: number): ZoneWeights => ({ ...sides(weight), front: weight * 0.6, rear: weight * 0.6, roof: weight * 0.3 });

export const exteriorParts = [
  { phrases: "grill|grille|front grille|mesh grille|slats|grille bar|grille surround|honeycomb grille|egg crate", zones: { front: 1.3 } },
  {
    phrases:
      "headlight|headlamp|head light|head lamp|projector|halogen|sealed beam|daytime running light|low beam|high beam|main beam|dipped beam|headlight bezel|headlight door|headlight ring|pop up lamp|pop up light|matrix light|xenon|light bar",
    zones: { front: 1.2 },
  },
  {
    phrases:
      "nose|front bumper|front valance|air dam|splitter|chin spoiler|nose panel|nose cone|over rider|overrider|front badge|front emblem|bull bar|push bar|brush guard|grille guard|winch|winch plate|tow hook|front apron|nerf bar|radar sensor|front lip|lower lip|bug shield|bug deflector|stone shield|front license plate|plow mount|plow frame|front receiver|bumperette|crash bar|roo bar|hood emblem|hood badge|hood ornament|bonnet badge|shut line of the bonnet|leading edge|header panel|front clip|nose badge|front splitter|lower grille|bumper grille|front camera|fascia|front fascia|steel bar|spotties=|bonnet protector|face",
    zones: { front: 1.2 },
  },
  {
    phrases:
      "fog light|fog lamp|fogs=|front fog|spot lamp|spots=|driving light|parking light|turn signal|indicator|front plate|side light|washer jet|headlight washer|auxiliary lamp|spot light|spotlight",
    zones: { front: 0.7, rear: 0.2 },
  },
  {
    phrases: "hood|bonnet|mascot|hood pin|hood scoop|bonnet scoop|cowl|shaker scoop|hood gap|bonnet gap|hood line|hood paint|hood louver",
    zones: { front: 0.7, "engine-bay": 0.3 },
  },
  {
    phrases:
      "windshield|windscreen|wiper|wiper blade|wiper arm|stone guard|rock chip|stone chip|chip in the glass|chip in the windshield|star chip|bullseye|radiator shell|grille shell|grill shell|front screen|sweep|cowl vent|scuttle|stonechip",
    zones: { front: 0.6, ...sides(0.1) },
  },
  { phrases: "i beam|drop axle|dropped axle|hairpin|front axle|king pin|kingpin|drilled axle", zones: { front: 0.5, underside: 0.5 } },
  { phrases: "bumper", zones: { front: 0.45, rear: 0.45 } },
  { phrases: "tailpipe|tail pipe", zones: { rear: 0.5, underside: 0.4 } },
  { phrases: "quarter bumper", zones: { rear: 0.6, front: 0.4 } },
  { phrases: "badge|emblem|parking sensor|sensor", zones: { front: 0.35, rear: 0.35 } },

  { phrases: panelsOf("driver"), zones: { "driver-side": 1.2 } },
  { phrases: panelsOf("passenger"), zones: { "passenger-side": 1.2 } },
  // Named together from the nose as often as along a side.
  { phrases: "left fender|right fender|left front fender|right front fender|left wing|right wing", zones: { ...sides(0.5), front: 0.35 } },
  { phrases: "driver side|drivers side", zones: { "driver-side": 0.35 } },
  { phrases: "passenger side|passengers side", zones: { "passenger-side": 0.35 } },
  {
    phrases:
      "fender|guard|front guard|slider|slide door|front wing|back wing|rear wing|wing|quarter panel|rear quarter|quarter|rocker|rocker panel|sill|running board|side step|nerf step|step bar|rock slider|cab corner|bedside|bed side|box side|door skin|body side|dually fender|dually hip|front fender|rear fender|back fender|side panel|side skirt|sill cover|dog leg|dogleg of the door|door sill outside|side profile|profile|vent bin|tool bin|side bin|bin door|side box|service box|underbody box|compartment door|saddle tank|awning|awning rail|hook up socket|hook up point|water filler|toilet cassette|cassette hatch|fridge vent|side window blind|entry step|electric step|side repeater|rubbing strip|side molding|side stripe|rub strip|b post|a post|c pillar|quarter vent|c post|basement door|wet bay|box skin|slide topper|rear spat|skirts=|outside shower|fuel fill|propane|curb side|street side|half door|flush handle",
    zones: { ...sides(0.9) },
  },
  {
    phrases:
      "door|front door|rear door|back door|door handle|handle|door mirror|wing mirror|side mirror|mirror|mirror cap|mirror glass|tow mirror|towing mirror|sliding door|suicide door|barn door|door hinge|hinge|door edge guard|door glass|side glass|side window|pop out handle|door lock|runner|side door",
    zones: { ...sides(0.5), cabin: 0.1 },
  },
  {
    phrases:
      "tire|wheel|alloy|whitewall|white letter|white wall|raised white letter|redline|tread|sidewall|date code|lug nut|wheel nut|hubcap|hub cap|center cap|trim ring|spinner|knock off|lug|curb rash|curbing|curbed|rim|wire wheel|steel wheel|radial|steelies=|dog dish|beauty ring|wheel trim|cover cap|thirty seconds|tread depth|bias ply|all terrain|mud terrain|load range|load e|ply|sixteen inch|seventeen inch|eighteen inch|nineteen inch|twenty inch|lock nut|locking nut|valve cap|rash|mil of tread|big and littles|directional|staggered",
    zones: { ...sides(0.6), front: 0.05, rear: 0.05 },
  },
  {
    phrases:
      "wheel arch|wheel opening|wheel well|wheel lip|arch|wheelet molding|fender flare|flare|mud flap|body line|swage line|crease|pinstripe|coach line|side marker|vent window|quarter window|quarter light|belt line|beltline|door gap|panel gap|door jamb|jamb|b pillar|door edge|door bottom|door bottoms|louver|side vent|fender vent|fender badge|fender emblem|rocker molding|side trim|window line|window trim|coachline|two tone line|arch lip|inner arch|arch liner|outer sill|wheel tub outside|gill|a pillar",
    zones: { ...sides(0.7) },
  },
  {
    phrases:
      "this side|that side|same on this side|other side|both sides|petrol flap|fuel flap|filler flap|gas door|fuel door|gas cap|charge port|charging port|charge flap|charge door|charging flap|tank flap|fuel filler|filler cap|gas filler|def filler|def cap|adblue cap|filler neck|type two|ccs|chademo",
    zones: { ...sides(0.5), rear: 0.1, front: 0.05 },
  },
  {
    phrases:
      "dent|ding|scratch|scuff|scrape|rub|parking dent|door ding|hail|hail dent|gouge|ripple|orange peel|runs in the paint|overspray|blend|panel fit|gaps=|shut line|clear coat|clearcoat|lacquer peel|stone|touched in|touch up|paint meter|paint gauge|micron|mils=|mil|original paint|repaint|respray|repainted|resprayed|bondo|body filler|filler|magnet|bubble|bubbling|blister|lead work|body work|bodywork|panel beater|ghost|sticker ghost|decal|wrap|vinyl wrap|straight as",
    zones: outside(0.25),
  },

  {
    phrases:
      "tail light|taillight|tail lamp|taillamp|rear lamp|rear light|brake light|stop lamp|third brake light|high level brake light|reversing lamp|reversing light|reverse light|backup light|rear lens|light strip|back light|rear cluster|rear fog|turn signal in back",
    zones: { rear: 1.4 },
  },
  {
    phrases:
      "rear bumper|back bumper|step bumper|rear valance|diffuser|roll pan|trunk lid|boot lid|deck lid|decklid|boot badge|rear badge|rear emblem|rear spoiler|rear wiper|back wiper|tail gate skin|rear apron|tail panel|tail pan|rear lip|ducktail|duck tail|whale tail|rear deck lid|spreader bar|pintle|pintle hook|ladder up the back|bike rack|rear ladder|continental kit|bumper guard|rear step|rear fascia|back bar|roll up door outside|marker light|ladder|spoiler deploys|bumper end|loading edge|taillight bezel|rear panel|tailgate handle|tailgate skin|tailgate latch|rear camera outside|bumper step|safety chain|seven pin|seven way|trailer plug|trailer socket|four pin|thirteen pin|trailer wiring|drop hitch|ball mount|gate chain",
    zones: { rear: 1.2 },
  },
  {
    phrases:
      "exhaust tip|tip|lenses=|dual exhaust|number plate|license plate|tag light|plate light|backup camera|reversing camera|rear window|back glass|rear glass|rear screen|back window|heated rear screen|tow bar|towbar|tow ball|hitch|hitch cover|class four|class three|receiver hitch|receiver|two inch receiver|back end|lift gate|liftgate|luggage rack|twin pipes|quad pipes|four pipes|tail pipe tip|pipes=|spoiler|aerial|shark fin",
    zones: { rear: 0.8, cabin: 0.05 },
  },
  { phrases: "tailgate|hatch|trunk|boot|two way gate|this gate|the gate", zones: { rear: 0.5, cargo: 0.6 } },

  {
    phrases:
      "glass roof|panorama|panorama glass|top motor|top down|ragtop|roof skin|roof rail|roof rack|roof bar|drip rail|rain gutter|convertible top|soft top|vinyl top|folding top|top frame|top bow|header rail|solar panel|roof vent|roof light|skylight|pop top|rising roof|elevating roof|roof box|clearance light|cab light|roof seam|gutters=|canvas|mohair|boot cover|top boot|top well|latches at the windshield|ladder rack|plain steel roof|roof hatch|pipe tube|targa panel|top is filled|filled roof|filled top|steel insert|chop is|roof is chopped|rear window zip|top goes up|fixed glass|rubber roof|satellite|roof air|two air conditioners|antenna cover|patterns on the roof|the top is a soft one|zippers=|top comes down|glass back window",
    zones: { roof: 1.1 },
  },
  {
    phrases:
      "panoramic|the top goes|white top|black top|tan top|tops=|roof|sunroof|sun roof|moonroof|panoramic roof|t top|targa|hard top|hardtop|tonneau cover|beacon|plastic window|awning bracket|bows=|poppers=|roof liner outside",
    zones: { roof: 0.7, cabin: 0.05 },
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];
