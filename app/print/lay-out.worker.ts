/** Lays pages out for one question. The first result is told at once, later ones not more often than the eye can follow, the final one always. */
import { HERE } from '../parts/here.ts';
import { failure } from '../parts/run.ts';
import { answers, type PagesQuestion } from './answers.ts';

const LEAST_BETWEEN = 400;

self.onmessage = ({ data }: MessageEvent<PagesQuestion>) => {
  let told = Number.NEGATIVE_INFINITY;
  try {
    for (const answer of answers(data)) {
      const now = performance.now();
      if (!answer.final && now - told < LEAST_BETWEEN) continue;
      told = now;
      self.postMessage(answer);
    }
  } catch (error) {
    self.postMessage(failure(error));
  }
};

self.postMessage(HERE);
