import { describe } from 'vitest';
import { expectUnderstood } from './expect-understood.ts';

