import { describe, expect, it } from 'vitest';
import { readTypedLine } from '../../../src/channels/terminal/typed-line.ts';

describe('a typed line', () => {
  it.each([
    ['  north bench ph 6.1 ', { kind: 'message', text: 'north bench ph 6.1' }],
    ['', { kind: 'nothing' }],
    ['#12', { kind: 'press', number: 12 }],
    ['# 3', { kind: 'press', number: 3 }],
    ['#3 is leaking', { kind: 'message', text: '#3 is leaking' }],
    ['/as @Tomas', { kind: 'speak-as', handle: 'tomas' }],
    ['/help', { kind: 'help' }],
    ['/quit', { kind: 'quit' }],
    ['/due now', { kind: 'unknown-command', command: '/due' }],
    ['x'.repeat(4096), { kind: 'message', text: 'x'.repeat(4096) }],
    ['x'.repeat(4097), { kind: 'too-long', length: 4097 }],
  ])('"%s" is read as it is meant', (line, expected) => {
    expect(readTypedLine(line)).toEqual(expected);
  });
});
