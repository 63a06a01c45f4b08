import { getTableColumns, type SQL, type SQLChunk, sql } from 'drizzle-orm';
import type { PgColumn, PgTable } from 'drizzle-orm/pg-core';

/**
 * Rows of a table on their way in one parameter, however many they are, so that a statement is the
 * same each time and stays prepared.
 */
export interface Recordset<Row> {
  /** The columns that it fills, in a list. */
  readonly names: SQL;
  /** The values of these columns, in the same order. */
  readonly values: SQL;
  /** The rows as a table called `given`. */
  readonly from: (parameter: SQL) => SQL;
  readonly encode: (rows: readonly Row[]) => string;
}

export function recordsetOf<T extends PgTable, K extends keyof T['$inferInsert'] & string>(
  table: T,
  filled: readonly K[],
): Recordset<Pick<T['$inferInsert'], K>> {
  const all: Readonly<Record<string, PgColumn>> = getTableColumns(table);
  const columns = filled.map((key) => ({ key, column: all[key]! }));
  return {
    names: list(columns.map(({ column }) => sql.identifier(column.name))),
    values: list(
      columns.map(({ column }) => {
        const name = sql.identifier(column.name);
        return isDocument(column) ? sql`"given".${name}::json` : sql`"given".${name}`;
      }),
    ),
    from: (parameter) =>
      sql`json_to_recordset(${parameter}) as "given"(${list(
        columns.map(({ column }) => {
          // As a text a document may hold an escaped U+0000, which PostgreSQL would stumble over.
          const type = isDocument(column) ? 'text' : column.getSQLType();
          return sql`${sql.identifier(column.name)} ${sql.raw(type)}`;
        }),
      )})`,
    encode: (rows) =>
      JSON.stringify(
        rows.map((row) =>
          Object.fromEntries(
            columns.map(({ key, column }) => {
              const value: unknown = row[key];
              const isAbsent = value === null || value === undefined;
              return [column.name, isAbsent ? null : column.mapToDriverValue(value)];
            }),
          ),
        ),
      ),
  };
}

function isDocument(column: PgColumn): boolean {
  return column.getSQLType() === 'json';
}

function list(parts: readonly SQLChunk[]): SQL {
  return sql.join([...parts], sql`, `);
}
