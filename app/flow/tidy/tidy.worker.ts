/** Answers one question at a time; whoever wants the next before the last answer ends this worker. */
import { HERE } from '../../parts/here.ts';
import { type TidyQuestion, tidyAnswers } from './work.ts';

self.onmessage = ({ data }: MessageEvent<TidyQuestion>) => {
  for (const answer of tidyAnswers(data)) if (answer) self.postMessage(answer);
};

self.postMessage(HERE);
