/** What stands above the map: title and lesson, the verdict, why a game cannot be won, and what the signs mean. */
import { fewestSteps } from '../../../engine/fewest.ts';
import type { Fewest } from '../../../engine/measures.ts';
import type { Assessment } from '../../../findings/assess.ts';
import { lessonOf } from '../../../game/defaults.ts';
import { wrap } from '../../../type/text.ts';
import { findingHeadline } from '../../../words/findings/index.ts';
import { titleOf } from '../../../words/keep.ts';
import { sentence } from '../../../words/say.ts';
import type { Sentence } from '../../../words/sentence.ts';
import { EMPTY, leftOut, STOP_BAND } from '../../../words/sheet-map.ts';
import { lessonText } from '../../../words/sheets.ts';
import { verdictOf } from '../../../words/verdict.ts';
import type { Mark, TextMark } from '../../drawing.ts';
import { movedDown, rectangle, rule, textMark } from '../../marks.ts';
import { prose } from '../../prose.ts';
import type { LayoutOptions } from '../../sheet.ts';

export interface Heading {
  readonly title: string;
  readonly lesson: string;
  readonly verdict: Sentence;
  /** Why it cannot be won: the first reasons, and how many more there are. Undefined when it can. */
  readonly stop: { readonly reasons: readonly Sentence[]; readonly more: number } | undefined;
  /** What is not on the page. */
  readonly leftOut: string;
  readonly teams: number;
}

/** So many reasons are told on the page. */
const REASONS = 3;

export function headingOf(assessment: Assessment, { codes }: LayoutOptions): Heading {
  const { game, network, findings } = assessment;
  const verdict = verdictOf(assessment, fewestOf(assessment));
  const stops = findings.filter(({ level }) => level === 'stops');
  const hasStopped = verdict.tone === 'stops';
  const reasons = stops.slice(0, REASONS).map((finding) => findingHeadline(game, finding));
  return {
    title: titleOf(game.head.title),
    lesson: lessonText(game),
    verdict: game.nodes.size === 0 ? [EMPTY] : hasStopped ? [] : verdict.first,
    stop: hasStopped
      ? { reasons: codes ? reasons : reasons.map(withoutCodes), more: Math.max(0, stops.length - REASONS) }
      : undefined,
    leftOut: leftOut(game.nodes.size - network.size),
    teams: lessonOf(game).teams,
  };
}

const knownFewest = new WeakMap<Assessment, Fewest>();

/** Searched for once: every picture of a page has the heading. */
function fewestOf(assessment: Assessment): Fewest | undefined {
  const { network, measures } = assessment;
  if (!measures.solvable) return undefined;
  const known = knownFewest.get(assessment) ?? fewestSteps(network, measures);
  knownFewest.set(assessment, known);
  return known;
}

/** Where a page may lie about, a reason does not say the code either. */
function withoutCodes(words: Sentence): Sentence {
  return words.map((part) => (typeof part === 'object' && 'code' in part ? '…' : part));
}

const TITLE = { size: 17, weight: 'strong', family: 'words' } as const;
const AGAIN = { size: 12, weight: 'strong', family: 'words' } as const;
const LESSON = { size: 9, weight: 'regular', family: 'words' } as const;
const VERDICT = { size: 10, leading: 13 } as const;
const BAND_PAD = 7;

export interface Headed {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** All but the legend, which is set under it. The lesson stands beside the title where there is room. */
export function headingMarks(heading: Heading, x: number, width: number, isFirst: boolean): Headed {
  const style = isFirst ? TITLE : AGAIN;
  const lines = wrap(heading.title, width, style);
  const marks: Mark[] = [];
  const leading = 1.2 * style.size;
  let y = 0;
  let last: TextMark | undefined;
  for (const line of lines) {
    last = textMark(line, { x, y: y + 0.82 * style.size }, { ...style, role: 'title' });
    marks.push(last);
    y += leading;
  }
  if (!isFirst) return { marks, height: y + 2 };
  const lesson = textMark(
    heading.lesson,
    { x: x + width, y: y - leading + 0.82 * style.size },
    {
      ...LESSON,
      align: 'end',
      ink: 'second',
    },
  );
  if (last && last.width + 24 + lesson.width <= width) marks.push(lesson);
  else {
    for (const line of wrap(heading.lesson, width, LESSON)) {
      y += 12;
      marks.push(textMark(line, { x, y: y - 3 }, { ...LESSON, ink: 'second' }));
    }
  }
  y += 2;
  if (heading.stop) {
    const band = bandMarks(heading.stop, x, width);
    marks.push(...band.marks.map((mark) => movedDown(mark, y)));
    return { marks, height: y + band.height + 4 };
  }
  for (const strip of prose(heading.verdict, x, width, VERDICT)) {
    marks.push(...strip.marks.map((mark) => plainly(movedDown(mark, y))));
    y += strip.height;
  }
  return { marks, height: y + 2 };
}

/** Names in a sentence of the heading stand for nothing on the map. */
function plainly(mark: Mark): Mark {
  if (mark.mark !== 'text') return mark;
  const { of: _, ...rest } = mark;
  return { ...rest, role: 'plain' };
}

/** The band of a game that cannot be won, with why. */
export function bandMarks({ reasons, more }: NonNullable<Heading['stop']>, x: number, width: number): Headed {
  const inside = width - 2 * BAND_PAD - 4;
  const left = x + BAND_PAD + 4;
  const strips = [
    ...prose([{ strong: STOP_BAND.title }], left, inside, { size: 11, leading: 15, ink: 'stop' }),
    ...reasons.flatMap((reason) => prose(reason, left, inside, VERDICT)),
    ...(more > 0 ? prose(sentence(STOP_BAND.more(more)), left, inside, VERDICT) : []),
  ];
  const marks: Mark[] = [];
  let y = BAND_PAD - 2;
  for (const strip of strips) {
    marks.push(...strip.marks.map((mark) => plainly(movedDown(mark, y))));
    y += strip.height;
  }
  const height = y + BAND_PAD - 2;
  return {
    height,
    marks: [
      {
        mark: 'area',
        role: 'plain',
        corners: rectangle(x + 1, 1, width - 2, height - 2),
        fill: 'stopSoft',
        stroke: 'stop',
        width: 2,
      },
      rule({ x: x + 3, y: 1 }, { x: x + 3, y: height - 1 }, 5, 'stop'),
      ...marks,
    ],
  };
}
