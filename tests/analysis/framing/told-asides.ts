import { toldAlike } from "./told-alike.ts";
import { toldOfBefore } from "./told-of-before.ts";
import { toldOfOthers } from "./told-of-others.ts";

export const toldAsides = [...toldOfOthers, ...toldOfBefore, ...toldAlike];
