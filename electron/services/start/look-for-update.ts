import { z } from "zod";
import { compareVersions, type Output } from "../../../shared-types/index.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../refusals.ts";

/** What the address answers with; more may stand beside it. */
const Answer = z.object({ version: z.string().regex(/^\d{1,6}\.\d{1,6}\.\d{1,6}$/) });

const longestMilliseconds = 10_000;
const mostBytes = 65_536;
const dayMilliseconds = 86_400_000;

export type Fetch = (address: string, init: RequestInit) => Promise<Response>;

export function updateSetting({ library }: Pick<Parts, "library">): Output<"update.setting"> {
  return { address: library.settings.get("updateAddress") || null };
}

export function setUpdateAddress(parts: Pick<Parts, "library">, address: string | null): Output<"update.set"> {
  if (address !== null && !isSecure(address))
    throw new Refusal(
      "address-not-secure",
      `“${address}” is no https address without a name and password in it. Give one, or leave the field empty.`,
    );
  parts.library.transaction(() => parts.library.settings.put("updateAddress", address ?? ""));
  return updateSetting(parts);
}

function isSecure(address: string): boolean {
  const url = URL.parse(address);
  return url?.protocol === "https:" && url.username === "" && url.password === "";
}

/**
 * Asks whether there is a newer version, where somebody gave an address for that. Tells nothing of this machine or its library, follows
 * no redirection, and only compares: it fetches no program and opens nothing.
 * @param now milliseconds since 1970.
 */
export function createUpdateLook(parts: Pick<Parts, "library">, running: string, fetchFrom: Fetch = fetch, now = Date.now) {
  let last: { readonly address: string; readonly at: number; readonly newest: string | null } | undefined;
  return async (atOnce: boolean): Promise<Output<"update.look">> => {
    const { address } = updateSetting(parts);
    if (address === null) return null;
    if (!last || last.address !== address || atOnce || now() - last.at > dayMilliseconds) {
      // An address that did not answer is not asked again all day either.
      last = { address, at: now(), newest: null };
      last = { ...last, newest: await askFor(address, fetchFrom) };
    }
    return last.newest === null ? null : { running, newest: last.newest, newer: compareVersions(last.newest, running) > 0 };
  };
}

async function askFor(address: string, fetchFrom: Fetch): Promise<string> {
  let text: string;
  try {
    const response = await fetchFrom(address, {
      headers: { accept: "application/json", "user-agent": "Roundwalk" },
      redirect: "error",
      credentials: "omit",
      signal: AbortSignal.timeout(longestMilliseconds),
    });
    if (!response.ok) throw new Error(`it answered with status ${response.status}`);
    text = await textOf(response);
  } catch (failure) {
    throw new Refusal(
      "update-unreachable",
      `${address} cannot be asked (${said(failure)}). Roundwalk works as before; look at the address, or try again later.`,
    );
  }
  const answer = Answer.safeParse(parsed(text));
  if (!answer.success)
    throw new Refusal("update-unreadable", `What ${address} answered names no version. It must be JSON with a "version" such as "1.2.3".`);
  return answer.data.version;
}

async function textOf(response: Response): Promise<string> {
  const pieces: Uint8Array[] = [];
  let bytes = 0;
  for await (const piece of response.body ?? []) {
    bytes += piece.byteLength;
    if (bytes > mostBytes) throw new Error(`it answered with more than ${mostBytes} bytes`);
    pieces.push(piece);
  }
  return Buffer.concat(pieces).toString("utf8");
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** fetch says only that it failed; why is in its cause. */
function said(failure: unknown): string {
  if (!(failure instanceof Error)) return String(failure);
  return failure.cause instanceof Error ? failure.cause.message : failure.message;
}
