/**
 * Cohen's kappa of two annotators over the same items: (po - pe) / (1 - pe), po the observed and pe the chance agreement
 * (J. Cohen, Educational and Psychological Measurement 20, 37-46, 1960).
 * @returns null where chance agreement is complete and kappa has no value, or where there are no items.
 */
export function cohenKappa(first: readonly string[], second: readonly string[]): number | null {
  if (first.length !== second.length)
    throw new Error(`The annotators judged ${first.length} and ${second.length} items; they must judge the same ones.`);
  const items = first.length;
  if (items === 0) return null;
  const observed = first.filter((label, i) => label === second[i]).length / items;
  const share = (labels: readonly string[], label: string) => labels.filter((one) => one === label).length / items;
  const chance = [...new Set([...first, ...second])].reduce((sum, label) => sum + share(first, label) * share(second, label), 0);
  return Math.abs(1 - chance) < 1e-12 ? null : (observed - chance) / (1 - chance);
}
