import type { Claim, ComponentName, PositionName } from "../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf, type RemarkDraft, remarkOf } from "./conflict-of.ts";
import { placedTopic } from "./disagreements.ts";
import { totality, zonePositions } from "./slots/own-words.ts";
import { slotPart } from "./slots/parts.ts";
import { narrower, positionsMeet, unplacedMeaning } from "./slots/positions.ts";
import { saidApart, sameBreathSeconds } from "./slots/said-apart.ts";
import { damageSpokenOf, faultlessnessOf, rulesOutAny } from "./values/conditions.ts";
import { capitalised, moment } from "./wording.ts";

/** Components small enough to be seen at a glance: "not a mark in the glass" is about every pane. */
const seenAtAGlance: ReadonlySet<ComponentName> = new Set([
  "glass",
  "dash",
  "headliner",
  "carpet",
  "top",
  "cargo-floor",
  "seats",
  "floors",
]);

/** What a buyer loses where damage was denied. */
const weights: Partial<Record<ComponentName, number>> = {
  frame: 85,
  floors: 75,
  "cargo-floor": 65,
  body: 65,
  engine: 70,
  transmission: 65,
  paint: 50,
  glass: 45,
  "air-conditioning": 60,
};

/** Where a condition claim looks: a position, everywhere, or only the zone it was said in. */
type View = PositionName | "everywhere" | `zone ${string}`;

function viewOf(claim: Claim): View {
  if (unplacedMeaning[claim.component] === "single") return "everywhere";
  // "The alloys, no curbing", said at one side, is about the wheels of that side.
  if (claim.position === "all" && !totality.test(claim.quote)) return zonePositions[claim.zone] ?? "all";
  if (claim.position !== null) return claim.position;
  if (totality.test(claim.quote) || seenAtAGlance.has(claim.component)) return "everywhere";
  return zonePositions[claim.zone] ?? `zone ${claim.zone}`;
}

function viewsMeet(first: View, second: View): boolean {
  if (first === "everywhere" || second === "everywhere") return true;
  if (first.startsWith("zone") || second.startsWith("zone")) return first === second;
  return positionsMeet(first as PositionName, second as PositionName);
}

interface Buckets {
  readonly good: Map<View, Claim[]>;
  readonly flawed: Map<View, Claim[]>;
}

/**
 * Good and flawed claims about one part. A claim that rules the damage out ("not a mark", "never been patched") makes a conflict; praise
 * ("in nice shape") beside a fault makes a remark. A faultless claim about the component covers its parts; one about a part only that part.
 */
export function faultsAgainstPraise(claims: readonly Claim[]): { conflicts: ConflictDraft[]; remarks: RemarkDraft[] } {
  const byPart = new Map<string, Buckets>();
  for (const claim of claims) {
    if (claim.attribute !== "condition" || claim.time === "former") continue;
    if (claim.value !== "good" && claim.value !== "flawed") continue;
    const key = `${claim.component}|${slotPart(claim) ?? ""}`;
    let buckets = byPart.get(key);
    if (!buckets) {
      buckets = { good: new Map(), flawed: new Map() };
      byPart.set(key, buckets);
    }
    const bucket = buckets[claim.value];
    const view = viewOf(claim);
    const here = bucket.get(view);
    if (here) here.push(claim);
    else bucket.set(view, [claim]);
  }

  const conflicts: ConflictDraft[] = [];
  const remarks: RemarkDraft[] = [];
  const shell = (["body", "vehicle"] as const).flatMap((component) =>
    [...(byPart.get(`${component}|`)?.good ?? [])].map(([view, said]): [View, Claim[]] => [
      view,
      said.filter((claim) => totality.test(claim.quote)),
    ]),
  );
  // "So this is it underneath, no rust": of all that is seen there.
  for (const [view, said] of byPart.get("frame|")?.good ?? [])
    shell.push([
      view,
      said.filter((claim) => claim.circumstance === "rust" && !/\b(frame|chassis|rails?|cross ?members?)\b/i.test(claim.quote)),
    ]);
  for (const [key, { good, flawed }] of [...byPart].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const component = key.split("|")[0] as ComponentName;
    const whole = key.endsWith("|") ? undefined : byPart.get(`${component}|`)?.good;
    const near: [View, Claim[]][] = [...good, ...(whole ? coveringClaims(whole) : [])];
    for (const [flawView, flaws] of flawed) {
      const praise = near.filter(([view]) => viewsMeet(view, flawView)).flatMap(([, said]) => said);
      const wide = [...(whole && denialCovers.has(component) ? whole : []), ...(shellComponents.has(component) ? shell : [])]
        .filter(([view]) => viewsMeet(view, flawView))
        .flatMap(([, said]) => said);
      const found = conflictBetween(praise, flaws, flawView) ?? conflictFromAfar(wide, flaws, flawView);
      if (found) conflicts.push(found);
      else if (praise.length > 0) remarks.push(...remarkBetween(praise, flaws, flawView));
    }
  }
  return { conflicts, remarks };
}

/** Components of which "no rust", "no dings" without a part is about every part in view. */
const denialCovers: ReadonlySet<ComponentName> = new Set([
  "body",
  "paint",
  "glass",
  "frame",
  "floors",
  "wheel",
  "seats",
  "dash",
  "exhaust",
]);

/** What "no rust anywhere on this truck" is about. */
const shellComponents: ReadonlySet<ComponentName> = new Set(["body", "floors", "frame", "cargo-floor"]);

/** Faultless claims about the whole component that reach down to its parts. */
function coveringClaims(good: Map<View, Claim[]>): [View, Claim[]][] {
  return [...good].flatMap(([view, said]) => {
    const faultless = said.filter((claim) => faultlessnessOf(claim).strength === "faultless" || totality.test(claim.quote));
    return faultless.length > 0 ? [[view, faultless] as [View, Claim[]]] : [];
  });
}

/** Within one visit to a place, a denial without a part is about whatever was in hand; this much later it is about the component. */
const laterSeconds = 25;

/** Wide claims against faults seen from another zone, or, for what is seen at a glance, later in the same one. */
function conflictFromAfar(wide: readonly Claim[], flaws: readonly Claim[], view: View): ConflictDraft | undefined {
  const byZone = new Map<string, Claim[]>();
  for (const claim of wide) {
    const here = byZone.get(claim.zone);
    if (here) here.push(claim);
    else byZone.set(claim.zone, [claim]);
  }
  for (const [zone, claims] of byZone) {
    const far = flaws.filter((flaw) => flaw.zone !== zone || seenAtAGlance.has(flaw.component));
    const found = conflictBetween(claims, far, view, laterSeconds);
    if (found) return found;
  }
  return undefined;
}

function conflictBetween(
  praise: readonly Claim[],
  flaws: readonly Claim[],
  view: View,
  seconds: number = sameBreathSeconds.condition,
): ConflictDraft | undefined {
  const goods = praise.map((claim) => ({ claim, said: faultlessnessOf(claim) }));
  const faults = flaws.map((claim) => ({ claim, kinds: damageSpokenOf(claim) }));
  const allFaults = joined(faults.map(({ kinds }) => kinds));
  const someUnnamed = faults.some(({ kinds }) => kinds.size === 0);
  const faultless = inOrder(goods.filter(({ said }) => rulesOutAny(said, allFaults, someUnnamed)).map(({ claim }) => claim));
  const denied = joined(
    goods.map(({ said }) => (said.strength === "denied" || said.strength === "implied" ? said.kinds : new Set<string>())),
  );
  const anyFaultless = goods.some(({ said }) => said.strength === "faultless");
  const anyDenied = goods.some(({ said }) => said.strength === "denied");
  const against = inOrder(
    faults
      .filter(({ kinds }) => anyFaultless || (anyDenied && kinds.size === 0) || [...kinds].some((kind) => denied.has(kind)))
      .map(({ claim }) => claim),
  );
  const firstGood = faultless[0];
  const firstFlaw = against[0];
  if (!firstGood || !firstFlaw || !saidApart([faultless, against], seconds)) return undefined;
  const topic = topicFor(firstFlaw, view);
  return conflictOf({
    kind: "condition",
    topic,
    why: capitalised(
      `the ${topic} is called faultless at ${moment(firstGood.start)} ("${firstGood.quote}") and flawed at ${moment(firstFlaw.start)} ("${firstFlaw.quote}").`,
    ),
    rule: "faultless-and-flawed",
    weight: weights[firstFlaw.component] ?? 45,
    sides: [
      { value: "good", unit: null, claims: faultless },
      { value: "flawed", unit: null, claims: against },
    ],
  });
}

function remarkBetween(praise: readonly Claim[], flaws: readonly Claim[], view: View): RemarkDraft[] {
  const alike = praise.find((claim) => [...damageSpokenOf(claim)].some((kind) => flaws.some((flaw) => damageSpokenOf(flaw).has(kind))));
  const claim = alike ?? praise.find((candidate) => ["praise", "implied"].includes(faultlessnessOf(candidate).strength));
  const flaw = flaws[0];
  if (!claim || !flaw || !saidApart([[claim], flaws], sameBreathSeconds.condition)) return [];
  const topic = topicFor(flaw, view);
  return [
    remarkOf({
      topic,
      why: capitalised(`the ${topic} is praised at ${moment(claim.start)} and has a fault at ${moment(flaw.start)} ("${flaw.quote}").`),
      rule: "praise-beside-a-fault",
      claims: [claim, ...flaws],
    }),
  ];
}

function topicFor(flaw: Claim, view: View): string {
  const thing = slotPart(flaw) ?? flaw.component.replaceAll("-", " ");
  const topic = `${thing} condition`;
  if (view === "everywhere" || view.startsWith("zone")) return topic;
  return placedTopic(topic, flaw.position === null ? (view as PositionName) : narrower(flaw.position, flaw.position));
}

function joined(sets: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  return new Set(sets.flatMap((set) => [...set]));
}

function inOrder(claims: readonly Claim[]): Claim[] {
  return [...claims].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
}
