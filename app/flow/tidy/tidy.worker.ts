/** Answers one question at a time; whoever wants the next before the last answer ends this worker. */
import { HERE } from '../../parts/here.ts';
import { failure } from '../../parts/run.ts';
import { type TidyQuestion, tidyAnswers } from './work.ts';

self.onmessage = ({ data }: MessageEvent<TidyQuestion>) => {
  try {
    for (const answer of tidyAnswers(data)) if (answer) self.postMessage(answer);
  } catch (error) {
    self.postMessage(failure(error));
  }
};

self.postMessage(HERE);
