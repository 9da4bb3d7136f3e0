/** Why an arrow may not be drawn, and why a thing may not be dropped or a value set. */
import type { EditRefusal } from '../game/edits/edit.ts';
import type { LinkRefusal } from '../game/links.ts';
import type { Game, Kind, NodeId } from '../game/model.ts';
import { MAX_MINUTES } from '../game/schema.ts';
import { sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

/** What an arrow from each kind may say. */
const LEADS_TO: Readonly<Record<Kind, string>> = {
  key: 'A key opens a lock, or is used in a puzzle.',
  clue: 'A clue leads to a puzzle, a lock, a hiding place or another clue.',
  tool: 'A tool is used on a puzzle, a clue, a lock or another tool.',
  puzzle: 'A puzzle may lead to anything.',
  place: 'From a hiding place an arrow leads only to a puzzle.',
  container: 'From a box an arrow leads only to a puzzle.',
  fastener: 'From a lock an arrow leads only to a puzzle. What it shuts lies in its box.',
  prize: 'The prize is the end. Nothing comes after it.',
};

const HELD: ReadonlySet<Kind> = new Set(['key', 'clue', 'tool', 'prize', 'container']);

export function linkRefusalSentence(game: Game, from: NodeId, to: NodeId, refusal: LinkRefusal): Sentence {
  const say = sayer(game);
  switch (refusal) {
    case 'self':
      return ['Nothing is needed for itself.'];
    case 'twice':
      return sentence('There is an arrow from ', say.name(from), ' to ', say.name(to), ' already.');
    case 'unknown':
      return ['One end of this arrow is gone.'];
    case 'kinds': {
      const source = game.nodes.get(from)?.kind;
      const target = game.nodes.get(to)?.kind;
      if (source === undefined) return ['One end of this arrow is gone.'];
      if (target === 'container' && HELD.has(source)) {
        return [
          'A box opens by its locks: lead the arrow to one of them. What lies in the box is dragged into it.',
        ];
      }
      if (target === 'place' && HELD.has(source)) {
        return [`${LEADS_TO[source]} What is hidden in a place is dragged into it.`];
      }
      return [LEADS_TO[source]];
    }
  }
}

const MOST = MAX_MINUTES.toLocaleString('en');

const FIELD = new Map([
  [
    'minutes',
    `The three times go from the shortest to the longest, none below nothing or above ${MOST} minutes.`,
  ],
  ['hands', 'At least one pupil works at it: a whole number.'],
  ['need', 'How many are needed is a whole number from 1 up, or all of them.'],
  ['atMinute', `The minute at which it is given out is a number from 0 to ${MOST}.`],
  ['at', 'Positions in the code are whole numbers from 1 up.'],
  ['lesson', `Pupils, teams, minutes and hints are numbers from 0 up, the minutes at most ${MOST}.`],
]);

export function editRefusalSentence(game: Game, refusal: EditRefusal): Sentence {
  const say = sayer(game);
  switch (refusal.reason) {
    case 'unknown':
      return ['This is no longer there.'];
    case 'taken':
      return ['This is there already.'];
    case 'insideItself':
      return refusal.id === refusal.holder
        ? sentence(say.name(refusal.id), ' cannot lie inside itself.')
        : sentence(
            say.name(refusal.holder),
            ' lies inside ',
            say.name(refusal.id),
            '. Neither can hold the other.',
          );
    case 'needsContainer':
      return ['A lock sits on a box. Let it go on one.'];
    case 'notOnMat':
      return ['Only what lies in no place and no box can be pinned.'];
    case 'link':
      return linkRefusalSentence(game, refusal.from, refusal.to, refusal.refusal);
    case 'badValue':
      return [FIELD.get(refusal.field) ?? 'This value does not fit here.'];
    case 'cannotHold':
      switch (game.nodes.get(refusal.id)?.kind) {
        case 'place':
          return ['A hiding place is part of the room. It lies in nothing.'];
        case 'puzzle':
          return ['A puzzle is thinking, not a thing. What it needs and what it gives can lie in a box.'];
        case 'fastener':
          return ['A lock sits on a box, not in it.'];
        default:
          return ['Only a hiding place or a box holds things.'];
      }
  }
}
