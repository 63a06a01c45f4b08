import type { Greenhouse } from '../greenhouse.ts';
import type { System } from '../system.ts';
import type { GreenhouseFile } from './greenhouse-schema.ts';

/** The JSON value of the greenhouse file that reads back as an equal greenhouse. */
export function writeGreenhouseFile(greenhouse: Greenhouse): GreenhouseFile {
  const { water, containers, members, systems, probes, stock, chores, ...place } = greenhouse;
  const nameOf = new Map(systems.map((system) => [system.id, system.name]));
  return {
    format: 1,
    greenhouse: {
      ...place,
      water: { name: water.name, ec: water.ecMsPerCm, alkalinityMeqL: water.alkalinityMeqL },
      containers: Object.fromEntries(containers.map(({ name, litres }) => [name, litres])),
    },
    members: members.map((member) => ({ ...member })),
    systems: systems.map(writeSystem),
    probes: probes.map((probe) => ({ ...probe, measures: [...probe.measures] })),
    stock: stock.map((item) => ({ ...item })),
    chores: chores.map((chore) => ({
      ...chore,
      system: chore.system === null ? null : (nameOf.get(chore.system) ?? null),
    })),
  };
}

function writeSystem(system: System): GreenhouseFile['systems'][number] {
  return {
    name: system.name,
    aliases: [...system.aliases],
    method: system.method,
    brimL: system.brimL,
    lowL: system.lowL,
    depthCm: system.depthCm,
    crop: system.crop,
    plants: system.plants,
    ...(system.plantedOn === undefined ? {} : { plantedOn: system.plantedOn }),
    ...(system.grown === undefined ? {} : { grown: system.grown.map((crop) => ({ ...crop })) }),
    ph: [...system.ph],
    ec: [...system.ecMsPerCm],
    waterTemperatureC: [...system.waterTemperatureC],
    aeration: system.aeration,
    floods: system.floods,
  };
}
