/** Puts the question to a worker; where a browser, or a school's rules for it, refuse workers, the page answers it in slices. */
import { type TidyAnswer, type TidyQuestion, tidyAnswers } from './work.ts';

type Hear = (answer: TidyAnswer) => void;

/** Waits for its next question. */
let idle: Worker | undefined;
/** One has failed, so no other is tried. */
let isRefused = false;

function startWorker(): Worker | undefined {
  if (isRefused) return undefined;
  try {
    const worker = new Worker(new URL('./tidy.worker.ts', import.meta.url), { type: 'module' });
    worker.onerror = () => {
      isRefused = true;
      if (idle === worker) idle = undefined;
    };
    return worker;
  } catch {
    return undefined;
  }
}

/** Starts the worker before it is asked. */
export function prepare(): void {
  idle ??= startWorker();
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
  const worker = idle ?? startWorker();
  idle = undefined;
  if (!worker) return askPage(question, hear);
  let stop = () => worker.terminate();
  worker.onmessage = ({ data }: MessageEvent<TidyAnswer>) => {
    if (data.final) {
      idle = worker;
      stop = () => undefined;
    }
    hear(data);
  };
  worker.onerror = () => {
    isRefused = true;
    worker.terminate();
    stop = askPage(question, hear);
  };
  worker.postMessage(question);
  return () => stop();
}
