/** The order of play: each step with its reason and its time; what is pointed at here is ringed on the map. */
import { useId, useMemo } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import { orderOfPlayLines, type PlayLine } from '../../src/words/order.ts';
import { PANEL } from '../../src/words/screen.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { type Assessment, useAssessment } from '../store/assessment.ts';
import { useView } from '../store/view.ts';
import { type Marked, usePanel } from './topics.ts';
import './order-of-play.css';

const NOBODY: ReadonlySet<NodeId> = new Set();

interface Props {
  /** Steps that fall with what is lifted are not listed. */
  readonly without?: ReadonlySet<NodeId>;
}

export function OrderOfPlay({ without = NOBODY }: Props) {
  const id = useId();
  const assessment = useAssessment();
  const asked = usePanel((state) => state.marked);
  const marked = without.size === 0 ? asked : undefined;
  const all = useMemo(() => orderOfPlayLines(assessment), [assessment]);
  const lines = all.filter((line) => !without.has(line.node));
  const marks = useMemo(() => (marked ? markedSteps(assessment, marked) : NOBODY), [assessment, marked]);
  const complete = assessment.measures.solvable && without.size === 0;

  return (
    <section className="panel-section" aria-labelledby={id} data-topic="steps">
      <header className="panel-head">
        <h2 id={id} tabIndex={-1}>
          {PANEL.order}
        </h2>
        <span className="panel-count">
          {complete ? PANEL.steps(lines.length) : PANEL.stopsAfter(lines.length)}
        </span>
      </header>
      {without.size === 0 && <Marks assessment={assessment} marked={marked} />}
      {lines.length === 0 ? (
        <p className="quiet">{PANEL.noSteps}</p>
      ) : (
        <ol className="order" onPointerLeave={() => useView.getState().point([])}>
          {lines.map((line) => (
            <Line key={line.node} line={line} mark={marks.has(line.node) ? marked : undefined} />
          ))}
        </ol>
      )}
    </section>
  );
}

function Line({ line, mark }: { line: PlayLine; mark: Marked | undefined }) {
  const { point, show } = useView.getState();
  return (
    <li className={mark ? 'order-line order-marked' : 'order-line'}>
      <button
        type="button"
        className="order-step"
        onClick={() => show([line.node])}
        onPointerEnter={() => point([line.node])}
        onFocus={() => point([line.node])}
        onBlur={() => point([])}
      >
        <span className="order-number">{line.number}</span>
        <span className="order-title">
          <SentenceText sentence={line.title} />
        </span>
        <span className="order-minutes">{line.minutes}</span>
        <span className="order-reason">
          <SentenceText sentence={line.reason} />
          {mark && <span className="aloud">{mark === 'chain' ? PANEL.inChain : PANEL.cannotSkip}</span>}
        </span>
      </button>
    </li>
  );
}

/** The steps that a mark means, by id. */
function markedSteps({ network, measures }: Assessment, marked: Marked): ReadonlySet<NodeId> {
  const idOf = (i: number) => network.ids[i] ?? '';
  if (marked === 'chain') return new Set(Array.from(measures.chain, idOf));
  return new Set(network.ids.filter((_, i) => measures.mustDo[i] === 1));
}

/** Two ways to look at the list: the longest chain in it, and what cannot be skipped. */
function Marks({ assessment, marked }: { assessment: Assessment; marked: Marked | undefined }) {
  const { measures } = assessment;
  if (!measures.solvable) return null;
  const needed = markedSteps(assessment, 'needed').size;
  return (
    <div className="order-marks">
      <MarkButton mark="chain" marked={marked} text={PANEL.longestChain(measures.longestChain)} />
      {needed > 0 && <MarkButton mark="needed" marked={marked} text={PANEL.needed(needed)} />}
    </div>
  );
}

function MarkButton({ mark, marked, text }: { mark: Marked; marked: Marked | undefined; text: string }) {
  const on = mark === marked;
  return (
    <button
      type="button"
      className="word-link"
      aria-pressed={on}
      title={on ? PANEL.unmark : PANEL.mark}
      onClick={() => usePanel.getState().setMarked(on ? undefined : mark)}
    >
      {text}
    </button>
  );
}
