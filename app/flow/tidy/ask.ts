/** Puts the question to a worker; where a browser, or a school's rules for it, refuse workers, the page answers it in slices. */
import { type TidyAnswer, type TidyQuestion, tidyAnswers } from './work.ts';

type Hear = (answer: TidyAnswer) => void;

/** Has answered its question and waits for the next. */
let idle: Worker | undefined;

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./tidy.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
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
    worker.terminate();
    stop = askPage(question, hear);
  };
  worker.postMessage(question);
  return () => stop();
}
