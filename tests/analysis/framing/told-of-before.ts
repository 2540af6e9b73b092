import type { ToldAside } from "./told-aside.ts";

/** What there was before, what goes with it, what could be, limits, money and years of other things. */
export const toldOfBefore: readonly ToldAside[] = [
  // before today, and where parts came from
  {
    says: "It had a 283 in it when he got it. Now there's a 350 cubic inch engine in there.",
    aside: ["engine displacement 283"],
    kept: ["engine displacement 350"],
  },
  {
    says: "It was a column shift three speed from new, now it's a four speed manual.",
    aside: ["transmission count 3"],
    kept: ["transmission count 4"],
  },
  {
    says: "The seats come off a 1994 truck, and they are cloth seats.",
    aside: ["vehicle year 1994", "seats year 1994"],
    kept: ["seats material cloth"],
  },
  {
    says: "That engine came out of a 1998 van. The heads are aluminum.",
    aside: ["vehicle year 1998"],
    kept: [],
  },
  {
    says: "It used to have drum brakes up front, it has disc brakes there now.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "It was silver originally and then my uncle painted it blue.",
    aside: ["paint color silver"],
    kept: [],
  },
  {
    says: "Before the swap it ran an automatic. It's a manual now.",
    aside: ["transmission type automatic"],
    kept: ["transmission type manual"],
  },
  {
    says: "We took the 15 inch wheels off it and put these 17 inch wheels on.",
    aside: ["wheel diameter 15"],
    kept: ["wheel diameter 17"],
  },
  {
    says: "It was wearing 205/55R16 tires when it came in. The tires are 225/45R17 now.",
    aside: ["tire size 205/55R16"],
    kept: ["tire size 225/45R17"],
  },
  {
    says: "The old tires were 205/55R16 and they were shot. It has 225/45R17 tires today.",
    aside: ["tire size 205/55R16"],
    kept: ["tire size 225/45R17"],
  },
  {
    says: "When I bought this it had sixty one thousand miles. It shows 64,310 miles today.",
    aside: ["odometer mileage 61000"],
    kept: ["odometer mileage 64310"],
  },
  {
    says: "it had a set of vinyl seats in it from some sedan before we got it, the seats are leather",
    aside: ["seats material vinyl"],
    kept: ["seats material leather"],
  },
  // a second set, and what goes with it
  {
    says: "There's a set of winter tires that come with it, 205/55R16 on steel wheels. The ones on it are 225/45R17.",
    aside: ["tire size 205/55R16", "wheel material steel"],
    kept: ["tire size 225/45R17"],
  },
  {
    says: "I've got the original steel wheels in the garage, they go with it. It's on alloy wheels.",
    aside: ["wheel material steel"],
    kept: ["wheel material alloy"],
  },
  {
    says: "He's got a second set of wheels, eighteens, you can have them for five hundred. The wheels on it are 16 inch wheels.",
    aside: ["wheel diameter 18", "price price 500"],
    kept: ["wheel diameter 16"],
  },
  {
    says: "The snow tires are in the shed, they're 195/65R15. The tires on the car are 205/55R16.",
    aside: ["tire size 195/65R15"],
    kept: ["tire size 205/55R16"],
  },
  {
    says: "The factory iron manifold is in a box, it comes with the car. That's an aluminum intake.",
    aside: ["engine material iron", "fuel-system material iron"],
    kept: [],
  },
  // what could be, what you'd do
  {
    says: "If you wanted you could put a set of 20 inch wheels on. It's got the 17 inch wheels.",
    aside: ["wheel diameter 20"],
    kept: ["wheel diameter 17"],
  },
  {
    says: "I'd be running 35 inch tires on it myself. The tires are 265/70R17.",
    aside: ["tire diameter 35"],
    kept: ["tire size 265/70R17"],
  },
  {
    says: "It wants a set of 205/55R16 tires putting on it. The wheels are alloy wheels.",
    aside: [],
    kept: ["wheel material alloy"],
  },
  {
    says: "A five speed swap would wake it up. It has the three speed automatic.",
    aside: ["transmission count 5"],
    kept: ["transmission count 3"],
  },
  {
    says: "Stick a supercharger on it and it'd be a 500 horsepower car. It has 300 horsepower.",
    aside: ["engine power 500"],
    kept: ["engine power 300"],
  },
  {
    says: "You don't want the one with the 3.0 litre. The seats are leather.",
    aside: ["engine displacement 3"],
    kept: ["seats material leather"],
  },
  {
    says: "Always ask for the one with the leather seats. These are cloth seats.",
    aside: ["seats material leather"],
    kept: ["seats material cloth"],
  },
  {
    says: "People think they're all automatics. This is a manual gearbox.",
    aside: ["transmission type automatic"],
    kept: ["transmission type manual"],
  },
  // limits, and what is new or by the book
  {
    says: "Front tires are at seven thirty seconds, you change them at four thirty seconds.",
    aside: ["tire depth 4"],
    kept: ["tire depth 7"],
  },
  {
    says: "Tread depth is five millimetres on the tires, the legal is one point six.",
    aside: ["tire depth 1.6"],
    kept: ["tire depth 5"],
  },
  {
    says: "They start out at eleven thirty seconds new and these are at eight thirty seconds.",
    aside: ["tire depth 11"],
    kept: ["tire depth 8"],
  },
  {
    says: "The warranty runs to a hundred thousand miles. The odometer shows 41,266 miles.",
    aside: ["odometer mileage 100000"],
    kept: [],
  },
  {
    says: "They want a belt every sixty thousand miles. This one shows 41,266 miles.",
    aside: ["odometer mileage 60000"],
    kept: ["odometer mileage 41266"],
  },
  {
    says: "These engines will do three hundred thousand miles if you change the oil. The odometer shows 141,266 miles.",
    aside: ["odometer mileage 300000"],
    kept: ["odometer mileage 141266"],
  },
  {
    says: "It's good for two hundred and forty miles on a charge. And the seats are leather.",
    aside: ["odometer mileage 240"],
    kept: ["seats material leather"],
  },
  {
    says: "He drove it twelve hundred miles to get it here. And the seats are leather.",
    aside: ["odometer mileage 1200"],
    kept: ["seats material leather"],
  },
  // money that is not the asking price
  {
    says: "We're asking 14,500 dollars for it. The paint job cost him eight thousand dollars.",
    aside: ["price price 8000"],
    kept: ["price price 14500"],
  },
  {
    says: "It's up at £8,995. It was £9,995 last month.",
    aside: ["price price 9995"],
    kept: ["price price 8995"],
  },
  {
    says: "The price is £8,995, down from £9,995.",
    aside: ["price price 9995"],
    kept: ["price price 8995"],
  },
  {
    says: "The price is £8,995 and you leave 500 pounds deposit.",
    aside: ["price price 500"],
    kept: ["price price 8995"],
  },
  {
    says: "Brand new this was a thirty five thousand pound car. The price is £8,995.",
    aside: ["price price 35000"],
    kept: ["price price 8995"],
  },
  {
    says: "Good ones make thirty thousand dollars at auction. The price is 19,500 dollars.",
    aside: ["price price 30000"],
    kept: ["price price 19500"],
  },
  {
    says: "He's got eleven thousand dollars in receipts. The price is 19,500 dollars.",
    aside: ["price price 11000"],
    kept: ["price price 19500"],
  },
  {
    says: "They wanted forty two thousand for the one in the city. The price is 19,500 dollars.",
    aside: ["price price 42000"],
    kept: ["price price 19500"],
  },
  // years of other things
  {
    says: "We've been selling cars here since 1961. It's a 1972 coupe.",
    aside: ["vehicle year 1961"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "This is a 1972 coupe. The radio is out of a 1985 sedan.",
    aside: ["vehicle year 1985"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "This is a 1972 coupe. There's a photo of it at the lake in 1978.",
    aside: ["vehicle year 1978"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "This is a 1972 coupe. He bought it in 1979 and married in 1981.",
    aside: ["vehicle year 1979", "vehicle year 1981"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "This is a 1972 coupe. It was last on the road in 1996.",
    aside: ["vehicle year 1996"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "My dad had a 1970. This is a 1972 coupe.",
    aside: ["vehicle year 1970"],
    kept: ["vehicle year 1972"],
  },
  {
    says: "This is a 1972 coupe, the front bumper is off a 1973 sedan.",
    aside: ["vehicle year 1973"],
    kept: ["vehicle year 1972"],
  },
  // adverts, and what was asked
  {
    says: "The old ad had it as a five speed. It's a six speed manual.",
    aside: ["transmission count 5"],
    kept: ["transmission count 6"],
  },
  {
    says: "Somebody on the internet said these all have drum brakes. It has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "A lady rang this morning asking was it the two litre. It's the 2.5 litre.",
    aside: ["engine displacement 2"],
    kept: ["engine displacement 2.5"],
  },
];
