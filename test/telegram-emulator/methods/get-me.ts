import type { Method } from './method.ts';

export const getMe: Method = ({ platform }) => ({
  result: {
    ...platform.bot.user,
    can_join_groups: true,
    can_read_all_group_messages: !platform.bot.privacy,
    supports_inline_queries: false,
    can_connect_to_business: false,
    has_main_web_app: false,
  },
});
