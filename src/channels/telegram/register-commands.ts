import type { Api } from 'grammy';
import type { Language } from '../../greenhouse/member.ts';
import { languages } from '../../greenhouse/member.ts';
import { type CommandName, commandNames } from './phrases/phrases.ts';
import { phrasesOf } from './phrases/phrases-of.ts';

/** In a group nobody leaves or invites: that is said in private. */
const inGroups: readonly CommandName[] = ['today', 'undo', 'help'];

/** Shows the few commands in everybody's menu, in private and in groups, in each language. */
export async function registerCommands(api: Api): Promise<void> {
  for (const language of languages) {
    for (const [scope, names] of [
      ['all_private_chats', commandNames],
      ['all_group_chats', inGroups],
    ] as const) {
      const commands = names.map((command) => ({
        command,
        description: phrasesOf(language).commands[command],
      }));
      await api.setMyCommands(commands, { scope: { type: scope }, ...codeOf(language) });
    }
  }
}

/** English is for everybody whose language is not among ours. */
function codeOf(language: Language): { readonly language_code?: 'de' } {
  return language === 'en' ? {} : { language_code: language };
}
