import type { LineOut, Rehearsal } from './rehearsal.ts';
import type { Asked, Keeper, Season } from './season.ts';

/** The bot as keeper, met only through its rehearsal. Everything is full on the first morning. */
export function rehearsalKeeper(season: Season, rehearsal: Rehearsal): Keeper {
  const at = (day: number, time: string) =>
    `${season.weather[day]!.date}T${time}${season.place.utcOffset}`;
  return {
    async morning(day, observed, forecast) {
      if (day === 0) {
        for (const { alias, brimL } of season.systems) {
          const text = `${alias} level ${String(brimL)} l`;
          await rehearsal.say({ at: at(0, '06:00:00'), from: 'ines', text });
        }
      }
      const weather = [...observed.slice(-1), ...forecast];
      if (weather.length > 0) await rehearsal.say({ at: at(day, '06:30:00'), weather });
      const answers = await rehearsal.say({ at: at(day, '07:00:00') });
      return topUpsOf(
        answers.find(({ kind }) => kind === 'round'),
        season,
      );
    },
    async toppedUp(day, system, litres) {
      const text = `topped up the ${season.systems[system]!.alias} ${String(litres)} l`;
      const answers = await rehearsal.say({ at: at(day, '08:30:00'), from: 'tomas', text });
      if (!answers.some(({ kind }) => kind === 'receipt')) {
        throw new Error(`"${text}" was answered without a receipt: ${JSON.stringify(answers)}`);
      }
    },
  };
}

/** The top-ups of a round, as the helper reads them. */
export function topUpsOf(round: LineOut | undefined, season: Season): Asked[] {
  return (round?.due ?? [])
    .filter(({ duty }) => duty === 'top-up')
    .map(({ system, litres, alongside, why }) => ({
      system: season.systems.findIndex(({ name }) => name === system),
      litres: litres ?? 0,
      alongside: alongside === true,
      wantsLevel: why.includes('tell me how high the water stands'),
    }));
}
