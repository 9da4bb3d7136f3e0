/** Answers, for one network at a time, how few steps win. */
import { fewestSteps } from '../../src/engine/fewest.ts';
import { HERE } from '../parts/here.ts';
import type { FewestAnswer, FewestQuestion } from './fewest.ts';

self.onmessage = ({ data }: MessageEvent<FewestQuestion>) => {
  const answer: FewestAnswer = { ticket: data.ticket, fewest: fewestSteps(data.network, data.measures) };
  self.postMessage(answer);
};

self.postMessage(HERE);
