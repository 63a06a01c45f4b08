import { z } from 'zod';
import { type Path, pathText } from './fault.ts';

/** Paths of what stands in the file but is not in its schema: a newer file's, or a slip of the pen. */
export function unknownKeys(
  value: unknown,
  schema: z.core.$ZodType,
  path: Path = [],
): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = unwrapped(schema);
  if (inner instanceof z.ZodArray && Array.isArray(value)) {
    return value.flatMap((item, i) => unknownKeys(item, inner.element, [...path, i]));
  }
  if (!(inner instanceof z.ZodObject) || Array.isArray(value)) return [];
  const shape: Readonly<Record<string, z.core.$ZodType>> = inner.shape;
  return Object.entries(value).flatMap(([key, item]) => {
    const here = [...path, key];
    const field = Object.hasOwn(shape, key) ? shape[key] : undefined;
    return field ? unknownKeys(item, field, here) : [pathText(here)];
  });
}

function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  if (
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodPrefault ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodOptional
  ) {
    return unwrapped(schema.unwrap());
  }
  return schema;
}
