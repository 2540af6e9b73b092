import { type ReactNode, useEffect, useMemo, useState } from "react";
import { keyName } from "../shared/keys.ts";
import { HelpDialog } from "./help-dialog.tsx";
import { helpKey } from "./help-texts.ts";
import { HelpContext, type HelpPart } from "./use-help.ts";

/** The help over whatever is shown. Its key acts everywhere: no field types it and no desk uses it. */
export function HelpProvider({ children }: { readonly children: ReactNode }) {
  const [part, setPart] = useState<HelpPart | null>(null);
  const help = useMemo(() => ({ open: (wanted: HelpPart = "desks") => setPart(wanted) }), []);
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (keyName(event) !== helpKey) return;
      event.preventDefault();
      setPart((now) => now ?? partAt(window.location.hash));
    };
    // Before a window that is open takes its keys for itself.
    window.addEventListener("keydown", hear, true);
    return () => window.removeEventListener("keydown", hear, true);
  }, []);
  return (
    <HelpContext value={help}>
      {children}
      {part ? <HelpDialog part={part} onPart={setPart} onClose={() => setPart(null)} /> : null}
    </HelpContext>
  );
}

/** At a desk the keys are what is looked for most. */
function partAt(hash: string): HelpPart {
  return /^#\/(?:recording|call)/.test(hash) ? "keys" : "desks";
}
