/** After which step a thing is in hand. */
import { isLoose } from '../../../engine/handed-over.ts';
import type { Index } from '../../../engine/measures.ts';
import { rowOf } from '../../../engine/rows.ts';
import type { Assessment } from '../../../findings/assess.ts';

/** Number of the last step before what it lies in, and all that is around that, is found and open; of the puzzle that hands over what lies in nothing. 0 from the start, and for what is never reached. */
export function inHandAfter(assessment: Assessment, thing: Index): number {
  const { network, measures } = assessment;
  if (measures.reached[thing] !== 1) return 0;
  const number = (node: Index) => measures.number[node] ?? 0;
  let last = 0;
  for (let node = thing; node >= 0; node = network.parent[node] ?? -1) {
    const opened = node === thing ? [] : [node, ...rowOf(network.fasteners, node)];
    last = Math.max(last, ...opened.map(number));
    if (isLoose(network, node)) last = Math.max(last, enough(assessment, node));
  }
  return last;
}

/** Number of the step with which as much is reached of what it needs as must be. */
function enough({ network, measures }: Assessment, node: Index): number {
  const numbers = Array.from(rowOf(network.needs, node), (need) =>
    measures.reached[need] === 1 ? (measures.number[need] ?? 0) : Number.POSITIVE_INFINITY,
  );
  numbers.sort((a, b) => a - b);
  return numbers[(network.k[node] ?? 0) - 1] ?? 0;
}
