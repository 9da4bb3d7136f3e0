/** A hiding place from one line of a table. */
import { given, type Line } from './line.ts';

/** So far an order of the walk may go, as the schema allows. */
const FARTHEST = 1_000_000;

/** Not yet held against the schema. */
export function readPlace(line: Line, newId: () => string): unknown {
  const name = line.text('place');
  if (name === undefined) line.wrong('place', { fault: 'missing' });
  return {
    id: line.text('id') ?? newId(),
    name: name ?? '',
    ...given({
      zone: line.text('zone'),
      order: line.number('order', -FARTHEST, FARTHEST),
      offLimits: line.yes('offLimits'),
      note: line.text('note'),
    }),
  };
}
