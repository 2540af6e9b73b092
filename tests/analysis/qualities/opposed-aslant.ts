import type { SentencePair } from "./opposed-sentences.ts";

/**
 * Contradictions of which one side is told aslant: by what is seen, felt or written on a bill. Beside each kind its counterpart, where both
 * hold. What the words mean is common practice of the trade.
 */
export const opposedAslant: readonly SentencePair[] = [
  // originality
  {
    first: ["engine-bay", "That's the same motor it rolled off the assembly line with, never been out."],
    second: ["documents", "There's a ticket in here from the machine shop, one rebuilt long block, installed, 2003."],
    shows: "originality",
  },
  {
    first: ["driver-side", "This door is the one that was hung on it at the factory."],
    second: ["documents", "Receipt from the salvage yard, one left front door, hundred and fifty dollars."],
    shows: "originality",
  },
  {
    first: ["cabin", "The carpet is what was glued in there when it was built."],
    second: ["documents", "And he's kept the bill for the carpet set, 1999, moulded, from the trim people."],
    shows: "originality",
  },
  {
    first: ["front", "Windscreen's the one it had from the factory, see the date mark."],
    second: ["documents", "There's an insurance job in here, replacement windscreen, 2019."],
    shows: "originality",
  },
  {
    first: ["underside", "Gearbox has never been apart, it's the one it was born with."],
    second: ["documents", "Invoice here says recon gearbox fitted at eighty thousand."],
    shows: "originality",
  },
  {
    first: ["opening", "It's still in its first coat of paint, every bit of it."],
    second: ["engine-bay", "If you look under the hood lip here you can see the old blue underneath, so somebody changed the color."],
    shows: "originality",
  },
  {
    first: ["opening", "The paint's never been touched, all factory."],
    second: ["driver-side", "There's overspray on the door rubber here and a hard line where they taped it."],
    shows: "originality",
  },
  {
    first: ["cabin", "Front seat covers are the ones the factory stitched."],
    second: ["documents", "Upholstery shop, two front seats re covered in matching vinyl, four hundred."],
    shows: "originality",
  },
  {
    first: ["opening", "It's got its original engine."],
    second: ["engine-bay", "The stamp on the block doesn't match the plate, this one came out of a seventy four."],
    shows: "originality",
  },
  {
    first: ["underside", "These floors are the metal it left the plant with."],
    second: ["documents", "Body shop, both floor pans cut out and new ones welded in, 2012."],
    shows: "originality",
  },
  {
    first: ["driver-side", "Wheels are the set it was delivered on."],
    second: ["documents", "And this is for the wheels, he got them off a breaker in Leeds in 2015."],
    shows: "originality",
  },
  {
    first: ["cabin", "The radio is the one that came in it."],
    second: ["drive", "The radio, that's a new unit made to look old, it does bluetooth."],
    shows: "originality",
  },
  {
    first: ["underside", "The battery pack's the one the car was built with."],
    second: ["documents", "The dealer put a new pack in under warranty in 2021."],
    shows: "originality",
  },
  // originality, both hold
  {
    first: ["engine-bay", "It's the engine it was born with."],
    second: ["documents", "Bill here for an engine oil and filter, and a new battery."],
    shows: null,
  },
  {
    first: ["driver-side", "This door's the original one."],
    second: ["passenger-side", "The door on this side's been replaced."],
    shows: null,
  },
  {
    first: ["opening", "The engine's the original one to the car."],
    second: ["documents", "The engine was rebuilt in 2004, here's the bill."],
    shows: null,
  },
  {
    first: ["underside", "The gearbox is original to it."],
    second: ["documents", "Gearbox oil changed, twenty pounds."],
    shows: null,
  },
  // condition
  {
    first: ["cabin", "I had the mats out and the floors are solid, both sides."],
    second: ["underside", "Under the driver's feet here you can see daylight."],
    shows: "condition",
  },
  {
    first: ["driver-side", "Rocker on this side is clean, not a bubble in it."],
    second: ["underside", "The rocker on the driver's side, I can push a screwdriver right through it."],
    shows: "condition",
  },
  {
    first: ["passenger-side", "Sills are sound, no rot."],
    second: [
      "underside",
      "This sill on the nearside, behind the jacking point, has been plated and it's going again, it's like a biscuit.",
    ],
    shows: "condition",
  },
  {
    first: ["front", "There isn't a chip or a crack in the windshield."],
    second: ["drive", "With the sun on it there's a little star right in front of me in the glass."],
    shows: "condition",
  },
  {
    first: ["cabin", "AC works great, blows cold."],
    second: ["drive", "I've had the AC on ten minutes and it's blowing warm, it'll want a recharge."],
    shows: "condition",
  },
  {
    first: ["cabin", "The headliner's perfect, nice and tight."],
    second: ["drive", "That flapping you hear is the headliner, it's come away at the back."],
    shows: "condition",
  },
  {
    first: ["cabin", "All the gauges work."],
    second: ["drive", "You'll notice the fuel gauge doesn't move, it's stuck on half."],
    shows: "condition",
  },
  {
    first: ["cargo", "The bed has never been used, not a scratch in it."],
    second: ["cargo", "Up against the front of the bed there's a big gouge where something slid."],
    shows: "condition",
  },
  {
    first: ["rear", "Back window in the top is clear as a bell."],
    second: ["drive", "The back window's gone yellow, you can't hardly see out of it."],
    shows: "condition",
  },
  {
    first: ["underside", "The frame is rust free, dry desert frame."],
    second: ["underside", "Well this frame rail back here flakes off in my hand."],
    shows: "condition",
  },
  {
    first: ["driver-side", "None of the wheels has a mark on it."],
    second: ["passenger-side", "This back wheel's had a kiss off a curb."],
    shows: "condition",
  },
  {
    first: ["cabin", "Seats are perfect, no rips anywhere."],
    second: ["cabin", "Driver's seat, the bolster's worn through to the foam."],
    shows: "condition",
  },
  {
    first: ["engine-bay", "Engine's dry as a bone, no leaks."],
    second: ["underside", "There's oil dripping off the back of the engine."],
    shows: "condition",
  },
  // condition, both hold
  {
    first: ["driver-side", "The door on this side is perfect."],
    second: ["passenger-side", "This door has a ding in it."],
    shows: null,
  },
  {
    first: ["cabin", "The floors are solid."],
    second: ["underside", "The exhaust has a hole in it."],
    shows: null,
  },
  {
    first: ["cabin", "The air conditioning works."],
    second: ["drive", "It's not very cold outside today, but the heater's nice."],
    shows: null,
  },
  {
    first: ["front", "No chips in the windshield."],
    second: ["passenger-side", "There's a chip on the edge of the door."],
    shows: null,
  },
  // presence
  {
    first: ["opening", "It's a two wheel drive, there's no four wheel drive on it."],
    second: ["underside", "That's your transfer case and there's the front driveshaft."],
    shows: "type",
  },
  {
    first: ["cargo", "There's no spare with it, just a can of foam."],
    second: ["underside", "And the spare's up here on its cable."],
    shows: "presence",
  },
  {
    first: ["opening", "It was never fitted with a tow bar."],
    second: ["rear", "There's the electrics for the trailer and the ball's in the boot."],
    shows: "presence",
  },
  {
    first: ["opening", "No sunroof, thank goodness."],
    second: ["cabin", "Wind this handle and the sunroof slides back."],
    shows: "presence",
  },
  {
    first: ["cabin", "No heater in it, never had one."],
    second: ["drive", "I've got the heater on and my toes are toasty."],
    shows: "presence",
  },
  // type
  {
    first: ["opening", "It's the automatic."],
    second: ["drive", "Clutch in, into first, and off we go."],
    shows: "type",
  },
  {
    first: ["opening", "Four speed manual."],
    second: ["drive", "Just the two pedals, pull it down into drive and away she goes."],
    shows: "type",
  },
  {
    first: ["driver-side", "Disc brakes all round."],
    second: ["underside", "You've got drums on the back here."],
    shows: "type",
  },
  {
    first: ["engine-bay", "Carburetor on top, a two barrel."],
    second: ["documents", "Bill here for six new injectors."],
    shows: "type",
  },
  {
    first: ["opening", "Runs on diesel."],
    second: ["engine-bay", "And I put new spark plugs and leads in it."],
    shows: "type",
  },
  // material
  {
    first: ["cabin", "Seats are leather."],
    second: ["documents", "The brochure has this trim ticked, it says leatherette upholstery."],
    shows: "material",
  },
  {
    first: ["front", "The hood is aluminum."],
    second: ["engine-bay", "Look, the magnet sticks to the hood, that's steel."],
    shows: "material",
  },
  // color
  {
    first: ["opening", "It's dark green."],
    second: ["documents", "On the logbook it says colour blue."],
    shows: "color",
  },
  {
    first: ["rear", "The top's black."],
    second: ["roof", "So here's the top, it's tan, it's a canvas one."],
    shows: "color",
  },
  // a second walk through the kinds
  {
    first: ["engine-bay", "It's the original engine to the car, no question."],
    second: ["documents", "Now the engine, I'd like to think it's the original one, but I couldn't swear to it."],
    shows: "hedge",
  },
  {
    first: ["opening", "The engine is the one it was born with."],
    second: ["documents", "As far as I can tell that's its own engine, but I wouldn't fight you over it."],
    shows: "hedge",
  },
  {
    first: ["opening", "It's all original paint."],
    second: ["documents", "The paint, I believe it's original, don't hold me to it."],
    shows: "hedge",
  },
  {
    first: ["engine-bay", "Original carburetor on there."],
    second: ["documents", "Invoice, one new four barrel carburetor, three hundred and ninety."],
    shows: "originality",
  },
  {
    first: ["front", "Grille's the original."],
    second: ["documents", "He bought a reproduction grille in 2016, here's the receipt."],
    shows: "originality",
  },
  {
    first: ["rear", "Bumper's the original one, never been off."],
    second: ["documents", "Bumpers, front and rear, rechromed, and the rear one's a replacement."],
    shows: "originality",
  },
  {
    first: ["cabin", "Dash is the one it left the works with."],
    second: ["cabin", "I'll be straight with you, this dash came out of another car."],
    shows: "originality",
  },
  {
    first: ["cargo", "The bed floor's the original wood."],
    second: ["documents", "There's a lumber yard ticket, the bed was done again in oak in 2010."],
    shows: "originality",
  },
  {
    first: ["roof", "Top's the original one, believe it or not."],
    second: ["documents", "New top fitted in 2015 by a trimmer in Bath."],
    shows: "originality",
  },
  {
    first: ["driver-side", "The door's never been off the truck."],
    second: ["cabin", "You can see the hinge bolts on the driver's door have been moved and there's yellow junkyard crayon on it."],
    shows: "originality",
  },
  {
    first: ["engine-bay", "The engine's original."],
    second: ["engine-bay", "New plugs, new leads, a new battery and a new radiator."],
    shows: null,
  },
  {
    first: ["cabin", "Seats are original."],
    second: ["documents", "Here's the bill for the seat belts, new ones, 2018."],
    shows: null,
  },
  {
    first: ["driver-side", "The wheels are original."],
    second: ["driver-side", "The tires are new, put on last month."],
    shows: null,
  },
  {
    first: ["cabin", "The dash is original."],
    second: ["cabin", "The dash pad's got a new clock in it."],
    shows: null,
  },
  {
    first: ["engine-bay", "Original engine."],
    second: ["documents", "The engine block heater was replaced in 2019."],
    shows: null,
  },
  {
    first: ["underside", "Original gearbox."],
    second: ["documents", "New clutch at sixty thousand."],
    shows: null,
  },
  {
    first: ["front", "Hood's original."],
    second: ["engine-bay", "The hood hinges are new."],
    shows: null,
  },
  {
    first: ["front", "Grille's perfect."],
    second: ["closing", "I should have said the grille's got a crack in it down at the corner."],
    shows: "condition",
  },
  {
    first: ["cabin", "Carpet's spotless."],
    second: ["cabin", "There's a burn in the carpet by the shifter."],
    shows: "condition",
  },
  {
    first: ["driver-side", "The quarter on this side is straight as an arrow."],
    second: ["rear", "From back here you can see a dent in the driver's side quarter."],
    shows: "condition",
  },
  {
    first: ["cabin", "The windows all work."],
    second: ["drive", "The passenger window won't go up, I'm holding it with my hand."],
    shows: "condition",
  },
  {
    first: ["engine-bay", "Radiator's dry, no leaks."],
    second: ["closing", "It's left a puddle of coolant, there's a leak at the radiator."],
    shows: "condition",
  },
  {
    first: ["underside", "No play in the steering."],
    second: ["drive", "The steering's got a good bit of play, you're sawing at it."],
    shows: "condition",
  },
  {
    first: ["cargo", "The boot floor's solid, no rust."],
    second: ["underside", "Look up here at the boot floor, it's rotted out in the corner."],
    shows: "condition",
  },
  {
    first: ["rear", "Tailgate works fine."],
    second: ["closing", "The tailgate won't stay shut, you've got to slam it."],
    shows: "condition",
  },
  {
    first: ["cabin", "The seats have no splits."],
    second: ["closing", "There is one split in the driver's seat, on the seam."],
    shows: "condition",
  },
  {
    first: ["cabin", "Radio works."],
    second: ["cabin", "The clock doesn't work."],
    shows: null,
  },
  {
    first: ["driver-side", "No rust on this side."],
    second: ["passenger-side", "There's some rust on the bottom of this door."],
    shows: null,
  },
  {
    first: ["cabin", "No cracks in the dash."],
    second: ["front", "There's a crack in the windshield."],
    shows: null,
  },
  {
    first: ["engine-bay", "No leaks up here."],
    second: ["underside", "There's a leak at the back of the transmission."],
    shows: null,
  },
  {
    first: ["cabin", "Front seats are perfect."],
    second: ["cabin", "The back seat's got a rip in it."],
    shows: null,
  },
  {
    first: ["front", "Headlights are clear."],
    second: ["rear", "One tail light's got a crack."],
    shows: null,
  },
  {
    first: ["driver-side", "This front wheel's perfect."],
    second: ["driver-side", "The back wheel's got some curb rash."],
    shows: null,
  },
  {
    first: ["cabin", "It has air conditioning."],
    second: ["drive", "No air bags in one this old."],
    shows: null,
  },
  {
    first: ["cargo", "No spare in here."],
    second: ["underside", "There's a spare key in a box on the frame."],
    shows: null,
  },
  {
    first: ["rear", "No tow bar."],
    second: ["documents", "It's rated to tow two thousand pounds."],
    shows: null,
  },
  {
    first: ["opening", "No sunroof on this."],
    second: ["roof", "My other one had a sunroof and it leaked."],
    shows: null,
  },
  {
    first: ["cabin", "There's no carpet, rubber floor."],
    second: ["cargo", "The trunk has carpet in it."],
    shows: null,
  },
  {
    first: ["driver-side", "Discs on the front."],
    second: ["underside", "Drums on the back."],
    shows: null,
  },
  {
    first: ["cabin", "Leather seats."],
    second: ["cabin", "The headliner's cloth and the door cards are vinyl."],
    shows: null,
  },
  {
    first: ["driver-side", "Alloy wheels."],
    second: ["cargo", "The spare's on a steel wheel."],
    shows: null,
  },
  {
    first: ["opening", "It's an automatic."],
    second: ["engine-bay", "It's got an automatic choke, and the fan clutch is new."],
    shows: null,
  },
  {
    first: ["opening", "Four speed manual."],
    second: ["cabin", "The owner's manual's in the glove box, and the windows are automatic."],
    shows: null,
  },
  {
    first: ["front", "Steel bumper."],
    second: ["front", "The grille is plastic."],
    shows: null,
  },
  {
    first: ["opening", "It's red."],
    second: ["cabin", "The seats are black."],
    shows: null,
  },
  {
    first: ["opening", "It's red with a white top."],
    second: ["roof", "Top's white vinyl."],
    shows: null,
  },
  {
    first: ["opening", "It's a six speed manual."],
    second: ["drive", "It changes itself, there's just the two pedals and a lever with a P on it."],
    shows: "type",
  },
  {
    first: ["cabin", "Manual windows, you wind them."],
    second: ["drive", "I'll put the window down, there's the switch, nice electric windows."],
    shows: "type",
  },
  {
    first: ["underside", "It's on coil springs at the back."],
    second: ["underside", "You can count the leaves on the back springs, there's five."],
    shows: "type",
  },
  {
    first: ["cabin", "The seats are leather."],
    second: ["closing", "The seats in this are that vinyl, so a wet rag's all you need."],
    shows: "material",
  },
  {
    first: ["opening", "It's silver."],
    second: ["documents", "Registration says the color is blue."],
    shows: "color",
  },
  {
    first: ["cabin", "The rear seats have never been sat in."],
    second: ["closing", "The back seat's got a cigarette burn in it about the size of a dime."],
    shows: "condition",
  },
  {
    first: ["passenger-side", "Not a dent on this side, sight down it."],
    second: ["closing", "I missed one, there's a ding low down on the passenger door."],
    shows: "condition",
  },
  {
    first: ["underside", "Floors are clean, original undercoat, no holes."],
    second: ["cabin", "Lift the mat on the passenger side and you can see the garage floor."],
    shows: "condition",
  },
  {
    first: ["engine-bay", "No oil leaks anywhere on this engine."],
    second: ["drive", "It does leave a spot of oil, the engine weeps at the front seal."],
    shows: "condition",
  },
  {
    first: ["cabin", "The heater's hot, works lovely."],
    second: ["drive", "The heater only blows cold, the matrix is blocked."],
    shows: "condition",
  },
  {
    first: ["rear", "Tail lights are perfect."],
    second: ["closing", "One tail light has a crack across the lens."],
    shows: "condition",
  },
  {
    first: ["roof", "Top's in perfect shape, no tears."],
    second: ["drive", "There's a little tear in the top over my head, I can see the sky."],
    shows: "condition",
  },
  {
    first: ["cabin", "The door cards are the ones it came with."],
    second: ["documents", "He had new door cards made in 2011."],
    shows: "originality",
  },
  {
    first: ["engine-bay", "The cylinder head has never been off."],
    second: ["documents", "Bill here for a reconditioned cylinder head."],
    shows: "originality",
  },
  {
    first: ["engine-bay", "It's still on the turbo it left the factory with."],
    second: ["documents", "Turbo renewed at eighty thousand, nine hundred pounds."],
    shows: "originality",
  },
  {
    first: ["underside", "Rear axle is the one it was built with."],
    second: ["documents", "Axle out of a breaker, fitted 2009."],
    shows: "originality",
  },
  {
    first: ["front", "Headlights are original to the car."],
    second: ["documents", "Pair of aftermarket headlights, two hundred dollars."],
    shows: "originality",
  },
  {
    first: ["driver-side", "This fender was born on this truck."],
    second: ["engine-bay", "From in here you can see this fender has a replacement part sticker on it."],
    shows: "originality",
  },
  {
    first: ["opening", "Numbers matching engine."],
    second: ["documents", "The title history says the engine was replaced under warranty at forty thousand."],
    shows: "originality",
  },
  {
    first: ["opening", "There's no air in it."],
    second: ["engine-bay", "There's your compressor with the belt on it."],
    shows: "presence",
  },
  {
    first: ["cabin", "It has no cruise."],
    second: ["drive", "I've set the cruise at seventy."],
    shows: "presence",
  },
  {
    first: ["cabin", "No sat nav in this one."],
    second: ["drive", "The sat nav wants me to turn left."],
    shows: "presence",
  },
  {
    first: ["opening", "It has a limited slip."],
    second: ["underside", "Spin one wheel and the other goes backwards, so it's an open diff."],
    shows: "type",
  },
  {
    first: ["engine-bay", "It runs points."],
    second: ["documents", "Electronic ignition conversion, eighty nine dollars."],
    shows: "type",
  },
  {
    first: ["opening", "It's a convertible with a power top."],
    second: ["roof", "You fold it by hand, it's a manual top."],
    shows: "type",
  },
  {
    first: ["cabin", "Power steering."],
    second: ["drive", "There's no power steering so it's heavy at a stop."],
    shows: "type",
  },
  {
    first: ["engine-bay", "Timing chain, so nothing to do."],
    second: ["documents", "Timing belt and tensioner at sixty thousand."],
    shows: "type",
  },
  {
    first: ["cabin", "The dash is real walnut."],
    second: ["closing", "That dash is plastic made to look like wood."],
    shows: "material",
  },
  {
    first: ["cabin", "Carpet's red."],
    second: ["closing", "The carpets in this are black."],
    shows: "color",
  },
  {
    first: ["engine-bay", "Radiator is an aluminum one."],
    second: ["underside", "The radiator's the brass one."],
    shows: "material",
  },
  {
    first: ["cabin", "Headliner's the one it was born with."],
    second: ["documents", "Headliner, supply and fit, three hundred."],
    shows: "originality",
  },
];
