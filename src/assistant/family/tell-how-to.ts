import type { Duty } from '../../greenhouse/duty.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import { howTo } from '../../planning/family/how-to.ts';
import type { About } from '../../understanding/wishes/wish.ts';
import { boardOf } from '../board-of.ts';
import { boardQuestion } from '../board-question.ts';
import { recentSystem } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Button } from '../outgoing.ts';
import { attachedNotes } from '../use-cases/attached-notes.ts';
import type { AskedDuties } from '../use-cases/close-duties.ts';
import { noteDutyShown, noteWork, ofSystem } from '../use-cases/work-spoken-of.ts';

/** So many duties are offered to choose from. */
const mostOffered = 8;

/**
 * A duty unfolded into steps: of the work that is named, else of the duties of the message replied
 * to, else of what is due today. Where several are meant, each has a button.
 */
export function tellHowTo(
  handling: Handling,
  about: About,
  asked: AskedDuties | null,
  /** The probes that the question speaks of, by name. */
  probes: readonly string[] = [],
): void {
  const meant = meantOf(handling, about, asked, probes);
  const [only, ...others] = meant;
  if (only && others.length === 0) return unfold(handling, only);
  noteWork(handling, { ...ofSystem(about.system), duty: about.duty });
  handling.say(
    { kind: 'answer', answer: { kind: 'no-such-duty', isChoice: meant.length > 0 } },
    meant.slice(0, mostOffered).map((duty) => [howToButton(duty)]),
  );
}

export function howToButton(duty: Duty): Button {
  return { label: { kind: 'how-to', duty }, action: { kind: 'how-to', duty } };
}

/** The steps of one duty, with what is kept about it; each photo follows by itself. */
export function unfold(handling: Handling, duty: Duty): void {
  const { standing, nowMs, heard } = handling;
  const { today, later } = boardOf(standing, nowMs);
  const tips = attachedNotes(standing.logbook)
    .filter(
      (note) =>
        (note.system === null || note.system === duty.system) &&
        (note.duty === undefined || note.duty === duty.kind),
    )
    .map(({ note = '', photo = null }) => ({ text: note, photo }));
  const how = howTo({
    board: boardQuestion(standing, nowMs),
    lines: [...today, ...later],
    duty,
    tips,
    member: heard.member,
  });
  handling.say({ kind: 'answer', answer: { kind: 'how-to', how } });
  noteDutyShown(handling, duty);
  for (const { text, photo } of tips) {
    if (!photo) continue;
    handling.say({ kind: 'answer', answer: { kind: 'photo', photo, system: duty.system, text } });
  }
}

function meantOf(
  handling: Handling,
  about: About,
  asked: AskedDuties | null,
  probes: readonly string[],
): readonly Duty[] {
  const { standing, nowMs, heard } = handling;
  const { greenhouse } = standing;
  const { today } = boardOf(standing, nowMs);
  const due =
    asked?.duties ?? dutiesForMember(today, heard.member, greenhouse).mine.map(({ duty }) => duty);
  const fits = (duty: Duty, { system, duty: kind }: About): boolean =>
    (system === null || duty.system === system) && (kind === null || duty.kind === kind);
  const named = due.filter((duty) => fits(duty, about));
  const isNamed = about.system !== null || about.duty !== null;
  const system =
    about.system ?? (greenhouse.systems.length === 1 ? greenhouse.systems[0]!.id : null);
  if (about.duty === 'calibration' && about.system === null)
    return calibrations(greenhouse, probes, localDateOf(nowMs, greenhouse.timeZone));
  if (isNamed) {
    // Measuring is done alike everywhere: it is shown with one of them.
    if (about.duty === 'check' && system === null) {
      const [first] = greenhouse.systems;
      const dueOn = localDateOf(nowMs, greenhouse.timeZone);
      const any = named[0] ?? (first && { kind: 'check' as const, system: first.id, dueOn });
      return any ? [any] : [];
    }
    if (named.length > 0 || system === null) return named;
    const dueOn = localDateOf(nowMs, greenhouse.timeZone);
    return [{ kind: about.duty ?? 'top-up', system, dueOn }];
  }
  const recent = recentSystem(handling.conversation, heard.writtenAtMs);
  const ofRecent = recent === null ? [] : due.filter((duty) => duty.system === recent);
  return ofRecent.length === 1 ? ofRecent : due;
}

/** Of the probes that are spoken of, whether it is due or not; else of every one. */
function calibrations(
  { probes: all }: Greenhouse,
  probes: readonly string[],
  dueOn: LocalDate,
): readonly Duty[] {
  const meant = probes.length > 0 ? probes : all.map(({ name }) => name);
  return meant.map((probe) => ({ kind: 'calibration', system: null, probe, dueOn }));
}
