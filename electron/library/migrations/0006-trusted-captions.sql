-- Doubtful captions that a person holds for speech. An analysis is told of them and never writes here.
CREATE TABLE trusted_captions (
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  caption INTEGER NOT NULL CHECK (caption >= 0),
  initials TEXT NOT NULL,
  PRIMARY KEY (recording_id, caption)
) STRICT, WITHOUT ROWID;
