import type { Duty } from '../../greenhouse/duty.ts';
import type { Fact } from '../fact.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type { Settled } from './settled.ts';

/** `12 l` in reply to a top-up duty is that top-up; a failure names the one duty replied to. */
export function asDutiesAnswered(frame: Frame, settled: readonly Settled[]): Settled[] {
  const { repliedTo, greenhouse } = frame.context;
  const duties: readonly Duty[] = repliedTo?.kind === 'round' ? repliedTo.duties : [];
  const topUps = duties.filter(({ kind }) => kind === 'top-up');
  return settled.map((one) => {
    const { fact } = one;
    if (
      fact.doubt?.kind === 'in-it-or-added' &&
      fact.amount.kind === 'measure' &&
      isVolume(fact.amount.measure)
    ) {
      const fitting = one.askSystem
        ? topUps
        : topUps.filter(({ system }) => one.systems?.some(({ id }) => id === system));
      if (fitting.length !== 1) return one;
      const systems = greenhouse.systems.filter(({ id }) => id === fitting[0]!.system);
      return { ...one, fact: withoutDoubt(fact), systems, askSystem: null };
    }
    if (fact.quantity === 'duty-failed' && fact.duty === undefined) {
      const fitting = duties.filter(({ system }) => one.systems?.some(({ id }) => id === system));
      if (fitting.length === 1) return { ...one, fact: { ...fact, duty: fitting[0]!.kind } };
    }
    return one;
  });
}

function withoutDoubt(fact: Fact): Fact {
  return { ...fact, doubt: null, because: 'reply to a top-up duty' };
}
