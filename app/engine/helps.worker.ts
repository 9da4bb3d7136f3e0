/** Works out what helps for the newest game that it was asked about, in slices, so that a newer question is seen at once. */
import { RUNS } from '../../src/engine/simulation/batch.ts';
import { HERE } from '../parts/here.ts';
import { inSlices } from '../parts/in-slices.ts';
import type { HelpsQuestion, HelpsReply } from './helping.ts';
import { helpsAnswers } from './helps-work.ts';

const SLICE = 12;

let stop = (): void => undefined;

self.onmessage = ({ data }: MessageEvent<HelpsQuestion | undefined>) => {
  stop();
  if (!data) return;
  const { ticket, game, parts } = data;
  const tell = (reply: HelpsReply) => self.postMessage(reply);
  stop = inSlices(helpsAnswers(game, parts, RUNS), {
    hear: (answer) => tell({ ticket, answer }),
    fail: () => tell({ ticket, answer: undefined }),
    length: SLICE,
  });
};

self.postMessage(HERE);
