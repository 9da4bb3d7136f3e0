import { expect, test } from 'vitest';
import { foundFor, NOTHING, remediesIn, withAnswer } from '../../../app/kit/found-remedies.ts';
import type { RemediesQuestion } from '../../../app/kit/remedies-work.ts';
import { emptyGame } from '../../../src/game/model.ts';
import { fitKit } from '../../../src/kit/fit/index.ts';
import { emptyKit } from '../../../src/kit/model.ts';
import type { Remedy, Shortage } from '../../../src/kit/remedies/index.ts';

const short = (node: string): Shortage => ({ part: 'lock', node, missing: 1, copies: 1 });
const leave = (thing: string): Remedy => ({ code: 'leaveOut', values: { thing, others: [] }, edits: [] });
const asked = (): RemediesQuestion => ({
  game: emptyGame,
  kit: emptyKit,
  fitting: fitKit(emptyGame, emptyKit),
  shortages: [short('f0'), short('f1')],
});

test('asked again before all is answered, each remedy stands under what it is about', () => {
  const [first, second] = [asked(), asked()];
  let found = withAnswer(NOTHING, first, { shortage: short('f0'), remedies: [leave('old')] });
  expect(remediesIn(found, short('f0'))).toEqual([leave('old')]);
  expect(remediesIn(foundFor(found, second), short('f0'))).toBeUndefined();

  found = withAnswer(found, second, { shortage: short('f1'), remedies: [leave('f1')] });
  expect(remediesIn(found, short('f0'))).toBeUndefined();
  found = withAnswer(found, second, { shortage: short('f0'), remedies: [leave('f0')] });
  expect(remediesIn(found, short('f0'))).toEqual([leave('f0')]);
  expect(remediesIn(found, short('f1'))).toEqual([leave('f1')]);
  expect(remediesIn(found, { part: 'hasp', node: 'f0' })).toBeUndefined();
});
