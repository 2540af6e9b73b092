import type { ZoneName } from "../../../shared-types/index.ts";

export type ZoneWeights = Partial<Record<ZoneName, number>>;

export interface PartRow {
  /** Phrases in plain words (no apostrophes), parted by "|". Each also stands for its plural in -s or -es, except where it ends in "=". */
  readonly phrases: string;
  /** How much one mention speaks for each zone. 1 is plain evidence; 0.3 a hint; more than 1 a part seen nowhere else. */
  readonly zones: ZoneWeights;
}

const sides = (weight: number): ZoneWeights => ({ "driver-side": weight, "passenger-side": weight });

/** Where a part is looked at. Many are named from elsewhere too: the walk model weighs a lone mention against the walk. */
export const partRows = [
  // Words that hold a part's name and show no part. They stand first, so that no other row claims them.
  {
    phrases:
      "four wheel drive|all wheel drive|rear wheel drive|front wheel drive|two wheel drive|two door|four door|next door|door to door|out the door|quad cab|crew cab|extended cab|double cab|oil changes=|oil change|front to back|wheelbase|wheel base|spare time|spare change|in the road|on the road from|king of the road|seven seater|two seater|five seater",
    zones: {},
  },

  { phrases: "grill|grille|front grille|mesh grille|slats", zones: { front: 1.3 } },
  { phrases: "headlight|headlamp|projector|halogen|sealed beam|daytime running light", zones: { front: 1.2 } },
  {
    phrases:
      "nose|front bumper|front valance|air dam|splitter|chin spoiler|nose panel|nose cone|over rider|overrider|front badge|bull bar|brush guard|grille guard|winch|tow hook|front apron|nerf bar",
    zones: { front: 1.2 },
  },
  {
    phrases: "fog light|fog lamp|fogs=|spot lamp|spots=|driving light|parking light|turn signal|indicator|front plate",
    zones: { front: 0.7, rear: 0.2 },
  },
  { phrases: "hood|bonnet|hood ornament|mascot|hood pin|hood scoop|bonnet scoop|cowl", zones: { front: 0.7, "engine-bay": 0.3 } },
  {
    phrases: "windshield|windscreen|wiper|stone guard|rock chip|stone chip|radiator shell|grille shell|grill shell",
    zones: { front: 0.6, "driver-side": 0.1, "passenger-side": 0.1 },
  },
  { phrases: "i beam|drop axle|dropped axle|hairpin|front axle|king pin|kingpin", zones: { front: 0.5, underside: 0.5 } },

  {
    phrases:
      "driver front fender|driver fender|driver front door|driver rear quarter|driver quarter|driver quarter panel|driver front wheel|driver front tire|driver rear tire|driver rear wheel|driver front wing|driver rear wing|driver rear door|driver rocker|driver sill|drivers front fender|drivers fender|drivers front door|drivers rear quarter|drivers quarter|drivers quarter panel|drivers front wheel|drivers front tire|drivers rear tire|drivers rear wheel|drivers front wing|drivers rear wing|drivers rear door|drivers rocker|drivers sill|driver side front fender|driver side fender|driver side front door|driver side rear quarter|driver side quarter|driver side quarter panel|driver side front wheel|driver side front tire|driver side rear tire|driver side rear wheel|driver side front wing|driver side rear wing|driver side rear door|driver side rocker|driver side sill|drivers side front fender|drivers side fender|drivers side front door|drivers side rear quarter|drivers side quarter|drivers side quarter panel|drivers side front wheel|drivers side front tire|drivers side rear tire|drivers side rear wheel|drivers side front wing|drivers side rear wing|drivers side rear door|drivers side rocker|drivers side sill",
    zones: { "driver-side": 1.2 },
  },
  {
    phrases:
      "passenger front fender|passenger fender|passenger front door|passenger rear quarter|passenger quarter|passenger quarter panel|passenger front wheel|passenger front tire|passenger rear tire|passenger rear wheel|passenger front wing|passenger rear wing|passenger rear door|passenger rocker|passenger sill|passengers front fender|passengers fender|passengers front door|passengers rear quarter|passengers quarter|passengers quarter panel|passengers front wheel|passengers front tire|passengers rear tire|passengers rear wheel|passengers front wing|passengers rear wing|passengers rear door|passengers rocker|passengers sill|passenger side front fender|passenger side fender|passenger side front door|passenger side rear quarter|passenger side quarter|passenger side quarter panel|passenger side front wheel|passenger side front tire|passenger side rear tire|passenger side rear wheel|passenger side front wing|passenger side rear wing|passenger side rear door|passenger side rocker|passenger side sill|passengers side front fender|passengers side fender|passengers side front door|passengers side rear quarter|passengers side quarter|passengers side quarter panel|passengers side front wheel|passengers side front tire|passengers side rear tire|passengers side rear wheel|passengers side front wing|passengers side rear wing|passengers side rear door|passengers side rocker|passengers side sill",
    zones: { "passenger-side": 1.2 },
  },
  { phrases: "driver side|drivers side", zones: { "driver-side": 0.35 } },
  { phrases: "passenger side|passengers side", zones: { "passenger-side": 0.35 } },
  {
    phrases:
      "fender|guard|front guard|slider|slide door|front wing|back wing|rear wing|wing|quarter panel|rear quarter|quarter|rocker|rocker panel|sill|running board|side step|nerf step|step bar|cab corner|bedside|bed side|box side|door skin|body side",
    zones: { ...sides(0.9) },
  },
  {
    phrases:
      "door|front door|rear door|back door|door handle|door mirror|wing mirror|side mirror|mirror|sliding door|suicide door|barn door",
    zones: { ...sides(0.5), cabin: 0.1 },
  },
  {
    phrases:
      "tire|tyre|wheel|alloy|whitewall|white letter|white wall|tread|sidewall|date code|lug nut|wheel nut|hubcap|hub cap|center cap|centre cap|trim ring|spinner|lug|curb rash|kerbing|kerb rash|rim|wire wheel|steel wheel|radial|steelies=",
    zones: { ...sides(0.6), front: 0.05, rear: 0.05 },
  },
  {
    phrases:
      "wheel arch|wheel opening|wheel well|wheel lip|arch|wheelet molding|fender flare|flare|mud flap|body line|swage line|crease|pinstripe|coach line|side marker|vent window|quarter window|quarter light|belt line|beltline|door gap|panel gap|door jamb|b pillar|door edge|door bottom|door bottoms",
    zones: { ...sides(0.7) },
  },
  {
    phrases:
      "this side|that side|same on this side|other side|both sides|petrol flap|fuel flap|filler flap|gas door|fuel door|charge port|charging port|charge flap",
    zones: { ...sides(0.6), rear: 0.1 },
  },

  {
    phrases:
      "tail light|taillight|tail lamp|taillamp|rear lamp|rear light|brake light|third brake light|reversing lamp|reversing light|backup light|rear lens",
    zones: { rear: 1.4 },
  },
  {
    phrases:
      "rear bumper|back bumper|rear valance|diffuser|roll pan|trunk lid|boot lid|deck lid|decklid|boot badge|rear badge|rear spoiler|rear wiper|tail gate skin|rear apron|tail panel|tail pan",
    zones: { rear: 1.3 },
  },
  {
    phrases:
      "exhaust tip|tip|lenses=|dual exhaust|number plate|license plate|tag light|plate light|backup camera|reversing camera|parking sensor|rear window|back glass|rear glass|tow bar|towbar|tow ball|hitch|receiver hitch|back end|lift gate|liftgate",
    zones: { rear: 0.8, cabin: 0.05 },
  },
  { phrases: "tailgate|hatch|trunk|boot", zones: { rear: 0.5, cargo: 0.6 } },

  {
    phrases:
      "trunk floor|trunk pan|boot floor|trunk mat|boot mat|trunk carpet|boot carpet|spare tire well|spare well|load bay|load area|load floor|load space|load lip|cargo area|cargo cover|cargo floor|cargo net|parcel shelf|bed liner|bedliner|bed floor|bed wood|bed rail|bed mat|tie down|bed strip|truck bed|load cover|drawer|drop side|flatbed|stake pocket|boot space|trunk space",
    zones: { cargo: 1.4 },
  },
  {
    phrases:
      "spare|spare wheel|spare tire|spare tyre|jack|lug wrench|wheel brace|tool kit|toolkit|tool roll|space saver|doughnut|donut|tire iron|tyre iron|tow eye|warning triangle|tool box|toolbox|foam tray|jack handle|starting handle|tyre kit|goop|inflator|compressor kit",
    zones: { cargo: 0.9 },
  },
  {
    phrases:
      "rubber mat|gooseneck|gooseneck ball|third row|folds in the floor|folds flat|lashing ring|dog guard|side curtain|tool bag|shopping|ply lined|checker plate|chequer plate|rope rail|plaid mat|juice stain|cubic foot|cubic feet|litres of space|suitcase|stroller|pushchair|groceries|golf clubs|fold flat|seats fold|sixty forty|60 40|in the bed|the bed|tonneau|rumble seat|in the trunk|in the boot|in the hatch|dog crate|sheet of plywood|wheelbarrow",
    zones: { cargo: 0.9 },
  },

  {
    phrases:
      "seat|front seat|back seat|rear seat|bench seat|bucket seat|buckets=|bench|cushion|squab|bolster|backrest|seat back|headrest|head rest|head restraint|armrest|arm rest|upholstery|leg room|legroom|map pocket|seat cover",
    zones: { cabin: 0.8 },
  },
  { phrases: "leather|vinyl|cloth|hide|alcantara|velour|stitching|piping|tweed", zones: { cabin: 0.4 } },
  {
    phrases:
      "dash|dashboard|dash pad|dash top|gauge|instrument|steering wheel|tach|tachometer|rev counter|speedo|speedometer|odometer|mileometer|milometer|clock|glove box|glovebox|console|shifter|shift knob|gear knob|gear stick|gear lever|shift boot|pedal|pedal rubber|horn|horn ring|visor|sun visor|headliner|head liner|headlining|head lining|dome light|rear view mirror|kick panel|sill plate|interior|cabin|door card|door panel|door pull|door cap|window crank|window winder|window regulator|cup holder|ashtray|tilt wheel|column|steering column|choke knob",
    zones: { cabin: 1 },
  },
  { phrases: "carpet|floor mat|mats=", zones: { cabin: 0.7, cargo: 0.35 } },
  {
    phrases:
      "seat belt|seatbelt|lap belt|belts=|lap and shoulder|three point|shoulder belt|airbag|isofix|latch hook|child seat|warning light|dash light|trip meter|head unit|stereo|radio|cassette|cd player|aerial socket|speaker|bluetooth|touch screen|touchscreen|screen|infotainment|navigation|sat nav|satnav|usb|carplay|heated seat|power window|electric window|window switch|climate control|air conditioning|air con|ac=|a c=|heater|vents=|blower|cruise control|rear camera|smells=|ambient light|drive selector|cargo light",
    zones: { cabin: 0.6 },
  },
  { phrases: "captains chair|second row|sunshade|walnut|wood trim|dark ash|veneer|burr walnut|lacquer", zones: { cabin: 0.7 } },

  {
    phrases:
      "carb|carburetor|carburettor|four barrel|double pumper|valve cover|rocker cover|cam cover|tappet cover|distributor|intake|intake manifold|air cleaner|air filter|air box|airbox|dipstick|oil cap|oil filler|spark plug|plug wire|plug lead|ignition coil|coil pack|firewall|bulkhead|fuse box|engine bay|engine compartment|engine cover|inner fender|inner wing|strut tower|slam panel|radiator support|core support",
    zones: { "engine-bay": 1.3 },
  },
  {
    phrases:
      "radiator|alternator|dynamo|generator|coolant|antifreeze|hose|heater hose|radiator hose|header tank|expansion tank|overflow|water pump|fuel pump|serpentine|serpentine belt|fan belt|drive belt|v belt|fan shroud|shroud|electric fan|viscous fan|power steering|power steering pump|master cylinder|brake booster|booster|servo|brake fluid|washer bottle|washer jug|washer fluid|battery tray|hold down|group 24|starter motor|starter|plugs=|sparkplug|thermostat|inverter|motor controller|charger unit|heat pump|intercooler|turbo|turbocharger|supercharger|injector|injector pump|injection pump|glow plug|fuel rail|fuel filter|wiring loom|wiring harness|throttle body|single cam|twin cam|chain guide|valve job|head gasket|timing chain|timing belt|cam belt|cambelt|push rod|pushrod|crank|camshaft|roller cam|flathead|straight six|inline six|small block|big block|compression|compression test|leak down|bore|stroke|thirty over|motor",
    zones: { "engine-bay": 0.8 },
  },
  {
    phrases:
      "oil=|oils=|oil level|belt|liter=|litre=|engine|block|heads=|headers=|v8|v six|v6|four cylinder|six cylinder|cylinders=|cubic inch|cubic inches|horsepower|horse|foot pounds|pound feet|newton meter|newton metre|torque|kilowatt|displacement|cc=|battery|volts=|cam|manifold|points|electronic ignition|cold start|idle screw",
    zones: { "engine-bay": 0.5 },
  },

  {
    phrases:
      "frame rail|chassis rail|crossmember|cross member|subframe|sub frame|floor pan|floors=|floor pans|oil pan|sump|bell housing|bellhousing|tail housing|tailshaft|transmission pan|driveshaft|drive shaft|propshaft|prop shaft|u joint|universal joint|carrier bearing|differential|diff|diff cover|rear axle|back axle|rear end|leaf spring|leaf pack|lever arm|control arm|wishbone|a arm|trailing arm|panhard|panhard rod|four link|ball joint|tie rod|track rod|drag link|sway bar|sway link|anti roll bar|drop link|cv boot|cv joint|torsion bar|pinch weld|undercoat|undercoating|underseal|undercarriage|underside|underbody|torque box|outrigger|jacking point|jack point|brake line|brake pipe|brake hose|fuel line|handbrake cable|parking brake cable|emergency brake cable|skid plate|under tray|undertray|belly pan|transfer case|axle tube|pinion|pinion seal|rear main|rear main seal|catalytic converter|catalytic|h pipe|x pipe|down pipe|downpipe|mid pipe|exhaust hanger|grease nipple|zerk|spring hanger|shackle|spring perch|battery pack|battery case|x member|body mount|cab mount",
    zones: { underside: 1.1 },
  },
  { phrases: "transmission|gearbox|gear box", zones: { underside: 0.5, drive: 0.4 } },
  {
    phrases:
      "frame|chassis|exhaust|muffler|silencer|tailpipe|tail pipe|shock|shock absorber|strut|damper|coil over|coilover|coil spring|spring|bushing|bush|fuel tank|gas tank|petrol tank|tank|steering box|steering rack|wheel cylinder|surface rust|drain plug|hanger|seep|drip|rear drum|brake drum|rust proof|rustproofing|wax oil|axle|backing plate",
    zones: { underside: 0.6 },
  },
  { phrases: "caliper|rotor|disc|drum|pads=", zones: { underside: 0.35, ...sides(0.3) } },

  {
    phrases:
      "paperwork|bill of sale|build sheet|build ticket|window sticker|service history|service record|service book|rego papers|rego|club plate|log book|logbook|v5|v5c|owners manual|handbook|history report|documents=|registration document|original invoice|folder|binder|file of history|history file|heritage certificate|certificate|import papers|port papers|old mots|mots=|title application|maintenance record|stack of receipts|protect o plate|broadcast sheet",
    zones: { documents: 1.2 },
  },
  {
    phrases:
      "title|receipt|invoice|bills=|report|vin|vin plate|vin tag|chassis plate|data plate|trim tag|body tag|cowl tag|door tag|registration|registered|papers=|keepers=|previous owner|mot|tax exempt|stamped up|postcard|service stamp|accident report|clean report|lien",
    zones: { documents: 0.6 },
  },

  {
    phrases:
      "miles an hour|mile an hour|mph|highway|interstate|freeway|motorway|bypass|dual carriageway|open road|test drive|road test|oil pressure|wind noise|road noise|shimmy|wander|vibration|rattle|regen|kick down|kickdown|first gear|second gear|third gear|top gear|fourth gear|overdrive|downshift|upshift|upshifts|synchro|pulled up square|tracks=|hands off|no hands|stops straight|brakes straight|steers straight|pulls to|no pull|turns right over|starts easy|starts up|shifts smooth|foot in it|no smoke|idles=|settles down|fires right up|starts right up|washboard|cruising|shifts=|revs=|turn around here|hits the brakes|hit the brakes",
    zones: { drive: 0.9 },
  },
  {
    phrases: "clutch|idle|idle comes down|dogleg|brakes=|third=|steers=|steering|road|shore road|county road|planted",
    zones: { drive: 0.45 },
  },

  {
    phrases:
      "glass roof|panoramic|the top goes|white top|black top|tan top|top motor|glass back window|top down|ragtop|tops=|roof|roof rail|roof rack|roof bar|sunroof|sun roof|moonroof|panoramic roof|drip rail|rain gutter|roof skin|t top|targa|soft top|convertible top|vinyl top|hard top|hardtop|folding top|rear window zip|top frame|tonneau cover",
    zones: { roof: 0.7, cabin: 0.05 },
  },

  {
    phrases:
      "ring us|drop in|thanks for watching|thank you for watching|bye|bye bye|call us|give us a call|call me|give me a call|ring me|give us a ring|ring first|call the shop|come see|come and see|ship it|ship anywhere|ship it anywhere|delivery|finance|we finance|financing|take trades|trades=|a trade|part exchange|part ex|swap|reasonable offer|first come|phone number|website|email|see you next|see you soon|until next time|keep the light on|in closing|any questions|be glad to|not a junk yard",
    zones: { closing: 0.9, opening: 0.15 },
  },
  { phrases: "asking|asking price|price|dollars|pounds|haggle|offer", zones: { closing: 0.25, opening: 0.25 } },
  {
    phrases:
      "hey everybody|hey yall|hello everyone|hello and welcome|welcome|good morning|good afternoon|good evening|behind the camera|on the camera|holding the camera|today|todays car|what weve got|what we got|what you got here|what we have here|what i have here|got a good one|for you today|ill be showing|walk around|walkaround|before we start|before we even",
    zones: { opening: 0.8 },
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];

export interface PhraseNode {
  weights: ZoneWeights | null;
  readonly next: Map<string, PhraseNode>;
}

const newNode = (): PhraseNode => ({ weights: null, next: new Map() });

/** The table as a tree of words, so that finding parts costs no more for a longer table. The longest phrase wins. */
export function partTree(rows: readonly PartRow[]): PhraseNode {
  const root = newNode();
  for (const row of rows) {
    for (const written of row.phrases.split("|")) {
      const exact = written.endsWith("=");
      const phrase = exact ? written.slice(0, -1) : written;
      for (const form of exact ? [phrase] : [phrase, `${phrase}s`, `${phrase}es`]) {
        let node = root;
        for (const word of form.split(" ")) {
          const next = node.next.get(word) ?? newNode();
          node.next.set(word, next);
          node = next;
        }
        // The first row that claims a phrase keeps it: rows stand with the surest evidence first.
        node.weights ??= row.zones;
      }
    }
  }
  return root;
}
