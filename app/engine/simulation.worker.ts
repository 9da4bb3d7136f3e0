/** Simulates the newest game that it was asked about, in slices, so that a newer question is seen at once. */
import { HERE } from '../parts/here.ts';
import { inSlices } from '../parts/in-slices.ts';
import { figuresOf, IN_A_WORKER } from './figures.ts';
import type { SimulationAnswer, SimulationQuestion } from './simulating.ts';

const SLICE = 8;

let stop = (): void => undefined;

self.onmessage = ({ data }: MessageEvent<SimulationQuestion | undefined>) => {
  stop();
  if (!data) return;
  const { ticket, clock, whole } = data;
  const tell = (answer: SimulationAnswer) => self.postMessage(answer);
  stop = inSlices(figuresOf(clock, IN_A_WORKER, whole), {
    hear: (answer) => tell({ ticket, answer }),
    fail: () => tell({ ticket, answer: undefined }),
    length: SLICE,
  });
};

self.postMessage(HERE);
