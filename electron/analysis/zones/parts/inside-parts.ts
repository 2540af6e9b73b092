import type { PartRow } from "./part-row.ts";

/** Load space and cabin. */
export const insideParts = [
  {
    phrases:
      "trunk floor|trunk pan|boot floor|trunk mat|boot mat|trunk carpet|boot carpet|trunk liner|boot liner|trunk light|boot light|spare tire well|spare wheel well|spare well|load bay|load area|load floor|load space|load length|load light|load lip|load restraint|cargo area|cargo cover|cargo floor|cargo net|cargo tray|cargo box|parcel shelf|load blind|bed liner|bedliner|spray liner|spray in liner|spray in|drop in liner|bed floor|bed wood|red oak|white oak|stainless strip|bed rail|bed mat|bed light|bed cap|bed cover|bed bolt|bed divider|tie down|tie down ring|cleat|bed strip|truck bed|load cover|drop side|flatbed|stake pocket|boot space|trunk space|wheel tub|wheelhouse|wing pan|trunk extension|trunk hinge|trunk weatherstrip|trunk seal|boot seal|hidden floor|false floor|underfloor storage|floor panel lifts|fifth wheel|fifth wheel plate|fifth wheel hitch|gooseneck|gooseneck ball|gooseneck hole|cross bed box|bed box|headache rack|lashing eye|lashing ring|lashing point|lashing rail|bulkhead|full bulkhead|ply lining|ply floor|ply lined|racking|shelving|roof bow|checker plate|chequer plate|diamond plate|rope rail|between the boxes|transfer tank|crane|e track|roll up door|underfloor bin|canopy|tub|fridge slide|drawers=|ramp|lock box|wood floor|load bars|vise|vise bracket|drain clear|deck plate",
    zones: { cargo: 1.2 },
  },
  {
    phrases:
      "spare|spare wheel|spare tire|full size spare|jack|lug wrench|wheel brace|wheel spanner|tool kit|toolkit|tool roll|space saver|doughnut|donut|tire iron|tow eye|towing eye|warning triangle|first aid kit|tool box|toolbox|foam tray|jack handle|jack handles|starting handle|tire kit|goop|sealant|can of foam|tire foam|inflator|compressor kit|charging cable|charge cable|charging lead|charge cord|level one cord|level two adapter|three pin lead|granny cable|granny lead|wheel chock|locking wheel nut|locking wheel nut key|tow strap|jumper cables|bottle jack|scissor jack",
    zones: { cargo: 0.9 },
  },
  {
    phrases:
      "rubber mat|third row|folds in the floor|folds flat|dog guard|side curtain|side screen|tool bag|shopping|plaid mat|houndstooth|splatter paint|juice stain|cubic foot|cubic feet|liters of space|liters of room|liters with|suitcase|stroller|pushchair|buggy|groceries|golf clubs|fold flat|seats fold|fold down|seats down|sixty forty|60 40|the bed|bare metal|bare steel|bare painted|tonneau|rumble seat|dog crate|sheet of plywood|wheelbarrow|four by eight|skid of|pallet|hidden compartment|cubby in the back|gas locker|garage|leisure battery|bed board|hay bale",
    zones: { cargo: 0.8 },
  },
  // Where a thing is kept, said from anywhere.
  { phrases: "in the trunk|in the boot|in the bed|in the hatch|in the back", zones: { cargo: 0.35 } },

  {
    phrases:
      "seat|front seat|back seat|rear seat|bench|bench seat|bucket seat|buckets=|jump seat|captains chair|captain chair|captains=|swivel seat|cushion|squab|bolster|seat bolster|backrest|seat back|seat base|headrest|head rest|head restraint|armrest|arm rest|upholstery|leg room|legroom|foot room|map pocket|seat cover|seat heater|seat memory|lumbar|tuck and roll|pleats=|middle row|back row|rear bench|perforated|heated|cooled seat|ventilated",
    zones: { cabin: 0.8 },
  },
  { phrases: "leather|vinyl|cloth|hide|suede|velour|corduroy|stitching|piping|tweed|oxblood", zones: { cabin: 0.4 } },
  {
    phrases:
      "dash|dashboard|dash pad|dash top|gauge|gauge cluster|instrument|instrument cluster|binnacle|digital cluster|steering wheel|wheel rim wood|tach|tachometer|rev counter|speedo|speedometer|odometer|mileometer|milometer|hour meter|clock|glove box|glovebox|console|center console|tunnel console|shifter|shift knob|gear knob|gear stick|gear lever|gear selector|shift boot|pedal|pedal rubber|dead pedal|horn|horn ring|visor|sun visor|vanity mirror|headliner|head liner|headlining|head lining|ceiling|dome light|map light|courtesy light|interior light|rear view mirror|kick panel|sill plate|step plate|interior|cabin|door card|door panel|door pull|door cap|door pocket|window crank|window winder|window regulator|window handle|cup holder|cupholder|ashtray|cigarette lighter|lighter|tilt wheel|tilt|column|column shift|steering column|choke knob|choke cable|light switch|ignition switch|push button|start button|four wheel lever|four wheel drive lever|transfer lever|granny gear lever|overhead shelf|rubber floor|vinyl floor|package tray|fresh air vent",
    zones: { cabin: 1 },
  },
  // To start, or to light the dash and read the odometer.
  { phrases: "turn the key|turning the key|key on", zones: { drive: 0.5, cabin: 0.4 } },
  { phrases: "carpet|floor mat|mats=|floor liner|over mat|heel pad", zones: { cabin: 0.7, cargo: 0.35 } },
  {
    phrases:
      "seat belt|seatbelt|lap belt|belts=|lap and shoulder|three point|shoulder belt|harness|airbag|air bag light|isofix|latch hook|child seat|warning light|dash light|engine light|check engine|check engine light|trip meter|trip computer|head unit|stereo|radio|am fm|cassette|cd player|cd changer|aerial socket|speaker|subwoofer|amplifier|loudspeaker|bluetooth|touch screen|touchscreen|screen|center screen|infotainment|navigation|nav|sat nav|satnav|usb|aux|wireless charger|carplay|phone charger|heated seat|heated wheel|power window|electric window|window switch|power seat|power lock|central locking|climate control|climate|air conditioning|air con|ac=|a c=|blows cold|cold air|heater|heater fan|heater controls|demister|vents=|blower|blower motor|blown air|cruise control|cruise|rear camera|smells=|smell|smoker|cigarette|ambient light|drive selector|cargo light|head up|heads up|key fob slot|keyless|brake controller|trailer brake|exhaust brake button|beacon switch|inverter switch|pto switch|two way radio|dvd|sunroof switch|roof blind|dimmer|wiper stalk|stalk",
    zones: { cabin: 0.6 },
  },
  {
    phrases:
      "second row|sunshade|walnut|wood trim|wood wheel|wood rim|dark ash|veneer|burr walnut|lacquer|piano black|carbon trim|galley|hob|burner|sink|tap|fridge|microwave|wardrobe|cupboard|locker overhead|rock and roll bed|dinette|table|worktop|curtain|berth|bunk|toilet|shower|mattress|swivel|blind|night heater|control panel|hook and loop|cubby|cubbies=|sleeper|sofa|oven|bathroom|bedroom|kitchen|queen|plank|air ride seat|picnic table|wireless|cb|displays=|display|switches|chain wheel|horn button|massage",
    zones: { cabin: 0.7 },
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];
