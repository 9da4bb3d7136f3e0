/** A thing of the cupboard from one line of a table. */

import { given, type Line } from './line.ts';
import { readTakes, readThing, TAKES_OPTIONS, THING_WORDS } from './things.ts';
import { readWheels } from './wheels.ts';

/** Not yet held against the schema. @param hasCount whether the table says how many there are; without, each line counts as one */
export function readItem(line: Line, hasCount: boolean, newId: () => string): unknown {
  const words = line.text('thing');
  const thing = words === undefined ? undefined : readThing(words);
  if (!thing) {
    line.wrong(
      'thing',
      words === undefined ? { fault: 'missing' } : { fault: 'notAmong', options: THING_WORDS },
    );
    return undefined;
  }
  const count = line.whole('count', 0);
  if (count === undefined && hasCount && line.text('count') === undefined) {
    line.wrong('count', { fault: 'missing' });
  }
  const common = {
    id: line.text('id') ?? newId(),
    label: line.text('label') ?? thing.label ?? '',
    count: count ?? 1,
    ...given({ toBuy: line.whole('toBuy', 1), note: line.text('note') }),
  };
  switch (thing.what) {
    case 'lock':
      return {
        ...common,
        what: thing.what,
        type: thing.type,
        ...given({
          wheels: wheelsIn(line, thing.type, thing.number),
          marks: line.whole('marks', 1) ?? (thing.type === 'dial' ? thing.number : undefined),
          shackleMm: line.millimetres('shackleMm'),
          clearanceMm: line.millimetres('clearanceMm'),
          keyedAlike: line.text('keyedAlike'),
          keys: line.whole('keys', 1),
        }),
      };
    case 'box':
      return {
        ...common,
        what: thing.what,
        ...given({
          takes: takesIn(line),
          holeMm: line.millimetres('holeMm'),
          roundMm: line.millimetres('roundMm'),
        }),
      };
    case 'hasp': {
      const holes = line.whole('holes', 1) ?? thing.number;
      if (holes === undefined && line.text('holes') === undefined) line.wrong('holes', { fault: 'missing' });
      return { ...common, what: thing.what, ...given({ holes, holeMm: line.millimetres('holeMm') }) };
    }
    case 'tool':
      return {
        ...common,
        what: thing.what,
        ...given({
          batteries: line.yes('batteries'),
          hazards: line.text('hazards')?.split(/\s*[,;]\s*/u),
        }),
      };
  }
}

/** @param named so many wheels as its name says, for types whose wheels are usually alike */
function wheelsIn(line: Line, type: string, named: number | undefined): string[] | undefined {
  const text = line.text('wheels');
  if (text === undefined) return named === undefined ? undefined : readWheels(String(named), type);
  const wheels = readWheels(text, type);
  if (!wheels) line.wrong('wheels', { fault: 'notWheels' });
  return wheels;
}

function takesIn(line: Line): ReturnType<typeof readTakes> {
  const text = line.text('takes');
  const takes = text === undefined ? undefined : readTakes(text);
  if (text !== undefined && !takes) line.wrong('takes', { fault: 'notAmong', options: TAKES_OPTIONS });
  return takes;
}
