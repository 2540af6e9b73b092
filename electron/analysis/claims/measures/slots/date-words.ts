/** What the years and dates of a vehicle, of its papers and of work on it share. */

export const notYear = /\bdollars?\b|\bbucks\b|\bmiles\b|\bpsi\b|\brpm\b|\bcubic\b|# odd\b/;
export const names =
  "january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|fall|autumn|winter";
/** What was done to a part, as the trade says it. */
export const work =
  "dressed|redressed|repair section in|repair panel in|put an? (?:\\w+ ){1,4}in|cut out|cut (?:the|those|them|it) (?:old )?(?:ones? )?out|stitched|grafted|patched in|painted|repainted|resprayed|sprayed|skinned|rechromed|re chromed|chromed|plated|redone|done|rebuilt|re built|restored|replaced|changed|renewed|overhauled|reupholstered|retrimmed|recovered|re covered|trimmed|fitted|installed|put in|put on|swapped|serviced|oil change|oil changed|refurbished|recored|supplying|fitting|painting|rebuilding|replacing|rewiring|changing|welded|patch|patched|let in|off of it|opened up|regrind|reground|machined|bored|new in|went in|changed over|converted|conversion|wired|rewired|inspected|undersealed|waxoyled|replated|re plated|replacement|repro|reproduction|pattern part|genuine panel|new panel|new skin|reskinned|re skinned|shot|refinished|recon|reconditioned|remanufactured|blasted|powder coated|galvanised|galvanized|regassed|re gassed|recharged|dipped|rustproofed|dyed|stitched up|straightened|put right|mended|repaired|had done|was had";

/** A month without a year dates no paper. */
export const withYear = (reading: { readonly value: number | string }): number | string | undefined =>
  /\d/.test(String(reading.value)) ? reading.value : undefined;
