import { type SheetColumn, type SheetField, sheetFieldRows } from "../../shared-types/index.ts";

/** What a person answers for a column; `open` is not yet answered. */
export type SheetAnswer = SheetField | "leave-out" | "open";
export type SheetAnswers = Readonly<Record<string, SheetAnswer>>;

/** Whether a person must be asked: nobody knows the column, or its name and cells leave a doubt. An empty column asks nothing. */
export function isAsked({ standing, samples }: SheetColumn): boolean {
  return (standing === "doubtful" || standing === "unknown") && samples.length > 0;
}

/** What stands before the person has touched anything. Only what nobody knows is left out without an answer; a doubt needs one. */
export function firstAnswers(columns: readonly SheetColumn[]): SheetAnswers {
  return Object.fromEntries(
    columns.map((column) => {
      const open = isAsked(column) && column.standing === "doubtful";
      return [column.name, open ? "open" : (column.field ?? "leave-out")];
    }),
  );
}

/** What keeps the answers from being used, in words; null when nothing does. */
export function faultOfAnswers(columns: readonly SheetColumn[], answers: SheetAnswers): string | null {
  const open = columns.filter(({ name }) => answers[name] === "open").map(({ name }) => `“${name}”`);
  if (open.length > 0)
    return `Choose what ${open.join(", ")} ${open.length === 1 ? "means" : "mean"}, or leave ${open.length === 1 ? "it" : "them"} out.`;
  const taken = new Map<SheetAnswer, string>();
  for (const { name } of columns) {
    const answer = answers[name] ?? "leave-out";
    if (answer === "leave-out" || answer === "open") continue;
    const first = taken.get(answer);
    if (first !== undefined) return `“${first}” and “${name}” are both “${sheetFieldRows[answer].label}”. Leave one of them out.`;
    taken.set(answer, name);
  }
  return null;
}

/** The answers that the host is to remember: those that were asked for, and those that a person changed. What a name tells needs no keeping. */
export function settledColumns(columns: readonly SheetColumn[], answers: SheetAnswers): { name: string; field: SheetField | null }[] {
  const before = firstAnswers(columns);
  const settled = columns.filter((column) => isAsked(column) || answers[column.name] !== before[column.name]);
  return settled.map(({ name }) => {
    const answer = answers[name] ?? "leave-out";
    return { name, field: answer === "leave-out" || answer === "open" ? null : answer };
  });
}
