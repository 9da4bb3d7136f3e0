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
  /** Lists of more members than the limit. */
  readonly tooLong: readonly { readonly path: Path; readonly length: number }[];
}

export interface Limits {
  readonly depth: number;
  readonly list: number;
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
export function tidyJson(root: unknown, limits: Limits): Tidied {
  const dropped: Path[] = [];
  const notFinite: Path[] = [];
  const tooLong: { path: Path; length: number }[] = [];
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
    if (step.depth > limits.depth) return { tooDeep: true, dropped, notFinite, tooLong };
    const { value } = step;
    if (Array.isArray(value)) {
      if (value.length > limits.list) tooLong.push({ path: pathTo(step), length: value.length });
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
  return { tooDeep: false, dropped, notFinite, tooLong };
}
