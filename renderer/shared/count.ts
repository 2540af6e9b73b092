/** A count with its noun: "1 finding", "3 findings". */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
