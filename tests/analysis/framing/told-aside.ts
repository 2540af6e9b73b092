/**
 * What a narrator says that is not about this vehicle today, beside what is. `aside` and `kept` name claims as "component attribute value".
 * Invented speech; what may stand where is common practice of the trade.
 */
export interface ToldAside {
  readonly says: string;
  /** Claims that must not be made of this vehicle as it is today, plainly: dropped, or told as former, or set apart by a circumstance. */
  readonly aside: readonly string[];
  /** Claims of this vehicle today that the aside must not swallow. */
  readonly kept: readonly string[];
}
