/**
 * Lays pages out in a worker and tells of each better result. Each question has a worker of its own, so that stopping is ending it.
 * Where workers are refused the page does it, in slices.
 */
import { type Helper, startHelper } from '../parts/helper.ts';
import { holdScript } from '../parts/hold-script.ts';
import { run } from '../parts/run.ts';
import { answers, type PagesAnswer, type PagesQuestion } from './answers.ts';
import script from './lay-out.worker.ts?worker&url';

type Hear = (answer: PagesAnswer) => void;

holdScript(script);

/** Started before it is asked; its first question is its only one. */
let ready: Helper<PagesQuestion, PagesAnswer> | undefined;

/** Has a worker read its script by the time the first pages are wanted. */
export function prepareLayingOut(): void {
  const helper = ready ?? startHelper<PagesQuestion, PagesAnswer>(script);
  ready = helper;
  if (!helper) return;
  // Whoever asks next starts another, and hears of it when that fails too.
  helper.lost = () => {
    if (ready === helper) ready = undefined;
  };
}

/** Returns what stops it; nothing is heard afterwards, not even what a worker had already sent. */
export function layOutPages(question: PagesQuestion, hear: Hear): () => void {
  const helper = ready ?? startHelper<PagesQuestion, PagesAnswer>(script);
  ready = undefined;
  return run(question, {
    helper,
    onThePage: answers,
    hear,
    fail: (failed) => hear({ failed }),
    free: ({ end }) => end(),
  });
}
