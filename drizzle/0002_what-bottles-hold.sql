ALTER TABLE "members" ADD COLUMN "handles_acids" boolean;--> statement-breakpoint
ALTER TABLE "stock" ADD COLUMN "meq_per_ml" double precision;--> statement-breakpoint
ALTER TABLE "stock" ADD COLUMN "rise_ms_per_cm_by_ml_per_l" double precision;