/**
 * The cautions that every screen and export shows, in one place so that no output can leave one out.
 * Sources: 16 CFR 455.1 (Used Car Rule), UCC 2-313 (express warranties), 29 CFR 1926.305 (raised loads are cribbed or blocked at once),
 * ANSI/ALI ALOIM (lifts are inspected, operators trained).
 */
export const cautions = {
  inspection:
    "This index repeats what was said and seen in the recording. It is not a mechanical inspection: brakes, tires, steering, fuel and structure are judged by a qualified technician on the vehicle.",
  tires: "Tire age and tread limits differ from place to place; local law decides.",
  legal:
    "Hints about claims are for review and are not legal advice; local law and the dealer's counsel decide. A spoken fact can become a warranty (UCC 2-313), and a dealer may not misstate a vehicle's condition (16 CFR 455.1).",
  underside:
    "Nobody goes under a vehicle that is not on a rated, locked lift or on stands. Footage from under a vehicle does not show that it was safely held.",
} as const;
