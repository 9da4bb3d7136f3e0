/** Findings about what can be had by guessing or by chance: what is, then what it skips. */
import type { FindingWith } from '../../findings/finding.ts';
import type { NodeId } from '../../game/model.ts';
import { anyLength, symbolName } from '../lock-codes.ts';
import { count, list, minutes, minutesInWords, numberWord } from '../numbers.ts';
import { capital, type Say, sentence } from '../say.ts';
import { codeInWords, type Sentence } from '../sentence.ts';
import type { Told } from './told.ts';

/** An expected time of trying: under a minute to five seconds. */
export function aboutMinutes(value: number): string {
  const seconds = Math.max(5, Math.round((value * 60) / 5) * 5);
  return seconds < 60 ? `about ${seconds} s` : `about ${minutes(value)}`;
}

/** "That skips Moon puzzle and 6 minutes." */
function thatSkips(say: Say, skips: readonly NodeId[], skipped: number): Sentence {
  const time = minutesInWords(skipped);
  return skips.length === 1
    ? sentence('That skips ', say.names(skips), ` and ${time}.`)
    : sentence('That skips ', say.names(skips), `, ${time} in all.`);
}

/** "the last digit", "the last two digits", "digits 1 and 3". */
function unknownPart(symbol: string, unknown: readonly number[], length: number): string {
  const many = unknown.length > 1;
  if (unknown[0] === length - unknown.length + 1) {
    return many ? `the last ${numberWord(unknown.length)} ${symbol}s` : `the last ${symbol}`;
  }
  return `${symbol}${many ? 's' : ''} ${list(unknown.map(String))}`;
}

export function easilyGuessed({ values }: FindingWith<'easilyGuessed'>, say: Say): Told {
  const { fastener, by, left, unknown, length, given, skips, minutesSkipped, saved } = values;
  const lock = say.name(fastener);
  const time = aboutMinutes(values.minutes);
  const so =
    skips.length > 0
      ? thatSkips(say, skips, minutesSkipped)
      : [`That ends the game ${minutesInWords(saved)} sooner at best.`];
  if (by === 'locks') {
    const keys = given.filter((id) => say.game.nodes.get(id)?.kind === 'key');
    const where = left === 1 ? 'the one lock' : `each of the ${left} locks`;
    return {
      is: capital(sentence('trying ', say.names(keys), ` on ${where} at hand opens `, lock, ` in ${time}.`)),
      so,
    };
  }
  const node = say.game.nodes.get(fastener);
  const type = node?.kind === 'fastener' ? node.type : undefined;
  const symbol = symbolName(type);
  const isPart = unknown.length < length;
  const what = isPart ? sentence(`${unknownPart(symbol, unknown, length)} of `, lock) : lock;
  const why =
    by === 'words'
      ? `: ${count(left, 'word')} fit${left === 1 ? 's' : ''}`
      : isPart
        ? ''
        : `: ${anyLength(type) ? `with ${count(length, symbol)} ` : ''}it has only ${count(left, 'code')}`;
  return { is: capital(sentence(what, ` can be guessed in ${time}${why}.`)), so };
}

export function foundByChance({ values }: FindingWith<'foundByChance'>, say: Say): Told {
  const { place, skips, minutesSkipped } = values;
  return {
    is: capital(sentence(say.name(place), ' may be found by chance.')),
    so: thatSkips(say, skips, minutesSkipped),
  };
}

export function sameCode({ values }: FindingWith<'sameCode'>, say: Say): Told {
  const { fasteners, early, skips, minutesSkipped } = values;
  const who =
    fasteners.length === 2
      ? 'Whoever knows it for one can open both.'
      : 'Whoever knows it for one can open all of them.';
  return {
    is: capital(
      sentence(say.names(fasteners), ' have the same code, ', { code: codeInWords(values.code) }, '.'),
    ),
    so:
      early === undefined
        ? [who]
        : sentence(
            `${who} Tried at `,
            say.name(early),
            ' as soon as it is known, it skips ',
            say.names(skips),
            `: ${minutesInWords(minutesSkipped)}.`,
          ),
  };
}

export function opensAnother({ values }: FindingWith<'opensAnother'>, say: Say): Told {
  const { source, fastener, code, skips, minutesSkipped } = values;
  return {
    is: capital(
      sentence(
        say.name(source),
        ' gives ',
        { code: codeInWords(code) },
        ', which also opens ',
        say.name(fastener),
        ', where it does not lead.',
      ),
    ),
    so: thatSkips(say, skips, minutesSkipped),
  };
}

export function keyOpensSeveral({ values }: FindingWith<'keyOpensSeveral'>, say: Say): Told {
  const { key, fasteners } = values;
  return {
    is: capital(sentence(say.the(key), ' opens ', say.names(fasteners), '.')),
    so: [
      fasteners.length === 2
        ? 'Whoever has it for one can open both.'
        : 'Whoever has it for one can open all of them.',
    ],
  };
}
