import type { ToldAside } from "./told-aside.ts";

/** Other vehicles: in sight, gone, of kin, of other grades, years and markets. */
export const toldOfOthers: readonly ToldAside[] = [
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
];
