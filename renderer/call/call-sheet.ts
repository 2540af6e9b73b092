import type { SheetGroup } from "../shared/shortcut-sheet.tsx";
import { callShortcuts } from "./call-keys.ts";

export const callSheet: readonly SheetGroup[] = [{ name: "Call", shortcuts: callShortcuts }];
