/** What the server adds to a refusal (`ResponseParameters`); `retry_after` in seconds. */
export type RefusalParameters = {
  readonly retry_after?: number;
  readonly migrate_to_chat_id?: number;
};

/** A call that the server does not carry out. A value, so that every method shows where it can be refused. */
export class Refusal {
  readonly code: number;
  readonly description: string;
  readonly parameters: RefusalParameters | undefined;

  constructor(code: number, description: string, parameters?: RefusalParameters) {
    this.code = code;
    this.description = description;
    this.parameters = parameters;
  }
}

/** 400, with the server's own prefix. */
export const badRequest = (reason: string, parameters?: RefusalParameters): Refusal =>
  new Refusal(400, `Bad Request: ${reason}`, parameters);

/** 403, with the server's own prefix. */
export const forbidden = (reason: string): Refusal => new Refusal(403, `Forbidden: ${reason}`);

/** 409, with the server's own prefix. */
export const conflict = (reason: string): Refusal => new Refusal(409, `Conflict: ${reason}`);

/** 429; the bot is to wait so many seconds. */
export const tooManyRequests = (retryAfterS: number): Refusal =>
  new Refusal(429, `Too Many Requests: retry after ${retryAfterS}`, { retry_after: retryAfterS });
