/**
 * Workers, opened in one way: one that cannot be started, fails, or gives no sign of life is lost, and whoever asked it does without.
 */
import { HERE } from './here.ts';

export interface Helper<Question, Answer> {
  put(question: Question): void;
  hear: (answer: Answer) => void;
  /** Nothing is heard afterwards. */
  lost: () => void;
  /** Nothing is heard afterwards. */
  end(): void;
}

/** Milliseconds within which a worker's script has to run. How long it then takes to answer is its own affair. */
export const SIGN_OF_LIFE = 5_000;
/** A page that stood still sees a timer before the messages that came meanwhile; it hears those first. */
const ALSO_HEARD = 300;

/** Scripts that are at hand, by the address that they were fetched from (hold-script.ts). */
export const held = new Map<string, string>();
/** Gave no sign of life; not waited for a second time. */
const mute = new Set<string>();

function open(address: string): Worker | undefined {
  if (mute.has(address)) return undefined;
  try {
    return new Worker(held.get(address) ?? address, { type: 'module' });
  } catch {
    // A browser, or a school's rules for it, may refuse workers.
    return undefined;
  }
}

/**
 * @param address of the script, from an import with `?worker&url`
 * Undefined where workers are refused.
 */
export function startHelper<Question, Answer>(address: string): Helper<Question, Answer> | undefined {
  const worker = open(address);
  if (!worker) return undefined;
  const end = () => {
    clearTimeout(timer);
    worker.onmessage = null;
    worker.onerror = null;
    worker.terminate();
  };
  const lose = () => {
    end();
    helper.lost();
  };
  const isMute = () => {
    mute.add(address);
    lose();
  };
  let timer = setTimeout(() => {
    timer = setTimeout(isMute, ALSO_HEARD);
  }, SIGN_OF_LIFE);
  const helper: Helper<Question, Answer> = {
    put: (question) => worker.postMessage(question),
    hear: () => undefined,
    lost: () => undefined,
    end,
  };
  worker.onmessage = ({ data }: MessageEvent<Answer | typeof HERE>) => {
    clearTimeout(timer);
    if (data !== HERE) helper.hear(data);
  };
  worker.onerror = lose;
  return helper;
}
