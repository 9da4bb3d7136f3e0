/** What the windows of this page tell each other. */

export type Message =
  /** The stored game, or its entry in the list, is another than before. */
  | { readonly say: 'stored'; readonly id: string }
  /** Whoever edits this game is asked to let go. */
  | { readonly say: 'ask'; readonly id: string };

const CHANNEL = 'latchmap';

function isMessage(data: unknown): data is Message {
  return typeof data === 'object' && data !== null && 'say' in data && 'id' in data;
}

export interface Windows {
  tell(message: Message): void;
}

/** A window does not hear itself. A browser without channels keeps games all the same, and windows do not hear each other. */
export function joinWindows(hear: (message: Message) => void): Windows {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined };
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isMessage(data)) hear(data);
  };
  return { tell: (message) => channel.postMessage(message) };
}
