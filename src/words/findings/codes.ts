/** Findings about codes and answers. */
import type { Given } from '../../findings/code-fault.ts';
import type { FindingWith } from '../../findings/finding.ts';
import { kindOf } from '../kinds.ts';
import { count, list } from '../numbers.ts';
import { capital, type Say, sentence } from '../say.ts';
import { codeInWords, type Part, type Sentence } from '../sentence.ts';
import { soPrizes, type Told } from './told.ts';

function code(text: string): Part {
  return { code: codeInWords(text) };
}

/** "position 2", "positions 1 and 3". */
function positions(at: readonly number[]): string {
  return `position${at.length === 1 ? '' : 's'} ${list(at.map(String))}`;
}

/** "A gives 417", "A gives 47 for positions 1 and 3". */
function gives(say: Say, { node, answer, at }: Given): Sentence {
  return sentence(say.name(node), ' gives ', code(answer), at ? ` for ${positions(at)}` : '');
}

function joined(sentences: readonly Sentence[]): Sentence {
  return sentence(
    ...sentences.flatMap((part, i) => [i === 0 ? '' : i === sentences.length - 1 ? ' and ' : ', ', part]),
  );
}

export function codeDisagrees({ values }: FindingWith<'codeDisagrees'>, say: Say): Told {
  const { fastener, sources, prizes } = values;
  return {
    is: capital(
      sentence(
        say.name(fastener),
        ' is set to ',
        code(values.code),
        ', but ',
        joined(sources.map((source) => gives(say, source))),
        '.',
      ),
    ),
    so: sentence('The lock stays shut. ', soPrizes(say, prizes)),
  };
}

export function sourcesDisagree({ values, level }: FindingWith<'sourcesDisagree'>, say: Say): Told {
  const { fastener, first, second, position, prizes } = values;
  const where = position === undefined ? '' : ` They differ at position ${position}.`;
  return {
    is: sentence(
      gives(say, first),
      ', but ',
      gives(say, second),
      ', both for ',
      say.name(fastener),
      '.',
      where,
    ),
    so:
      level === 'stops'
        ? sentence('Only one of them can be right. ', soPrizes(say, prizes))
        : ['Only one of them can be right.'],
  };
}

export function parts({ values }: FindingWith<'parts'>, say: Say): Told {
  const { fastener, problem, sources, positions: at, symbols, length, prizes } = values;
  const [first, second] = sources;
  const lock = say.name(fastener);
  const source = first ? say.name(first.node) : [];
  const so = soPrizes(say, prizes);
  switch (problem) {
    case 'length':
      return {
        is: sentence(
          source,
          ` gives ${count(symbols, 'symbol')}, `,
          code(first?.answer ?? ''),
          `, but is to fill ${count(at.length, 'position')} of the code of `,
          lock,
          '.',
        ),
        so,
      };
    case 'beyond':
      return {
        is: sentence(
          source,
          ` is to fill ${positions(at)} of the code of `,
          lock,
          `, which has only ${length}.`,
        ),
        so,
      };
    case 'gap':
      return {
        is: sentence(`Nothing gives ${positions(at)} of the code of `, lock, '.'),
        so: sentence('The lock stays shut. ', so),
      };
    case 'notWhole':
      return {
        is: sentence(
          source,
          ' gives only a part of the code of ',
          lock,
          ', which does not need all that leads to it.',
        ),
        so: sentence('With that part alone it stays shut. ', so),
      };
    case 'overlap':
      return {
        is: sentence(
          source,
          ' and ',
          second ? say.name(second.node) : [],
          ` both give ${positions(at)} of the code of `,
          lock,
          '.',
        ),
        so: ['They agree, so one of them is enough there.'],
      };
  }
}

export function codeUnknown({ values }: FindingWith<'codeUnknown'>, say: Say): Told {
  const { fastener, lacks } = values;
  const lock = say.name(fastener);
  const so: Sentence = ['Until then nobody can say whether it opens.'];
  switch (lacks) {
    case 'code':
      return { is: capital(sentence(lock, ' has no code yet.')), so };
    case 'answer':
      return { is: sentence('Nothing gives the code of ', lock, ' yet.'), so };
    case 'both':
      return { is: capital(sentence(lock, ' has no code yet, and nothing gives one.')), so };
  }
}

export function unknownType({ values }: FindingWith<'unknownType'>, say: Say): Told {
  const [first] = values.fasteners;
  const node = first === undefined ? undefined : say.game.nodes.get(first);
  return {
    is: sentence(
      `This version does not know locks of the type ‘${values.type}’: `,
      say.names(values.fasteners),
      '.',
    ),
    so: [`Such a ${node ? kindOf(node) : 'lock'} counts as opened by what leads to it.`],
  };
}
