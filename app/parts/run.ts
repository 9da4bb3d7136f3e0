/**
 * The work for one question: a worker does it or, where none runs, the page in slices. It can be called off, and it fails in so many
 * words. The page does the work of a worker that is lost, but not again what has thrown: it would throw there too.
 */
import type { Helper } from './helper.ts';
import { inSlices } from './in-slices.ts';

/** What a worker sends when its work has thrown. */
export interface Failed {
  readonly failed: string;
}

export interface Run<Question, Answer> {
  /** Undefined: the page does it. */
  readonly helper: Helper<Question, Answer | Failed> | undefined;
  /** The same work on the page. Undefined says nothing: the page may breathe. */
  readonly onThePage: (question: Question) => Iterator<Answer | undefined, unknown>;
  readonly hear: (answer: Answer) => void;
  /** Nothing is heard afterwards. */
  readonly fail: (why: string) => void;
  /** The worker has said all, or has failed, and could be asked again. */
  readonly free: (helper: Helper<Question, Answer | Failed>) => void;
  /** The worker is lost. */
  readonly lost?: () => void;
}

/** One step at a time: the page also has frames to draw, and whoever hears an answer may call the rest off. */
const SLICE = 0;

export function failure(error: unknown): Failed {
  return { failed: error instanceof Error ? error.message : String(error) };
}

/** Returns what calls it off: nothing is heard afterwards, not even what a worker had already sent. */
export function run<Question, Answer extends { readonly final: boolean }>(
  question: Question,
  { helper, onThePage, hear, fail, free, lost }: Run<Question, Answer>,
): () => void {
  const byPage = () =>
    inSlices(onThePage(question), {
      hear,
      fail: (error) => fail(failure(error).failed),
      length: SLICE,
    });
  if (!helper) return byPage();
  let stop = helper.end;
  helper.hear = (sent) => {
    const hasFailed = 'failed' in sent;
    if (hasFailed || sent.final) {
      stop = () => undefined;
      free(helper);
    }
    if (hasFailed) fail(sent.failed);
    else hear(sent);
  };
  helper.lost = () => {
    lost?.();
    stop = byPage();
  };
  helper.put(question);
  return () => stop();
}
