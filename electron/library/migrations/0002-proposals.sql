-- What the analysis proposed. Replaced as a whole when a recording is analysed again; nothing that a person did is kept here,
-- and nothing that a person did refers to a row here.
CREATE TABLE analyses (
  recording_id TEXT PRIMARY KEY REFERENCES recordings (id) ON DELETE CASCADE,
  analysis_version INTEGER NOT NULL,
  analysed_at TEXT NOT NULL
) STRICT;

CREATE TABLE zone_proposals (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  zone TEXT NOT NULL,
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  confidence REAL NOT NULL,
  evidence TEXT NOT NULL CHECK (json_valid(evidence)),
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE repairs (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  caption INTEGER NOT NULL,
  spans TEXT NOT NULL CHECK (json_valid(spans)),
  heard TEXT NOT NULL,
  meant TEXT NOT NULL,
  rule TEXT NOT NULL,
  sure INTEGER NOT NULL CHECK (sure IN (0, 1)),
  PRIMARY KEY (recording_id, position),
  UNIQUE (recording_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE claims (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  captions TEXT NOT NULL CHECK (json_valid(captions)),
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  quote TEXT NOT NULL,
  spans TEXT NOT NULL CHECK (json_valid(spans)),
  component TEXT NOT NULL,
  part TEXT,
  vehicle_position TEXT,
  attribute TEXT NOT NULL,
  -- JSON: a number stays a number, a word a string.
  value TEXT NOT NULL CHECK (json_valid(value)),
  unit TEXT,
  stance TEXT NOT NULL,
  time TEXT NOT NULL,
  circumstance TEXT,
  zone TEXT NOT NULL,
  rule TEXT NOT NULL,
  repairs TEXT NOT NULL CHECK (json_valid(repairs)),
  PRIMARY KEY (recording_id, position),
  UNIQUE (recording_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE conflicts (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  kind TEXT NOT NULL,
  topic TEXT NOT NULL,
  why TEXT NOT NULL,
  rule TEXT NOT NULL,
  standard TEXT NOT NULL CHECK (json_valid(standard)),
  weight REAL NOT NULL,
  sides TEXT NOT NULL CHECK (json_valid(sides)),
  PRIMARY KEY (recording_id, position),
  UNIQUE (recording_id, id)
) STRICT, WITHOUT ROWID;

-- Which claims stand in which conflict: the search asks this of every claim that it shows.
CREATE TABLE conflict_claims (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  claim_id TEXT NOT NULL,
  conflict_key TEXT NOT NULL,
  side INTEGER NOT NULL,
  PRIMARY KEY (recording_id, claim_id, conflict_key, side)
) STRICT, WITHOUT ROWID;

CREATE TABLE remarks (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  topic TEXT NOT NULL,
  why TEXT NOT NULL,
  claims TEXT NOT NULL CHECK (json_valid(claims)),
  rule TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE stock_sheet_denials (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  field TEXT NOT NULL,
  sheet_value TEXT NOT NULL,
  claims TEXT NOT NULL CHECK (json_valid(claims)),
  why TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE doubtful_captions (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  caption INTEGER NOT NULL,
  why TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE chapter_proposals (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  zone TEXT NOT NULL,
  title TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;
