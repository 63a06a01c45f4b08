import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { quarryLane, rehearse } from './rehearse-child.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'brimkeeper-rehearsal-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('The rehearsal as a process', () => {
  it('answers each line with what it caused and then its number', async () => {
    const { status, lines } = await rehearse(
      ['--greenhouse', quarryLane],
      [
        { at: '2027-05-04T08:20:00+01:00', from: 'tomas', text: 'dwc ph 5.8' },
        { at: '2027-05-04T08:21:00+01:00' },
      ],
    );
    expect(status).toBe(0);
    expect(lines.map(({ done, kind }) => done ?? kind)).toEqual(['receipt', 1, 2]);
  });

  it('goes on after a faulty line, and says what was found and what is expected', async () => {
    const { status, lines } = await rehearse(
      ['--greenhouse', quarryLane],
      [
        'not json',
        { at: 'noon', from: 'tomas', text: 'dwc ph 5.8' },
        { at: '2027-05-04T08:20:00', from: 'tomas', text: 'dwc ph 5.8' },
        { at: '2027-05-04T08:20:00+01:00', from: 'nobody', text: 'dwc ph 5.8' },
        { at: '2027-05-04T08:20:00+01:00', weather: [{ date: '2027-05-32', tMinC: 9, tMaxC: 4 }] },
        { at: '2027-05-04T08:20:00+01:00', from: 'tomas', text: 'dwc ph 5.8' },
        { at: '2027-05-04T08:19:00+01:00' },
      ],
    );
    expect(status).toBe(0);
    expect(lines.map(({ done, kind, error }) => done ?? kind ?? (error ? 'error' : ''))).toEqual([
      ...['error', 1, 'error', 2, 'error', 3, 'error', 4, 'error', 5, 'receipt', 6, 'error', 7],
    ]);
    const errors = lines.flatMap(({ error }) => error ?? []);
    expect(errors[0]).toMatch(/found "not json", expected one JSON object/);
    expect(errors[1]).toMatch(/^at: found "noon", expected an ISO 8601 time/);
    expect(errors[3]).toMatch(/^from: found "nobody", expected one of: ines, tomas, priya, olli/);
    expect(errors[4]).toMatch(/weather\[0\]\.date: found "2027-05-32"/);
    expect(errors[5]).toMatch(/^at: found 2027-05-04T08:19:00\+01:00, expected .* or later/);
  });

  it('refuses a bad call with status 2 and its usage', async () => {
    const { status, stdout, stderr } = await rehearse(['--nonsense'], []);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/usage: npm run --silent rehearse -- --greenhouse FILE/);
  });

  it('refuses a faulty greenhouse file with status 2, every fault with its path', async () => {
    const file = join(folder, 'faulty.json');
    writeFileSync(file, JSON.stringify({ format: 1, greenhouse: { name: '' }, systems: [{}] }));
    const { status, stdout, stderr } = await rehearse(['--greenhouse', file], []);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/greenhouse\.timeZone: found nothing, expected/);
    expect(stderr).toMatch(/systems\[0\]\.brimL: found nothing, expected/);
  });

  it('keeps the database in its folder and goes on from it, whatever the file says then', async () => {
    const data = join(folder, 'data');
    await rehearse(
      ['--greenhouse', quarryLane, '--data', data],
      [{ at: '2027-05-04T08:20:00+01:00', from: 'tomas', text: 'dwc ph 5.8', id: 'm1' }],
    );
    const { lines } = await rehearse(
      ['--greenhouse', quarryLane, '--data', data],
      [
        { at: '2027-05-04T08:19:00+01:00' },
        { at: '2027-05-04T08:22:00+01:00', from: 'tomas', text: 'dwc ph 5.8', id: 'm1' },
        { at: '2027-05-04T08:23:00+01:00', from: 'tomas', text: 'what was the last ph in the dwc' },
      ],
    );
    expect(lines[0]?.error).toMatch(/^at: /);
    expect(lines.map(({ done, kind }) => done ?? kind).slice(1)).toEqual([1, 2, 'answer', 3]);
    expect(lines.at(-2)?.text).toContain('5.8');
  });

  it('gives the same output for the same input, byte for byte', async () => {
    const input = [
      { at: '2027-05-04T06:00:00+01:00', weather: [{ date: '2027-05-03', tMinC: 8, tMaxC: 19 }] },
      { at: '2027-05-04T08:20:00+01:00', from: 'tomas', text: 'bench level 52cm, jars half full' },
      { at: '2027-05-06T08:20:00+01:00', from: 'ines', text: 'topped up the bench 40 l' },
      { at: '2027-05-09T08:20:00+01:00', outlook: true },
    ];
    const [one, other] = await Promise.all([
      rehearse(['--greenhouse', quarryLane], input),
      rehearse(['--greenhouse', quarryLane], input),
    ]);
    expect(one.stdout).not.toBe('');
    expect(other.stdout).toBe(one.stdout);
  });
});
