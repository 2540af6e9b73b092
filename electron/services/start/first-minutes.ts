import { newsSince, type Output } from "../../../shared-types/index.ts";
import { demoIsComing } from "../import-demo.ts";
import type { Parts } from "../parts.ts";

/** Older than every version there was. */
const beforeAll = "0.0.0";

/** What the library's screen says beside the recordings. A library that nobody has worked in has nothing new to hear. */
export function startState({ library }: Pick<Parts, "library">, version: string): Output<"start.state"> {
  const demo = library.settings.get("demo");
  const demoId = demo !== undefined && library.recordings.get(demo) ? demo : null;
  const own = library.recordings.count() - (demoId === null && !demoIsComing({ library }) ? 0 : 1);
  const introduce = library.settings.get("firstMinutes") !== "done" && own <= 0;
  let told = library.settings.get("toldVersion");
  if (told === undefined && introduce) {
    told = version;
    library.transaction(() => library.settings.put("toldVersion", version));
  }
  const news = newsSince(told ?? beforeAll, version).map(({ version: of, points }) => ({ version: of, points: [...points] }));
  return { introduce, demoId, version, news };
}

export function startTold({ library }: Pick<Parts, "library">, version: string, what: "first-minutes" | "news"): Record<string, never> {
  library.transaction(() => {
    if (what === "first-minutes") library.settings.put("firstMinutes", "done");
    else library.settings.put("toldVersion", version);
  });
  return {};
}
