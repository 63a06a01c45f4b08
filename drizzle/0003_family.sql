CREATE TABLE "arrangements" (
	"greenhouse" integer NOT NULL,
	"revision" bigint NOT NULL,
	"position" integer NOT NULL,
	"by_handle" text NOT NULL,
	"at_ms" bigint NOT NULL,
	"settled" json NOT NULL,
	CONSTRAINT "arrangements_greenhouse_revision_position_pk" PRIMARY KEY("greenhouse","revision","position")
);
--> statement-breakpoint
ALTER TABLE "systems" ADD COLUMN "planted_on" date;--> statement-breakpoint
ALTER TABLE "systems" ADD COLUMN "grown" json;--> statement-breakpoint
ALTER TABLE "systems" ADD COLUMN "is_former" boolean DEFAULT false NOT NULL;--> statement-breakpoint
ALTER TABLE "arrangements" ADD CONSTRAINT "arrangements_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "arrangements_by_revision" ON "arrangements" USING btree ("greenhouse","revision");
--> statement-breakpoint
CREATE TRIGGER arrangements_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON "arrangements" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
