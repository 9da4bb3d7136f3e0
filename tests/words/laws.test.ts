/** Laws that every sentence keeps, on random games whose names are made so that an id would show. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { assess } from '../../src/findings/assess.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import { linkRefusal } from '../../src/game/links.ts';
import type { Game, GameNode } from '../../src/game/model.ts';
import { explanation } from '../../src/words/explain.ts';
import { findingHeadline, findingSentence } from '../../src/words/findings/index.ts';
import { liftAnswer } from '../../src/words/lift.ts';
import { orderOfPlayLines } from '../../src/words/order.ts';
import { proposalLabel } from '../../src/words/proposals.ts';
import { editRefusalSentence, linkRefusalSentence } from '../../src/words/refusals.ts';
import { plain, type Sentence } from '../../src/words/sentence.ts';
import { verdictOf } from '../../src/words/verdict.ts';
import { freshIds } from '../findings/small-games.ts';
import { gameArbitrary } from '../random-game.ts';

const runs = (numRuns: number) => ({ seed: 20240612, numRuns });

/** The game with names that no id is part of; some have none. */
function renamed(game: Game): Game {
  let number = 0;
  const nodes = new Map(
    [...game.nodes].map(([id, node]): [string, GameNode] => {
      number += 1;
      return [id, { ...node, name: number % 7 === 0 ? ' ' : `Thing ${number}` }];
    }),
  );
  return { ...game, nodes };
}

/** Words of the code that no person should read, and signs of a gap in a sentence. */
const NEVER =
  /undefined|null|NaN|\[object|container|fastener|leftOut|decoy|\bnode|!|[Oo]ops|[Pp]lease| {2}| [.,]|\.\.|__proto__/;

function expectReadable(game: Game, text: string) {
  expect(text).toMatch(/^\S/);
  expect(text).not.toMatch(NEVER);
  for (const id of game.nodes.keys()) {
    if (id.length > 2) expect(text).not.toContain(id);
  }
}

function expectSentence(game: Game, sentence: Sentence) {
  const text = plain(sentence);
  expectReadable(game, text);
  expect(text).toMatch(/\.$/);
}

const game$ = gameArbitrary().map(renamed);

describe('sentences about any game', () => {
  it('are whole, and free of ids and of the words of the code: findings and verdict', () => {
    fc.assert(
      fc.property(game$, (game) => {
        const assessment = assess(game);
        for (const finding of assessment.findings) {
          expectSentence(game, findingSentence(game, finding));
          expectSentence(game, findingHeadline(game, finding));
        }
        for (const fewest of [undefined, fewestSteps(assessment.network, assessment.measures)]) {
          const { first, second } = verdictOf(assessment, fewest);
          expectSentence(game, first);
          if (second.length > 0) expectSentence(game, second);
        }
      }),
      runs(250),
    );
  });

  it('say no stopping thing twice', () => {
    fc.assert(
      fc.property(gameArbitrary().map(renamed), (game) => {
        const named = {
          ...game,
          nodes: new Map([...game.nodes].map(([id, node], i) => [id, { ...node, name: `Thing ${i}` }])),
        };
        const texts = assess(named)
          .findings.filter(({ level }) => level === 'stops')
          .map((finding) => plain(findingSentence(named, finding)));
        expect(new Set(texts).size).toBe(texts.length);
      }),
      runs(200),
    );
  });

  it('are whole: lift, order of play and explanations', () => {
    fc.assert(
      fc.property(game$, (game) => {
        const assessment = assess(game);
        for (const { title, reason, minutes } of orderOfPlayLines(assessment)) {
          for (const text of [plain(title), plain(reason), minutes]) expectReadable(game, text);
        }
        for (const id of game.nodes.keys()) {
          for (const sentence of explanation(assessment, id)) expectSentence(game, sentence);
          const answer = liftAnswer(assessment, id);
          for (const sentence of answer ? [answer.first, answer.second, answer.falls, answer.rescue] : []) {
            if (sentence.length > 0) expectSentence(game, sentence);
          }
        }
      }),
      runs(120),
    );
  });

  it('say why no arrow may lead from one thing to another', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 14 }).map(renamed), (game) => {
        for (const from of game.nodes.keys()) {
          for (const to of game.nodes.keys()) {
            const refusal = linkRefusal(game, from, to);
            if (!refusal) continue;
            expectSentence(game, linkRefusalSentence(game, from, to, refusal));
            expectSentence(game, editRefusalSentence(game, { reason: 'link', from, to, refusal }));
          }
        }
      }),
      runs(60),
    );
  });

  it('are on every button of a proposal', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 12 }).map(renamed), (game) => {
        const assessment = assess(game);
        for (const finding of assessment.findings) {
          for (const proposal of proposalsFor(assessment, finding, freshIds())) {
            const label = proposalLabel(game, proposal);
            expectReadable(game, label);
            expect(label).not.toMatch(/\.$/);
          }
        }
      }),
      runs(60),
    );
  });
});
