/** Puts the question to a worker; where a browser, or a school's rules for it, refuse workers, the page answers it in slices. */
import { type Helper, startHelper } from '../../parts/helper.ts';
import { holdScript } from '../../parts/hold-script.ts';
import script from './tidy.worker.ts?worker&url';
import { type TidyAnswer, type TidyQuestion, tidyAnswers } from './work.ts';

type Hear = (answer: TidyAnswer) => void;

/** Waits for its next question. */
let idle: Helper<TidyQuestion, TidyAnswer> | undefined;
/** One has failed, so no other is tried. */
let isRefused = false;

holdScript(script);

function start(): Helper<TidyQuestion, TidyAnswer> | undefined {
  if (isRefused) return undefined;
  const helper = startHelper<TidyQuestion, TidyAnswer>(script);
  if (!helper) return undefined;
  helper.lost = () => {
    isRefused = true;
    if (idle === helper) idle = undefined;
  };
  return helper;
}

/** Starts the worker before it is asked. */
export function prepare(): void {
  idle ??= start();
}

function askPage(question: TidyQuestion, hear: Hear): () => void {
  const answers = tidyAnswers(question);
  let timer: ReturnType<typeof setTimeout>;
  const slice = () => {
    const { done, value } = answers.next();
    if (done) return;
    timer = setTimeout(slice);
    if (value) hear(value);
  };
  timer = setTimeout(slice);
  return () => clearTimeout(timer);
}

/** Answers come until the final one, or until what is returned is called. */
export function ask(question: TidyQuestion, hear: Hear): () => void {
  const helper = idle ?? start();
  idle = undefined;
  if (!helper) return askPage(question, hear);
  let stop = helper.end;
  helper.hear = (answer) => {
    if (answer.final) {
      idle = helper;
      stop = () => undefined;
    }
    hear(answer);
  };
  helper.lost = () => {
    isRefused = true;
    if (idle === helper) idle = undefined;
    else stop = askPage(question, hear);
  };
  helper.put(question);
  return () => stop();
}
