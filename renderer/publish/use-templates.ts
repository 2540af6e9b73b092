import { useEffect, useState } from "react";
import type { IndexTemplate, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";

/** The library's texts with fields; none before the host has told them. */
export function useTemplates(onProblem: (problem: Problem) => void): readonly IndexTemplate[] {
  const client = useClient();
  const [templates, setTemplates] = useState<readonly IndexTemplate[]>([]);
  useEffect(() => {
    client.call("template.list", {}).then(setTemplates, (thrown: unknown) => onProblem(problemOf(thrown)));
    // A setter of the window that asks: the same for as long as it stands.
  }, [client, onProblem]);
  return templates;
}
