-- Words of a caption as a person put them right. The caption itself stays as it came.
CREATE TABLE caption_corrections (
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  caption INTEGER NOT NULL CHECK (caption >= 0),
  words TEXT NOT NULL,
  initials TEXT NOT NULL,
  PRIMARY KEY (recording_id, caption)
) STRICT, WITHOUT ROWID;

-- Pictures taken from the video, for findings and the index. They can be taken again and are no one's work.
CREATE TABLE stills (
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  at_milliseconds INTEGER NOT NULL CHECK (at_milliseconds >= 0),
  width INTEGER NOT NULL CHECK (width > 0),
  height INTEGER NOT NULL CHECK (height > 0),
  media_type TEXT NOT NULL,
  bytes BLOB NOT NULL,
  PRIMARY KEY (recording_id, at_milliseconds)
) STRICT;

-- What a video is known by when its file was moved or renamed: its length and a hash of its beginning and end.
CREATE TABLE video_fingerprints (
  recording_id TEXT PRIMARY KEY REFERENCES recordings (id) ON DELETE CASCADE,
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  fingerprint TEXT NOT NULL
) STRICT;

-- When what was published, by whom, and how many conflicts were open then.
CREATE TABLE publications (
  sequence INTEGER PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  at TEXT NOT NULL,
  initials TEXT NOT NULL,
  open_conflicts INTEGER NOT NULL CHECK (open_conflicts >= 0)
) STRICT;
CREATE INDEX publications_by_recording ON publications (recording_id, sequence);
