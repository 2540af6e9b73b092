import type { RecordingDetail } from "../../shared-types/index.ts";
import { sampleDetail } from "./sample-detail.ts";

/** Texts that try to leave their place in a page, a table or a spreadsheet. */
export const hostileTexts = [
  '</title></style><script>alert("title")</script>',
  "\"><img src=x onerror=alert('attribute')>",
  "<!-- comment --> ]]> &amp; &lt; &#x3c;",
  '=HYPERLINK("http://example.invalid","x")',
  "+1+1",
  "-2+3",
  "@SUM(A1:A9)",
  "\t=1",
  "\r=1",
  "＝1+1",
  'quotes " and ""doubled"", commas, semicolons;',
  "first line\nsecond line\r\nthird line",
  "עברית לפני אנגלית, العربية",
  "\u202eturned round\u202c",
  "emoji 🚙🛞 and joined 👩‍🔧",
  "' leading apostrophe",
] as const;

/** The sample with a finding for each hostile text, and one in every place that a person or a file fills. */
export function hostileDetail(): RecordingDetail {
  const detail = sampleDetail();
  const [finding] = detail.findings;
  const [script, attribute] = hostileTexts;
  return {
    ...detail,
    summary: {
      ...detail.summary,
      title: script,
      stockNumber: attribute.slice(0, 60),
      vehicle: { ...detail.summary.vehicle, name: attribute },
    },
    videoFile: `${attribute}.webm`,
    transcriptFile: `${script}.vtt`,
    lap: detail.lap.map((span) => ({ ...span, title: `${span.title} ${attribute}` })),
    findings: hostileTexts.map((text, position) => ({
      ...finding!,
      id: `0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c4${String(position).padStart(3, "0")}`,
      start: 33 + position,
      seen: text,
      note: text,
      part: text,
      initials: "<b>",
    })),
    rulings: detail.rulings.map((ruling) => ({ ...ruling, reason: script, initials: '"><i>' })),
    publications: [{ at: "2026-01-06T12:00:00.000Z", initials: "<u>", openConflicts: 1, openMatters: ["<i>&"] }],
  };
}
