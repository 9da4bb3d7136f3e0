/** Answers one question at a time; whoever wants the next before the last answer ends this worker. */
import { HERE } from '../parts/here.ts';
import { failure } from '../parts/run.ts';
import { type RemediesQuestion, remediesAnswers } from './remedies-work.ts';

self.onmessage = ({ data }: MessageEvent<RemediesQuestion>) => {
  try {
    for (const answer of remediesAnswers(data)) self.postMessage(answer);
  } catch (error) {
    self.postMessage(failure(error));
  }
};

self.postMessage(HERE);
