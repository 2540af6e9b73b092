import { gradeLabels, gradeShapes, grades, zoneLabels, zoneNames } from "../../shared-types/index.ts";
import "../shared/marked-caption.css";
import { SheetSign } from "../shared/shortcut-sheet.tsx";
import "./findings/findings.css";
import { zoneSigns } from "./strip/zone-signs.ts";

/** What the captions' and the strip's signs mean. */
export function MarkSigns() {
  return (
    <>
      <SheetSign words="a claim">
        <mark className="claim">words</mark>
      </SheetSign>
      <SheetSign words="a claim that was hedged or reported">
        <mark className="claim" data-kind="hedged">
          words
        </mark>
      </SheetSign>
      <SheetSign words="a claim in dispute: its conflict is open">
        <mark className="claim" data-kind="disputed">
          words
        </mark>
      </SheetSign>
      <SheetSign words="heard, and the repair's reading; with ? it must be listened to">
        <span className="heard">heard</span>
        <span className="meant">meant</span>
      </SheetSign>
      <SheetSign words="across the plan: joins the sides of a conflict; dotted once settled">
        <svg width="40" height="16" viewBox="0 0 40 16" aria-hidden="true" className="sign-arc">
          <path d="M4 14C8 -2 32 -2 36 14" />
        </svg>
      </SheetSign>
      <SheetSign words={zoneNames.map((zone) => `${zoneSigns[zone]} ${zoneLabels[zone].toLowerCase()}`).join(", ")}>
        <span className="small">{zoneSigns.underside}</span>
      </SheetSign>
      <SheetSign words="findings and open conflicts of a zone">
        ◆ <span className="sign-conflict">▼</span>
      </SheetSign>
      <SheetSign words="a finding that is only proposed, in the shape of its grade">
        <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true">
          <path d={gradeShapes.worn} className="grade-shape" data-proposed="" />
        </svg>
      </SheetSign>
      {grades.map((grade) => (
        <SheetSign key={grade} words={`a finding graded ${gradeLabels[grade].toLowerCase()}`}>
          <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true">
            <path d={gradeShapes[grade]} className="grade-shape" />
          </svg>
        </SheetSign>
      ))}
    </>
  );
}
