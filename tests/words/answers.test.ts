/** Lift, order of play and reasons, on the small game and on the examples. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { explanation } from '../../src/words/explain.ts';
import { liftAnswer, rescueLine, shortRescue } from '../../src/words/lift.ts';
import { liftQuestion } from '../../src/words/lift-question.ts';
import { orderOfPlayLines } from '../../src/words/order.ts';
import { plain } from '../../src/words/sentence.ts';
import { winnable } from '../findings/small-games.ts';
import { gameOf } from '../game-of.ts';
import { SLUGS, sourceOf } from '../games/example.ts';

const small = assess(winnable());

function lifted(id: string, assessment = small) {
  const answer = liftAnswer(assessment, id);
  if (!answer) throw new Error(`no answer for ${id}`);
  const { first, second, falls, rescue, fallen, isLost, tone } = answer;
  return {
    first: plain(first),
    second: plain(second),
    falls: plain(falls),
    rescue: plain(rescue),
    fallen,
    isLost,
    tone,
  };
}

describe('what if nobody finds this', () => {
  it('names the box that stays shut, what is left, what falls, and the rescue', () => {
    expect(lifted('tag')).toEqual({
      isLost: true,
      tone: 'stops',
      fallen: ['padlock', 'chest', 'map'],
      first: 'Without tag, chest stays shut.',
      second: 'The game cannot be won then. 3 of 4 steps can still be done.',
      falls: 'Nobody gets to map.',
      rescue: 'Give the team the spare key, or open chest for them.',
    });
  });

  it.each([
    ['shelf', 'Without shelf, sums cannot be solved.', 'Point the team to shelf.'],
    ['note', 'Without note, sums cannot be solved.', 'Give the team a copy of note.'],
    ['sums', 'Without sums, tin stays shut.', 'Tell the team what sums gives: 472.'],
    [
      'wheels',
      'Without the number lock on tin, tin stays shut.',
      'Open the number lock on tin for the team: 472.',
    ],
    ['tin', 'Without tin, chest stays shut.', 'Open tin for the team.'],
    ['chest', 'Without chest, nobody gets to map.', 'Open chest for the team.'],
    ['map', 'map is the prize. Without it the game has no end.', 'Hand it over yourself.'],
  ])('answers for %s', (id, first, rescue) => {
    expect(lifted(id)).toMatchObject({ first, rescue });
  });

  it('tells what the teacher hands over once the puzzle is solved, of two puzzles at the last', () => {
    const handed = assess(
      gameOf(
        [
          { id: 'note', kind: 'clue' },
          { id: 'sums', kind: 'puzzle', answer: '472' },
          { id: 'riddle', kind: 'puzzle', minutes: { low: 9, likely: 9, high: 9 } },
          { id: 'tin', kind: 'container' },
          { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '472' },
          { id: 'bolt', kind: 'fastener', name: 'Lock', on: 'tin', type: 'key' },
          { id: 'pin', kind: 'key' },
          { id: 'badge', kind: 'prize', in: 'tin' },
        ],
        ['note>sums', 'note>riddle', 'sums>tin', 'sums>wheels', 'sums>pin', 'riddle>pin', 'pin>bolt'],
      ),
    );
    expect(lifted('sums', handed)).toMatchObject({
      first: 'Without sums, tin stays shut.',
      rescue: 'Tell the team what sums gives: 472, and hand over tin.',
    });
    expect(lifted('riddle', handed)).toMatchObject({
      rescue: 'Show the team how riddle is solved, and hand over pin.',
    });
    expect(plain(shortRescue(handed, ['sums'], true))).toBe(
      'Without it tin stays shut. Say: 472, and hand over tin.',
    );
    expect(plain(shortRescue(handed, ['sums'], false))).toBe(
      'Without it tin stays shut. Show how the puzzle is solved, and hand over tin.',
    );
  });

  it('names the lock where the box has several', () => {
    const twice = assess(
      winnable(
        [
          { id: 'bolt', kind: 'fastener', name: 'Lock', on: 'tin', type: 'key' },
          { id: 'pin', kind: 'key', in: 'shelf' },
        ],
        ['pin>bolt'],
      ),
    );
    expect(lifted('sums', twice)).toMatchObject({
      first: 'Without sums, the number lock on tin stays shut.',
      falls: 'Nobody gets to map. tag, tin and chest fall with it.',
    });
    expect(lifted('pin', twice)).toMatchObject({
      first: 'Without pin, the key lock on tin stays shut.',
      rescue: 'Give the team the spare key, or open the key lock on tin for them.',
    });
  });

  it('says when nothing is missed', () => {
    const assessment = assess(winnable([{ id: 'extra', kind: 'clue', decoy: true }]));
    expect(lifted('extra', assessment)).toMatchObject({
      isLost: false,
      tone: 'ok',
      first: 'Without extra, nothing else is missed.',
      second: 'The game can still be won. 4 of 5 steps can still be done.',
      rescue: 'Nothing has to be done: nothing hangs on it.',
    });
  });

  it('says when the thing is never reached anyway, and nothing of what is not used', () => {
    const broken = assess(winnable([{ id: 'tag', kind: 'key', in: 'chest' }]));
    expect(lifted('tag', broken).first).toBe('tag is never reached anyway.');
    const partial = assess(winnable([{ id: 'note', kind: 'clue', in: 'shelf', leftOut: true }]));
    expect(liftAnswer(partial, 'note')).toBeUndefined();
  });

  it('calls no game won that cannot be won anyway', () => {
    const wrong = { id: 'wheels', kind: 'fastener' as const, on: 'tin', type: 'number', code: '471' };
    const extra = { id: 'extra', kind: 'clue' as const, decoy: true };
    expect(lifted('extra', assess(winnable([wrong, extra])))).toMatchObject({
      tone: 'stops',
      second: 'The game cannot be won anyway.',
    });
    const shut = assess(winnable([{ id: 'tag', kind: 'key', in: 'chest' }]));
    expect(lifted('tag', shut).tone).toBe('stops');
    const open = assess(winnable([{ id: 'map', kind: 'clue', in: 'chest', decoy: true }]));
    expect(lifted('note', open).tone).toBe('open');
  });

  it('asks with the verb that fits', () => {
    expect(liftQuestion('key')).toBe('What if nobody finds this?');
    expect(liftQuestion('puzzle')).toBe('What if nobody solves this?');
    expect(liftQuestion('fastener')).toBe('What if nobody opens this?');
  });
});

describe('the order of play', () => {
  it('says from which minute a step can begin that waits for what the teacher gives out', () => {
    const timed = assess(
      gameOf(
        [
          { id: 'note', kind: 'clue' },
          { id: 'lens', kind: 'tool', atMinute: 12 },
          { id: 'sums', kind: 'puzzle', answer: '472' },
          { id: 'riddle', kind: 'puzzle', atMinute: 20 },
          { id: 'tin', kind: 'container', atMinute: 9 },
          { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '472' },
          { id: 'badge', kind: 'prize', in: 'tin' },
        ],
        ['note>sums', 'lens>note', 'sums>wheels'],
      ),
    );
    const reasons = orderOfPlayLines(timed).map(({ node, reason }) => `${node}: ${plain(reason)}`);
    expect(reasons).toEqual([
      'sums: from note, with lens, not before minute 12: 472, side by side with 3',
      'wheels: number lock 472, not before minute 9, side by side with 3',
      'riddle: from minute 20, side by side with 1 and 2',
    ]);
  });

  it('says what is done and why it can be done', () => {
    const lines = orderOfPlayLines(small).map(
      ({ number, title, reason, minutes }) => `${number} ${plain(title)} | ${plain(reason)} | ${minutes}`,
    );
    expect(lines).toEqual([
      '1 Search shelf | from the start | 2.3 min',
      '2 sums | from note: 472 | 5.5 min',
      '3 Open tin | number lock 472 | 43 s',
      '4 Open chest | with tag | 43 s',
    ]);
  });

  it('says with what a clue is read, and which clues give the code of a lock', () => {
    const game = winnable(
      [
        { id: 'lens', kind: 'tool', in: 'shelf' },
        { id: 'oil', kind: 'tool' },
        { id: 'safe', kind: 'container', in: 'chest' },
        { id: 'dials', kind: 'fastener', on: 'safe', type: 'number', code: '47' },
        ...['first', 'second'].map((id, i) => ({ id, kind: 'clue' as const, answer: '47'.charAt(i) })),
        { id: 'map', kind: 'prize', in: 'safe' },
      ],
      ['lens>note', 'oil>lens', 'lens>second', 'first>dials@1', 'second>dials@2'],
    );
    const reasons = orderOfPlayLines(assess(game)).map(({ reason }) => plain(reason));
    expect(reasons[1]).toBe('from note, with lens (shelf) and oil: 472');
    expect(reasons.join('\n')).toMatch(
      /^number lock 47, from first and second, with lens \(shelf\) and oil\b/m,
    );
  });

  it('names all that can serve where not all are needed', () => {
    const two = { id: 'sums', kind: 'puzzle' as const, answer: '472', need: 2 };
    const slips = ['left', 'right'].map((id) => ({ id, kind: 'clue' as const, in: 'shelf' }));
    const game = winnable([two, ...slips], ['left>sums', 'right>sums']);
    const said = (assessment: ReturnType<typeof assess>) =>
      orderOfPlayLines(assessment).map(({ reason }) => plain(reason));
    expect(said(assess(game))[1]).toMatch(
      /^from any 2 of (left|note|right), (left|note|right) and (left|note|right): 472$/,
    );
    const late = { id: 'left', kind: 'clue' as const, in: 'chest' };
    const choice = winnable([two, ...slips, late], ['left>sums', 'right>sums']);
    expect(said(assess(choice))[1]).toMatch(/^from (note and right|right and note): 472$/);
  });

  it('speaks of tools and of places as the map does', () => {
    const game = winnable(
      [
        { id: 'lamp', kind: 'tool', in: 'gap' },
        { id: 'gap', kind: 'place', name: 'Under the shelf' },
        { id: 'slip', kind: 'clue', in: 'gap', minutes: { low: 1, likely: 1, high: 1 } },
      ],
      ['lamp>sums', 'lamp>slip', 'slip>sums'],
    );
    const lines = orderOfPlayLines(assess(game)).map(
      ({ title, reason }) => `${plain(title)} | ${plain(reason)}`,
    );
    const text = lines.join('\n');
    expect(text).toMatch(/^Look Under the shelf \| /m);
    expect(text).toMatch(/^Read slip \| read with lamp/m);
    expect(text).toMatch(/^sums \| from (note and slip|slip and note), with lamp: 472/m);
    expect(lifted('gap', assess(game)).rescue).toBe('Have the team look Under the shelf.');
  });

  it('counts what there is no room to name', () => {
    const clues = Array.from({ length: 9 }, (_, i) => ({
      id: `slip${i}`,
      kind: 'clue' as const,
      in: 'shelf',
    }));
    const wide = assess(
      winnable(
        clues,
        clues.map(({ id }) => `${id}>sums`),
      ),
    );
    const said = (most?: number) => plain(orderOfPlayLines(wide, false, most)[1]?.reason ?? []);
    expect(said()).toBe('from note, slip0, slip1 and 7 more');
    expect(said(Number.POSITIVE_INFINITY)).toMatch(/^from note, (slip\d, ){7}slip7 and slip8$/);
  });

  it('says no code where none is wanted, nor does the rescue', () => {
    const reasons = orderOfPlayLines(small, false).map(({ reason }) => plain(reason));
    expect(reasons).toEqual(['from the start', 'from note', 'number lock', 'with tag']);
    for (const { node } of orderOfPlayLines(small)) {
      expect(rescueLine(small, node, true)).toEqual(liftAnswer(small, node)?.rescue);
      expect(plain(rescueLine(small, node, false))).toMatch(/^\D+\.$/);
    }
  });

  it('names the lock where a box has several, and what can be done side by side', () => {
    const game = winnable([{ id: 'second', kind: 'fastener', name: '', on: 'chest', type: 'latch' }]);
    const linesOf = (of: Game) =>
      orderOfPlayLines(assess(of)).map(({ title, reason }) => `${plain(title)} | ${plain(reason)}`);
    const lines = linesOf(game);
    expect(lines).toContain('Key lock on chest | with tag, side by side with 1');
    expect(lines).toContain('Latch on chest | latch, nothing to solve, side by side with 2, 3, 4 and others');
    const checked = winnable([
      { id: 'second', kind: 'fastener', name: '', on: 'chest', type: 'latch', checked: true },
    ]);
    expect(linesOf(checked).join()).toContain('Latch on chest | latch, checked by the teacher');
  });
});

describe('explanations', () => {
  const explained = (id: string, assessment = small) => explanation(assessment, id).map(plain);

  it('give the direct grounds, then the chain back to the start', () => {
    expect(explained('chest')).toEqual([
      'The box chest opens because the key lock on chest is open.',
      'The team has tag because tin is open, because sums is solved, because the team has note, because the team has found shelf.',
    ]);
    expect(explained('note')).toEqual(['The clue note can be read because the team has found shelf.']);
    expect(explained('shelf')).toEqual(['The hiding place shelf can be searched from the start.']);
  });

  it('give the root of what is never reached', () => {
    const broken = assess(winnable([{ id: 'tag', kind: 'key', in: 'chest' }]));
    expect(explained('map', broken)).toEqual([
      'The prize map is never reached. The key tag lies in chest, the box that it opens.',
    ]);
  });

  it('say what is not used today', () => {
    const partial = assess(winnable([{ id: 'note', kind: 'clue', in: 'shelf', leftOut: true }]));
    expect(explained('note', partial)).toEqual(['The clue note is not used today.']);
    expect(explained('nobody', partial)).toEqual([]);
  });
});

describe.each(SLUGS)('the example %s', (slug) => {
  const read = readGame(sourceOf(slug), { newId: () => slug });
  if (!read.ok) throw new Error(`${slug} cannot be read`);
  const assessment = assess(read.document.game);

  it('can be won and has nothing that is worth a look', () => {
    expect(assessment.canBeWon).toBe(true);
    expect(assessment.findings).toEqual([]);
  });

  it('has a title and a reason for every step, and an answer and an explanation for every thing', () => {
    for (const { title, reason } of orderOfPlayLines(assessment)) {
      expect(plain(title)).not.toBe('');
      expect(plain(reason)).not.toBe('');
    }
    for (const id of assessment.network.ids) {
      const { first, second, rescue } = lifted(id, assessment);
      for (const text of [first, second, rescue]) expect(text).toMatch(/\S.*\.$/);
      expect(explanation(assessment, id).length).toBeGreaterThan(0);
    }
  });
});
