-- The logbook is append-only: an entry is struck out by a row of its own, never changed or erased.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
	RAISE EXCEPTION 'the table % is append-only: % is refused', TG_TABLE_NAME, TG_OP;
END;
$$;
--> statement-breakpoint
CREATE TRIGGER entries_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON "entries" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
--> statement-breakpoint
CREATE TRIGGER strikes_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON "strikes" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
