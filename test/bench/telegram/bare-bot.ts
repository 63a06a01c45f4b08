import { Bot } from 'grammy';
import postgres from 'postgres';

/** What the house is held against: one row a message, and an answer. It understands nothing. */
const { TELEGRAM_TOKEN = '', TELEGRAM_API_ROOT = '', DATABASE_URL = '' } = process.env;
const sql = postgres(DATABASE_URL, { max: 5, onnotice: () => undefined });
await sql`create table if not exists bare_readings (id bigint generated always as identity primary key, chat bigint not null, message bigint not null, words text not null, at timestamptz not null default now())`;

const bot = new Bot(TELEGRAM_TOKEN, { client: { apiRoot: TELEGRAM_API_ROOT } });
bot.on('message:text', async (context) => {
  const { chat, message_id, text } = context.message;
  await sql`insert into bare_readings (chat, message, words) values (${chat.id}, ${message_id}, ${text})`;
  await context.reply(`Logged: ${text}`, { reply_parameters: { message_id } });
});
process.once('SIGTERM', () => {
  void bot.stop().then(() => sql.end());
});
await bot.start({
  onStart: ({ username }) => {
    console.log(`On Telegram as @${username}`);
  },
});
