import { createContext, useContext } from "react";

export type HelpPart = "desks" | "keys" | "files" | "cautions" | "news" | "updates";

export interface Help {
  readonly open: (part?: HelpPart) => void;
}

export const HelpContext = createContext<Help>({ open: () => {} });

export function useHelp(): Help {
  return useContext(HelpContext);
}
