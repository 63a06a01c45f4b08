import { badRequest, Refusal } from '../wire/refusal.ts';
import { findRoomToWriteIn } from './find-room.ts';
import type { Method } from './method.ts';

/** Documented under sendChatAction. */
const ACTIONS = [
  'typing',
  'upload_photo',
  'record_video',
  'upload_video',
  'record_voice',
  'upload_voice',
  'upload_document',
  'choose_sticker',
  'find_location',
  'record_video_note',
  'upload_video_note',
];

export const sendChatAction: Method = ({ platform, parameters }) => {
  const room = findRoomToWriteIn(platform, parameters);
  if (room instanceof Refusal) return room;
  return ACTIONS.includes(parameters.text('action') ?? '')
    ? { result: true }
    : badRequest('wrong parameter action in request');
};
