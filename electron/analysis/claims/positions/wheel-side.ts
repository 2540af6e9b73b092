import type { Speech } from "../../model.ts";

/** Where the steering wheel is. */
export type WheelSide = "left" | "right";

const britishWords =
  /^(?:nearside|offside|bonnet|boot|tyres?|windscreen|mot|mots|saloon|quid|gearbox|motorway|petrol|litres?|millimetres|keepers?|kerb|kerbed|sterling|v5|vat|grey|colour|aluminium)$/;
const americanWords =
  /^(?:hood|trunk|tires?|windshield|fender|fenders|rocker|y'all|bucks|dollars?|gas|freeway|interstate|color|gray|aluminum|liter)$/;

/** True where more of the words are British than American. */
export function soundsBritish(speech: Speech): boolean {
  let balance = 0;
  speech.tokens.forEach((token, at) => {
    const next = speech.tokens[at + 1]?.word;
    if (britishWords.test(token.word) || ((token.word === "near" || token.word === "off") && next === "side") || token.text.startsWith("£"))
      balance++;
    else if (americanWords.test(token.word) || token.text.startsWith("$")) balance--;
  });
  return balance > 0;
}

/** The hand the vehicle drives on: as said, else as the narrator's English suggests. */
export function wheelSideOf(speech: Speech): WheelSide {
  for (const [at, token] of speech.tokens.entries()) {
    const next = speech.tokens[at + 1]?.word;
    if ((token.word === "right" || token.word === "left") && next === "hand" && /^drive/.test(speech.tokens[at + 2]?.word ?? ""))
      return token.word;
    if (token.word === "rhd") return "right";
    if (token.word === "lhd") return "left";
  }
  return soundsBritish(speech) ? "right" : "left";
}
