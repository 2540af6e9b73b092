import type { Handlers } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import { bundleFolder, keepBundles, lookAtFolder } from "./bundles/keep-bundles.ts";
import { lookAtBundle } from "./bundles/look-at-bundle.ts";
import { takeBundle } from "./bundles/take-bundle.ts";
import { indexTemplates, keepTemplate, previewTemplate, removeTemplate, templateNamed } from "./index-templates.ts";
import { indexLot } from "./lot/index-lot.ts";
import { matchLot, takeLot } from "./lot/match-lot.ts";
import type { Parts } from "./parts.ts";
import { readyRecordings } from "./ready-recordings.ts";
import { copyAbility, copyWithChapters } from "./video-copies/copy-with-chapters.ts";
import { createWorkTickets } from "./work-tickets.ts";

/** Recordings as wholes, and many at once. */
export function lotHandlers(parts: Parts, analyst: Analyst) {
  const { library } = parts;
  const tickets = createWorkTickets(parts);
  return {
    "work.cancel": tickets.cancel,
    "video.copyAbility": (input) => copyAbility(parts, input),
    "video.copy": ({ ticket, ...input }) => tickets.run(ticket, (signal, tell) => copyWithChapters(parts, input, { signal, tell })),
    "bundle.place": () => ({ folder: bundleFolder(library) }),
    "bundle.keep": ({ ticket, ...input }) => tickets.run(ticket, (signal, tell) => keepBundles(parts, input, signal, tell)),
    "bundle.look": ({ file }) => lookAtBundle(parts, file),
    "bundle.lookAtFolder": ({ ticket, ...input }) => tickets.run(ticket, (signal, tell) => lookAtFolder(parts, input, signal, tell)),
    "bundle.take": ({ ticket, file, ...input }) =>
      tickets.run(ticket, (signal, tell) =>
        takeBundle(parts, analyst, file, { ...input, signal, onBytes: (done, of) => tell("video", done, of) }),
      ),
    "lot.ready": () => readyRecordings(parts),
    "lot.match": (input) => matchLot(parts, input),
    "lot.take": (input) => takeLot(parts, analyst, input),
    "lot.index": ({ ticket, template, ...input }) =>
      tickets.run(ticket, (signal, tell) =>
        indexLot(parts, input, template === null ? null : templateNamed(parts, template), signal, tell),
      ),
    "template.list": () => indexTemplates(parts),
    "template.keep": (input) => keepTemplate(parts, input),
    "template.remove": (input) => removeTemplate(parts, input),
    "template.preview": (input) => previewTemplate(parts, input),
  } satisfies Partial<Handlers>;
}
