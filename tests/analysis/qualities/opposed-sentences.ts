import type { ConflictKind, ZoneName } from "../../../shared-types/index.ts";

/** Two things a narrator may say of one vehicle, minutes apart. What the words mean is common practice of the trade. */
export interface SentencePair {
  readonly first: readonly [zone: ZoneName, says: string];
  readonly second: readonly [zone: ZoneName, says: string];
  /** The conflict that a reviewer must be shown; null where both hold. */
  readonly shows: ConflictKind | null;
}

export const opposedSentences: readonly SentencePair[] = [
  // presence
  {
    first: ["opening", "It's a power everything car with the sunroof."],
    second: ["roof", "Up top there's no sunroof on this one, solid roof."],
    shows: "presence",
  },
  {
    first: ["engine-bay", "You'll notice there's no compressor on the front of it, it never had air."],
    second: ["drive", "Got the air on and it'll hang meat in here, ice cold."],
    shows: "presence",
  },
  { first: ["opening", "She's got cold air."], second: ["cabin", "It's a heater car, just heat and vent."], shows: "presence" },
  {
    first: ["cargo", "Lift the floor and there's your full size spare."],
    second: ["underside", "There's no spare with it I'm afraid, just the goo."],
    shows: "presence",
  },
  { first: ["cabin", "It's got cruise control."], second: ["drive", "No cruise on this one so you use your foot."], shows: "presence" },
  { first: ["underside", "And there's your ABS pump tucked up there."], second: ["drive", "No ABS, so mind the wet."], shows: "presence" },
  { first: ["rear", "Tow bar fitted, removable one."], second: ["underside", "Never had a tow bar on it."], shows: "presence" },
  {
    first: ["cargo", "It's got the spray in bedliner."],
    second: ["closing", "It's never had a bed liner in it, painted bed."],
    shows: "presence",
  },
  { first: ["cabin", "Heated seats in the front."], second: ["drive", "It hasn't got heated seats so bring a rug."], shows: "presence" },
  {
    first: ["documents", "The original owner's manual is in the wallet."],
    second: ["closing", "No owner's manual with it."],
    shows: "presence",
  },
  {
    first: ["opening", "Three speeds with overdrive."],
    second: ["underside", "That's a plain tailshaft so there's no overdrive."],
    shows: "presence",
  },
  { first: ["opening", "It wears a black vinyl top."], second: ["roof", "No vinyl top, that's a painted roof."], shows: "presence" },
  { first: ["opening", "It has the heat pump."], second: ["engine-bay", "There's no heat pump on this trim."], shows: "presence" },
  { first: ["cabin", "Factory navigation in it."], second: ["drive", "It doesn't have nav, use your phone."], shows: "presence" },
  // type
  {
    first: ["opening", "It's a manual gearbox car."],
    second: ["drive", "Put it in drive, it's an automatic so off we go."],
    shows: "type",
  },
  { first: ["opening", "V8 with an automatic behind it."], second: ["drive", "Push the clutch in, first gear."], shows: "type" },
  {
    first: ["opening", "Four wheel drive of course."],
    second: ["underside", "This is a two wheel drive truck so no transfer case up front."],
    shows: "type",
  },
  { first: ["opening", "It's the gas motor."], second: ["engine-bay", "So that's the six liter turbo diesel."], shows: "type" },
  {
    first: ["driver-side", "Discs on the rear, you can see the rotor through the wheel."],
    second: ["underside", "Rear brakes are drums, new shoes in them."],
    shows: "type",
  },
  {
    first: ["passenger-side", "Up front you see the finned drums behind the front wheel."],
    second: ["underside", "At the front there's a caliper each side."],
    shows: "type",
  },
  { first: ["driver-side", "All four are radials."], second: ["passenger-side", "Tires are bias plies all round."], shows: "type" },
  {
    first: ["engine-bay", "That's the original fuel injection."],
    second: ["drive", "It's got a four barrel carburetor so pump it twice."],
    shows: "type",
  },
  {
    first: ["engine-bay", "It's still on points and condenser."],
    second: ["documents", "Bill here for the electronic ignition that's in it."],
    shows: "type",
  },
  {
    first: ["engine-bay", "There's the power steering pump, power steering."],
    second: ["drive", "It's manual steering so it's heavy parking."],
    shows: "type",
  },
  { first: ["underside", "Rear springs are leafs."], second: ["closing", "It rides nice on the coil springs in the rear."], shows: "type" },
  {
    first: ["engine-bay", "This has a timing chain so nothing to change."],
    second: ["documents", "Bill for the timing belt in March."],
    shows: "type",
  },
  { first: ["cabin", "Power windows all work."], second: ["closing", "Crank windows, nothing to break."], shows: "type" },
  {
    first: ["underside", "Steering rack is dry, rack boots are good."],
    second: ["drive", "There's a bit of slop as it's a steering box."],
    shows: "type",
  },
  { first: ["opening", "Clean title."], second: ["documents", "The title is a rebuilt title."], shows: "type" },
  { first: ["underside", "It's got the posi rear end."], second: ["drive", "It's an open diff so one wheel spins."], shows: "type" },
  { first: ["cabin", "Bucket seats in the front."], second: ["closing", "Bench seat up front so three abreast."], shows: "type" },
  { first: ["engine-bay", "Straight six under here."], second: ["closing", "Love that V8."], shows: "type" },
  { first: ["rear", "Twin exhausts."], second: ["underside", "It's a single exhaust all the way back."], shows: "type" },
  { first: ["engine-bay", "It still has the dynamo."], second: ["drive", "Alternator's charging away there."], shows: "type" },
  // material
  {
    first: ["opening", "Every panel on this is steel."],
    second: ["passenger-side", "Front fender here's fiberglass, you can tell by the sound."],
    shows: "material",
  },
  { first: ["cabin", "The seats are leather."], second: ["closing", "Lovely cloth seats."], shows: "material" },
  { first: ["driver-side", "Wheels are aluminum."], second: ["underside", "The wheels are steel wheels."], shows: "material" },
  {
    first: ["engine-bay", "The radiator's brass."],
    second: ["front", "That's an aluminum radiator you see through the grille."],
    shows: "material",
  },
  { first: ["engine-bay", "The heads are aluminum."], second: ["documents", "Says here cast iron heads."], shows: "material" },
  { first: ["front", "The bonnet is aluminium."], second: ["engine-bay", "Heavy thing, the bonnet is steel."], shows: "material" },
  { first: ["underside", "Exhaust is stainless."], second: ["closing", "The exhaust is just aluminized."], shows: "material" },
  { first: ["cabin", "Dash is walnut."], second: ["drive", "The dash is plastic with a pattern on it."], shows: "material" },
  // color
  { first: ["opening", "It's a dark blue car."], second: ["closing", "So that's the green coupe, it's green all over."], shows: "color" },
  { first: ["opening", "Red over black leather."], second: ["cabin", "The seats are tan leather."], shows: "color" },
  { first: ["cabin", "Carpet's black."], second: ["drive", "The carpet is red."], shows: "color" },
  { first: ["opening", "White with a black top."], second: ["roof", "The top's tan."], shows: "color" },
  // condition
  {
    first: ["front", "There's not a mark in the glass."],
    second: ["drive", "There's a tiny star in the windshield, you can barely see it."],
    shows: "condition",
  },
  {
    first: ["front", "Windscreen, no chips no cracks."],
    second: ["cabin", "There's a crack in the windscreen low down."],
    shows: "condition",
  },
  { first: ["cabin", "Dash pad has no cracks in it."], second: ["closing", "There's one little crack in the dash."], shows: "condition" },
  { first: ["cabin", "No rips, no tears in the seats."], second: ["drive", "Driver's seat has a tear on the edge."], shows: "condition" },
  {
    first: ["engine-bay", "No leaks on this motor."],
    second: ["underside", "The engine weeps a bit of oil there, a leak at the rear main."],
    shows: "condition",
  },
  {
    first: ["cargo", "The trunk floor has never been patched."],
    second: ["underside", "You can see a patch welded in the trunk floor."],
    shows: "condition",
  },
  {
    first: ["underside", "The frame has no rust, none."],
    second: ["closing", "There's rust on the frame at the back."],
    shows: "condition",
  },
  {
    first: ["driver-side", "This door hasn't got a dent in it."],
    second: ["closing", "There's a ding in the driver's door I should mention."],
    shows: "condition",
  },
  { first: ["cabin", "Headliner has no stains."], second: ["closing", "There's a stain on the headliner."], shows: "condition" },
  {
    first: ["underside", "Transmission's bone dry, no leaks."],
    second: ["drive", "The transmission has a little seep."],
    shows: "condition",
  },
  // originality
  {
    first: ["opening", "It's a numbers matching car."],
    second: ["engine-bay", "This is a replacement block, correct type but not the first one."],
    shows: "originality",
  },
  {
    first: ["opening", "Still has the engine it was born with."],
    second: ["documents", "Invoice for the crate motor that's in it."],
    shows: "originality",
  },
  {
    first: ["driver-side", "This is all original paint."],
    second: ["closing", "It's had a respray some years back."],
    shows: "originality",
  },
  { first: ["front", "That's the original windshield."], second: ["cabin", "Windshield was replaced last year."], shows: "originality" },
  {
    first: ["cabin", "The seats have never been recovered."],
    second: ["documents", "Here's the bill, the seats were reupholstered in 2004."],
    shows: "originality",
  },
  { first: ["cabin", "The carpet's original."], second: ["closing", "The carpets are brand new."], shows: "originality" },
  {
    first: ["passenger-side", "This quarter panel is the factory one, never been off."],
    second: ["closing", "The passenger quarter panel was replaced."],
    shows: "originality",
  },
  { first: ["cabin", "He kept the stock dash in it."], second: ["drive", "The dash came out of a 55 truck."], shows: "originality" },
  // hedge
  {
    first: ["opening", "It's the original engine."],
    second: ["engine-bay", "I believe it's the original engine, I couldn't swear to it."],
    shows: "hedge",
  },

  // both hold
  { first: ["driver-side", "Discs up front."], second: ["underside", "Drums at the back."], shows: null },
  { first: ["opening", "It came with drum brakes at the front."], second: ["underside", "It's got discs at the front now."], shows: null },
  { first: ["rear", "The red one behind it has an automatic."], second: ["drive", "Push the clutch in, first gear."], shows: null },
  { first: ["cabin", "If it was me I'd put a vinyl top on it."], second: ["roof", "There's no vinyl top."], shows: null },
  { first: ["cabin", "You could order it with air conditioning."], second: ["engine-bay", "No air on this one."], shows: null },
  { first: ["driver-side", "This door's got a ding."], second: ["passenger-side", "No dings on this side."], shows: null },
  { first: ["front", "The bumper's been rechromed."], second: ["rear", "This bumper has never been touched."], shows: null },
  { first: ["cabin", "The front seats were recovered."], second: ["cabin", "The back seat is the one it came with."], shows: null },
  { first: ["cabin", "Seats are cloth."], second: ["drive", "The steering wheel is leather."], shows: null },
  { first: ["opening", "It's red."], second: ["engine-bay", "The firewall's still green in here."], shows: null },
  { first: ["opening", "It's blue with a gray roof."], second: ["roof", "The roof's gray."], shows: null },
  { first: ["cabin", "Dash has no cracks."], second: ["drive", "There's a scratch on the dash."], shows: null },
  { first: ["underside", "Transmission pan is dry."], second: ["engine-bay", "The oil pan has a little weep."], shows: null },
  { first: ["cabin", "No radio in it."], second: ["closing", "Larry turned the radio on, sorry about that."], shows: null },
  { first: ["cargo", "The spare is a bias ply."], second: ["driver-side", "The tires are radials."], shows: null },
  { first: ["driver-side", "Wheels are alloy."], second: ["cargo", "The spare is a plain steel wheel."], shows: null },
  { first: ["front", "Windshield's been replaced."], second: ["rear", "The back glass is original."], shows: null },
  { first: ["driver-side", "The base model had the steel wheels."], second: ["passenger-side", "These wheels are alloy."], shows: null },
  {
    first: ["engine-bay", "It's a points distributor, no sorry, electronic."],
    second: ["drive", "Electronic ignition so it fires right up."],
    shows: null,
  },
  { first: ["opening", "The owner had a convertible with no air."], second: ["drive", "Air's ice cold."], shows: null },
  { first: ["passenger-side", "Carpet's clean, the mats are stained."], second: ["cabin", "No stains on the carpet."], shows: null },
  { first: ["drive", "Run it up on the rack."], second: ["underside", "That's a steering box."], shows: null },
  { first: ["cabin", "Manual seat on the passenger side."], second: ["drive", "It's an automatic."], shows: null },
  { first: ["engine-bay", "The automatic choke works."], second: ["drive", "Clutch is light."], shows: null },
  { first: ["front", "Hood's a repaint."], second: ["driver-side", "The door is original paint."], shows: null },
  { first: ["engine-bay", "The fan clutch is new."], second: ["drive", "It's an automatic so just steer."], shows: null },
  { first: ["cabin", "It's an air bag car."], second: ["engine-bay", "No air conditioning."], shows: null },
  { first: ["opening", "The seller says it's the original engine."], second: ["engine-bay", "New alternator on the engine."], shows: null },
  { first: ["underside", "There's surface rust on the exhaust."], second: ["driver-side", "No rust on this rocker."], shows: null },
  { first: ["cabin", "Headliner's tight, no sag."], second: ["closing", "There's a little mark on the visor."], shows: null },
  { first: ["cargo", "Spare's never been down."], second: ["closing", "No spare keys unfortunately."], shows: null },
  { first: ["engine-bay", "The battery's new."], second: ["documents", "Original battery warranty card is here."], shows: null },
];
