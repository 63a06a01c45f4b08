import { sql } from 'drizzle-orm';
import {
  bigint,
  boolean,
  check,
  date,
  doublePrecision,
  integer,
  pgTable,
  primaryKey,
  text,
} from 'drizzle-orm/pg-core';
import type { Container, RainButt, RiskSetting, SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { LocalDate, LocalTime } from '../../greenhouse/local-time.ts';
import type { Language, Role } from '../../greenhouse/member.ts';
import type { ReferenceQuantity } from '../../greenhouse/quantity.ts';
import type { AerationKind, GrownCrop, Method, SystemId } from '../../greenhouse/system.ts';
import { document, instantMs, plainText } from './column-types.ts';

/** The set-up of a greenhouse and its own numbering; the row is what a handling locks. */
export const greenhouses = pgTable('greenhouses', {
  id: integer('id').primaryKey().generatedAlwaysAsIdentity(),
  createdAtMs: instantMs('created_at_ms').notNull(),
  name: plainText('name').notNull(),
  timeZone: text('time_zone').notNull(),
  latitude: doublePrecision('latitude').notNull(),
  longitude: doublePrecision('longitude').notNull(),
  elevationM: doublePrecision('elevation_m').notNull(),
  morning: text('morning').$type<LocalTime>().notNull(),
  risk: text('risk').$type<RiskSetting>().notNull().default('normal'),
  volumeUnit: text('volume_unit').$type<SpokenUnits['volume']>().notNull(),
  temperatureUnit: text('temperature_unit').$type<SpokenUnits['temperature']>().notNull(),
  conductivityUnit: text('conductivity_unit').$type<SpokenUnits['conductivity']>().notNull(),
  tdsFactor: doublePrecision('tds_factor').notNull(),
  waterName: plainText('water_name').notNull(),
  waterEcMsPerCm: doublePrecision('water_ec_ms_per_cm').notNull(),
  waterAlkalinityMeqL: doublePrecision('water_alkalinity_meq_l').notNull(),
  containers: document('containers').$type<readonly Container[]>().notNull(),
  rainButt: document('rain_butt').$type<RainButt>(),
  /** Raised by one with every handling. */
  revision: bigint('revision', { mode: 'number' }).notNull().default(0),
  /** The revision at which the set-up was last written. */
  setUpRevision: bigint('set_up_revision', { mode: 'number' }).notNull().default(0),
  lastEntryNo: bigint('last_entry_no', { mode: 'number' }).notNull().default(0),
  lastOutgoingNo: bigint('last_outgoing_no', { mode: 'number' }).notNull().default(0),
  clockMs: instantMs('clock_ms').notNull(),
});

/** Every other table hangs on a greenhouse. */
export function ofGreenhouse() {
  return integer('greenhouse')
    .notNull()
    .references(() => greenhouses.id);
}

export const members = pgTable(
  'members',
  {
    greenhouse: ofGreenhouse(),
    position: integer('position').notNull(),
    handle: plainText('handle').notNull(),
    name: plainText('name').notNull(),
    role: text('role').$type<Role>().notNull(),
    language: text('language').$type<Language>().notNull(),
    /** null: as the role has it. */
    handlesAcids: boolean('handles_acids'),
    /** null: the household's. */
    units: document('units').$type<Partial<SpokenUnits>>(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.handle] })],
);

export const systems = pgTable(
  'systems',
  {
    greenhouse: ofGreenhouse(),
    id: text('id').$type<SystemId>().notNull(),
    position: integer('position').notNull(),
    name: plainText('name').notNull(),
    aliases: document('aliases').$type<readonly string[]>().notNull(),
    method: text('method').$type<Method>().notNull(),
    brimL: doublePrecision('brim_l').notNull(),
    lowL: doublePrecision('low_l').notNull(),
    depthCm: doublePrecision('depth_cm').notNull(),
    crop: plainText('crop'),
    plants: integer('plants').notNull(),
    plantedOn: date('planted_on').$type<LocalDate>(),
    grown: document('grown').$type<readonly GrownCrop[]>(),
    /** Given up: hidden, kept for the entries that name it. */
    isFormer: boolean('is_former').notNull().default(false),
    phLowest: doublePrecision('ph_lowest').notNull(),
    phHighest: doublePrecision('ph_highest').notNull(),
    ecLowestMsPerCm: doublePrecision('ec_lowest_ms_per_cm').notNull(),
    ecHighestMsPerCm: doublePrecision('ec_highest_ms_per_cm').notNull(),
    waterLowestC: doublePrecision('water_lowest_c').notNull(),
    waterHighestC: doublePrecision('water_highest_c').notNull(),
    aerationKind: text('aeration_kind').$type<AerationKind>(),
    aerationMinPerHour: doublePrecision('aeration_min_per_hour'),
    floodsEveryMin: doublePrecision('floods_every_min'),
    floodsFillMin: doublePrecision('floods_fill_min'),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.id] }),
    check('low_below_brim', sql`${table.lowL} < ${table.brimL}`),
  ],
);

export const probes = pgTable(
  'probes',
  {
    greenhouse: ofGreenhouse(),
    position: integer('position').notNull(),
    name: plainText('name').notNull(),
    measures: document('measures').$type<readonly ReferenceQuantity[]>().notNull(),
    calibratedOn: date('calibrated_on').$type<LocalDate>(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.position] })],
);

export const stock = pgTable(
  'stock',
  {
    greenhouse: ofGreenhouse(),
    position: integer('position').notNull(),
    product: plainText('product').notNull(),
    mL: doublePrecision('ml').notNull(),
    meqPerMl: doublePrecision('meq_per_ml'),
    riseMsPerCmByMlPerL: doublePrecision('rise_ms_per_cm_by_ml_per_l'),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.position] })],
);

export const chores = pgTable(
  'chores',
  {
    greenhouse: ofGreenhouse(),
    position: integer('position').notNull(),
    name: plainText('name').notNull(),
    system: text('system').$type<SystemId>(),
    everyDays: integer('every_days').notNull(),
    lastDoneOn: date('last_done_on').$type<LocalDate>(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.position] })],
);
