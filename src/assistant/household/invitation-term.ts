/** An invitation that nobody used in this time is void. */
export const invitationTermMs = 7 * 24 * 3_600_000;
