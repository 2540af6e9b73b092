import { lastingComponents } from "../../lexicon/lasting-components.ts";
import type { About } from "../slot.ts";

/** Every part that is bought, fitted or mended by itself: a sum, a date or a mileage beside its name may be of that. */
export const partsWorkedOn: readonly About[] = [...lastingComponents, "tire", "spare"];

const figuresOfTheirOwn: ReadonlySet<About> = new Set(["engine", "fuel-system", "dash", "transmission", "electrical", "brakes", "wheel"]);

/** Those of them that no bare "four hundred" measures in another way: an engine's is its size, a carburetor's its flow. */
export const partsWithoutBareFigures: readonly About[] = partsWorkedOn.filter((part) => !figuresOfTheirOwn.has(part));
