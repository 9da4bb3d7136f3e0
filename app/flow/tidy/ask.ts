/** Puts the question to a worker; where a browser, or a school's rules for it, refuse workers, the page answers it in slices. */
import { type Helper, startHelper } from '../../parts/helper.ts';
import { holdScript } from '../../parts/hold-script.ts';
import { type Failed, type Run, run } from '../../parts/run.ts';
import script from './tidy.worker.ts?worker&url';
import { type TidyAnswer, type TidyQuestion, tidyAnswers } from './work.ts';

type TidyHelper = Helper<TidyQuestion, TidyAnswer | Failed>;

/** Waits for its next question. */
let idle: TidyHelper | undefined;
/** One has been lost, so no other is tried. */
let isRefused = false;

holdScript(script);

/** Keeps it until it is asked. */
function keep(helper: TidyHelper): void {
  idle = helper;
  helper.lost = () => {
    isRefused = true;
    if (idle === helper) idle = undefined;
  };
}

const start = () => (isRefused ? undefined : startHelper<TidyQuestion, TidyAnswer | Failed>(script));

/** Starts the worker before it is asked. */
export function prepare(): void {
  const helper = idle ?? start();
  if (helper) keep(helper);
}

/** Answers come until the final one, until it fails, or until what is returned is called. */
export function ask(
  question: TidyQuestion,
  { hear, fail }: Pick<Run<TidyQuestion, TidyAnswer>, 'hear' | 'fail'>,
): () => void {
  const helper = idle ?? start();
  idle = undefined;
  return run(question, {
    helper,
    onThePage: tidyAnswers,
    hear,
    fail,
    free: keep,
    lost: () => {
      isRefused = true;
    },
  });
}
