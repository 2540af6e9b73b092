-- What people did. An analysis never reads or writes these tables.
CREATE TABLE zone_spans (
  id TEXT PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  zone TEXT NOT NULL,
  start REAL NOT NULL CHECK (start >= 0),
  "end" REAL NOT NULL,
  title TEXT,
  initials TEXT NOT NULL,
  CHECK (start < "end")
) STRICT;
CREATE INDEX zone_spans_by_recording ON zone_spans (recording_id, start);

CREATE TABLE findings (
  id TEXT PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  start REAL NOT NULL CHECK (start >= 0),
  "end" REAL NOT NULL,
  zone TEXT NOT NULL,
  component TEXT NOT NULL,
  position TEXT,
  seen TEXT NOT NULL,
  grade TEXT NOT NULL,
  note TEXT NOT NULL,
  proposal_key TEXT,
  initials TEXT NOT NULL,
  CHECK (start <= "end")
) STRICT;
CREATE INDEX findings_by_recording ON findings (recording_id, start);

CREATE TABLE rulings (
  id TEXT PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  -- Order in which they were made.
  sequence INTEGER NOT NULL,
  conflict_key TEXT NOT NULL,
  decision TEXT NOT NULL,
  side INTEGER,
  reason TEXT NOT NULL,
  right_words TEXT,
  initials TEXT NOT NULL,
  at TEXT NOT NULL,
  -- The ruling that took its place; its own id where it was taken back and none had stood before it.
  superseded_by TEXT,
  topic TEXT NOT NULL,
  side_values TEXT NOT NULL CHECK (json_valid(side_values)),
  UNIQUE (recording_id, sequence)
) STRICT;
CREATE UNIQUE INDEX one_standing_ruling ON rulings (recording_id, conflict_key) WHERE superseded_by IS NULL;

-- Rulings are the dealer's record of who decided what and why.
CREATE TRIGGER rulings_are_never_deleted BEFORE DELETE ON rulings
WHEN EXISTS (SELECT 1 FROM recordings WHERE id = OLD.recording_id)
BEGIN
  SELECT RAISE(ABORT, 'rulings are superseded, never deleted');
END;
CREATE TRIGGER rulings_are_never_reworded BEFORE UPDATE OF
  id, recording_id, sequence, conflict_key, decision, side, reason, right_words, initials, at, topic, side_values ON rulings
BEGIN
  SELECT RAISE(ABORT, 'rulings are superseded, never reworded');
END;

-- One row for each change a person made: undone and redone as a whole. Never deleted; an edit that was undone and then followed
-- by another one is "dropped" and stays as history.
CREATE TABLE edits (
  sequence INTEGER PRIMARY KEY AUTOINCREMENT,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  label TEXT NOT NULL,
  initials TEXT NOT NULL,
  at TEXT NOT NULL,
  -- [{ table, id, before, after }], rows as they were and as they became; null where there was or is none.
  changes TEXT NOT NULL CHECK (json_valid(changes)),
  state TEXT NOT NULL DEFAULT 'done' CHECK (state IN ('done', 'undone', 'dropped')),
  -- Who last undid or redid it.
  moved_by TEXT,
  moved_at TEXT
) STRICT;
CREATE INDEX edits_by_recording ON edits (recording_id, state, sequence);
