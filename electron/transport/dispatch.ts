import { z } from "zod";
import { contract, type Handlers, type MethodName, Problem, type Reply } from "../../shared-types/index.ts";

export type Dispatch = (name: unknown, input: unknown) => Promise<Reply>;

/**
 * The only door to the application, for both hosts: is the name the contract's own, does the input parse, run the handler, does the
 * output parse. Never throws: what goes wrong comes back as a problem.
 * @param log gets the particulars of failures that nobody foresaw; the page does not.
 */
export function createDispatch(handlers: Handlers, log: (line: string) => void): Dispatch {
  return async (name, input) => {
    // An object's inherited names ("constructor") are no methods.
    if (typeof name !== "string" || !Object.hasOwn(contract, name)) {
      return refused(
        "method-unknown",
        `There is no method ${JSON.stringify(String(name).slice(0, 80))}. Page and host may be of different versions; load the page again.`,
      );
    }
    const { input: inputSchema, output: outputSchema } = contract[name as MethodName];
    const given = inputSchema.safeParse(input);
    if (!given.success)
      return refused("input-invalid", `${name} was asked with something it cannot take.\n${z.prettifyError(given.error)}`);
    try {
      // The one cast: the schema that parsed the input belongs to this very handler.
      const handler = handlers[name as MethodName] as (input: unknown) => unknown;
      return { ok: true, value: outputSchema.parse(await handler(given.data)) };
    } catch (failure) {
      const foreseen = Problem.safeParse((failure as { problem?: unknown } | null)?.problem);
      if (foreseen.success) return { ok: false, problem: foreseen.data };
      log(`${name} failed: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
      return refused("failed", `${name} failed; the log has the details. Nothing was changed by it.`);
    }
  };
}

function refused(code: string, message: string): Reply {
  return { ok: false, problem: { code, message } };
}
