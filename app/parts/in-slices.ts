/**
 * Lets a generator work in slices, in a worker or on the page: between two of them a newer question is seen, a frame is drawn.
 * How long a slice is changes when an answer comes, never what it says.
 */

export interface Slices<Answer> {
  readonly hear: (answer: Answer) => void;
  /** The work threw; nothing more is heard. */
  readonly fail: (error: unknown) => void;
  /** Milliseconds of one slice. */
  readonly length: number;
}

/** Undefined from the generator says nothing: there the slice may end. Returns what stops it; nothing is heard afterwards. */
export function inSlices<Answer>(
  work: Iterator<Answer | undefined, unknown>,
  { hear, fail, length }: Slices<Answer>,
): () => void {
  const turns = new MessageChannel();
  let stopped = false;
  const stop = () => {
    stopped = true;
    turns.port1.close();
  };
  const slice = () => {
    const end = performance.now() + length;
    try {
      do {
        const { done, value } = work.next();
        if (stopped) return;
        if (done) return stop();
        if (value !== undefined) hear(value);
        // What was heard may have led to a newer question.
        if (stopped) return;
      } while (performance.now() < end);
    } catch (error) {
      stop();
      return fail(error);
    }
    // A timer would rest for some milliseconds each time.
    turns.port2.postMessage(undefined);
  };
  turns.port1.onmessage = slice;
  turns.port2.postMessage(undefined);
  return stop;
}
