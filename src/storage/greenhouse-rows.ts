import type { Chore, Greenhouse, Probe, StockItem } from '../greenhouse/greenhouse.ts';
import type { Member } from '../greenhouse/member.ts';
import type { System } from '../greenhouse/system.ts';
import type {
  chores,
  greenhouses,
  members,
  probes,
  stock,
  systems,
} from './schema/greenhouse-tables.ts';

type GreenhouseRow = typeof greenhouses.$inferSelect;
type SystemRow = typeof systems.$inferSelect;

/** The columns of the greenhouse's own row that its set-up fills. */
export function greenhouseColumns(greenhouse: Greenhouse) {
  const { units, water } = greenhouse;
  return {
    name: greenhouse.name,
    timeZone: greenhouse.timeZone,
    latitude: greenhouse.latitude,
    longitude: greenhouse.longitude,
    elevationM: greenhouse.elevationM,
    morning: greenhouse.morning,
    risk: greenhouse.risk,
    volumeUnit: units.volume,
    temperatureUnit: units.temperature,
    conductivityUnit: units.conductivity,
    tdsFactor: units.tdsFactor,
    waterName: water.name,
    waterEcMsPerCm: water.ecMsPerCm,
    waterAlkalinityMeqL: water.alkalinityMeqL,
    containers: greenhouse.containers,
    rainButt: greenhouse.rainButt ?? null,
  };
}

export function systemColumns(system: System): Omit<SystemRow, 'greenhouse' | 'position'> {
  const { ph, ecMsPerCm, waterTemperatureC, aeration, floods, plantedOn, grown, ...plain } = system;
  return {
    ...plain,
    plantedOn: plantedOn ?? null,
    grown: grown ?? null,
    isFormer: false,
    phLowest: ph[0],
    phHighest: ph[1],
    ecLowestMsPerCm: ecMsPerCm[0],
    ecHighestMsPerCm: ecMsPerCm[1],
    waterLowestC: waterTemperatureC[0],
    waterHighestC: waterTemperatureC[1],
    aerationKind: aeration?.kind ?? null,
    aerationMinPerHour: aeration?.minutesPerHour ?? null,
    floodsEveryMin: floods?.everyMin ?? null,
    floodsFillMin: floods?.fillMin ?? null,
  };
}

export interface GreenhouseRows {
  readonly greenhouse: GreenhouseRow;
  readonly members: readonly (typeof members.$inferSelect)[];
  readonly systems: readonly SystemRow[];
  readonly probes: readonly (typeof probes.$inferSelect)[];
  readonly stock: readonly (typeof stock.$inferSelect)[];
  readonly chores: readonly (typeof chores.$inferSelect)[];
}

export function greenhouseOf(rows: GreenhouseRows): Greenhouse {
  const row = rows.greenhouse;
  const former = rows.systems.filter(({ isFormer }) => isFormer);
  return {
    name: row.name,
    timeZone: row.timeZone,
    latitude: row.latitude,
    longitude: row.longitude,
    elevationM: row.elevationM,
    morning: row.morning,
    risk: row.risk,
    units: {
      volume: row.volumeUnit,
      temperature: row.temperatureUnit,
      conductivity: row.conductivityUnit,
      tdsFactor: row.tdsFactor,
    },
    water: {
      name: row.waterName,
      ecMsPerCm: row.waterEcMsPerCm,
      alkalinityMeqL: row.waterAlkalinityMeqL,
    },
    containers: row.containers,
    ...(row.rainButt === null ? {} : { rainButt: row.rainButt }),
    members: rows.members.map(
      ({ handle, name, role, language, handlesAcids, units }): Member => ({
        handle,
        name,
        role,
        language,
        ...(handlesAcids === null ? {} : { handlesAcids }),
        ...(units === null ? {} : { units }),
      }),
    ),
    systems: rows.systems.filter(({ isFormer }) => !isFormer).map(systemOf),
    ...(former.length > 0 ? { formerSystems: former.map(systemOf) } : {}),
    probes: rows.probes.map(
      ({ name, measures, calibratedOn }): Probe => ({ name, measures, calibratedOn }),
    ),
    stock: rows.stock.map(
      ({ product, mL, meqPerMl, riseMsPerCmByMlPerL }): StockItem => ({
        product,
        mL,
        ...(meqPerMl === null ? {} : { meqPerMl }),
        ...(riseMsPerCmByMlPerL === null ? {} : { riseMsPerCmByMlPerL }),
      }),
    ),
    chores: rows.chores.map(
      ({ name, system, everyDays, lastDoneOn }): Chore => ({ name, system, everyDays, lastDoneOn }),
    ),
  };
}

function systemOf(row: SystemRow): System {
  return {
    id: row.id,
    name: row.name,
    aliases: row.aliases,
    method: row.method,
    brimL: row.brimL,
    lowL: row.lowL,
    depthCm: row.depthCm,
    crop: row.crop,
    plants: row.plants,
    ...(row.plantedOn === null ? {} : { plantedOn: row.plantedOn }),
    ...(row.grown === null ? {} : { grown: row.grown }),
    ph: [row.phLowest, row.phHighest],
    ecMsPerCm: [row.ecLowestMsPerCm, row.ecHighestMsPerCm],
    waterTemperatureC: [row.waterLowestC, row.waterHighestC],
    aeration:
      row.aerationKind === null || row.aerationMinPerHour === null
        ? null
        : { kind: row.aerationKind, minutesPerHour: row.aerationMinPerHour },
    floods:
      row.floodsEveryMin === null || row.floodsFillMin === null
        ? null
        : { everyMin: row.floodsEveryMin, fillMin: row.floodsFillMin },
  };
}
