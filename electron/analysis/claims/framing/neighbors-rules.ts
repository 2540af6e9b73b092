import type { FrameRule } from "./frame-rule.ts";

const otherVehicle = { subject: "other-vehicle" } as const;

/** Vehicles of those who talk about theirs, and of those who would trade one in; radios that play beside the camera. Common practice. */
export const neighborsRules: readonly FrameRule[] = [
  {
    name: "one that somebody compares",
    meaning: otherVehicle,
    reach: "sentence",
    phrases: [
      "<kin>/<someone>/owner/customer with a/an/the/his/her ..1 # ..1 litre/liter/cc/cylinder/v6/v8/speed/one/door",
      "<kin>/<someone>/owner/customer with a/an/the/his/her diesel/petrol/automatic/auto/manual/convertible/coupe/estate/wagon/hybrid",
      "<kin>/pal/bloke/other 's has/had/got/does/runs/only # ",
      "my/his/her/our other half/missus/pal/lad/boy/mate/buddy 's/has/had got? a/an/the/one/his/hers",
      "my/his/her/our other half/missus/pal/lad/boy/mate/buddy has/had/runs/drives/bought a/an/the/one",
      "my/his/her/our <kin>/pal/mate/buddy/missus runs/ran #",
      "followed a/my/our <kin>/pal 's",
      "<kin>/pal/somebody/someone 's over the",
      "<kin>/<someone>/client/buyer/dealer 's with a/the/his/her",
      "my/his/her/our <kin> 's is/was a/an/the/one/his/hers",
      "that 's/was the one indoors/outside/yonder/upstairs/inside/next/out",
      "other one we/i/they had/sold/did/got",
      "the other one ..1 had/has/did the/a/an",
      "that 's a/my/our customer/neighbor/neighbour/friend/mate 's",
    ],
    example: {
      says: "It has the two litre. A friend with the three litre says his pulls harder. The seats are leather.",
      framed: "three litre says his pulls harder",
      free: "leather",
    },
    quiet: [
      "The owner with the folder kept every bill.",
      "My mate did the brakes on it.",
      "That's a customer favorite.",
      "The man with the two keys left.",
      "My buddy has looked at it.",
    ],
  },
  {
    name: "one across the shop",
    meaning: otherVehicle,
    reach: "until-return",
    phrases: [
      "the/that <color> car/truck/van/wagon/coupe/sedan/saloon/convertible/roadster/pickup/estate/hatch ..1 over/out there/yonder/here",
      "the/that <color>? car/truck/van/wagon/coupe/sedan/saloon/convertible/roadster/pickup/estate that 's not for sale",
    ],
    example: {
      says: "The blue coupe over there with the flames has the five speed. This one has the four speed.",
      framed: "has the five speed",
      free: "four speed",
    },
    quiet: ["The blue one over there is the washer hose.", "We put the car over there to film it."],
  },
  {
    name: "what is traded in",
    meaning: otherVehicle,
    reach: "clause",
    phrases: [
      "take/have/want/buy/consider your ..2 in part/trade/on/against",
      "take/have/want/buy your old? diesel/petrol/car/truck/van/<vehicle>/automatic/manual",
      "i 'd/would even? have/take a/an diesel/petrol/automatic/manual/convertible/van/boat",
      "we 'd/would/'ll even? have/take a/an diesel/petrol/automatic/manual/convertible/van/boat",
      "part ex/exchange ..2 a/an/your/any ..1 <vehicle>/diesel/petrol",
      "trade in your/a/an",
      "swap/swapped/trade/traded it? for a/an ..2 car/truck/van/wagon/coupe/roadster/diesel/petrol/automatic/manual/camper/boat",
    ],
    example: { says: "It is all electric. I can't take your diesel in part ex.", framed: "your diesel", free: "electric" },
    quiet: ["You can take your time with this car.", "They swapped it for a new one in 2012.", "Have your mechanic look at the car."],
  },
  {
    name: "a radio that plays beside the camera",
    meaning: otherVehicle,
    reach: "clause",
    phrases: [
      "tractor/shop/workshop/office/kitchen/phone radio/stereo/speaker/music",
      "<someone>/<kin> 's radio/stereo/music/phone",
      "radio/music/stereo in the shop/workshop/garage/office/barn/back",
      "turn that radio/music down/off",
      "is and his/her radio/music",
    ],
    example: { says: "There's no radio in it. That's the tractor radio over there.", framed: "tractor radio", free: "no radio" },
    quiet: ["The radio works.", "It has the original radio.", "The owner's radio code is on a card."],
  },
];
