-- What the columns of dealers' sheets mean. A sheet itself stays as it came; only what is read from it depends on this.
-- Null on a recording whose sheet came in before: its columns are then read by their names.
ALTER TABLE recordings ADD COLUMN stock_sheet_form TEXT;
-- Null is left out, where the recording has a form.
ALTER TABLE stock_sheet_fields ADD COLUMN meaning TEXT;

-- What a person chose, for every sheet with the same header from then on. `form` is the header's normalised names in alphabetical order.
CREATE TABLE stock_sheet_choices (
  form TEXT NOT NULL,
  -- Normalised.
  name TEXT NOT NULL,
  -- Null is left out.
  field TEXT,
  chosen_at TEXT NOT NULL,
  PRIMARY KEY (form, name)
) STRICT, WITHOUT ROWID;
CREATE INDEX stock_sheet_choices_by_name ON stock_sheet_choices (name, chosen_at);

-- More of what the analysis proposes: claims that the sheet bears out, and what it tells that no claim speaks of.
CREATE TABLE stock_sheet_supports (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  field TEXT NOT NULL,
  topic TEXT NOT NULL,
  sheet_value TEXT NOT NULL,
  claims TEXT NOT NULL CHECK (json_valid(claims)),
  why TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE stock_sheet_silences (
  recording_id TEXT NOT NULL REFERENCES analyses (recording_id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  id TEXT NOT NULL,
  key TEXT NOT NULL,
  field TEXT NOT NULL,
  topic TEXT NOT NULL,
  sheet_value TEXT NOT NULL,
  why TEXT NOT NULL,
  PRIMARY KEY (recording_id, position)
) STRICT, WITHOUT ROWID;
