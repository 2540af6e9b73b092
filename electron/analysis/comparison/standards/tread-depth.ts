import { convert } from "../../vocabulary/units.ts";
import { type RemarkDraft, remarkOf } from "../conflict-of.ts";
import { positionsMeet } from "../slots/positions.ts";
import { claimWords, moment } from "../wording.ts";
import type { StandardRule } from "./rule.ts";

/** Common US minimum for passenger tires, and the UK's 1.6 mm. */
const usMinimum32nds = 2;
const ukMinimumMm = 1.6;

export const treadBelowLimit: StandardRule = {
  name: "tread-below-limit",
  source:
    "2/32 in: state rules such as COMAR 11.14.05.05, and 49 CFR 393.75(c) for commercial vehicles; 1.6 mm: UK Construction and Use Regulations 1986; local law decides",
  find: (claims) => {
    const remarks: RemarkDraft[] = [];
    const praised = claims.of("tire", "condition").filter((claim) => claim.value === "good");
    for (const claim of claims.of("tire", "depth")) {
      if (typeof claim.value !== "number") continue;
      const unit = claim.unit ?? "32nds";
      const thirtySeconds = convert(claim.value, unit, "32nds");
      const millimetres = convert(claim.value, unit, "mm");
      if (thirtySeconds === undefined || millimetres === undefined) continue;
      const underUk = millimetres < ukMinimumMm;
      if (thirtySeconds > usMinimum32nds && !underUk) continue;
      const praise = praised.filter(
        (good) => good.position === null || claim.position === null || positionsMeet(good.position, claim.position),
      );
      const limit = thirtySeconds < usMinimum32nds ? "below 2/32 in" : "at 2/32 in, the common US minimum, and below 1.6 mm";
      const called = praise[0] ? ` and is called good at ${moment(praise[0].start)}` : "";
      remarks.push(
        remarkOf({
          topic: "tread depth",
          why: `The tread of ${claimWords(claim)} (${millimetres.toFixed(2)} mm) at ${moment(claim.start)} is ${limit}${called}; local law decides.`,
          rule: "tread-below-limit",
          claims: [claim, ...praise],
        }),
      );
    }
    return { conflicts: [], remarks };
  },
  example: {
    finds: "remark",
    claims: [
      { component: "tire", attribute: "depth", value: 2, unit: "32nds", position: "rear" },
      { component: "tire", attribute: "condition", value: "good", position: "all" },
    ],
    quiet: [
      [{ component: "tire", attribute: "depth", value: 3, unit: "32nds", position: "rear" }],
      [{ component: "tire", attribute: "depth", value: 1.7, unit: "mm", position: "rear" }],
    ],
  },
};
