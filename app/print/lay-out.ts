/**
 * Lays pages out in a worker and tells of each better result. Each question has a worker of its own, so that stopping is ending it.
 * Where workers are refused the page does it, one step at a time.
 */
import { answers, failure, type PagesAnswer, type PagesQuestion } from './answers.ts';

type Hear = (answer: PagesAnswer) => void;

/** Started before it is asked; its first question is its only one. */
let ready: Worker | undefined;

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./lay-out.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}

/** Has a worker read its script by the time the first pages are wanted. */
export function prepareLayingOut(): void {
  const worker = ready ?? startWorker();
  ready = worker;
  if (!worker) return;
  // Whoever asks next starts another, and hears of it when that fails too.
  worker.onerror = () => {
    if (ready === worker) ready = undefined;
  };
}

function onThePage(question: PagesQuestion, hear: Hear): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;
  const run = answers(question);
  const step = () => {
    try {
      const { value, done } = run.next();
      if (done) return;
      hear(value);
      // Who hears it may have stopped it.
      if (!stopped) timer = setTimeout(step);
    } catch (error) {
      hear(failure(error));
    }
  };
  timer = setTimeout(step);
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
}

/** Returns what stops it; nothing is heard afterwards, not even what a worker had already sent. */
export function layOutPages(question: PagesQuestion, hear: Hear): () => void {
  const worker = ready ?? startWorker();
  ready = undefined;
  if (!worker) return onThePage(question, hear);
  const end = () => {
    worker.onmessage = null;
    worker.onerror = null;
    worker.terminate();
  };
  let stop = end;
  worker.onmessage = ({ data }: MessageEvent<PagesAnswer>) => {
    if ('failed' in data || data.final) end();
    hear(data);
  };
  worker.onerror = () => {
    end();
    stop = onThePage(question, hear);
  };
  worker.postMessage(question);
  return () => stop();
}
