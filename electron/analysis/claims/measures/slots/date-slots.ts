import type { Slot } from "../slot.ts";
import { notYear, withYear, work } from "./date-words.ts";

/** What a year may follow where nothing else says it is the vehicle's: not a name ("a Kestrel 2000"). */
const opensYear =
  /(?:^|[.]|\b(?:a|an|the|is|it's|this|that|from|so|of|car|truck|year|our|my|your|and|it|here|now|today|two|three|saloon|sedan|coupe|roadster|estate|wagon|pickup|hatchback|convertible|hardtop|van|one))$/;

/** Years and dates: of the vehicle, of parts, of papers, of work. A month beside the year is added by the reader. */
export const dateSlots = [
  {
    name: "year of the vehicle a part came from",
    component: "topic",
    part: "donor",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:out of|off of|off|from|donor was|came from|robbed from)(?: an?| the)$/,
        after: /^(?!when\b|and\b|model year)\w+/,
        unless: /\baway from\b|\bfrom the [^.]* years\b/,
        score: 1.25,
      },
    ],
    circumstance: "donor vehicle",
    example: { heard: "the steering column's out of a 1979 van", value: 1979 },
  },
  {
    name: "year of the engine, beside its size",
    component: "engine",
    part: null,
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      { before: /\b(?:got|has|with|had|have|runs)(?: a| an| the)$/, after: /^#(?! speed)/, score: 1.2 },

      {
        before: /\b(?:a|an|the|it's|got|with)$/,
        after:
          /^(?:\d{3}\b|(?:two|three|four|five) (?:\d+|oh|ten|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|\w+teen)\b|(?:big|small) block|motor|engine|block|flathead)/,
        unless: /\bdollars|\bspeed\b|\bdoor\b/,
        score: 1.2,
      },
      {
        before: /\b(?:motor|engine|block|heads?)(?:'s| is| was| down)?(?: as| from| cast in| dated| a| an| out of)+(?: an?)?$/,
        // What is from then is the bill.
        unless:
          /\b(?:receipts?|bills?|invoices?|paperwork|photos?|pictures?|work|ticket) (?:for|on|of|from) (?:the|that|this) (?:motor|engine|block|heads?) from/,
        score: 1.25,
      },
    ],
    example: { heard: "it's got a 1969 350 in it", value: 1969 },
  },
  {
    name: "year of the engine, by its numbers",
    component: "engine",
    part: null,
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    unless:
      /\btitle\b|\bregist|\bplate\b|\bmiles\b|\bdollars|\bpounds\b|\bdone\b|\brebuilt\b|\breplaced\b|\bsince\b|\bowned\b|\bbought\b|# (?:and|or) ~|\btires?\b|\bpaint\b/,
    cues: [
      {
        // "The motor, now. There's a number on the block and it's a forty eight."
        about: ["engine", "vin/engine number"],
        before:
          /\b(?:motor|engine|block|casting|cast|stamp|stamping|tag)\b.{0,110}\b(?:it's|it is|that's|so it's|might be|could be|may be|or else|say|make it|call it|be|as|down as|year|question mark|mark|or)(?: it's| either| maybe)?(?: an?| the)?$/,
        after: /^(?!(?:\w+ )?(?:car|truck|van|model|pickup|wagon)\b)/,
        zones: ["engine-bay", "documents", "underside", "closing"],
        score: 1.4,
      },
      {
        before:
          /\b(?:casting|cast|stamp|stamping|block|question mark|(?:engine|motor)(?:'s)? (?:number|tag|date|bill|year|code))\b.{0,110}\b(?:it's|it is|that's|might be|could be|may be|or else|call it|make it|question mark)(?: it's| either| maybe)? (?:an?|the)$/,
        after: /^(?!(?:\w+ )?(?:car|truck|van|model|pickup|wagon)\b)/,
        zones: ["engine-bay", "documents", "underside"],
        score: 1.2,
      },
      {
        before: /\b(?:motor|engine) (?:year|date)(?: is| question mark|,)*$/,
        score: 1.4,
      },
    ],
    example: { heard: "The engine, now. There's a number on the block, and it's a forty eight", value: 1948, zone: "documents" },
  },
  {
    name: "year of a part",
    component: "topic",
    part: null,
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\bit (?:was|is)(?: off)? an?$/,
        about: ["bumper", "lights", "seats", "engine", "transmission", "steering", "dash", "frame", "top", "final-drive", "wheel"],
        score: 1.1,
      },

      {
        before:
          /\b(?:lights|lamps|bumper|engine|motor|transmission|seats?|wheels|axle|frame|rails|box)(?: is| are| was|'s)(?: a| an| the| original| off a)*$/,
        score: 1.0,
      },
      { before: /\b(?:the original|original)$/, after: /^(?:rails|frame|motor|engine|block|chassis|body|seats|wheels)\b/, score: 1.1 },
    ],
    circumstance: "year of the part",
    example: { heard: "the tail lights are 1950", value: 1950 },
  },
  {
    name: "model year of the vehicle",
    component: "vehicle",
    part: null,
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    // "The motor, it's a 48 or else a 52": a year told of its engine, its axle, or a part off another.
    unless:
      /# '?\d\d # i\b(?! (?:think|guess|believe|reckon|mean))|\br #|\b(?:motor|engine|block|axle|gearbox) (?:year|number|code|casting)\b|\bnumber on the (?:block|motor|engine|axle|case)\b|\boff an? (?:later|earlier|newer|older)\b|\bor else\b|\btemperature\b|\btemp\b|\bcapacity\b|\busable\b|\bdegrees\b|\bvolts?\b|\bkilowatt|# (?:odd|usable|percent|degrees|across|out)\b|\bmile an hour\b|\bmph\b/,
    cues: [
      { before: /\b(?:this|the) (?:car|truck|van|bus|bike|coupe|wagon)(?: is|'s) an?(?: early| late)?$/, score: 1.3 },
      { before: /\b(?:estate|saloon|hatchback|sedan|coupe|roadster|pickup|truck|van|wagon|car)(?: is)? from$/, score: 1.3 },
      { after: /^(?:by |is the |for a )?model(?: year)?\b/, score: 1.3 },
      {
        before:
          /\b(?:it's|it is|she's|that's|makes it|makes her|so|really)(?: really| still| actually)? an? (?:early|late|mid year|true|real|genuine|proper)$/,
        after: /^(?!in\b)/,
        score: 1.2,
      },
      {
        before: /\b(?:v5c?|v five|registration document|log ?book|registration certificate)(?: says| is| here| there|'s)?$/,
        zones: ["documents"],
        score: 1.1,
      },
      {
        before: /\b(?:makes (?:it|her|him|this)|so (?:it's |that's |that is )?|which makes (?:it|her))(?: an?)(?: early| late)?$/,
        zones: ["documents", "opening", "closing"],
        score: 1.3,
      },
      {
        before:
          /\b(?:it's|it is|this is|that's|is|we've got|we got|you got here is|have here is|have got is|looking at|here's|have|got|so that's her|today is|today's|wrap her up|mean it's|on)(?: a| an| the| your| our| this| another| just| one)*$/,
        after: /^(?!of\b|miles\b|when\b|and a half|psi\b|pounds\b|plate\b|pounds|horse|to\b|percent)(?:\S+)/,
        unless: notYear,
        zones: ["opening", "closing", "front", "documents"],
        score: 1.0,
      },
      {
        before: /\b(?:it's|this is|it is|that's)(?: a| an| the)$/,
        after: /^(?:car|truck|model|van|so|they|\w+)?/,
        unless: notYear,
        score: 0.75,
      },
      {
        zones: ["opening"],
        before: opensYear,
        unless: new RegExp(`${notYear.source}|\\bsince\\b|\\b(?:${work})\\b|\\bowned\\b|\\bbought\\b|\\bhad it\\b`),
        score: 0.7,
      },
      {
        // "So, Hatherby Linnet, 1973, green": four figures said in the summing up, and nothing they could belong to.
        zones: ["closing"],
        said: /^(?:19|20)\d\d$/,
        before: /(?<!\b(?:in|since|from|of|until|till|by|to|at|for|model|number|code|a|an|the|about|asking|it's))$/,
        unless: new RegExp(`${notYear.source}|\\bcall\\b|\\bphone\\b|\\btext\\b|\\b(?:${work})\\b|\\bbought\\b|\\bthing\\b`),
        score: 0.6,
      },
      {
        zones: ["closing"],
        before: opensYear,
        unless: new RegExp(`${notYear.source}|\\bsince\\b|\\b(?:${work})\\b|\\bbought\\b|\\bcall\\b|\\bphone\\b`),
        score: 0.5,
      },
    ],
    example: { heard: "what we have here is a 1969 coupe", value: 1969, zone: "opening" },
  },
  {
    name: "title year",
    component: "title",
    part: "title",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:titled|title [^.#]{0,20}says|title says|title's|title is|title reads)(?: as| it as| it's| to be)?(?: an?)?$/,
        score: 1.35,
      },
      { after: /^plate\b/, score: 1.3 },
      {
        before: /\b(?:clean |clear |the )?title(?:'s| is)?(?: clean| clear| in hand| here| clean title)*(?: for an?| as an?|,)?$/,
        zones: ["documents"],
        score: 1.0,
      },
    ],
    example: { heard: "it's titled a 1985", value: 1985 },
  },
  {
    name: "year on the title, told after it",
    component: "title",
    part: "title",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    unless: /# miles\b|\bowner[^#]*#|\bbuil[dt]\b[^#]*#|\bsticker\b[^#]*#/,
    cues: [
      {
        before: /\btitle(?:'s| is)?\b[^#]{0,46}\b(?:it says|says|it reads|reads|it shows|shows|says it's)(?: an?)?$/,
        zones: ["documents"],
        score: 1.35,
      },
      {
        before: /\btitle(?:'s| is)?\b[^#]{0,30}\b(?:it's|it is|she's|as)(?: an?)?$/,
        after: /^on (?:there|it|here|the paper|that)\b/,
        zones: ["documents"],
        score: 1.35,
      },
    ],
    example: { heard: "title's clean it says seventy nine", value: 1979, zone: "documents" },
  },
  {
    name: "date of registration",
    component: "title",
    part: "registered",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    cues: [{ before: /\b(?:registered|first registered|registration|licensed)\b[^.]{0,75}$/, score: 1.3 }],
    circumstance: "registered",
    example: { heard: "it's first registered in 1965", value: 1965 },
  },
  {
    name: "date the vehicle was built",
    component: "vehicle",
    part: "built",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    cues: [
      {
        before:
          /\b(?:build (?:tag|sheet|plate|card)|data plate|body tag|trim tag|cowl tag|door (?:tag|sticker|plate|label)|jamb|tag on (?:the|this) door|sticker (?:in|on) the (?:door|jamb))\b[^.]{0,70}$/,
        // "Door jamb says 36" is a tire pressure: two digits alone are no date.
        said: /^(?!'?\d\d$|(?:twent|thirt|fort|fift|sixt|sevent|eight|ninet)y(?: \w+)?$)/,
        unless: /\btires?\b|\bpsi\b|\bpounds\b|\bpaint\b|\bcode\b|\b(?:so|makes it|it's|that's) an? #/,
        score: 1.25,
      },
      {
        // "Plate says 10 47": a month and a year, as on a plate.
        before: /\b(?:plate|tag|sticker|label|jamb)\b[^.#]{0,24}\b(?:says|reads|shows)$/,
        said: /^(?:\d{1,2}|\w+) (?:of )?\S+$/,
        unless: /\btires?\b|\bpsi\b|\bpounds\b|\bpaint\b|\bcode\b|\btitle\b|\bplate #/,
        zones: ["documents", "driver-side", "opening"],
        score: 1.1,
      },
      {
        after: /^(?:build|built|car|truck)\b/,
        said: /[a-z]{3,}|'/,
        unless: /\btires?\b|\bmodel\b|\bmotor\b|\bengine\b/,
        zones: ["documents"],
        score: 1.1,
      },
      {
        before:
          /\b(?:built|made|manufactured|assembled|came off the line|build date|date of manufacture|finished up|completed)\b[^.]{0,40}$/,
        unless: /\btires?\b|\bmotor\b|\bengine\b|\bfor\b|\br #|# odd\b/,
        score: 1.2,
      },
    ],
    circumstance: "built",
    example: { heard: "plate says it was built november of 1984", value: "1984-11" },
  },
  {
    name: "years of the build",
    component: "vehicle",
    part: "build",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    cues: [
      {
        before:
          /\b(?:he|she|they|we|i|builder)(?:'d| had)? (?:started (?:it|on it|in on it|the build|building)|began it|drove it out|rolled it out|finished (?:it|up|the build)|got it (?:done|finished|on the road)|put it (?:back )?together|built it)(?: \w+)? in$/,
        score: 1.35,
      },
    ],
    circumstance: "work",
    example: { heard: "he started it in 2009 and it took him a while", value: 2009 },
  },
  {
    name: "date of a sale",
    component: "title",
    part: "sale",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    cues: [
      {
        before: /\b(?:bought|sold|bill of sale|purchased|imported|came in|came over|shipped|landed|boat)\b[^.]{0,70}$/,
        unless: notYear,
        score: 1.15,
      },
    ],
    circumstance: "sale",
    example: { heard: "she bought it new in april of 1969", value: "1969-04" },
  },
  {
    name: "date of ownership",
    component: "vehicle",
    part: "owned since",
    attribute: "date",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:had it|owned it|owned|had the car|with him|with us|in the family|same owner)\b[^.]{0,30}\bsince\b[^.]{0,25}$/,
        score: 1.35,
      },
      {
        before:
          /\b(?:(?:had|owned|kept|has) (?:it|her|him)|nephew|niece|son|daughter|widow|wife|brother|sister|cousin|in law|neighbou?r|lady|fella|gentleman) (?:from|since|from about|since about)$/,
        score: 1.35,
      },
    ],
    circumstance: "owned since",
    example: { heard: "he's had it since 1984", value: 1984 },
  },
] satisfies readonly Slot[];
