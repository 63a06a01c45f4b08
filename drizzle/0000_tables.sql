CREATE TABLE "chores" (
	"greenhouse" integer NOT NULL,
	"position" integer NOT NULL,
	"name" text NOT NULL,
	"system" text,
	"every_days" integer NOT NULL,
	"last_done_on" date,
	CONSTRAINT "chores_greenhouse_position_pk" PRIMARY KEY("greenhouse","position")
);
--> statement-breakpoint
CREATE TABLE "greenhouses" (
	"id" integer PRIMARY KEY GENERATED ALWAYS AS IDENTITY (sequence name "greenhouses_id_seq" INCREMENT BY 1 MINVALUE 1 MAXVALUE 2147483647 START WITH 1 CACHE 1),
	"created_at_ms" bigint NOT NULL,
	"name" text NOT NULL,
	"time_zone" text NOT NULL,
	"latitude" double precision NOT NULL,
	"longitude" double precision NOT NULL,
	"elevation_m" double precision NOT NULL,
	"morning" text NOT NULL,
	"volume_unit" text NOT NULL,
	"temperature_unit" text NOT NULL,
	"conductivity_unit" text NOT NULL,
	"tds_factor" double precision NOT NULL,
	"water_name" text NOT NULL,
	"water_ec_ms_per_cm" double precision NOT NULL,
	"water_alkalinity_meq_l" double precision NOT NULL,
	"containers" json NOT NULL,
	"revision" bigint DEFAULT 0 NOT NULL,
	"set_up_revision" bigint DEFAULT 0 NOT NULL,
	"last_entry_no" bigint DEFAULT 0 NOT NULL,
	"last_outgoing_no" bigint DEFAULT 0 NOT NULL,
	"clock_ms" bigint NOT NULL
);
--> statement-breakpoint
CREATE TABLE "members" (
	"greenhouse" integer NOT NULL,
	"position" integer NOT NULL,
	"handle" text NOT NULL,
	"name" text NOT NULL,
	"role" text NOT NULL,
	"language" text NOT NULL,
	CONSTRAINT "members_greenhouse_handle_pk" PRIMARY KEY("greenhouse","handle")
);
--> statement-breakpoint
CREATE TABLE "probes" (
	"greenhouse" integer NOT NULL,
	"position" integer NOT NULL,
	"name" text NOT NULL,
	"measures" json NOT NULL,
	"calibrated_on" date,
	CONSTRAINT "probes_greenhouse_position_pk" PRIMARY KEY("greenhouse","position")
);
--> statement-breakpoint
CREATE TABLE "stock" (
	"greenhouse" integer NOT NULL,
	"position" integer NOT NULL,
	"product" text NOT NULL,
	"ml" double precision NOT NULL,
	CONSTRAINT "stock_greenhouse_position_pk" PRIMARY KEY("greenhouse","position")
);
--> statement-breakpoint
CREATE TABLE "systems" (
	"greenhouse" integer NOT NULL,
	"id" text NOT NULL,
	"position" integer NOT NULL,
	"name" text NOT NULL,
	"aliases" json NOT NULL,
	"method" text NOT NULL,
	"brim_l" double precision NOT NULL,
	"low_l" double precision NOT NULL,
	"depth_cm" double precision NOT NULL,
	"crop" text,
	"plants" integer NOT NULL,
	"ph_lowest" double precision NOT NULL,
	"ph_highest" double precision NOT NULL,
	"ec_lowest_ms_per_cm" double precision NOT NULL,
	"ec_highest_ms_per_cm" double precision NOT NULL,
	"water_lowest_c" double precision NOT NULL,
	"water_highest_c" double precision NOT NULL,
	"aeration_kind" text,
	"aeration_min_per_hour" double precision,
	"floods_every_min" double precision,
	"floods_fill_min" double precision,
	CONSTRAINT "systems_greenhouse_id_pk" PRIMARY KEY("greenhouse","id"),
	CONSTRAINT "low_below_brim" CHECK ("systems"."low_l" < "systems"."brim_l")
);
--> statement-breakpoint
CREATE TABLE "accounts" (
	"greenhouse" integer NOT NULL,
	"channel" text NOT NULL,
	"handle" text NOT NULL,
	"account_id" text NOT NULL,
	"is_current" boolean NOT NULL,
	"can_be_reached" boolean DEFAULT true NOT NULL,
	CONSTRAINT "accounts_greenhouse_channel_handle_pk" PRIMARY KEY("greenhouse","channel","handle"),
	CONSTRAINT "account_once_a_greenhouse" UNIQUE("greenhouse","channel","account_id")
);
--> statement-breakpoint
CREATE TABLE "channel_pulses" (
	"channel" text PRIMARY KEY NOT NULL,
	"heard_at_ms" bigint NOT NULL
);
--> statement-breakpoint
CREATE TABLE "invitations" (
	"code_hash" text PRIMARY KEY NOT NULL,
	"greenhouse" integer NOT NULL,
	"role" text NOT NULL,
	"handle" text,
	"made_by" text,
	"expires_at_ms" bigint NOT NULL,
	"used_at_ms" bigint
);
--> statement-breakpoint
CREATE TABLE "rooms" (
	"channel" text NOT NULL,
	"room_id" text NOT NULL,
	"greenhouse" integer NOT NULL,
	"name" text NOT NULL,
	"can_be_reached" boolean DEFAULT true NOT NULL,
	CONSTRAINT "rooms_channel_room_id_pk" PRIMARY KEY("channel","room_id"),
	CONSTRAINT "room_name_once" UNIQUE("greenhouse","channel","name")
);
--> statement-breakpoint
CREATE TABLE "strangers" (
	"channel" text NOT NULL,
	"account_id" text NOT NULL,
	"told_at_ms" bigint NOT NULL,
	CONSTRAINT "strangers_channel_account_id_pk" PRIMARY KEY("channel","account_id")
);
--> statement-breakpoint
CREATE TABLE "entries" (
	"greenhouse" integer NOT NULL,
	"no" bigint NOT NULL,
	"revision" bigint NOT NULL,
	"system" text,
	"quantity" text NOT NULL,
	"value" double precision NOT NULL,
	"at_ms" bigint NOT NULL,
	"detail" json NOT NULL,
	"source_kind" text NOT NULL,
	"handle" text,
	"message_id" text NOT NULL,
	"recorded_at_ms" bigint NOT NULL,
	CONSTRAINT "entries_greenhouse_no_pk" PRIMARY KEY("greenhouse","no")
);
--> statement-breakpoint
CREATE TABLE "strikes" (
	"greenhouse" integer NOT NULL,
	"entry" bigint NOT NULL,
	"revision" bigint NOT NULL,
	"by_handle" text NOT NULL,
	"at_ms" bigint NOT NULL,
	CONSTRAINT "strikes_greenhouse_entry_pk" PRIMARY KEY("greenhouse","entry")
);
--> statement-breakpoint
CREATE TABLE "weather_days" (
	"greenhouse" integer NOT NULL,
	"date" date NOT NULL,
	"revision" bigint NOT NULL,
	"t_min_c" double precision NOT NULL,
	"t_max_c" double precision NOT NULL,
	"rh_mean_percent" double precision,
	"wind_ms" double precision,
	"solar_mj_m2" double precision,
	"observed" boolean NOT NULL,
	"told_on" date NOT NULL,
	CONSTRAINT "weather_days_greenhouse_date_pk" PRIMARY KEY("greenhouse","date")
);
--> statement-breakpoint
CREATE TABLE "conversations" (
	"greenhouse" integer NOT NULL,
	"handle" text NOT NULL,
	"state" json NOT NULL,
	CONSTRAINT "conversations_greenhouse_handle_pk" PRIMARY KEY("greenhouse","handle")
);
--> statement-breakpoint
CREATE TABLE "inbox" (
	"no" bigint PRIMARY KEY GENERATED ALWAYS AS IDENTITY (sequence name "inbox_no_seq" INCREMENT BY 1 MINVALUE 1 MAXVALUE 9223372036854775807 START WITH 1 CACHE 1),
	"greenhouse" integer NOT NULL,
	"channel" text NOT NULL,
	"platform_id" text,
	"received_at_ms" bigint NOT NULL,
	"written_at_ms" bigint NOT NULL,
	"chat" text NOT NULL,
	"body" json,
	"handled_at_ms" bigint,
	CONSTRAINT "inbox_once" UNIQUE("greenhouse","channel","platform_id")
);
--> statement-breakpoint
CREATE TABLE "mornings" (
	"greenhouse" integer NOT NULL,
	"date" date NOT NULL,
	"sent_at_ms" bigint NOT NULL,
	"revision" bigint NOT NULL,
	"duties" json NOT NULL,
	"outgoing" json NOT NULL,
	CONSTRAINT "mornings_greenhouse_date_pk" PRIMARY KEY("greenhouse","date")
);
--> statement-breakpoint
CREATE TABLE "notices" (
	"greenhouse" integer NOT NULL,
	"key" text NOT NULL,
	"at_ms" bigint NOT NULL,
	CONSTRAINT "notices_greenhouse_key_pk" PRIMARY KEY("greenhouse","key")
);
--> statement-breakpoint
CREATE TABLE "outbox" (
	"greenhouse" integer NOT NULL,
	"no" bigint NOT NULL,
	"at_ms" bigint NOT NULL,
	"channel" text NOT NULL,
	"to" text NOT NULL,
	"in_reply_to" text,
	"kind" text NOT NULL,
	"reply" json NOT NULL,
	"buttons" json NOT NULL,
	"edits" bigint,
	"in_passing" boolean DEFAULT false NOT NULL,
	"status" text DEFAULT 'waiting' NOT NULL,
	"attempts" integer DEFAULT 0 NOT NULL,
	"unanswered" integer DEFAULT 0 NOT NULL,
	"not_before_ms" bigint NOT NULL,
	"leased_until_ms" bigint DEFAULT 0 NOT NULL,
	"platform_id" text,
	"settled_at_ms" bigint,
	"because" text,
	CONSTRAINT "outbox_greenhouse_no_pk" PRIMARY KEY("greenhouse","no")
);
--> statement-breakpoint
ALTER TABLE "chores" ADD CONSTRAINT "chores_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "members" ADD CONSTRAINT "members_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "probes" ADD CONSTRAINT "probes_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "stock" ADD CONSTRAINT "stock_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "systems" ADD CONSTRAINT "systems_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "accounts" ADD CONSTRAINT "accounts_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "invitations" ADD CONSTRAINT "invitations_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "rooms" ADD CONSTRAINT "rooms_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "entries" ADD CONSTRAINT "entries_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "strikes" ADD CONSTRAINT "strikes_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "strikes" ADD CONSTRAINT "strikes_an_entry" FOREIGN KEY ("greenhouse","entry") REFERENCES "public"."entries"("greenhouse","no") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "weather_days" ADD CONSTRAINT "weather_days_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "conversations" ADD CONSTRAINT "conversations_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "inbox" ADD CONSTRAINT "inbox_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mornings" ADD CONSTRAINT "mornings_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "notices" ADD CONSTRAINT "notices_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "outbox" ADD CONSTRAINT "outbox_greenhouse_greenhouses_id_fk" FOREIGN KEY ("greenhouse") REFERENCES "public"."greenhouses"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "accounts_by_id" ON "accounts" USING btree ("channel","account_id");--> statement-breakpoint
CREATE INDEX "entries_by_revision" ON "entries" USING btree ("greenhouse","revision");--> statement-breakpoint
CREATE INDEX "strikes_by_revision" ON "strikes" USING btree ("greenhouse","revision");--> statement-breakpoint
CREATE INDEX "weather_days_by_revision" ON "weather_days" USING btree ("greenhouse","revision");--> statement-breakpoint
CREATE INDEX "inbox_of_chat" ON "inbox" USING btree ("greenhouse","channel","chat","no");--> statement-breakpoint
CREATE INDEX "inbox_unhandled" ON "inbox" USING btree ("channel","no") WHERE "inbox"."handled_at_ms" is null;--> statement-breakpoint
CREATE INDEX "mornings_by_revision" ON "mornings" USING btree ("greenhouse","revision");--> statement-breakpoint
CREATE INDEX "outbox_waiting" ON "outbox" USING btree ("channel","greenhouse","to","no") WHERE "outbox"."status" = 'waiting';--> statement-breakpoint
CREATE INDEX "outbox_latest" ON "outbox" USING btree ("greenhouse","to","no");--> statement-breakpoint
CREATE INDEX "outbox_latest_of_kind" ON "outbox" USING btree ("greenhouse","to","kind","no");--> statement-breakpoint
CREATE INDEX "outbox_by_platform_id" ON "outbox" USING btree ("greenhouse","to","platform_id");--> statement-breakpoint
CREATE INDEX "outbox_latest_of_channel" ON "outbox" USING btree ("greenhouse","channel","to","no");