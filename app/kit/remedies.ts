/** What can be done about each shortage: tried one after the other, while the page goes on. */
import { useEffect, useState } from 'react';
import type { Assessment } from '../../src/findings/assess.ts';
import type { Fresh } from '../../src/findings/finding.ts';
import type { Fitting } from '../../src/kit/fit/index.ts';
import type { Kit } from '../../src/kit/model.ts';
import { type Remedy, remediesFor, shortagesOf } from '../../src/kit/remedies/index.ts';
import { newName } from '../../src/words/canvas.ts';
import { inSlices } from '../parts/in-slices.ts';
import { freshId } from '../store/ids.ts';
import { useKit } from './kit-state.ts';

const FRESH: Fresh = { newId: freshId, nameOf: newName };

function* each(assessment: Assessment, kit: Kit, fitting: Fitting): Generator<readonly Remedy[], undefined> {
  for (const shortage of shortagesOf(fitting)) yield remediesFor(assessment, kit, fitting, shortage, FRESH);
}

interface Found {
  readonly of: Fitting | undefined;
  readonly remedies: readonly (readonly Remedy[])[];
}

/** In the order of the shortages; of those that are not there yet nothing is known yet. */
export function useRemedies(assessment: Assessment, fitting: Fitting): readonly (readonly Remedy[])[] {
  const kit = useKit(({ owned }) => owned.kit);
  const [found, setFound] = useState<Found>({ of: undefined, remedies: [] });
  useEffect(
    () =>
      inSlices(each(assessment, kit, fitting), {
        length: 0,
        hear: (remedies) =>
          setFound((before) => ({
            of: fitting,
            remedies: [...(before.of === fitting ? before.remedies : []), remedies],
          })),
        fail: (error) => {
          throw error;
        },
      }),
    [assessment, kit, fitting],
  );
  return found.of === fitting ? found.remedies : [];
}
