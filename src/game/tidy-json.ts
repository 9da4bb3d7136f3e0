/**
 * One walk over parsed JSON, without recursion so that no nesting can exhaust the stack: takes `__proto__` keys away,
 * turns -0 (which is not written back) into 0, and finds numbers that have overflowed.
 */
import { isObject } from './json.ts';

export type Path = readonly (string | number)[];

export interface Tidied {
  /** Nested beyond the limit; then the rest of the answer is not complete. */
  readonly tooDeep: boolean;
  /** The objects that lost a `__proto__` key. */
  readonly dropped: readonly Path[];
  readonly notFinite: readonly Path[];
}

interface Step {
  readonly value: unknown[] | { [key: string]: unknown };
  readonly depth: number;
  readonly key: string | number;
  readonly parent: Step | undefined;
}

function pathTo(step: Step | undefined, ...end: (string | number)[]): Path {
  const path = end;
  for (let at = step; at?.parent; at = at.parent) path.unshift(at.key);
  return path;
}

/** Changes the value given, which must be fresh from JSON.parse. */
export function tidyJson(root: unknown, maxDepth: number): Tidied {
  const dropped: Path[] = [];
  const notFinite: Path[] = [];
  const steps: Step[] = [];
  const enter = (value: unknown, key: string | number, parent: Step | undefined) => {
    if (Array.isArray(value) || isObject(value)) {
      steps.push({ value, depth: (parent?.depth ?? 0) + 1, key, parent });
    } else if (typeof value === 'number' && !Number.isFinite(value)) {
      notFinite.push(pathTo(parent, key));
    }
  };
  enter(root, '', undefined);
  for (let step = steps.pop(); step; step = steps.pop()) {
    if (step.depth > maxDepth) return { tooDeep: true, dropped, notFinite };
    const { value } = step;
    if (Array.isArray(value)) {
      value.forEach((item, i) => {
        if (Object.is(item, -0)) value[i] = 0;
        enter(item, i, step);
      });
      continue;
    }
    if (Object.hasOwn(value, '__proto__')) {
      Reflect.deleteProperty(value, '__proto__');
      dropped.push(pathTo(step));
    }
    for (const key of Object.keys(value)) {
      if (Object.is(value[key], -0)) value[key] = 0;
      enter(value[key], key, step);
    }
  }
  return { tooDeep: false, dropped, notFinite };
}
