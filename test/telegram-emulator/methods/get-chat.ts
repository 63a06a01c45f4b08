import { Refusal } from '../wire/refusal.ts';
import { findRoom } from './find-room.ts';
import type { Method } from './method.ts';

export const getChat: Method = ({ platform, parameters }) => {
  const room = findRoom(platform, parameters);
  if (room instanceof Refusal) return room;
  return {
    result: {
      ...room.chat,
      accent_color_id: 0,
      max_reaction_count: 11,
      accepted_gift_types: {
        unlimited_gifts: false,
        limited_gifts: false,
        unique_gifts: false,
        premium_subscription: false,
      },
    },
  };
};
