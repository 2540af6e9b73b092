-- One row for each place that a search can lead to. `said` is what the person reads, `terms` what else it may be found by,
-- `recording` the stock number, title and vehicle, so that "4471 underside" finds one place.
CREATE TABLE search_entries (
  entry INTEGER PRIMARY KEY,
  recording_id TEXT NOT NULL REFERENCES recordings (id) ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('zone', 'claim', 'finding', 'caption')),
  -- Claim id, finding id, caption index or zone name.
  reference TEXT NOT NULL,
  start REAL NOT NULL,
  "end" REAL NOT NULL,
  zone TEXT NOT NULL,
  said TEXT NOT NULL,
  terms TEXT NOT NULL,
  recording TEXT NOT NULL
) STRICT;
CREATE INDEX search_entries_by_recording ON search_entries (recording_id, kind);

CREATE VIRTUAL TABLE search_index USING fts5 (
  said, terms, recording,
  content = 'search_entries', content_rowid = 'entry',
  tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3 4'
);

CREATE TRIGGER search_entry_added AFTER INSERT ON search_entries BEGIN
  INSERT INTO search_index (rowid, said, terms, recording) VALUES (NEW.entry, NEW.said, NEW.terms, NEW.recording);
END;
CREATE TRIGGER search_entry_removed AFTER DELETE ON search_entries BEGIN
  INSERT INTO search_index (search_index, rowid, said, terms, recording) VALUES ('delete', OLD.entry, OLD.said, OLD.terms, OLD.recording);
END;
CREATE TRIGGER search_entry_changed AFTER UPDATE OF said, terms, recording ON search_entries BEGIN
  INSERT INTO search_index (search_index, rowid, said, terms, recording) VALUES ('delete', OLD.entry, OLD.said, OLD.terms, OLD.recording);
  INSERT INTO search_index (rowid, said, terms, recording) VALUES (NEW.entry, NEW.said, NEW.terms, NEW.recording);
END;
