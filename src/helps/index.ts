/** The kinds of single change that are tried. Adding one means adding a file and a line here. */
import type { Assessment } from '../findings/assess.ts';
import { askForFewer } from './ask-for-fewer.ts';
import type { Help } from './help.ts';
import { leaveOut } from './leave-out.ts';
import { lengthen, shorten } from './minutes.ts';
import { putEarlier } from './put-earlier.ts';
import { setTeams } from './set-teams.ts';
import { shareMore } from './share-more.ts';
import { rehang, takeOut } from './side-by-side.ts';

export const HELP_KINDS = [
  shareMore,
  setTeams,
  takeOut,
  rehang,
  askForFewer,
  shorten,
  putEarlier,
  leaveOut,
  lengthen,
] as const;

/** All that could be tried, in turn one of each kind, so that where not all can be tried every kind has its share. */
export function changesOf(assessment: Assessment): Help[] {
  const kinds = HELP_KINDS.map((kind): readonly Help[] => kind.tries(assessment));
  const longest = Math.max(...kinds.map(({ length }) => length));
  return Array.from({ length: longest }, (_, i) => kinds.flatMap((tries) => tries.slice(i, i + 1))).flat();
}
