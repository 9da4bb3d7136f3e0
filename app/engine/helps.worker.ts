/** Tries single changes of the newest game that it was asked about, in slices, so that a newer question is seen at once. */
import { whatHelps } from '../../src/helps/what-helps.ts';
import type { HelpsQuestion, HelpsReply } from './helping.ts';
import { inSlices } from './in-slices.ts';

const SLICE = 16;

let stop = (): void => undefined;

self.onmessage = ({ data }: MessageEvent<HelpsQuestion | undefined>) => {
  stop();
  if (!data) return;
  const { ticket, game } = data;
  const tell = (reply: HelpsReply) => self.postMessage(reply);
  stop = inSlices(whatHelps(game), {
    hear: (answer) => tell({ ticket, answer }),
    fail: () => tell({ ticket, answer: undefined }),
    length: SLICE,
  });
};
