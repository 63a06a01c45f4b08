import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';

const menu = (name: string) => [{ command: name, description: `Does ${name}` }];

test('menus are kept by scope and language, and members see the closest one', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha', language: 'de' });
  const bo = emulator.world.user({ name: 'Bo', language: 'en' });
  const group = emulator.world.group({ owner: asha, members: [bo] });
  const shown = (member: typeof asha, chat: typeof asha.chat) =>
    member.menuIn(chat).map((entry) => entry.command);
  await api.setMyCommands(menu('plain'));
  await api.setMyCommands(menu('deutsch'), { language_code: 'de' });
  await api.setMyCommands(menu('private'), { scope: { type: 'all_private_chats' } });
  await api.setMyCommands(menu('rulers'), { scope: { type: 'all_chat_administrators' } });
  await api.setMyCommands(menu('bo'), {
    scope: { type: 'chat_member', chat_id: group.id, user_id: bo.id },
  });
  expect(shown(asha, asha.chat)).toEqual(['private']);
  expect(shown(asha, group)).toEqual(['rulers']);
  expect(shown(bo, group)).toEqual(['bo']);
  await api.deleteMyCommands({ scope: { type: 'all_private_chats' } });
  expect(shown(asha, asha.chat)).toEqual(['deutsch']);
  expect(shown(bo, bo.chat)).toEqual(['plain']);
  expect(await api.getMyCommands({ language_code: 'de' })).toEqual(menu('deutsch'));
  expect(await api.getMyCommands({ language_code: 'fr' })).toEqual([]);
});

test.for([
  [menu('Upper'), undefined, 'BOT_COMMAND_INVALID'],
  [menu('x'.repeat(33)), undefined, 'BOT_COMMAND_INVALID'],
  [[{ command: 'x', description: '' }], undefined, 'BOT_COMMAND_DESCRIPTION_INVALID'],
  [Array.from({ length: 101 }, (_, n) => menu(`c${n}`)[0]!), undefined, 'BOT_COMMANDS_TOO_MUCH'],
  [menu('x'), { language_code: 'german' }, 'invalid language code specified'],
] as const)('refuses menu %#', async ([commands, other, reason], { api }) => {
  await expect(
    api.setMyCommands([...commands], other as { language_code: 'de' } | undefined),
  ).rejects.toMatchObject(refusal(400, `Bad Request: ${reason}`));
});
