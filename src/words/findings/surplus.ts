/** Findings about prizes and things that are missing, had too soon, or of no use. */
import type { FindingWith } from '../../findings/finding.ts';
import { capital, type Say, sentence } from '../say.ts';
import type { Sentence } from '../sentence.ts';
import { notToday, type Told } from './told.ts';

export function noPrize({ values }: FindingWith<'noPrize'>, say: Say): Told {
  return {
    is: ['There is no prize.'],
    so: sentence(notToday(say, values.leftOut), 'Without a prize the game has no end.'),
  };
}

export function prizeGivenAway({ values }: FindingWith<'prizeGivenAway'>, say: Say): Told {
  const { prize, leftOut } = values;
  const holder = say.game.nodes.get(prize)?.in;
  return {
    is: sentence('The prize ', say.name(prize), ' can be had without a single step.'),
    so:
      leftOut.length > 0
        ? sentence(notToday(say, leftOut), 'Nothing else keeps it from the pupils.')
        : holder === undefined
          ? ['It lies in nothing, and no puzzle hands it over.']
          : sentence('Nothing has to be done to get to ', say.name(holder), ', where it lies.'),
  };
}

export function givenAway({ values }: FindingWith<'givenAway'>, say: Say): Told {
  const { cause, things, holder } = values;
  const isLock = say.game.nodes.get(cause)?.kind === 'fastener';
  const one = things.length === 1;
  const what: Sentence = isLock
    ? [one ? ' opens sooner.' : ' open sooner.']
    : holder === undefined
      ? [one ? ' is in the pupils’ hands sooner.' : ' are in the pupils’ hands sooner.']
      : sentence(one ? ' lies in ' : ' lie in ', say.name(holder), ' and can be had sooner.');
  return {
    is: sentence(capital(say.name(cause)), ' is not used today, so ', say.names(things), what),
    so: ['That gives away what had to be earned.'],
  };
}

export function handOver({ values }: FindingWith<'handOver'>, say: Say): Told {
  const { thing, need, links, puzzles } = values;
  const one = puzzles.length === 1;
  return {
    is: sentence(
      capital(say.names(puzzles)),
      one ? ' hands over ' : ' hand over ',
      say.name(thing),
      `, and any ${need} of ${links} will do.`,
    ),
    so: [
      one ? 'So it can be had without that puzzle.' : 'So it can be had without one or the other of them.',
    ],
  };
}

export function leadsNowhere({ values }: FindingWith<'leadsNowhere'>, say: Say): Told {
  const { node, leftOut } = values;
  const kind = say.game.nodes.get(node)?.kind;
  const what =
    kind === 'place' || kind === 'container'
      ? ' holds nothing, and nothing follows from it.'
      : kind === 'key'
        ? ' opens nothing.'
        : kind === 'tool'
          ? ' is used for nothing.'
          : ' leads to nothing.';
  return {
    is: capital(sentence(say.the(node), what)),
    so:
      leftOut.length > 0
        ? sentence(notToday(say, leftOut), 'What is left costs time and gives nothing.')
        : ['If that is meant, it is a red herring.'],
  };
}
