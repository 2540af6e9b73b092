import type { Slot } from "../slot.ts";

/** Batteries, charging and voltages. */
export const electricalSlots = [
  {
    name: "voltage",
    component: "electrical",
    part: "battery",
    attribute: "voltage",
    unit: "V",
    need: { units: ["V"], min: 5, max: 1000 },
    cues: [{ score: 1.2 }],
    carries: true,
    example: { heard: "a twelve volt battery", value: 12 },
  },
  {
    name: "voltage, unit left out",
    component: "electrical",
    part: "battery",
    attribute: "voltage",
    unit: "V",
    need: { kinds: ["decimal", "measure", "integer"], units: [null], min: 5, max: 56 },
    cues: [
      {
        before: /\b(?:holding|charging|charges|putting out)(?: at| about| around)*$/,
        unless: /\bdollars|\bmiles|\bpressure|\boil\b|\bkilowatt/,
        score: 1.0,
      },
      {
        about: ["electrical/battery", "electrical/alternator", "electrical/generator"],
        unless:
          /\ball #|\bfour five #|# (?:of them|injectors?|plugs?|caps?|cells?)\b|\bgroup\b|\bmiles?\b|\bmonths?\b|\byears?\b|\bdollars?\b/,
        score: 1.0,
      },
      {
        before: /\b(?:voltage|volts|voltmeter|tester on it|charging at|meter on it)\b[^.#]{0,50}$/,
        unless: /\bmicron|\bmils?\b|\bpaint\b/,
        score: 1.1,
      },
      {
        before:
          /\b(?:volt ?meter|meter|tester)(?:'s)?(?: (?:on|across) (?:it|them|the battery))?(?: \.)?(?: and)?(?: it)?(?: says| reads| shows| showing| is)?$/,
        zones: ["cabin", "engine-bay", "cargo", "drive"],
        unless: /\bpaint|\bmicron|\bmils?\b|\bgauge\b|\btread|\bmiles/,
        score: 1.25,
      },
      {
        before:
          /\b(?:(?:guys|lads|shop|tester|i|we|they|he) )(?:test|tests|tested|load test|load tested)(?: it| them| that)?(?: at| and it's)?$/,
        unless: /\bmiles|\bpercent|\bdollars/,
        score: 1.1,
      },
      { before: /\b(?:generator|dynamo|alternator)(?:'s| is)? (?:showing|putting out|making|charging)(?: at| about)?$/, score: 1.2 },
      { before: /\bsix volt\b[^.#]{0,40}\b(?:it's|and)$/, after: /^(?:now|volt)/, score: 1.2 },
    ],
    value: (reading) => {
      const { value } = reading;
      if (typeof value !== "number") return undefined;
      // Nominal voltages are whole; a measured one lies where a six, twelve or twenty-four volt system can.
      const measured = (value >= 11 && value <= 15.5) || (value >= 6.1 && value <= 7.6) || (value >= 23 && value <= 29.5);
      return (Number.isInteger(value) ? [6, 12, 24, 48].includes(value) : measured) ? value : undefined;
    },
    carries: true,
    example: { heard: "put the tester on the battery and it said twelve point six", value: 12.6 },
  },
  {
    name: "voltage, point left out",
    component: "electrical",
    part: "battery",
    attribute: "voltage",
    unit: "V",
    need: { units: [null], min: 10, max: 1600 },
    cues: [
      {
        before: /\b(?:holding|charging|charges|putting out)(?: at| about| around)*$/,
        after: /^(?:when|with|running|at idle|now)\b/,
        unless: /\bpressure|\boil\b/,
        score: 1.05,
      },
      { before: /\b(?:voltage|volts|voltmeter)\b[^.#]{0,40}$/, score: 1.15 },
    ],
    value: (reading, said) => {
      const words = said.split(" ");
      const whole = { eleven: 11, twelve: 12, thirteen: 13, fourteen: 14 }[words[0] ?? ""];
      const tenth = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9 }[words[1] ?? ""];
      if (whole !== undefined && tenth !== undefined && words.length === 2) return Math.round(whole * 10 + tenth) / 10;
      return typeof reading.value === "number" && reading.value >= 110 && reading.value <= 149 ? reading.value / 10 : undefined;
    },
    example: { heard: "the voltage with it running is fourteen two", value: 14.2 },
  },
  {
    name: "battery group size",
    component: "electrical",
    part: "battery",
    attribute: "size",
    unit: null,
    need: { units: [null], min: 21, max: 99 },
    cues: [
      { said: /^group\b/, score: 1.3 },
      { before: /\bgroup(?: size)?$/, score: 1.3 },
    ],
    value: (reading) =>
      typeof reading.value === "string" && reading.value.startsWith("group")
        ? reading.value
        : typeof reading.value === "number" && Number.isInteger(reading.value)
          ? `group ${reading.value}`
          : undefined,
    example: { heard: "a group 24 battery", value: "group 24" },
  },
  {
    name: "battery energy",
    component: "electrical",
    part: "traction battery",
    attribute: "size",
    unit: "kWh",
    need: { units: ["kWh"], min: 1, max: 250 },
    cues: [{ score: 1.2 }],
    example: { heard: "it's the 62 kWh battery", value: 62 },
  },
  {
    name: "charging power, unit left out",
    component: "electrical",
    part: "charger",
    attribute: "power",
    unit: "kW",
    need: { kinds: ["integer", "decimal"], units: [null], min: 1, max: 400 },
    cues: [
      {
        after:
          /^(?:on|from|off|through|at) (?:the |a |an |your |any )?(?:ac|a c|dc|d c|wall|wall ?box|home|granny|three pin|domestic|rapid|ccs|fast|type two|destination)\b/,
        unless: /\bpercent|\bmiles?\b|\bhours?\b|\bpounds?\b|\bpence|\bmiles per|\bvolts?\b|\bfrom ten\b/,
        score: 1.2,
      },
      {
        before:
          /\b(?:wall ?box|on ac|type two|rapid|home charger|on board charger|onboard charger)(?:'s| is)?(?: it's| it is| it does| it'll do| it takes| it pulls| that's)(?: about)?$/,
        unless: /\bpercent|\bmiles?\b|\bhours?\b|\bpounds?\b|\bpence/,
        score: 1.15,
      },
      { before: /\b(?:type (?:two|2)|on ac|wall box|slow charge)(?:'s| is| does)?(?: about| around)?$/, score: 1.1 },
      {
        after: /^(?:on|from|off) (?:a |the |your )?(?:wall box|wallbox|home charger|granny|three pin|rapid|fast charger|dc)\b/,
        score: 1.1,
      },
    ],
    example: { heard: "it charges at seven on a wall box", value: 7 },
  },
  {
    name: "charging power",
    component: "electrical",
    part: "charger",
    attribute: "power",
    unit: "kW",
    need: { units: ["kW"], min: 1, max: 400 },
    cues: [
      {
        after:
          /^(?:on|from|off|through|at) (?:the |a |an |your |any )?(?:ac|a c|dc|d c|wall|wall ?box|home|granny|domestic|rapid|ccs|fast|type two|public|charger)\b/,
        score: 1.4,
      },
      {
        before: /\b(?:it'll|will|can) (?:take|accept|pull|draw|suck up)(?: up to| about)?(?: a)?$/,
        unless: /\btow|\bengine/,
        about: ["electrical"],
        score: 1.3,
      },
      { before: /\b(?:rapid|socket|type (?:two|2)|wall box|ac)\b[^.#]{0,40}$/, score: 1.35 },
      { before: /\bcharg(?:e|er|es|ing|ed)\b[^.#]{0,60}$|\bwall box\b[^.#]{0,40}$/, score: 1.35 },
      { after: /^[^.#]{0,40}\bcharg(?:e|er|es|ing)\b/, score: 1.35 },
    ],
    example: { heard: "it charges at 50 kW on a fast charger", value: 50 },
  },
] satisfies readonly Slot[];
