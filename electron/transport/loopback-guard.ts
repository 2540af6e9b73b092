import { randomBytes, timingSafeEqual } from "node:crypto";

/**
 * Who may talk to the loopback host: pages it served itself, in a browser that came in by the address with a ticket, or a program that
 * has the token. Another site that the browser shows, and another program on this machine, may not.
 */
export interface LoopbackGuard {
  /** For `Authorization: Bearer`. */
  readonly token: string;
  /**
   * A path with a ticket that lets a browser in for as long as this process runs: whoever closed the window, or opened the wrong
   * browser first, comes back by the same address.
   */
  readonly entryPath: () => string;
  /** The answer to a request for the entry. */
  readonly enter: (request: Request) => Response;
  /** Null when the request may go on; else what is wrong with it. */
  readonly refusal: (request: Request) => { readonly status: number; readonly code: string; readonly message: string } | null;
}

const reading = new Set(["GET", "HEAD"]);

/** @param authority host and port as they stand in the address, "127.0.0.1:51234". */
export function createLoopbackGuard(authority: string): LoopbackGuard {
  const token = randomBytes(32).toString("base64url");
  const tickets = new Set<string>();
  // Cookies are shared by all ports of a host, so the name carries ours.
  const cookieName = `roundwalk-${authority.split(":").at(-1)}`;
  const origin = `http://${authority}`;

  const hasCookie = (request: Request): boolean =>
    (request.headers.get("cookie") ?? "").split(/;\s*/).some((pair) => {
      const cut = pair.indexOf("=");
      return pair.slice(0, cut) === cookieName && same(pair.slice(cut + 1), token);
    });
  const hasBearer = (request: Request): boolean => {
    const given = /^Bearer (?<token>\S+)$/i.exec(request.headers.get("authorization") ?? "")?.groups?.token;
    return given !== undefined && same(given, token);
  };
  const foreignPlace = (request: Request) => {
    // A name of another site that was made to point here keeps its own name in Host.
    if (request.headers.get("host") !== authority) {
      return { status: 421, code: "host-foreign", message: `This is ${origin}; the request was made for another host.` };
    }
    const from = request.headers.get("origin");
    if (from !== null && from !== origin) {
      return { status: 403, code: "origin-foreign", message: "Another site's page may not talk to Roundwalk." };
    }
    const site = request.headers.get("sec-fetch-site");
    if (site !== null && site !== "same-origin" && site !== "none") {
      return { status: 403, code: "origin-foreign", message: "Another site's page may not talk to Roundwalk." };
    }
    return null;
  };

  return {
    token,
    entryPath() {
      const ticket = randomBytes(32).toString("base64url");
      tickets.add(ticket);
      return `/enter?token=${ticket}`;
    },
    enter(request) {
      const ticket = new URL(request.url).searchParams.get("token") ?? "";
      const foreign = foreignPlace(request);
      if (foreign) return new Response(foreign.message, { status: foreign.status });
      if (!hasCookie(request) && !tickets.has(ticket)) {
        return new Response(
          "This address is of an earlier start of Roundwalk. Open the address that it printed when it was started last.",
          {
            status: 403,
            headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
          },
        );
      }
      return new Response(null, {
        status: 303,
        headers: { location: "/", "set-cookie": `${cookieName}=${token}; Path=/; HttpOnly; SameSite=Strict`, "cache-control": "no-store" },
      });
    },
    refusal(request) {
      const foreign = foreignPlace(request);
      if (foreign) return foreign;
      if (hasBearer(request)) return null;
      if (!hasCookie(request)) {
        return { status: 401, code: "token-missing", message: "Open the address that Roundwalk printed when it started." };
      }
      // Every browser names the origin when it sends something; who does not is none.
      if (!reading.has(request.method) && request.headers.get("origin") === null) {
        return { status: 403, code: "origin-missing", message: "The request does not say which page it comes from." };
      }
      return null;
    },
  };
}

function same(given: string, expected: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(expected)];
  return a.length === b.length && timingSafeEqual(a, b);
}
