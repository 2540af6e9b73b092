import { Button } from "../shared/button.tsx";

/** Where N leads from what is shown. */
export interface NextStep {
  /** "open" to the next thing that waits for a person, "publish" where none does any more. */
  readonly to: "open" | "publish";
  readonly go: () => void;
}

/** The way on, in the head of whatever is shown; nothing where only this waits. */
export function NextButton({ next }: { readonly next: NextStep | null }) {
  if (next === null) return null;
  return (
    <Button shortcut="N" onClick={next.go}>
      {next.to === "open" ? "Next open" : "On to publish"}
    </Button>
  );
}
