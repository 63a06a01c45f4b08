import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import { withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { tellPlan } from './go-away.ts';
import { settleDrafts } from './settle.ts';

/** What a button settles; who covers an absence ends its talk with the plan. */
export function pressSettled(handling: Handling, drafts: readonly ArrangementDraft[]): void {
  handling.conversation = withQuestionsLapsed(handling.conversation);
  if (!settleDrafts(handling, drafts)) return;
  const isForGrower = handling.heard.member.role === 'grower';
  const covers = drafts.find((draft) => draft.kind === 'covers');
  if (isForGrower && covers) tellPlan(handling, null, covers);
}
