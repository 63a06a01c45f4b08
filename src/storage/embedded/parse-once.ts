import type { PGlite, QueryOptions, Transaction } from '@electric-sql/pglite';

/**
 * The same client as drizzle is to have it. drizzle names its parsers with every query, and PGlite
 * copies its table of some hundred types to put them in, which takes a tenth of a query's time. They
 * are in that table from the start (see pglite-options), and here they are left out.
 */
export function parseOnce(client: PGlite): PGlite {
  leaveParsersOut(client);
  const transaction = client.transaction.bind(client);
  client.transaction = (work) =>
    transaction((inside) => {
      leaveParsersOut(inside);
      return work(inside);
    });
  return client;
}

function leaveParsersOut(client: Pick<Transaction, 'query'>): void {
  const query = client.query.bind(client);
  client.query = (text, values, options) => query(text, values, withoutParsers(options));
}

function withoutParsers({ parsers: _, ...others }: QueryOptions = {}): QueryOptions {
  return others;
}
