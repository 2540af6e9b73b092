-- What was imported. Nothing here is proposed or judged.
CREATE TABLE recordings (
  id TEXT PRIMARY KEY,
  title TEXT NOT NULL,
  stock_number TEXT NOT NULL,
  vehicle_name TEXT NOT NULL,
  vehicle_year INTEGER,
  body_style TEXT NOT NULL,
  drive TEXT NOT NULL CHECK (drive IN ('left-hand', 'right-hand')),
  -- Seconds; the transcript's own end until the page has measured the video.
  duration REAL NOT NULL CHECK (duration >= 0),
  -- ISO 8601 date, where the dealer's record gives it.
  recorded_on TEXT,
  imported_at TEXT NOT NULL,
  transcript_file TEXT NOT NULL,
  transcript_format TEXT NOT NULL,
  -- Seconds.
  transcript_end REAL NOT NULL CHECK (transcript_end >= 0),
  -- Absolute path, or a path relative to the library's folder for videos that the library keeps itself.
  video_path TEXT,
  video_name TEXT,
  video_media_type TEXT
) STRICT;

CREATE TABLE captions (
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  caption_index INTEGER NOT NULL CHECK (caption_index >= 0),
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (recording_id, caption_index)
) STRICT, WITHOUT ROWID;

-- The transcript as it came, byte for byte, so that a better reader can read it again.
CREATE TABLE transcript_originals (
  recording_id TEXT PRIMARY KEY REFERENCES recordings (id) ON DELETE CASCADE,
  bytes BLOB NOT NULL
) STRICT;

CREATE TABLE stock_sheet_fields (
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  field TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (recording_id, field)
) STRICT, WITHOUT ROWID;

CREATE TABLE settings (
  name TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
