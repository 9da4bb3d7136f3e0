/** The teacher's notes. On a page without codes a note that says one is left out, and so are those that explain what pupils find out. */
import type { Assessment } from '../../findings/assess.ts';
import { codeOf, normaliseCode } from '../../game/codes.ts';
import type { NodeId } from '../../game/model.ts';
import { tidySpaces } from '../../type/text.ts';

/** The note of each thing, spaces tidied; undefined when it has none to be printed. */
export function noteOf(assessment: Assessment, codes: boolean): (id: NodeId) => string | undefined {
  const { game } = assessment;
  const says = codes ? () => false : saysCode(assessment);
  return (id) => {
    const node = game.nodes.get(id);
    const note = tidySpaces(node?.note ?? '');
    if (!node || note === '') return undefined;
    const explains = node.kind === 'puzzle' || node.kind === 'clue' || node.kind === 'fastener';
    return !codes && (explains || says(note)) ? undefined : note;
  };
}

/** A code of one or two symbols counts only where it stands by itself; a longer one also inside a word or spread over several. */
const SHORT = 2;

function saysCode({ game }: Assessment): (text: string) => boolean {
  const short = new Set<string>();
  const long = new Set<string>();
  for (const id of game.nodes.keys()) {
    const code = codeOf(game, id);
    if (code !== undefined) (code.length > SHORT ? long : short).add(code);
  }
  return (text) => {
    const words = text.split(/[^\p{L}\p{N}\p{S}]+/u).map(normaliseCode);
    if (words.some((word) => short.has(word))) return true;
    const whole = normaliseCode(text);
    for (const code of long) if (whole.includes(code)) return true;
    return false;
  };
}
