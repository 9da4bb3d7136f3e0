/** The headless check, run as a teacher or a script would run it. */
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as z from 'zod/mini';

const root = fileURLToPath(new URL('../..', import.meta.url));
let folder: string;

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

function check(...args: string[]): Promise<Run> {
  const command = ['--import', 'tsx', 'app/command/check.ts', ...args];
  return new Promise((resolve) => {
    const child = execFile(process.execPath, command, { cwd: root }, (_error, out, err) => {
      resolve({ code: child.exitCode ?? -1, out, err });
    });
  });
}

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const shelf = { id: 'shelf', kind: 'place', name: 'Shelf' };
const hidden = {
  format: 'latchmap',
  version: 1,
  title: 'Hidden',
  nodes: [shelf, { id: 'cup', kind: 'prize', name: 'Cup', in: 'shelf' }],
  links: [],
};
const shut = {
  ...hidden,
  title: 'Shut',
  nodes: [
    shelf,
    { id: 'chest', kind: 'container', name: 'Chest' },
    { id: 'lock', kind: 'fastener', name: 'Lock', on: 'chest', type: 'key' },
    { id: 'tag', kind: 'key', name: 'Red tag', in: 'chest' },
    { id: 'cup', kind: 'prize', name: 'Cup', in: 'chest' },
    { id: '__proto__', kind: 'clue', name: 'Slip', in: 'shelf', decoy: true },
  ],
  links: [{ id: 'l', from: 'tag', to: 'lock' }],
};

const reports = z.array(
  z.strictObject({
    file: z.string(),
    title: z.string(),
    solvable: z.boolean(),
    reached: z.array(z.string()),
    steps: z.strictObject({
      total: z.number(),
      fewest: z.optional(z.number()),
      fewestExact: z.optional(z.boolean()),
      longestChain: z.optional(z.number()),
    }),
    guess: z.record(
      z.string(),
      z.strictObject({
        codes: z.nullable(z.number()),
        left: z.nullable(z.number()),
        minutes: z.nullable(z.number()),
        skips: z.array(z.string()),
      }),
    ),
    minutes: z.optional(
      z.strictObject({
        shortest: z.number(),
        median: z.number(),
        p10: z.number(),
        p90: z.number(),
        chanceInTime: z.number(),
      }),
    ),
    waiting: z.optional(z.strictObject({ total: z.number(), byStep: z.record(z.string(), z.number()) })),
    cost: z.optional(z.record(z.string(), z.number())),
    drag: z.optional(z.record(z.string(), z.number())),
    mustDo: z.optional(z.array(z.string())),
    tied: z.optional(z.array(z.string())),
    kit: z.optional(
      z.strictObject({
        teams: z.number(),
        assigned: z.record(z.string(), z.array(z.nullable(z.string()))),
        short: z.record(z.string(), z.number()),
      }),
    ),
    findings: z.array(
      z.strictObject({
        code: z.string(),
        level: z.enum(['stops', 'look']),
        nodes: z.array(z.string()),
        message: z.string(),
      }),
    ),
  }),
);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'latchmap-check-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('npm run check', () => {
  it('gives 0 and a short verdict when every game can be won', async () => {
    const path = file('hidden.json', hidden);
    const { code, out, err } = await check(path);
    expect(out).toBe(
      `${path}: Hidden\nIt can be won. All lessons finish before the bell. Without a hitch: 2.3 of 40 minutes. Its only step is needed.\n`,
    );
    expect(err).toBe('');
    expect(code).toBe(0);
  });

  it('lists what simulated lessons say, which stops nothing', async () => {
    const path = file('short.json', { ...hidden, lesson: { minutes: 1 } });
    const { code, out } = await check(path);
    expect(code).toBe(0);
    expect(out).toContain(
      'Too long for the lesson. It can be won, but not before the bell: without a hitch it takes 2.3 minutes.',
    );
    expect(out).toMatch(
      /1 thing is worth a look\.\n- Worth a look: No lesson finishes before the bell\. Half take/,
    );
    const json = await check('--json', path);
    expect(z.parse(reports, JSON.parse(json.out))[0]?.findings.map((finding) => finding.code)).toEqual([
      'tooLong',
    ]);
  });

  it('gives 1 and the findings when something stops a game', async () => {
    const { code, out } = await check(file('shut.json', shut), file('hidden.json', hidden));
    expect(code).toBe(1);
    expect(out).toContain('It cannot be won. The key Red tag lies in Chest, the box that it opens.');
    expect(out).toContain(
      '- Stops the game: The key Red tag lies in Chest, the box that it opens. Nobody can reach it. So Cup is never reached.',
    );
    expect(out).toContain('It can be won.');
  });

  it('gives 2, says why, and reports the other files', async () => {
    const newer = file('newer.json', { ...hidden, version: 99 });
    const text = file('text.json', 'no game at all');
    const missing = join(folder, 'missing.json');
    const { code, out, err } = await check(newer, file('hidden.json', hidden), text, missing, folder);
    expect(code).toBe(2);
    expect(out).toContain('It can be won.');
    expect(err).toContain(`${newer}: This game was saved by a newer Latchmap`);
    expect(err).toContain(`${text}: This is no game file`);
    expect(err).toContain(`${missing}: There is no such file.`);
    expect(err).toContain(`${folder}: This is a folder, not a file.`);
  });

  it('with a kit says what is short, and as JSON which lock goes where', async () => {
    const table = file('kit.csv', 'Thing;How many;Id\nkey lock;2;padlock\n');
    const game = file('locked.json', { ...shut, lesson: { teams: 3 } });
    const told = await check('--kit', table, game);
    expect(told.out).toContain(
      'For 3 teams the kit lacks 1 thing.\n- The key lock on Chest: 3 needed, 2 free that fit.',
    );
    const { out } = await check('--json', game, '--kit', table);
    expect(z.parse(reports, JSON.parse(out))[0]?.kit).toEqual({
      teams: 3,
      assigned: { lock: ['padlock', 'padlock', null] },
      short: { lock: 1 },
    });
  });

  it('gives 2 for a kit that cannot be read, and reports the game all the same', async () => {
    const table = file('wrong.csv', 'Thing;How many\nkey lock;few\n');
    const { code, out, err } = await check('--kit', table, file('hidden.json', hidden));
    expect(code).toBe(2);
    expect(err).toBe(`${table}: Line 2, How many: “few” is no number.\n`);
    expect(out).toContain('It can be won.');
    const none = await check(file('hidden.json', hidden), '--kit');
    expect(none.code).toBe(2);
  });

  it('reports as JSON what is true of each game', async () => {
    const good = file('hidden.json', hidden);
    const bad = file('shut.json', shut);
    const { code, out } = await check('--json', good, bad);
    expect(code).toBe(1);
    const parsed = z.parse(reports, JSON.parse(out));
    expect(parsed[0]).toEqual({
      file: good,
      title: 'Hidden',
      solvable: true,
      reached: ['cup', 'shelf'],
      steps: { total: 1, fewest: 1, fewestExact: true, longestChain: 1 },
      guess: {},
      // One search of 1 to 5 minutes: 1 + 4 times a beta(2, 4), whose median is 0.3138. Three of the six pupils wait all the while.
      minutes: {
        shortest: 14 / 6,
        median: expect.closeTo(1 + 4 * 0.3138, 1),
        p10: expect.closeTo(1 + 4 * 0.1122, 1),
        p90: expect.closeTo(1 + 4 * 0.5839, 1),
        chanceInTime: 1,
      },
      waiting: { total: expect.closeTo(7, 0), byStep: { shelf: parsed[0]?.waiting?.total } },
      cost: { shelf: expect.closeTo(14 / 6, 1) },
      drag: { shelf: 14 / 6 },
      mustDo: ['shelf'],
      tied: [],
      findings: [],
    });
    expect(parsed[1]).toMatchObject({
      file: bad,
      solvable: false,
      reached: ['__proto__', 'shelf'],
      steps: { total: 2 },
    });
    expect(Object.keys(parsed[1] ?? {})).toEqual([
      'file',
      'title',
      'solvable',
      'reached',
      'steps',
      'guess',
      'findings',
    ]);
    expect(parsed[1]?.findings[0]).toEqual({
      code: 'ring',
      level: 'stops',
      nodes: ['tag', 'chest', 'lock'],
      message:
        'The key Red tag lies in Chest, the box that it opens. Nobody can reach it. So Cup is never reached.',
    });
  });

  it('gives an empty list for what cannot be read', async () => {
    const { code, out } = await check('--json', join(folder, 'missing.json'));
    expect(JSON.parse(out)).toEqual([]);
    expect(code).toBe(2);
  });

  it('says how it is used when it is not told what to check', async () => {
    for (const args of [[], ['--json'], ['--yaml', 'x.json']]) {
      const { code, out, err } = await check(...args);
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err).toContain('npm run -s check');
    }
  });

  it('says so too when it is asked', async () => {
    const { code, out, err } = await check('--help');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('npm run -s check -- [--json] [--kit FILE] FILE…');
  });
});
