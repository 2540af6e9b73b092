-- What a reviewer noted on a denial of the stock sheet, a promise or a question: that it was seen, or that it waits again.
-- An analysis never reads or writes here; a note stays when its matter is no longer found.
CREATE TABLE seen_notes (
  id TEXT PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  -- Order in which they were made.
  sequence INTEGER NOT NULL,
  about TEXT NOT NULL CHECK (about IN ('denial', 'promise', 'question')),
  key TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('seen', 'waits')),
  reason TEXT NOT NULL,
  initials TEXT NOT NULL,
  at TEXT NOT NULL,
  -- The note that took its place; its own id where it was taken back and none had stood before it.
  superseded_by TEXT,
  topic TEXT NOT NULL,
  told TEXT NOT NULL,
  UNIQUE (recording_id, sequence)
) STRICT;
CREATE UNIQUE INDEX one_standing_seen_note ON seen_notes (recording_id, about, key) WHERE superseded_by IS NULL;

-- As with rulings: who dealt with what, and why, is the dealer's record.
CREATE TRIGGER seen_notes_are_never_deleted BEFORE DELETE ON seen_notes
WHEN EXISTS (SELECT 1 FROM recordings WHERE id = OLD.recording_id)
BEGIN
  SELECT RAISE(ABORT, 'notes are superseded, never deleted');
END;
CREATE TRIGGER seen_notes_are_never_reworded BEFORE UPDATE OF
  id, recording_id, sequence, about, key, state, reason, initials, at, topic, told ON seen_notes
BEGIN
  SELECT RAISE(ABORT, 'notes are superseded, never reworded');
END;

-- What else nobody had dealt with when it was published, each in words; null for publications from before that was kept.
ALTER TABLE publications ADD COLUMN open_matters TEXT CHECK (json_valid(open_matters));
