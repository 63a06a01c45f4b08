import type { ParameterOrJSON, Sql, TransactionSql, UnsafeQueryOptions } from 'postgres';

/**
 * Statements with more parameters than this differ in their number of rows from one time to the
 * next; each would be kept prepared on both sides and hardly ever be used again.
 */
const mostParameters = 200;

type AnySql = Sql | TransactionSql;

/**
 * The same client, with every statement that recurs prepared once a connection. Drizzle asks for that
 * only where a query is given a name; unprepared, the driver first asks for the types of a
 * statement's parameters and waits, so that each takes two journeys and none can follow on another's
 * heels.
 */
export function prepareStatements<T extends AnySql>(client: T): T {
  return new Proxy(client, {
    get: (target, key, receiver): unknown => {
      switch (key) {
        case 'unsafe':
          return (
            text: string,
            parameters: ParameterOrJSON<never>[],
            options?: UnsafeQueryOptions,
          ) =>
            target.unsafe(text, parameters, {
              ...options,
              prepare: parameters.length <= mostParameters,
            });
        case 'begin':
        case 'savepoint':
          return (...given: unknown[]) => {
            const work = given.pop() as (inner: TransactionSql) => unknown;
            const run = Reflect.get(target, key, target) as (...given: unknown[]) => unknown;
            return run(...given, (inner: TransactionSql) => work(prepareStatements(inner)));
          };
        default:
          return Reflect.get(target, key, receiver);
      }
    },
  });
}
