import { type PartRow, sides } from "./part-row.ts";

/** Engine bay, underside, road. */
export const mechanicalParts = [
  {
    phrases:
      "carb|carburetor|twin carb|four barrel|two barrel|double pumper|bell mouth|velocity stack|trumpet|six deuces|tri power|dual quad|single pot|valve cover|rocker cover|cam cover|tappet cover|finned cover|distributor|distributor cap|magneto|intake|intake manifold|log manifold|air cleaner|air cleaner lid|air filter|air box|airbox|air intake|snorkel|dipstick|oil cap|oil filler|filler cap for the oil|mayonnaise|spark plug|plug wire|plug lead|ignition coil|coil pack|ballast resistor|firewall|fuse box|fusebox|engine bay|engine compartment|engine cover|beauty cover|inner fender|inner wing|inner guard|strut tower|strut top|strut brace|slam panel|radiator support|core support|hood hinge|bonnet hinge|bonnet catch|hood latch|hood liner|hood prop|prop rod|bonnet stay|gas strut|hood insulation|engine number|block casting|casting number|casting date|date code on the block|head casting|heater box|wiper motor|throttle cable|choke linkage|linkage|vacuum line|vacuum hose|vacuum advance|fuel bowl|glass bowl|fuel injection|injector line|degas bottle|lift pump|fan clutch|under hood|underhood|emissions sticker|emissions label|belt routing|frunk|washer fill|twelve volt|main fuse|orange cable|high voltage|inverter|charge air|intercooler pipe|boost pipe|turbo pipe|charge pipe|maf|egr|breather|pcv|expansion bottle",
    zones: { "engine-bay": 1.3 },
  },
  {
    phrases:
      "radiator|radiator cap|core|three row|aluminum radiator|recored|alternator|dynamo|generator|coolant|antifreeze|hose|heater hose|radiator hose|header tank|expansion tank|overflow|overflow tank|water pump|fuel pump|serpentine|serpentine belt|fan belt|drive belt|aux belt|v belt|fan shroud|shroud|electric fan|viscous fan|power steering|power steering pump|master cylinder|brake booster|booster|servo|brake fluid|washer bottle|washer jug|washer fluid|battery tray|battery terminal|battery cable|terminal|hold down|group 24|starter motor|starter|plugs=|sparkplug|thermostat|motor controller|charger unit|heat pump|intercooler|turbo|turbocharger|twin turbo|supercharger|blower belt|injector|injector pump|injection pump|glow plug|fuel rail|common rail|fuel filter|oil filter|spin on|wiring loom|wiring harness|wiring|loom|ground strap|throttle body|single cam|twin cam|overhead cam|chain guide|valve job|head gasket|timing chain|timing belt|cam belt|cambelt|wet belt|tensioner|idler|push rod|pushrod|lifter|tappet|crank|camshaft|roller cam|flathead|straight six|inline six|inline four|straight eight|slant six|big six|small block|big block|long block|short block|crate motor|crate engine|overhead|compression|compression test|leak down|bore|stroke|thirty over|sixty over|bored|motor|engine mount|motor mount|smog pump|air pump|compressor clutch|engine paint|engine enamel|fuel injected|direct injection|adblue|def tank|dpf|particulate filter|two batteries|oil leak|oil weep|oil seep",
    zones: { "engine-bay": 0.8 },
  },
  {
    phrases:
      "oil=|oils=|oil level|oil change|belt|liter=|engine|block|heads=|headers=|iron head|aluminum head|iron block|v8|v eight|v six|v6|v ten|four cylinder|six cylinder|eight cylinder|cylinders=|cubic inch|cubic inches|cubes=|horsepower|horse|foot pounds|pound feet|newton meter|torque|kilowatt|displacement|cc=|battery|volts=|amp|amps=|cam|manifold|points|electronic ignition|cold start|idle screw|fluids=|hybrid|electric motor|cooling|vacuum|seals=|gasket|hemispherical|detailed|steam cleaned",
    zones: { "engine-bay": 0.5 },
  },

  {
    phrases:
      "frame rail|chassis rail|chassis leg|frame horn|crossmember|cross member|cross sill|subframe|sub frame|floor pan|floors=|floor pans|floorboard from|oil pan|sump|sump plug|bell housing|bellhousing|tail housing|tailshaft|transmission pan|trans pan|transmission cooler line|cooler line|driveshaft|drive shaft|propshaft|prop shaft|half shaft|u joint|universal joint|carrier bearing|center bearing|differential|diff|diff cover|rear cover|rear axle|back axle|rear end|live axle|solid axle|full floater|semi floater|ring gear|ring and pinion|pumpkin|third member|quick change|nine inch|twelve bolt|ten bolt|fourteen bolt|locker|limited slip|posi|leaf spring|leaf pack|leafs=|leaves=|helper leaf|helper spring|overload|overload spring|lever arm|lever shock|control arm|lower arm|upper arm|wishbone|a arm|trailing arm|radius arm|ladder bar|traction bar|panhard|panhard rod|track bar|four link|ball joint|tie rod|tie rod end|track rod|drag link|idler arm|pitman arm|center link|sway bar|sway link|anti roll bar|drop link|end link|cv boot|cv joint|torsion bar|pinch weld|undercoat|undercoating|underseal|undersealed|undercarriage|underside|underbody|torque box|outrigger|jacking point|jack point|jacking pad|brake line|brake pipe|brake hose|fuel line|handbrake cable|parking brake cable|emergency brake cable|skid plate|under tray|undertray|belly pan|splash shield|shields=|transfer case|axle tube|axle seal|pinion|pinion seal|rear main|rear main seal|tail seal|catalytic converter|catalytic|cats=|h pipe|x pipe|down pipe|downpipe|mid pipe|y pipe|crossover pipe|flexi|exhaust hanger|grease nipple|grease fitting|zerk|spring hanger|shackle|spring perch|u bolt|spring eye|battery pack|battery case|high voltage battery|x member|body mount|cab mount|bushings=|air spring|air bags on|boxed|c channel|boxed frame|spot weld|scale|waste tank|steering rack|rack boot|steering damper|auto hub|manual hub|locking hub|wheel bearing|hub bearing|backing plate|brake dust shield|slave cylinder|frame hole",
    zones: { underside: 1.1 },
  },
  { phrases: "transmission|gearbox|gear box", zones: { underside: 0.5, drive: 0.4 } },
  {
    phrases:
      "frame|chassis|exhaust|exhaust system|muffler|turbo muffler|resonator|silencer|back box|center section|shock|shock absorber|gas shock|strut|damper|coil over|coilover|coil spring|coil|spring|bushing|bush|fuel tank|gas tank|petrol tank|tank|steering box|wheel cylinder|surface rust|rust through|rot|flaky|drain plug|hanger|seep|seeping|drip|sweat|weep|weeping|rear drum|brake drum|rust proof|rustproofing|wax oil|waxoil|axle|pan|stainless line|gears=|four ten|three seventy three|three fifty five|three oh eight|patch|patched|patch panel|welded|stick welder|factory primer|red primer|dry state|rust belt|lay down",
    zones: { underside: 0.6 },
  },
  { phrases: "caliper|rotor|disc|drum|pads=|brake pad|pad|shoes=|brake shoe", zones: { underside: 0.4, ...sides(0.2) } },

  {
    phrases:
      "miles an hour|mile an hour|mph|highway|interstate|freeway|motorway|bypass|dual carriageway|slip road|roundabout|open road|test drive|road test|straight as an arrow|belt on|seat belt on|gentlemen start|expressway|regeneration|ready light|nothing to hear|of range|oil pressure|pounds of oil|wind noise|road noise|tire noise|shimmy|wander|vibration|vibrate|rattle|rattling|squeak|clunk|knock|regen|one pedal|kick down|kickdown|first gear|second gear|third gear|top gear|fourth gear|fifth gear|sixth gear|reverse gear|overdrive|downshift|upshift|upshifts|synchro|crunch|pulled up square|tracks=|tracks straight|hands off|no hands|stops straight|pulls up straight|brakes straight|steers straight|pulls to|pulls left|pulls right|pulls well|pulls strong|no pull|turns right over|turns over|starts easy|starts up|starts first|catches=|shifts smooth|changes smooth|changes gear|foot in it|no smoke|bit of smoke|blue smoke|idles=|idling|tick over|ticks over|settles down|fires right up|starts right up|washboard|cruising|shifts=|revs=|turn around here|hits the brakes|hit the brakes|speed bump|pothole|railroad track|railway crossing|stop sign|red light|traffic|uphill|downhill|up the hill|lane keep|lane|accelerate|acceleration|punch it|floor it|straight line|lock to lock|bites=|clutch bites|grabs=|brakes grab|brakes bite|lets go|running temperature|up to temperature|warmed up|gets up and goes|zero to|oil light|charging fourteen|fourteen volts|fourteen two|hear that|hear it|foots off|grade|hill|bark|listen|whine|rolls straight|glow plug light|grids=|bearing noise",
    zones: { drive: 0.8 },
  },
  {
    phrases:
      "clutch|idle|idle comes down|dogleg|brakes=|brake pedal|third=|second=|steers=|steering|road|shore road|county road|planted|quiet|smooth|tight turn|corner nicely|smoke|first=|bumps=|rides=|ride|ride quality|throttle|gear|notchy|jerk|silent",
    zones: { drive: 0.4 },
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];
