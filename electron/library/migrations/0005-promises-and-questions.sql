-- More of what the analysis proposes: words a buyer may hold the dealer to, and what was never shown or said.
CREATE TABLE spoken_promises (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  kind TEXT NOT NULL,
  captions TEXT NOT NULL CHECK (json_valid(captions)),
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  quote TEXT NOT NULL,
  spans TEXT NOT NULL CHECK (json_valid(spans)),
  why TEXT NOT NULL,
  rule TEXT NOT NULL CHECK (json_valid(rule)),
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE coverage_questions (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  about TEXT NOT NULL,
  topic TEXT NOT NULL,
  question TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;
