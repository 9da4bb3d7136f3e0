/** What can be done about each shortage: tried one after the other by a worker or, where none runs, by the page in slices. */
import { useEffect, useMemo, useState } from 'react';
import type { Assessment } from '../../src/findings/assess.ts';
import type { Fitting } from '../../src/kit/fit/index.ts';
import { type Remedy, type Shortage, shortagesOf } from '../../src/kit/remedies/index.ts';
import { type Helper, startHelper } from '../parts/helper.ts';
import { holdScript } from '../parts/hold-script.ts';
import { type Failed, run } from '../parts/run.ts';
import { foundFor, NOTHING, type Place, remediesIn, withAnswer } from './found-remedies.ts';
import { useKit } from './kit-state.ts';
import { inOrderOfPlay } from './order.ts';
import script from './remedies.worker.ts?worker&url';
import { type RemediesAnswer, type RemediesQuestion, remediesAnswers } from './remedies-work.ts';

type RemediesHelper = Helper<RemediesQuestion, RemediesAnswer | Failed>;

/** Waits for its next question. */
let idle: RemediesHelper | undefined;
/** One has been lost, so no other is tried. */
let isRefused = false;

holdScript(script);

const start = () => (isRefused ? undefined : startHelper<RemediesQuestion, RemediesAnswer | Failed>(script));

function keep(helper: RemediesHelper): void {
  idle = helper;
  helper.lost = () => {
    isRefused = true;
    if (idle === helper) idle = undefined;
  };
}

function ask(
  question: RemediesQuestion,
  told: { readonly hear: (answer: RemediesAnswer) => void; readonly fail: () => void },
): () => void {
  const helper = idle ?? start();
  idle = undefined;
  return run(question, {
    ...told,
    helper,
    onThePage: remediesAnswers,
    free: keep,
    lost: () => {
      isRefused = true;
    },
  });
}

export interface Remedies {
  /** In the order of play. */
  readonly shortages: readonly Shortage[];
  /** Undefined while they are being tried, or where that failed. */
  readonly remediesOf: (place: Place) => readonly Remedy[] | undefined;
  readonly failed: boolean;
}

/** @param fitting of the game that is assessed and the kit */
export function useRemedies(assessment: Assessment, fitting: Fitting): Remedies {
  const { game } = assessment;
  const kit = useKit(({ owned }) => owned.kit);
  const [found, setFound] = useState(NOTHING);
  const shortages = useMemo(
    () => inOrderOfPlay(assessment, shortagesOf(fitting), ({ node }) => node),
    [assessment, fitting],
  );
  const question = useMemo(() => ({ game, kit, fitting, shortages }), [game, kit, fitting, shortages]);
  useEffect(() => {
    if (question.shortages.length === 0) return;
    return ask(question, {
      hear: (answer) => setFound((before) => withAnswer(before, question, answer)),
      fail: () => setFound((before) => ({ ...foundFor(before, question), failed: true })),
    });
  }, [question]);
  const own = foundFor(found, question);
  return { shortages, remediesOf: (place) => remediesIn(own, place), failed: own.failed };
}
