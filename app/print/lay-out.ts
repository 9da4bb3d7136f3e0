/**
 * Lays pages out in a worker and tells of each better result. Each question has a worker of its own, so that stopping is ending it.
 * Where workers are refused the page does it, one step at a time.
 */
import { answers, failure, type PagesAnswer, type PagesQuestion } from './answers.ts';

type Hear = (answer: PagesAnswer) => void;

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./lay-out.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}

function onThePage(question: PagesQuestion, hear: Hear): () => void {
  let timer: ReturnType<typeof setTimeout>;
  const run = answers(question);
  const step = () => {
    try {
      const { value, done } = run.next();
      if (done) return;
      hear(value);
      timer = setTimeout(step);
    } catch (error) {
      hear(failure(error));
    }
  };
  timer = setTimeout(step);
  return () => clearTimeout(timer);
}

/** Returns what stops it; nothing is heard afterwards. */
export function layOutPages(question: PagesQuestion, hear: Hear): () => void {
  const worker = startWorker();
  if (!worker) return onThePage(question, hear);
  let stop = () => worker.terminate();
  worker.onmessage = ({ data }: MessageEvent<PagesAnswer>) => {
    if ('failed' in data || data.final) worker.terminate();
    hear(data);
  };
  worker.onerror = () => {
    worker.terminate();
    stop = onThePage(question, hear);
  };
  worker.postMessage(question);
  return () => stop();
}
