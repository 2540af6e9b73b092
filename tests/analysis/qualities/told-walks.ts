import type { ZoneName } from "../../../shared-types/index.ts";

/** A walk round an invented vehicle: what is said in each zone. Trade terms and numbers are real. */
export interface ToldWalk {
  readonly name: string;
  readonly told: readonly (readonly [zone: ZoneName, says: string])[];
  /** Kind and topic of every conflict that the words without numbers make. */
  readonly shows: readonly string[];
}

export const toldWalks: readonly ToldWalk[] = [
  {
    name: "convertible with a later engine, nothing to show",
    told: [
      [
        "opening",
        "Hey folks, Ray with Cottonwood Motors. Today it's a 1966 convertible, white over red, with the 289 and a four speed. Not a numbers car, I'll tell you that right now, the motor's a later 289 out of a 68, but it's the right size.",
      ],
      [
        "front",
        "Up front, the bumper's new, reproduction, and it's a good one. Grille's original, you can see a little pitting. Hood's the factory hood, been repainted with the rest of it. Windshield is new, it's got the date right there. One headlight's a halogen, the other one's a sealed beam, I've got the mate for it.",
      ],
      [
        "driver-side",
        "Fender's a replacement, the passenger one's the original. Door's solid, no rust in the bottom, which is where they go. There's a ding in the quarter here. Wheels are the styled steel, fourteens, tires are radials, the white line ones. This one came with bias plies and fourteen inch hub caps, and the hub caps are in the trunk. Behind there you see a disc, it's been converted, they were drums.",
      ],
      [
        "rear",
        "Back bumper's been rechromed. Dual exhaust. Tail lights, one lens has a crack, I've got a new lens in a box. Trunk lid's straight.",
      ],
      [
        "cargo",
        "Trunk floor's got one patch over here on the right, right by the drop off, they did a nice job. Spare's a radial too. Jack's there.",
      ],
      [
        "passenger-side",
        "This side, fender's original like I said, no filler. Door's got a chip on the edge. Quarter's had a patch panel put on the bottom. Wheels, same, one of them's got a scratch.",
      ],
      ["roof", "Top's a white power top, it's new, with the glass back window. Goes up and down fine."],
      [
        "cabin",
        "Inside, red vinyl, the fronts have been recovered, backs are original. Dash pad's new. Carpet's new. Console's out of a 67. It's got the AM radio, works, and a hidden stereo in the glove box. No air, never had it, though you could order it. Manual shift, clutch is nice and light. Power steering, manual brakes, no I take that back, it's power brakes, they put a booster on with the discs.",
      ],
      [
        "engine-bay",
        "Under the hood, 289, four barrel, aluminum intake, electronic ignition, it'd have had points. No leaks up here, it's dry. Radiator's a three row brass unit. The fan's a clutch fan. Alternator's new. The guy had an AC compressor on it at one point and took it off, you can see the bracket.",
      ],
      ["drive", "Runs great. Into second, third. Steers nice for a box, it's not a rack. Brakes are good."],
      [
        "underside",
        "Frame rails are good. Floors have been replaced. Front discs, rear drums. Leaf springs in the back, coils up front. Little drip off the rear of the engine there, off the rear main. Trans is dry. Posi rear end, three twenty five gear. Exhaust is aluminized.",
      ],
      [
        "closing",
        "So, 66, white over red, 289 four speed. Not numbers matching but a real solid driver. My brother's got a blue one with an automatic and air if that's more your speed. Call Ray.",
      ],
    ],
    shows: [],
  },
  {
    name: "diesel estate, British, nothing to show",
    told: [
      [
        "opening",
        "Good afternoon, it's Fiona at Larkspur Cars. This is a 2009 estate, two litre diesel, automatic, one owner from new, and it's in silver with black leather.",
      ],
      [
        "front",
        "Bonnet's got a few stone chips as you'd expect. Bumper was resprayed last year after a car park nudge. Windscreen has been replaced, it's the heated one. Fog lights work. Headlights are xenons, the base model had halogens.",
      ],
      [
        "driver-side",
        "Driver's side, door's good, no dents. There's a small scratch on the rear door. Alloys are eighteens, this one's been refurbished. Tyres are all the same, summer tyres.",
      ],
      [
        "rear",
        "Tailgate's electric. Tow bar's detachable. Parking sensors. Small crack in the bumper just there, low down. No rust on the tailgate.",
      ],
      [
        "cargo",
        "Boot carpet's clean, load cover's there, dog guard. There's a space saver spare, not a full size one. A bit of a stain on the boot floor.",
      ],
      [
        "passenger-side",
        "Passenger side, no scratches on this side at all. Bit of kerbing on the front alloy. Rear one's fine. Wing mirror's been replaced.",
      ],
      [
        "cabin",
        "Black leather, heated seats in the front. Driver's bolster is a little creased, no tears. The carpets are good, mats are worn. Dash is fine, there's a bit of walnut trim. Satnav, the screen works. Panoramic roof, which the SE doesn't have. Climate control, blowing cold. Radio, CD player. Electric windows all round. The door handle on the passenger side's a bit scuffed.",
      ],
      [
        "engine-bay",
        "Diesel, common rail, timing belt and water pump done at ninety. No leaks. Battery's new. Slight weep on the power steering hose.",
      ],
      [
        "underside",
        "Nice and dry under here. Discs all round. Exhaust is original, slight surface rust on the back box. Springs are all good, front drop links are new. No corrosion on the subframe.",
      ],
      [
        "documents",
        "Full service history, two keys, handbook's here. It's never been written off, HPI clear. There was an advert that said it was a manual, that was a mistake by the website.",
      ],
      ["drive", "Pulls well, gearbox changes nicely. You do hear a slight rattle from the dash over bumps. Brakes are good."],
      ["closing", "So that's the estate. If you'd like a petrol one or a manual we've others coming. Thank you."],
    ],
    shows: [],
  },
  {
    name: "work truck without punctuation, nothing to show",
    told: [
      [
        "opening",
        "okay this is the 99 one ton flatbed dually with the seven three diesel five speed manual two wheel drive it's a work truck it's been worked",
      ],
      [
        "front",
        "grille guard on it hood's got some dents windshield's cracked on the passenger side we'll put one in it headlights are new bumper's steel it's bent on the end",
      ],
      [
        "driver-side",
        "driver door's got a dent and the paint's peeling fender's straight rust starting on the cab corner tires are about half they're commercials one's a different brand fuel tank's the aluminum one this side other side's steel",
      ],
      [
        "rear",
        "bed's an eleven foot steel flatbed with a wood deck the wood was replaced last year gooseneck hitch and a bumper pull lights are led the old ones kept breaking",
      ],
      [
        "passenger-side",
        "passenger side's better no dents on the door cab corner's solid this step's broke there's a tool box the lid's bent tires match except the inside dual",
      ],
      [
        "cabin",
        "it's a vinyl bench with a tear on the driver's side rubber floor no carpet dash is cracked ac works heater works the radio's gone somebody took it windows are crank up cruise works",
      ],
      [
        "engine-bay",
        "engine's never been out it's original to the truck turbo's been replaced with a new one injectors done at 200 batteries are new no blow by there's a leak at the valley pan a little fuel leak we're gonna fix it alternator's new vacuum pump",
      ],
      [
        "underside",
        "transmission's a rebuilt one clutch was done at the same time rear end's got the limited slip drum brakes in the back disc up front frame's good surface rust like any truck springs leafs front and rear one shackle's new exhaust's four inch straight pipe no muffler no cat",
      ],
      ["drive", "fires right up clutch is stiff first second third pulls hard brakes are alright it does pull a little left"],
      [
        "closing",
        "so that's the truck sixty five hundred the other one beside it is an automatic with the gas motor same money anyway come see us",
      ],
    ],
    shows: [],
  },
  {
    name: "electric hatchback, nothing to show",
    told: [
      [
        "opening",
        "Hi, Priya here from Greenfield Electric. It's a 2018 hatch, full electric, blue with a white roof, and it's the bigger battery.",
      ],
      [
        "front",
        "Charge flap's here, works. Front bumper has one scuff on the corner, the rest of it's tidy. Bonnet, original paint. There's a wee chip in the windscreen, passenger side, it's been filled.",
      ],
      [
        "driver-side",
        "No dents down this side. Alloys are clean on this side, no kerbing. Door mirror cap's been replaced, it's a slightly different blue.",
      ],
      [
        "rear",
        "Hatch, there's a reversing camera. The rear bumper's been painted, they said, and it's a good match. No tow bar, you can't tow with these.",
      ],
      ["cargo", "Two cables, the granny and the type two. There's no spare, just the kit. Carpet's clean back here."],
      ["passenger-side", "This side there's a dent in the rear door, and the front alloy's kerbed. The rear one isn't."],
      ["roof", "White roof, no sunroof on this one, no scratches."],
      [
        "cabin",
        "Cloth seats, black, with a leather steering wheel. No heated seats on this trim but you do get the heated wheel. Air con works, it'll precondition. Sat nav's there. A slight stain on the back seat. Headliner's clean.",
      ],
      [
        "engine-bay",
        "Nothing to see really, it's the motor and the inverter. Twelve volt battery was changed last year. The main pack's original, ninety one percent health.",
      ],
      [
        "underside",
        "Battery case is clean. Front discs have a bit of rust, it doesn't use them much. Drums at the rear. Front struts are original, one drop link's been replaced. Trailing arm's got surface rust.",
      ],
      [
        "closing",
        "So blue, white roof, one owner, original battery. The grey one behind me has the heat pump and the leather, this one doesn't. Bye now.",
      ],
    ],
    shows: [],
  },
  {
    name: "estate, British",
    told: [
      [
        "opening",
        "Right, morning, this is Derek at Chalk Lane Motors, and it's a big old estate today, 1988, two owners, seven seats, and it's the manual with the overdrive fifth, none of your automatic nonsense.",
      ],
      [
        "front",
        "Front end, bumper's had a knock at some point, been replaced, the grille's original. Bonnet's good, no stone chips to speak of. Windscreen, I can't find a mark on it.",
      ],
      [
        "passenger-side",
        "Coming down the near side. Front wing, original panel, original paint. There's a scab on the bottom of the front door, I'll show you, about the size of a ten pence piece. Back door's clean. Rear arch, solid as the day it left. Wheels are the fifteen inch alloys, this one's a bit kerbed.",
      ],
      ["rear", "The tailgate, they rot along the bottom, this one's had a new skin in 2015. Tow bar, works. Wiper works."],
      [
        "cargo",
        "Inside the boot, the carpet's tired, there's the seven seats, the two little ones fold up. Spare's under the floor, space saver.",
      ],
      [
        "driver-side",
        "Off side. Same again, no rust on this side at all. Door mirror's cracked. Wheels this side, no kerbing. Front wing here has been painted, you can see the overspray on the rubber.",
      ],
      [
        "cabin",
        "Cabin. Seats are cloth, blue cloth, driver's bolster is worn through. Dash, no cracks. Electric windows in the front, wind up in the back. There's a sunroof, manual crank, and it doesn't leak.",
      ],
      ["cabin", "Radio cassette, factory. No air con, they didn't fit it on these till the facelift."],
      [
        "engine-bay",
        "Under the bonnet, two litre, fuel injected, timing belt was done at ninety thousand, so that's been changed. Bit of a weep from the cam cover. Radiator's new.",
      ],
      [
        "underside",
        "Underneath now. Sills are original and they're sound. Little patch on the passenger floor, MOT work, neat enough. Exhaust is mild steel, a year old. Discs all round. Springs, back ones are new.",
      ],
      [
        "drive",
        "On the road. Gearbox is an automatic, sorry, I was driving one yesterday, this is the manual of course. Pulls up straight. Windscreen's got a tiny star down in the corner, now the sun's on it, you can see that.",
      ],
      ["closing", "So there we are, the estate, one owner from new practically, with the leather, ring me."],
    ],
    shows: ["material seat material", "condition front windshield condition"],
  },
  {
    name: "pickup, hurried",
    told: [
      [
        "opening",
        "Hey what's up y'all, Marcus here, Big Creek Auto, got a clean one, 2004 half ton, extended cab, 5.3, automatic, four wheel drive, 148 on the clock. It's a Texas truck so no rust, none, anywhere.",
      ],
      [
        "front",
        "Nose to tail, here's the front. Headlights are new. The bumper's got a dent right here in the middle. Hood, good, couple chips. The windshield was replaced last year.",
      ],
      [
        "driver-side",
        "Driver side. Fender's good. Door's good, no dings. Tires, they're all terrains, 265 70 17s, got maybe half on em. The wheels are factory aluminum wheels. Cab corner, look, that's where they all go on these and this one's solid. Bed side has one ding.",
      ],
      ["rear", "Tailgate works, power lock works. It's got a receiver hitch, seven pin. Backup camera? No, this didn't have one in 04."],
      ["cargo", "Bed has the drop in liner. I pulled it up and there's a rust hole in the front of the bed, I want you to see that."],
      [
        "passenger-side",
        "Passenger side, straight as an arrow, not a ding on it. This fender's been repainted. Running boards are aluminum.",
      ],
      [
        "cabin",
        "Inside, it's the gray leather, heated seats, driver's seat has a tear. Dash has got a crack over the gauges like every single one of em. Sunroof, works. AC's ice cold. Factory stereo's gone, it's got a touch screen in it.",
      ],
      [
        "engine-bay",
        "Under the hood, original motor, never been apart. It's got a new alternator, new water pump. No leaks. The battery's brand new.",
      ],
      [
        "underside",
        "Underneath, transfer case is dry, the transmission pan is leaking a little bit. Rear drums, front discs. Frame's solid, got some surface rust here on the crossmember. Leaf springs in the back, torsion bars up front.",
      ],
      [
        "drive",
        "On the road, shifts great, four wheel drive works. Brakes are strong, four wheel disc and it's got the ABS. Cloth seats are comfortable.",
      ],
      [
        "closing",
        "Alright, closing it up, ninety nine hundred bucks, the motor was replaced at a hundred thousand so you've got a fresh one, call me.",
      ],
    ],
    // "Rear drums, front discs", said below, and "four wheel disc" on the road.
    shows: [
      "originality engine originality",
      "condition frame condition",
      "condition cargo floor condition",
      "material seat material",
      "type rear brakes",
    ],
  },
  {
    name: "electric hatchback",
    told: [
      [
        "opening",
        "Hi folks, so this is a 2020 electric hatch, one owner, full service history, and it's in pearl white. Battery is the forty kilowatt hour one and it's the original pack.",
      ],
      [
        "front",
        "At the front, charge port here under the flap. Bonnet's got a couple of stone chips. Headlights are LED. Windscreen's fine, no chips no cracks.",
      ],
      ["driver-side", "Driver's side, not a mark on it. Alloys, seventeens, no kerbing anywhere."],
      ["rear", "Back of the car, parking sensors, reversing camera works. Bumper has been repaired, they told me, in 2022."],
      ["cargo", "Boot, the cables are here, type two and the granny lead, no spare, it's a can of goo."],
      [
        "passenger-side",
        "Passenger side, there's a scratch along the back door, it won't polish out. The alloy on the back here is kerbed, quite badly.",
      ],
      [
        "cabin",
        "Inside, half leather seats, black, no wear at all. Heated front seats, heated steering wheel. Sat nav, and it's got the heat pump. Glass roof. One key.",
      ],
      [
        "engine-bay",
        "Under the bonnet there's not a lot to see, twelve volt battery's been replaced. No heat pump on this one as it goes, it's the resistive heater.",
      ],
      ["underside", "On the lift, battery tray's clean, no scrapes. Rear drums on these, front discs are a bit rusty. Suspension's dry."],
      ["closing", "So, white, one owner, two keys, the pack was replaced under warranty last year so that's a bonus. Thanks for watching."],
    ],
    shows: ["originality traction battery originality", "presence heat pump"],
  },
  {
    name: "roadster, British, without punctuation",
    told: [
      [
        "opening",
        "hello and welcome its Nigel at Pond Farm Garage with a rather sweet little two seater a 1967 in old english white with red trim and its a new shell car so theres no rust in it at all",
      ],
      [
        "front",
        "starting at the front the bumper has been rechromed the grille is new proper lamps one piece front valance the bonnet is steel it was aluminium on the early ones and theres a tiny chip on the leading edge",
      ],
      [
        "passenger-side",
        "nearside now wire wheels seventy two spoke chrome the tyres are cross plies believe it or not so it looks right the sill is sound door fits beautifully theres a little bubble at the base of the rear wing",
      ],
      [
        "rear",
        "round the back twin exhausts boot rack it was on it when we bought it number plate lamps good bumper a bit tired this one hasnt been done",
      ],
      ["cargo", "boot floor solid original spare is a steel wheel theres no jack"],
      [
        "driver-side",
        "offside the wing is original the door has been reskinned wires again tyres as i say are radials so they steer nicely",
      ],
      [
        "cabin",
        "inside red leather never been touched this is how it left the works carpets are new dash is crackle black no splits overdrive switch on the dash and a wood rim wheel the hood is black vinyl good window",
      ],
      [
        "engine-bay",
        "under the bonnet eighteen hundred numbers matching as far as im aware twin carbs electronic ignition in the distributor a dynamo still which is nice",
      ],
      [
        "underside",
        "up on the ramp gearbox is the four speed no overdrive on this one you can see the plain housing leaf springs at the back lever arms floors have been replaced both sides well done too",
      ],
      [
        "documents",
        "build certificate says it was built in march 1967 pale primrose with black so its had a colour change and theres a bill here for a factory exchange engine in 1981 and one for retrimming the seats in 2004",
      ],
      ["closing", "so there it is white with red alternator conversion done wire wheels a lovely thing"],
    ],
    shows: [
      "condition passenger rear quarter panel condition",
      "originality engine originality",
      "originality seat originality",
      "presence overdrive",
      "type charging system",
      "type tire construction",
    ],
  },
];
