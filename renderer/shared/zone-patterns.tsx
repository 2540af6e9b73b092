import { type ZoneName, zoneNames } from "../../shared-types/index.ts";
import "./zone.css";

export interface PatternTile {
  /** Tile edge in CSS pixels. */
  readonly size: number;
  /** A path in the zone's ink. */
  readonly path: string;
  /** The path is filled rather than drawn as a line. */
  readonly filled?: true;
}

/** One pattern for each zone, no two alike in black and white. */
export const patternTiles: Readonly<Record<ZoneName, PatternTile>> = {
  opening: { size: 8, path: "M2.9 4a1.1 1.1 0 1 0 2.2 0a1.1 1.1 0 1 0-2.2 0Z", filled: true },
  front: { size: 6, path: "M3 0V6" },
  "driver-side": { size: 8, path: "M-2 2L2-2M0 8L8 0M6 10L10 6" },
  "passenger-side": { size: 8, path: "M-2 6L2 10M0 0L8 8M6-2L10 2" },
  rear: { size: 6, path: "M0 3H6" },
  roof: { size: 10, path: "M0 7L5 3L10 7" },
  cargo: { size: 8, path: "M1.5 1.5H5.5V5.5H1.5Z" },
  cabin: { size: 7, path: "M0 3.5H7M3.5 0V7" },
  "engine-bay": { size: 9, path: "M2 4.5H7M4.5 2V7" },
  underside: { size: 12, path: "M0 0.5H12M0 6.5H12M3 0.5V6.5M9 6.5V12" },
  documents: { size: 8, path: "M1 2.5H5M3 6.5H7" },
  drive: { size: 12, path: "M0 6C2 2 4 2 6 6S10 10 12 6" },
  closing: { size: 9, path: "M2.2 4.5a2.3 2.3 0 1 0 4.6 0a2.3 2.3 0 1 0-4.6 0Z" },
};

/** Of a pattern's lines, in CSS pixels; `.zone-ink` has the same. */
export const patternLine = 1.1;

export function patternId(zone: ZoneName): string {
  return `zone-pattern-${zone}`;
}

/** The patterns' definitions, once for the page; every drawing refers to them by id. */
export function ZonePatterns() {
  return (
    <svg className="zone-patterns" width="0" height="0" aria-hidden="true">
      <defs>
        {zoneNames.map((zone) => {
          const { size, path, filled } = patternTiles[zone];
          return (
            <pattern key={zone} id={patternId(zone)} width={size} height={size} patternUnits="userSpaceOnUse">
              <g className="zone-ink" data-zone={zone}>
                <rect className="zone-wash" width={size} height={size} />
                <path d={path} className={filled ? "dot" : undefined} />
              </g>
            </pattern>
          );
        })}
      </defs>
    </svg>
  );
}

/** A small piece of a zone's pattern, beside its name. */
export function ZoneSwatch({ zone }: { readonly zone: ZoneName }) {
  return (
    <svg className="zone-swatch" width="18" height="12" viewBox="0 0 18 12" aria-hidden="true">
      <rect className="zone-outline" data-zone={zone} x="0.5" y="0.5" width="17" height="11" fill={`url(#${patternId(zone)})`} />
    </svg>
  );
}
