/** A sentence of the core on the screen. With `leads`, names and what is counted are words to press; else names are bold. */
import type { Part, Sentence, Topic } from '../../src/words/sentence.ts';
import { goToTopic } from '../panel/topics.ts';
import { NodeLink } from './NodeLink.tsx';

function TopicLink({ topic, children }: { topic: Topic; children: React.ReactNode }) {
  return (
    <button type="button" className="word-link" onClick={() => goToTopic(topic)}>
      {children}
    </button>
  );
}

function PartText({ part, leads }: { part: Part; leads: boolean }) {
  if (typeof part === 'string') return part;
  if ('strong' in part) return <strong>{part.strong}</strong>;
  if ('code' in part) return <span className="told-code">{part.code}</span>;
  if ('node' in part)
    return leads ? <NodeLink id={part.node}>{part.text}</NodeLink> : <strong>{part.text}</strong>;
  return leads ? <TopicLink topic={part.topic}>{part.text}</TopicLink> : part.text;
}

export function SentenceText({ sentence, leads = false }: { sentence: Sentence; leads?: boolean }) {
  return sentence.map((part, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: parts of one sentence have no other identity
    <PartText key={i} part={part} leads={leads} />
  ));
}
