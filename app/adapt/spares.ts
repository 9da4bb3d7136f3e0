/** What can be left out, tried by the page in slices: it draws first, and what was found before stands until the new is there. */
import { useEffect, useState } from 'react';
import type { Assessment } from '../../src/findings/assess.ts';
import type { Spares } from '../../src/kit/adapt/plan.ts';
import { type Spare, sparesTried } from '../../src/kit/adapt/spare.ts';
import { inSlices } from '../parts/in-slices.ts';

/** Milliseconds, so that frames are drawn between. */
const SLICE = 8;

const known = new WeakMap<Assessment, readonly Spare[]>();

function* tried(assessment: Assessment): Generator<undefined, readonly Spare[]> {
  const spares = known.get(assessment) ?? (yield* sparesTried(assessment));
  known.set(assessment, spares);
  return spares;
}

function* both(came: Assessment, current: Assessment): Generator<Spares | undefined, void> {
  yield { came: yield* tried(came), now: yield* tried(current) };
}

/** Undefined until something is known. */
export function useSpares(came: Assessment, current: Assessment): Spares | 'failed' | undefined {
  const [spares, setSpares] = useState<Spares | 'failed'>();
  useEffect(
    () => inSlices(both(came, current), { hear: setSpares, fail: () => setSpares('failed'), length: SLICE }),
    [came, current],
  );
  return spares;
}
