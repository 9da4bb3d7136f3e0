/** What a game says of the lesson and of how a thing is used in it: read, written back, judged, and what holds without it. */
import { describe, expect, test } from 'vitest';
import { hintAfterOf, lessonOf, sharedOf, sharesAnything, teamSize } from '../../src/game/defaults.ts';
import { applyEdits } from '../../src/game/edits/index.ts';
import { writeGame } from '../../src/game/write.ts';
import { read, sampleFile, sampleGame } from './sample.ts';

const LESSON = {
  adults: 2,
  hintMinutes: 1.5,
  checkMinutes: 0.25,
  talkBefore: 10,
  talkAfter: 0,
  clearUp: 7,
};

const FIELDS: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  shelf: { shared: 2 },
  tin: { shared: 1 },
  sum: { checked: true, hintAfter: 6.5 },
  wheels: { checked: false, hintAfter: 0 },
};

function withFields(fields: Readonly<Record<string, Readonly<Record<string, unknown>>>>) {
  const file = sampleFile();
  file.nodes = file.nodes.map((node) => ({ ...node, ...fields[String(node.id)] }));
  return file;
}

test('all of them are read and written back as they are', () => {
  const result = read({ ...withFields(FIELDS), lesson: LESSON });
  if (!result.ok) throw new Error('not read');
  const written: { lesson: unknown; nodes: { id: string }[] } = JSON.parse(writeGame(result.document));
  expect(written.lesson).toEqual(LESSON);
  for (const [id, fields] of Object.entries(FIELDS)) {
    expect(written.nodes.find((node) => node.id === id)).toMatchObject(fields);
  }
  expect(read(writeGame(result.document))).toEqual(result);
});

test('without them nothing is written', () => {
  const result = read(sampleFile());
  if (!result.ok) throw new Error('not read');
  expect(writeGame(result.document)).not.toMatch(/shared|checked|hintAfter|adults|talk|clearUp/);
});

describe('bad values are refused, in a file and in an edit', () => {
  test.each([
    ['shelf', 'shared', 0],
    ['shelf', 'shared', 1.5],
    ['tin', 'shared', -1],
    ['tin', 'shared', 'one'],
    ['sum', 'checked', 'yes'],
    ['sum', 'hintAfter', -1],
    ['sum', 'hintAfter', 1e9],
    ['wheels', 'hintAfter', '5'],
  ])('%s %s %j', (id, field, value) => {
    expect(read(withFields({ [id]: { [field]: value } })).ok).toBe(false);
    const edited = applyEdits(sampleGame(), [{ type: 'setFields', id, fields: { [field]: value } }]);
    expect(edited).toEqual({ ok: false, refusal: { reason: 'badValue', id, field } });
  });

  test.each([
    ['adults', -1],
    ['adults', 0.5],
    ['hintMinutes', -1],
    ['checkMinutes', '1'],
    ['talkBefore', null],
    ['talkAfter', 1e9],
    ['clearUp', -0.1],
  ])('lesson %s %j', (field, value) => {
    expect(read({ ...sampleFile(), lesson: { [field]: value } }).ok).toBe(false);
    const fields = { lesson: { [field]: value } };
    expect(applyEdits(sampleGame(), [{ type: 'setHead', fields }]).ok).toBe(false);
  });
});

describe('what holds without them', () => {
  test('the lesson', () => {
    expect(lessonOf(sampleGame())).toEqual({
      ages: '',
      pupils: 24,
      teams: 4,
      minutes: 40,
      hints: 3,
      adults: 1,
      hintMinutes: 1,
      checkMinutes: 0.5,
      talkBefore: 5,
      talkAfter: 5,
      clearUp: 5,
    });
    expect(lessonOf({ ...sampleGame(), head: { lesson: { adults: 0, talkBefore: 0 } } })).toMatchObject({
      adults: 0,
      talkBefore: 0,
      talkAfter: 5,
    });
  });

  test('a hint midway between the likely and the high estimate', () => {
    expect(hintAfterOf({ id: 'p', kind: 'puzzle', name: 'P' })).toBe(7.5);
    expect(hintAfterOf({ id: 'p', kind: 'puzzle', name: 'P', minutes: { low: 1, likely: 2, high: 4 } })).toBe(
      3,
    );
    expect(hintAfterOf({ id: 'p', kind: 'puzzle', name: 'P', hintAfter: 0 })).toBe(0);
  });

  test('every team has its own of everything', () => {
    expect([...sampleGame().nodes.values()].map(sharedOf)).toEqual(
      Array.from({ length: 9 }, () => undefined),
    );
    expect(sharesAnything(sampleGame())).toBe(false);
    const shared = applyEdits(sampleGame(), [{ type: 'setFields', id: 'tin', fields: { shared: 1 } }]);
    expect(shared.ok && sharesAnything(shared.game)).toBe(true);
  });

  test('only a tool, a box or a place is shared; elsewhere the field is kept and means nothing', () => {
    const result = read(withFields({ sum: { shared: 3 } }));
    const sum = result.ok ? result.document.game.nodes.get('sum') : undefined;
    expect(sum).toMatchObject({ shared: 3 });
    expect(sum && sharedOf(sum)).toBeUndefined();
  });

  test('a team is never nobody', () => {
    expect(teamSize({ pupils: 24, teams: 4 })).toBe(6);
    expect(teamSize({ pupils: 25, teams: 10 })).toBe(3);
    expect(teamSize({ pupils: 0, teams: 4 })).toBe(1);
    expect(teamSize({ pupils: 3, teams: 8 })).toBe(1);
    expect(teamSize({ pupils: 20, teams: 0 })).toBe(20);
  });
});
