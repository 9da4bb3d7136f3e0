/** A lock that is opened sooner by trying codes, or a key, than by what is meant to open it; and that is worth something to pupils. */
import type { GuessedBy } from '../engine/guess/guess.ts';
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { recodings } from './recode.ts';
import { defineRule } from './rule.ts';

export interface EasilyGuessed {
  readonly fastener: NodeId;
  readonly by: GuessedBy;
  /** Of the lock: codes, or key locks of the game. */
  readonly codes: number;
  /** Of these, or of the words that pupils would try, what is left to try. */
  readonly left: number;
  /** Expected, of trying. */
  readonly minutes: number;
  /** Of the code, from 1; all of it where nothing is known. */
  readonly unknown: readonly number[];
  /** How many symbols the code has. */
  readonly length: number;
  /** What is had before: sources of parts, keys. */
  readonly given: readonly NodeId[];
  readonly skips: readonly NodeId[];
  readonly minutesSkipped: number;
  /** Minutes by which the shortest time falls. */
  readonly saved: number;
}

export const easilyGuessed: Rule<'easilyGuessed', EasilyGuessed> = defineRule({
  code: 'easilyGuessed',
  find(context) {
    return context.codes().flatMap(({ node, symbols, misfits }) => {
      // What the lock does not show is told of itself; how many codes it has beside that says nothing.
      if (misfits.length > 0) return [];
      const guess = context.guesses().locks.get(node);
      const stage = guess?.worst;
      if (!guess || !stage?.quicker) return [];
      const fastener = context.idOf(node);
      const positions = symbols.map((_, i) => i + 1);
      const { by, left, minutes, minutesSkipped, saved } = stage;
      return [
        {
          code: 'easilyGuessed' as const,
          level: 'look' as const,
          nodes: [fastener],
          links: [],
          values: {
            fastener,
            by,
            codes: guess.codes,
            left,
            minutes,
            unknown: positions.filter((position) => !stage.known.includes(position)),
            length: symbols.length,
            given: stage.given.map(context.idOf),
            skips: stage.skips.map(context.idOf),
            minutesSkipped,
            saved,
          },
        },
      ];
    });
  },
  mends: (context, { values }, fresh) => recodings(context, values.fastener, fresh),
});
