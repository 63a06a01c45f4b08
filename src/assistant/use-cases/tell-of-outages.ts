import type { Entry, Supply } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { mainsCautions } from '../../planning/cautions-for.ts';
import type { BoardQuestion } from '../../planning/duty-board.ts';
import { outageProspects } from '../../planning/outage-prospects.ts';
import { endedBy, openOutages } from '../../planning/outages.ts';
import { boardQuestion } from '../board-question.ts';
import type { Handling } from '../handling.ts';
import type { AdviceAlert } from '../replies/advice.ts';

/** At once after an outage was logged: how long each system lasts; after its end: the all-clear. */
export function tellOfOutages(handling: Handling, logged: readonly Entry[]): void {
  const told = logged.filter(({ quantity }) => quantity === 'outage' || quantity === 'restored');
  if (told.length === 0) return;
  const question = boardQuestion(handling.standing, handling.nowMs);
  const outages = told
    .filter(({ quantity }) => quantity === 'outage')
    .flatMap((entry) => firstTold(entry, question) ?? []);
  for (const alert of outageAlerts(outages, question)) handling.say({ kind: 'alert', alert });
  for (const entry of told) {
    const alert = entry.quantity === 'restored' ? allClearAlert(entry, question) : null;
    if (alert) handling.say({ kind: 'alert', alert });
  }
}

/** The outage as it was told first: with that its hours began. Null where it is over already. */
function firstTold(entry: Entry, { logbook, greenhouse }: BoardQuestion): Entry | null {
  const open = openOutages(
    logbook,
    greenhouse.systems.map(({ id }) => id),
  ).find(
    ({ of, system }) =>
      of === (entry.of ?? 'power') && (system === null || system === entry.system),
  );
  return open?.entry ?? null;
}

/** One alert for each thing that failed, however many systems it was said of. */
export function outageAlerts(
  outages: readonly Entry[],
  question: BoardQuestion,
): readonly AdviceAlert[] {
  const everywhere = question.greenhouse.systems.map(({ id }) => id);
  const supplies = [...new Set(outages.map(({ of }) => of ?? 'power'))];
  return supplies.map((of): AdviceAlert => {
    const entries = outages.filter((entry) => (entry.of ?? 'power') === of);
    const sinceMs = Math.min(...entries.map(({ atMs }) => atMs));
    const meant = systemsOf(entries, everywhere);
    const { systems, unaffected } = outageProspects(question, meant, of, sinceMs);
    const cautions = mainsCautions(question.logbook, [null, ...everywhere]);
    return { kind: 'outage', of, sinceMs, systems, unaffected, cautions };
  });
}

function systemsOf(
  entries: readonly Entry[],
  everywhere: readonly SystemId[],
): readonly SystemId[] {
  const named = entries.flatMap(({ system }) => (system === null ? [] : [system]));
  return entries.some(({ system }) => system === null) ? everywhere : named;
}

/** What is over, and what it may have done; null where no outage was known. */
export function allClearAlert(restored: Entry, question: BoardQuestion): AdviceAlert | null {
  const outage = endedBy(restored, question.logbook);
  if (!outage) return null;
  const of: Supply = outage.of ?? 'power';
  const everywhere = question.greenhouse.systems.map(({ id }) => id);
  const meant = systemsOf([restored.system === null ? outage : restored], everywhere);
  const { systems } = outageProspects(question, meant, of, outage.atMs);
  return {
    kind: 'all-clear',
    of,
    sinceMs: outage.atMs,
    untilMs: restored.atMs,
    systems: systems.map(({ system, lowAtMs, likelyAtMs }) => ({
      system,
      harm: restored.atMs < lowAtMs ? 'none' : restored.atMs < likelyAtMs ? 'perhaps' : 'likely',
    })),
  };
}
