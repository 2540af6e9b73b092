-- The part a finding names in its own words, closer than its component; and the moment of the still that shows it.
-- The still itself is in `stills`, where the moment finds it; it may be gone, and can be taken again.
ALTER TABLE findings ADD COLUMN part TEXT;
ALTER TABLE findings ADD COLUMN still_at INTEGER CHECK (still_at >= 0);
