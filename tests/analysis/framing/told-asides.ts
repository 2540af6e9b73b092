/**
 * What a narrator says that is not about this vehicle today, beside what is. `aside` and `kept` name claims as "component attribute value".
 * Invented speech; what may stand where is common practice of the trade.
 */
export interface ToldAside {
  readonly says: string;
  /** Claims that must not be made of this vehicle as it is today, plainly: dropped, or told as former, or set apart by a circumstance. */
  readonly aside: readonly string[];
  /** Claims of this vehicle today that the aside must not swallow. */
  readonly kept: readonly string[];
}

export const toldAsides: readonly ToldAside[] = [
  // the one beside it, the next one, the one by the gate
  {
    says: "The red wagon beside it has the manual box and ninety thousand miles on it. This one is an automatic.",
    aside: ["transmission type manual", "odometer mileage 90000"],
    kept: ["transmission type automatic"],
  },
  {
    says: "That one over there by the fence is a two litre, it's done sixty thousand miles. Right, on this one you've got the leather seats.",
    aside: ["engine displacement 2", "odometer mileage 60000"],
    kept: ["seats material leather"],
  },
  {
    says: "We've got a cheaper one out the back with cloth seats and a five speed. Here you've got leather seats.",
    aside: ["seats material cloth", "transmission count 5"],
    kept: ["seats material leather"],
  },
  {
    says: "The white one across the yard's got a hundred and ten thousand miles on it and it's a manual. This here's the automatic.",
    aside: ["odometer mileage 110000", "transmission type manual"],
    kept: ["transmission type automatic"],
  },
  {
    says: "Don't mind the truck behind me, that's a gas motor with a four speed. Up here on the hood the paint is black.",
    aside: ["transmission count 4"],
    kept: [],
  },
  {
    says: "We have a blue one just come in, a diesel, forty thousand miles, six speed. Anyway the mileage on this is 71,204 miles.",
    aside: ["odometer mileage 40000", "transmission count 6"],
    kept: ["odometer mileage 71204"],
  },
  {
    says: "There's a sister to this one on the lot with 20 inch wheels and cloth. This one here has 18 inch wheels.",
    aside: ["wheel diameter 20", "seats material cloth"],
    kept: ["wheel diameter 18"],
  },
  {
    says: "His brother took the other one, the one with the five speed and the vinyl seats. This has leather seats.",
    aside: ["transmission count 5", "seats material vinyl"],
    kept: ["seats material leather"],
  },
  // ones that came and went
  {
    says: "The last one I had was a 2.5 with a manual gearbox. This is the automatic gearbox.",
    aside: ["engine displacement 2.5", "transmission type manual"],
    kept: ["transmission type automatic"],
  },
  {
    says: "I sold one of these last month with a hundred and forty thousand miles on it, cloth seats. This has leather seats.",
    aside: ["odometer mileage 140000", "seats material cloth"],
    kept: ["seats material leather"],
  },
  {
    says: "We had one in here last summer with drum brakes all round. This one has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "My dad's had the three speed and the bench seat. This one has bucket seats.",
    aside: ["transmission count 3", "seats type bench"],
    kept: ["seats type bucket"],
  },
  {
    says: "A friend of mine has one with a 454 in it and it drinks fuel. The brakes are disc brakes.",
    aside: ["engine displacement 454"],
    kept: ["brakes type disc"],
  },
  {
    says: "My first car was one of these, a 1971, with the 250 cubic inch engine. This one is the 350 cubic inch engine.",
    aside: ["vehicle year 1971", "engine displacement 250"],
    kept: ["engine displacement 350"],
  },
  {
    says: "I learned to drive in one of these with a three speed. The seats are vinyl.",
    aside: ["transmission count 3"],
    kept: ["seats material vinyl"],
  },
  {
    says: "A fella down the road's got one with two hundred thousand miles on it still going. The seats are leather.",
    aside: ["odometer mileage 200000"],
    kept: ["seats material leather"],
  },
  {
    says: "I've owned three of these, one had the 302 and a four speed. The seats are vinyl.",
    aside: ["engine displacement 302", "transmission count 4"],
    kept: ["seats material vinyl"],
  },
  // other engines, grades, years, markets
  {
    says: "They did a two litre as well but this is the 2.5 litre.",
    aside: ["engine displacement 2"],
    kept: ["engine displacement 2.5"],
  },
  {
    says: "You could have the 1.6 or the two litre, this is the two litre diesel.",
    aside: ["engine displacement 1.6"],
    kept: ["engine displacement 2"],
  },
  {
    says: "There was a 3.0 litre too, thirsty thing. This has the 2.2 litre diesel.",
    aside: ["engine displacement 3"],
    kept: ["engine displacement 2.2"],
  },
  {
    says: "The smaller engine was a 1.4 litre and you don't want it. This is the 1.8 litre.",
    aside: ["engine displacement 1.4"],
    kept: ["engine displacement 1.8"],
  },
  {
    says: "The bigger one's a six litre V8. This is the 4.8 litre.",
    aside: ["engine displacement 6"],
    kept: ["engine displacement 4.8"],
  },
  {
    says: "The sport models got the 18 inch wheels and this has the 16 inch wheels.",
    aside: ["wheel diameter 18"],
    kept: ["wheel diameter 16"],
  },
  {
    says: "The top of the range one comes with leather seats and nineteen inch wheels. This is cloth seats.",
    aside: ["seats material leather", "wheel diameter 19"],
    kept: ["seats material cloth"],
  },
  {
    says: "The SE had cloth seats, the one up from this gets the electric seats. The wheels are 17 inch wheels.",
    aside: ["seats material cloth"],
    kept: ["wheel diameter 17"],
  },
  {
    says: "In '72 they went to a three fifty small block with disc brakes. This one has drum brakes.",
    aside: ["brakes type disc"],
    kept: ["brakes type drum"],
  },
  {
    says: "After 1975 they all had disc brakes. This has drum brakes.",
    aside: ["brakes type disc", "vehicle year 1975"],
    kept: ["brakes type drum"],
  },
  {
    says: "Over in the States they got a 3.2 litre. This is the 2.8 litre.",
    aside: ["engine displacement 3.2"],
    kept: ["engine displacement 2.8"],
  },
  {
    says: "The half ton only had a five lug wheel. This is eight lug.",
    aside: ["wheel count 5"],
    kept: [],
  },
  {
    says: "Every other one you see has been converted to disc brakes, this one has drum brakes.",
    aside: ["brakes type disc"],
    kept: ["brakes type drum"],
  },
  {
    says: "It was more than the two litre but less than the V6, the seats are leather.",
    aside: ["engine displacement 2"],
    kept: ["seats material leather"],
  },
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
  // quiet counterparts: what sounds alike and is this vehicle today
  { says: "The one on this side is a 225/45R17 tire.", aside: [], kept: ["tire size 225/45R17"] },
  { says: "The other side's the same, 225/45R17 tires.", aside: [], kept: ["tire size 225/45R17"] },
  { says: "My wife drove it every day and the seats are leather.", aside: [], kept: ["seats material leather"] },
  { says: "He had it from new and the seats are leather.", aside: [], kept: ["seats material leather"] },
  { says: "If you look in here the seats are leather.", aside: [], kept: ["seats material leather"] },
  { says: "He had the seats done in leather.", aside: [], kept: ["seats material leather"] },
  { says: "It was ordered with the four speed and it still has the four speed manual.", aside: [], kept: ["transmission count 4"] },
  { says: "It came with a set of books and it has the 350 cubic inch engine.", aside: [], kept: ["engine displacement 350"] },
  { says: "This one's got the bigger engine, the 2.5 litre.", aside: [], kept: ["engine displacement 2.5"] },
  { says: "It's the later one with disc brakes.", aside: [], kept: ["brakes type disc"] },
  { says: "You'd never know it but the seats are leather.", aside: [], kept: ["seats material leather"] },
  { says: "I sold it to him in 2009 and the seats are leather.", aside: [], kept: ["seats material leather"] },
  { says: "Next to the battery there's the tag. It's a 350 cubic inch engine.", aside: [], kept: ["engine displacement 350"] },
  { says: "Everybody wants one of these with the 350 cubic inch engine and this has it.", aside: [], kept: [] },
  { says: "It has the four speed manual they all want.", aside: [], kept: ["transmission count 4"] },
  { says: "Price on it is £8,995, no reduction.", aside: [], kept: ["price price 8995"] },
  {
    says: "There's a V8 one in the next bay, that's the three and a half litre. This is the four cylinder.",
    aside: ["engine displacement 3.5"],
    kept: ["engine count 4"],
  },
  {
    says: "We also have a six litre gas two rows over, it's four grand cheaper. The seats are leather.",
    aside: ["engine displacement 6", "price price 4000"],
    kept: ["seats material leather"],
  },
  {
    says: "That gray coupe on the other lift has a 350 cubic inch engine and it's not running. This one has drum brakes.",
    aside: ["engine displacement 350"],
    kept: ["brakes type drum"],
  },
  {
    says: "A set of winter ones comes with it, 205/55R16, in the shed. The seats are leather.",
    aside: ["tire size 205/55R16"],
    kept: ["seats material leather"],
  },
  {
    says: "The five speed was the two litre. This has the 2.2 litre engine.",
    aside: ["transmission count 5", "engine displacement 2"],
    kept: ["engine displacement 2.2"],
  },
  {
    says: "Not to be mixed up with the grey one, which is on eighty thousand miles and has cloth seats. This one has leather seats.",
    aside: ["odometer mileage 80000", "seats material cloth"],
    kept: ["seats material leather"],
  },
  {
    says: "If you see the advert for the other one, that's the automatic with the cloth seats. This one is the manual gearbox.",
    aside: ["seats material cloth", "transmission type automatic"],
    kept: ["transmission type manual"],
  },
  {
    says: "There's one on the internet with thirty thousand miles on it and they want twenty two thousand dollars. This one has leather seats.",
    aside: ["odometer mileage 30000", "price price 22000"],
    kept: ["seats material leather"],
  },
  {
    says: "Buddy of mine in Tulsa runs one of these with a 454 and drum brakes. This has disc brakes.",
    aside: ["engine displacement 454", "brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "The one I drove to work in for nine years had the vinyl seats. These are leather seats.",
    aside: ["seats material vinyl"],
    kept: ["seats material leather"],
  },
  {
    says: "Mine at home's the manual with the cloth seats. This one is the automatic gearbox.",
    aside: ["transmission type manual", "seats material cloth"],
    kept: ["transmission type automatic"],
  },
  {
    says: "Same engine they put in the vans, but those had drum brakes. This has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "Where the cheaper model makes do with cloth seats, this has leather seats.",
    aside: ["seats material cloth"],
    kept: ["seats material leather"],
  },
  {
    says: "You'd have had to go to the next trim for leather seats. These are cloth seats.",
    aside: ["seats material leather"],
    kept: ["seats material cloth"],
  },
  {
    says: "A lot of folks swap in a five speed. This still has the four speed manual.",
    aside: ["transmission count 5"],
    kept: ["transmission count 4"],
  },
  {
    says: "Most of these came with vinyl seats. This has the leather seats.",
    aside: ["seats material vinyl"],
    kept: ["seats material leather"],
  },
  {
    says: "It could've been had with the six speed, nobody bothered. It has the four speed automatic.",
    aside: ["transmission count 6"],
    kept: ["transmission count 4"],
  },
  {
    says: "The brochure offered disc brakes for another forty pounds. It has drum brakes.",
    aside: ["brakes type disc"],
    kept: ["brakes type drum"],
  },
  {
    says: "Later on they fitted disc brakes to all of them. This has drum brakes.",
    aside: ["brakes type disc"],
    kept: ["brakes type drum"],
  },
  {
    says: "From 1974 on you got disc brakes. This has drum brakes.",
    aside: ["brakes type disc", "vehicle year 1974"],
    kept: ["brakes type drum"],
  },
  { says: "They tell you to run 35 pounds in them but it's fine. The tires are 225/45R17.", aside: [], kept: ["tire size 225/45R17"] },
  { says: "By rights it ought to have drum brakes. Somebody fitted disc brakes.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  {
    says: "In its first life it was an automatic. It's a manual gearbox today.",
    aside: ["transmission type automatic"],
    kept: ["transmission type manual"],
  },
  {
    says: "Up until 2015 it had a 305 cubic inch engine. Today it's a 350 cubic inch engine.",
    aside: ["engine displacement 305"],
    kept: ["engine displacement 350"],
  },
  {
    says: "He pulled the old 305 cubic inch engine and dropped in a 350 cubic inch engine.",
    aside: ["engine displacement 305"],
    kept: ["engine displacement 350"],
  },
  { says: "The drum brakes went in the skip. It has disc brakes.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  { says: "Gone are the vinyl seats, these are leather seats.", aside: ["seats material vinyl"], kept: ["seats material leather"] },
  {
    says: "Out went the automatic gearbox and in went a manual gearbox.",
    aside: ["transmission type automatic"],
    kept: ["transmission type manual"],
  },
  { says: "Threw away the steel wheels, these are alloy wheels.", aside: ["wheel material steel"], kept: ["wheel material alloy"] },
  {
    says: "It no longer has the vinyl seats. They're leather seats now.",
    aside: ["seats material vinyl"],
    kept: ["seats material leather"],
  },
  { says: "The original drum brakes are boxed up with it. It has disc brakes.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  {
    says: "And you get the four steel wheels thrown in. It's on alloy wheels.",
    aside: ["wheel material steel"],
    kept: ["wheel material alloy"],
  },
  {
    says: "I'd take it down to 205/55R16 tires if it stayed here. The tires are 225/45R17.",
    aside: ["tire size 205/55R16"],
    kept: ["tire size 225/45R17"],
  },
  {
    says: "Say you wanted a manual gearbox, that's easy done. It's an automatic gearbox.",
    aside: ["transmission type manual"],
    kept: ["transmission type automatic"],
  },
  { says: "Ideally it'd have leather seats. They're cloth seats.", aside: ["seats material leather"], kept: ["seats material cloth"] },
  { says: "Pity it hasn't got the leather seats. They're cloth seats.", aside: ["seats material leather"], kept: ["seats material cloth"] },
  {
    says: "Anything under two thirty seconds is a fail. The tires are at six thirty seconds.",
    aside: ["tire depth 2"],
    kept: ["tire depth 6"],
  },
  {
    says: "The book says change the belt at sixty thousand miles. The seats are leather.",
    aside: ["odometer mileage 60000"],
    kept: ["seats material leather"],
  },
  {
    says: "It's insured for thirty thousand dollars. The price is 19,500 dollars.",
    aside: ["price price 30000"],
    kept: ["price price 19500"],
  },
  {
    says: "He turned down twenty five thousand dollars for it. The price is 19,500 dollars.",
    aside: ["price price 25000"],
    kept: ["price price 19500"],
  },
  {
    says: "Replacement would run you four thousand dollars. The price is 19,500 dollars.",
    aside: ["price price 4000"],
    kept: ["price price 19500"],
  },
  { says: "We've been on this corner since 1952. It's a 1972 coupe.", aside: ["vehicle year 1952"], kept: ["vehicle year 1972"] },
  { says: "The garage that did it shut in 1999. It's a 1972 coupe.", aside: ["vehicle year 1999"], kept: ["vehicle year 1972"] },
  { says: "I was born in 1972 and it's a 1969 coupe.", aside: ["vehicle year 1972"], kept: ["vehicle year 1969"] },
  { says: "Mine is the only one you'll find with leather seats.", aside: [], kept: ["seats material leather"] },
  { says: "The next owner gets leather seats and a manual gearbox.", aside: [], kept: ["seats material leather"] },
  { says: "Everything else is as they built it, disc brakes all round.", aside: [], kept: ["brakes type disc"] },
  { says: "It's one of the later ones so it has the disc brakes.", aside: [], kept: ["brakes type disc"] },
  { says: "Same as the front, drum brakes on the rear.", aside: [], kept: ["brakes type drum"] },
  {
    says: "Over by the office there's a long wheelbase with the five speed and ninety thousand miles. Anyhow back to ours, leather seats.",
    aside: ["transmission count 5", "odometer mileage 90000"],
    kept: ["seats material leather"],
  },
  {
    says: "I've another of these due Tuesday, a manual gearbox with cloth seats. This one's an automatic gearbox.",
    aside: ["transmission type manual", "seats material cloth"],
    kept: ["transmission type automatic"],
  },
  {
    says: "Pal of mine bought the twin of this with the 3.0 litre. What you've got here is the 2.5 litre.",
    aside: ["engine displacement 3"],
    kept: ["engine displacement 2.5"],
  },
  {
    says: "Everybody on the forum swears they all came with a four speed. It's a five speed manual.",
    aside: ["transmission count 4"],
    kept: ["transmission count 5"],
  },
  {
    says: "My old man drove one that had three hundred thousand miles on it. The seats are leather.",
    aside: ["odometer mileage 300000"],
    kept: ["seats material leather"],
  },
  {
    says: "You see a lot of them on 20 inch wheels. This is on 17 inch wheels.",
    aside: ["wheel diameter 20"],
    kept: ["wheel diameter 17"],
  },
  { says: "The guy before him had drum brakes on it. It's got disc brakes now.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  { says: "Some clown had fitted a bench seat in there, it's bucket seats now.", aside: ["seats type bench"], kept: ["seats type bucket"] },
  {
    says: "It started out as an automatic and he made it a manual gearbox.",
    aside: ["transmission type automatic"],
    kept: ["transmission type manual"],
  },
  { says: "Came to us on 15 inch wheels. It's on 17 inch wheels now.", aside: ["wheel diameter 15"], kept: ["wheel diameter 17"] },
  { says: "When my granddad ran it it was on cross ply tires, it's on radial tires now.", aside: [], kept: ["tire type radial"] },
  {
    says: "There's some steel wheels go with it too. It has alloy wheels on.",
    aside: ["wheel material steel"],
    kept: ["wheel material alloy"],
  },
  {
    says: "A man could put a six speed behind this. It's a four speed manual.",
    aside: ["transmission count 6"],
    kept: ["transmission count 4"],
  },
  {
    says: "If I were keeping it, it'd get leather seats. It has cloth seats.",
    aside: ["seats material leather"],
    kept: ["seats material cloth"],
  },
  {
    says: "Don't let anybody sell you one with drum brakes. This has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "It'd be nice with a manual gearbox. It's an automatic gearbox.",
    aside: ["transmission type manual"],
    kept: ["transmission type automatic"],
  },
  {
    says: "You fail at one point six millimetres. These tires are at five millimetres.",
    aside: ["tire depth 1.6"],
    kept: ["tire depth 5"],
  },
  { says: "They're due off at two thirty seconds. The tires are at six thirty seconds.", aside: ["tire depth 2"], kept: ["tire depth 6"] },
  { says: "They sold for forty thousand new. The price is 19,500 dollars.", aside: ["price price 40000"], kept: ["price price 19500"] },
  {
    says: "He's into it for thirty thousand dollars. The price is 19,500 dollars.",
    aside: ["price price 30000"],
    kept: ["price price 19500"],
  },
  {
    says: "I'd have asked twenty four thousand dollars last spring. The price is 19,500 dollars.",
    aside: ["price price 24000"],
    kept: ["price price 19500"],
  },
  { says: "My grandfather opened this place in 1948. It's a 1972 coupe.", aside: ["vehicle year 1948"], kept: ["vehicle year 1972"] },
  { says: "Last time I saw one of these was 1998. It's a 1972 coupe.", aside: ["vehicle year 1998"], kept: ["vehicle year 1972"] },
  { says: "The listing I wrote said leather seats and I was wrong, cloth seats.", aside: [], kept: ["seats material cloth"] },
  {
    says: "Dad always reckoned the two litre was the better engine. This is the 2.5 litre.",
    aside: ["engine displacement 2"],
    kept: ["engine displacement 2.5"],
  },
  {
    says: "Had it been the 3.0 litre you'd be paying double. It's the 2.5 litre.",
    aside: ["engine displacement 3"],
    kept: ["engine displacement 2.5"],
  },
  {
    says: "Next to this we've got the same thing in cloth seats with a five speed. This has leather seats.",
    aside: ["seats material cloth", "transmission count 5"],
    kept: ["seats material leather"],
  },
  {
    says: "That black one's gone, that had leather seats. These are cloth seats.",
    aside: ["seats material leather"],
    kept: ["seats material cloth"],
  },
  {
    says: "The silver one in the corner's got the bigger engine, a 3.0 litre, and cloth seats. Coming back to ours, it has leather seats.",
    aside: ["engine displacement 3", "seats material cloth"],
    kept: ["seats material leather"],
  },
  {
    says: "We took one of these in part exchange last week, it had a manual gearbox. This is an automatic gearbox.",
    aside: ["transmission type manual"],
    kept: ["transmission type automatic"],
  },
  {
    says: "His dad still has his, that's a four speed with vinyl seats. The seats in here are leather.",
    aside: ["transmission count 4", "seats material vinyl"],
    kept: ["seats material leather"],
  },
  {
    says: "I looked at four of them before I bought this and two had drum brakes. This has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "They only fitted leather seats to the top model. These are cloth seats.",
    aside: ["seats material leather"],
    kept: ["seats material cloth"],
  },
  { says: "Compared with a two litre it's quiet. It's a 2.5 litre.", aside: ["engine displacement 2"], kept: ["engine displacement 2.5"] },
  {
    says: "It rolled in here wearing 15 inch wheels. It's on 17 inch wheels now.",
    aside: ["wheel diameter 15"],
    kept: ["wheel diameter 17"],
  },
  {
    says: "The previous owner ran it on 20 inch wheels. It's back on 17 inch wheels.",
    aside: ["wheel diameter 20"],
    kept: ["wheel diameter 17"],
  },
  { says: "He traded the vinyl seats for these leather seats.", aside: ["seats material vinyl"], kept: ["seats material leather"] },
  { says: "We swapped out the drum brakes, it has disc brakes.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  {
    says: "I've a set of 20 inch wheels at the shop if you want them. It's on 17 inch wheels.",
    aside: ["wheel diameter 20"],
    kept: ["wheel diameter 17"],
  },
  {
    says: "You might prefer a manual gearbox. It's an automatic gearbox.",
    aside: ["transmission type manual"],
    kept: ["transmission type automatic"],
  },
  { says: "A purist would want drum brakes. It has disc brakes.", aside: ["brakes type drum"], kept: ["brakes type disc"] },
  { says: "The police ones had a bench seat. This has bucket seats.", aside: ["seats type bench"], kept: ["seats type bucket"] },
  { says: "Everybody expects vinyl seats. These are leather seats.", aside: ["seats material vinyl"], kept: ["seats material leather"] },
  {
    says: "If memory serves the coupe had drum brakes. This one has disc brakes.",
    aside: ["brakes type drum"],
    kept: ["brakes type disc"],
  },
  {
    says: "They'll pass down to two thirty seconds. The tires are at six thirty seconds.",
    aside: ["tire depth 2"],
    kept: ["tire depth 6"],
  },
  {
    says: "He spent nine thousand dollars on the paint. The price is 19,500 dollars.",
    aside: ["price price 9000"],
    kept: ["price price 19500"],
  },
  {
    says: "That lady's over there is a six speed. This is a five speed manual.",
    aside: ["transmission count 6"],
    kept: ["transmission count 5"],
  },
];
