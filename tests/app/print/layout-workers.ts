/**
 * The real code of the worker that lays pages out, on this thread: between it and the page lies a message channel, as in a browser. All
 * that a run has to say is on its way before the page hears the first of it, so whatever is stopped has answers in flight.
 */
import type { PagesAnswer, PagesQuestion } from '../../../app/print/answers.ts';

/** What a worker's script is given to talk with. */
interface Scope {
  onmessage?: (event: { readonly data: PagesQuestion }) => void;
  postMessage(answer: PagesAnswer): void;
}

const own = globalThis.self;

function enter(scope: Scope | typeof own): void {
  Object.assign(globalThis, { self: scope });
}

async function loadScript(): Promise<NonNullable<Scope['onmessage']>> {
  const scope: Scope = { postMessage: () => {} };
  enter(scope);
  await import('../../../app/print/lay-out.worker.ts');
  enter(own);
  if (!scope.onmessage) throw new Error('the script listens to nobody');
  return scope.onmessage;
}

const answer = await loadScript();

export class LayoutWorker {
  static all: LayoutWorker[] = [];
  onmessage: ((event: MessageEvent<PagesAnswer>) => void) | null = null;
  onerror: (() => void) | null = null;
  questions: PagesQuestion[] = [];
  answered = 0;
  ended = false;
  #channel = new MessageChannel();

  constructor() {
    LayoutWorker.all.push(this);
    this.#channel.port2.onmessage = (event) => this.onmessage?.(event);
  }

  postMessage(question: PagesQuestion) {
    const data = structuredClone(question);
    this.questions.push(data);
    setTimeout(() => {
      if (this.ended) return;
      enter({ postMessage: (one: PagesAnswer) => this.tell(one) });
      answer({ data });
      enter(own);
    });
  }

  /** Sends what it would send. */
  tell(one: PagesAnswer) {
    this.answered += 1;
    this.#channel.port1.postMessage(one);
  }

  /** What was sent before still arrives. */
  terminate() {
    this.ended = true;
  }

  /** Ends all, and their channels. */
  static close() {
    for (const worker of LayoutWorker.all.splice(0)) {
      worker.ended = true;
      worker.#channel.port1.close();
    }
  }
}
