/** Findings about what is never reached. */
import type { FindingWith } from '../../findings/finding.ts';
import { type NodeId, parentOf } from '../../game/model.ts';
import { capital, type Say, sentence } from '../say.ts';
import type { Part, Sentence } from '../sentence.ts';
import { notToday, soPrizes, type Told } from './told.ts';

/** So many links of a ring are told. */
const MOST = 5;

/** "A lies in B", "B needs C": who waits for whom, a box and its lock told as one. */
function ringClauses(say: Say, ring: readonly NodeId[]): Sentence[] {
  const clauses: Sentence[] = [];
  let subject = ring[0];
  ring.forEach((id, i) => {
    const next = ring[(i + 1) % ring.length];
    const node = say.game.nodes.get(id);
    const after = next === undefined ? undefined : say.game.nodes.get(next);
    if (!node || !after || next === undefined || subject === undefined) return;
    if (after.kind === 'fastener' && after.on === id) return;
    const lies = parentOf(node) === next && node.kind !== 'fastener';
    clauses.push(sentence(say.name(subject), lies ? ' lies in ' : ' needs ', say.name(next)));
    subject = next;
  });
  return clauses;
}

function clauseList(clauses: readonly Sentence[]): Sentence {
  const shown = clauses.length <= MOST ? clauses : clauses.slice(0, MOST - 1);
  const pieces: (Part | Sentence)[] = [];
  shown.forEach((clause, i) => {
    if (i > 0) pieces.push(i === clauses.length - 1 ? ', and ' : ', ');
    pieces.push(clause);
  });
  if (shown.length < clauses.length) pieces.push(', and so on back to the first');
  return capital(sentence(...pieces, '.'));
}

export function ring({ values }: FindingWith<'ring'>, say: Say): Told {
  const { ring: nodes, ownBox, prizes } = values;
  const [thing] = nodes;
  const isOne = ownBox !== undefined && thing !== undefined;
  return {
    is: isOne
      ? capital(sentence(say.the(thing), ' lies in ', say.name(ownBox), ', the box that it opens.'))
      : clauseList(ringClauses(say, nodes)),
    so: sentence(
      isOne ? 'Nobody can reach it. ' : 'They wait for each other, and nobody can begin. ',
      soPrizes(say, prizes),
    ),
  };
}

export function nothingOpens({ values }: FindingWith<'nothingOpens'>, say: Say): Told {
  const { fastener, leftOut, prizes } = values;
  const lock = say.name(fastener);
  const today = leftOut.length === 1 ? ' is not used today' : ' are not used today';
  return {
    is:
      leftOut.length === 0
        ? sentence('Nothing opens ', lock, '.')
        : capital(sentence(say.names(leftOut), today, ', and nothing else opens ', lock, '.')),
    so: soPrizes(say, prizes),
  };
}

export function needTooLarge({ values }: FindingWith<'needTooLarge'>, say: Say): Told {
  const { node, need, possible, leftOut, prizes } = values;
  const there =
    possible === 0
      ? 'nothing leads'
      : possible === 1
        ? 'only one thing leads'
        : `only ${possible} things lead`;
  return {
    is: capital(sentence(say.the(node), ` needs ${need}, and ${there} to it.`)),
    so: sentence(notToday(say, leftOut), soPrizes(say, prizes)),
  };
}

export function prizeOutOfReach({ values }: FindingWith<'prizeOutOfReach'>, say: Say): Told {
  return {
    is: sentence('The prize ', say.name(values.prize), ' is never reached.'),
    so: sentence('Every way to it is blocked: see ', say.names(values.causes), '.'),
  };
}

export function neverReached({ values }: FindingWith<'neverReached'>, say: Say): Told {
  const { nodes, causes } = values;
  return {
    is: capital(
      sentence(
        nodes.length === 1 ? say.all(nodes) : say.names(nodes),
        nodes.length === 1 ? ' is' : ' are',
        ' never reached.',
      ),
    ),
    so: sentence(nodes.length === 1 ? 'What blocks it: ' : 'What blocks them: ', say.names(causes), '.'),
  };
}
