CREATE TABLE "photos" (
	"greenhouse" integer NOT NULL,
	"channel" text NOT NULL,
	"photo_id" text NOT NULL,
	"bytes" "bytea" NOT NULL,
	CONSTRAINT "photos_greenhouse_channel_photo_id_pk" PRIMARY KEY("greenhouse","channel","photo_id")
);
--> statement-breakpoint
ALTER TABLE "photos" ADD CONSTRAINT "photos_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;