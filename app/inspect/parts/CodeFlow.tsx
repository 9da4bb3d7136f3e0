/** Under the code of a lock: where each symbol of it comes from, and through what. */
import { Fragment } from 'react';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { FLOW, positionsSaid, slotsAloud } from '../../../src/words/form-flow.ts';
import { NodeLink } from '../../shell/NodeLink.tsx';
import { Sign } from '../../shell/signs.tsx';
import { useAssessment } from '../../store/assessment.ts';
import { useGame } from '../../store/game.ts';
import { codeFlow, type FlowRow, type Slot } from './flow.ts';
import { shownName } from './holders.ts';
import './code-flow.css';

/** So many places can be seen at a glance; a longer code, or one of words, is told by the numbers of its positions. */
const AT_A_GLANCE = 8;

export function CodeFlow({ id }: { id: NodeId }) {
  const flow = codeFlow(useAssessment(), id);
  if (!flow || flow.rows.length + flow.silent.length === 0) return null;
  const { rows, silent, gaps, length } = flow;
  const [only] = rows;
  if (only && rows.length === 1 && silent.length === 0 && isWholeAndRight(only)) {
    return (
      <p className="hint source-chain">
        {FLOW.comesFrom} <Chain row={only} />
      </p>
    );
  }
  const inSlots =
    length <= AT_A_GLANCE &&
    rows.every(({ slots }) => [...slots.values()].every(({ symbol }) => isShort(symbol)));
  return (
    <ul className="sources" aria-label={FLOW.label}>
      {rows.map((row) => (
        <li key={row.node} className="source-row">
          {inSlots ? <Slots row={row} length={length} /> : <Given row={row} />}
          <span className="source-chain">
            <Chain row={row} />
          </span>
        </li>
      ))}
      {silent.map((node) => (
        <li key={node} className="source-row">
          {inSlots && <Empty length={length} />}
          <span className="source-chain">
            <Name id={node} /> <span className="quiet">{FLOW.noAnswer}</span>
          </span>
        </li>
      ))}
      {gaps.length > 0 && (
        <li className="source-row">
          {inSlots ? (
            <Gaps at={gaps} length={length} />
          ) : (
            <span className="source-given">{positionsSaid(gaps.map((at) => at + 1))}</span>
          )}
          <span className="source-chain source-nothing">{FLOW.nothingGives}</span>
        </li>
      )}
    </ul>
  );
}

function isWholeAndRight({ positions, slots }: FlowRow): boolean {
  return positions === undefined && [...slots.values()].every(({ wrong }) => !wrong);
}

/** One sign, or a number of two digits. */
function isShort(symbol: string): boolean {
  return [...symbol].length <= 2;
}

/** 'Scale sheet, Weigh': each needed for the next, the source of the code last. */
function Chain({ row: { node, chain } }: { row: FlowRow }) {
  return (
    <>
      {chain.map((level) => (
        <Fragment key={level[0]}>
          <Level nodes={level} />
          <span className="source-then">
            <span className="aloud"> {FLOW.leadsTo} </span>
            <Sign name="right" />
          </span>
        </Fragment>
      ))}
      <Name id={node} />
    </>
  );
}

/** So many things at one place of a chain are named. */
const NAMED = 2;

function Level({ nodes }: { nodes: readonly NodeId[] }) {
  const named = nodes.length <= NAMED + 1 ? nodes : nodes.slice(0, NAMED);
  const more = nodes.length - named.length;
  return (
    <>
      {named.map((id, i) => (
        <Fragment key={id}>
          {i > 0 && ', '}
          <Name id={id} />
        </Fragment>
      ))}
      {more > 0 && `, ${FLOW.more(more)}`}
    </>
  );
}

function Name({ id }: { id: NodeId }) {
  const game: Game = useGame((state) => state.game);
  const node = game.nodes.get(id);
  return node ? <NodeLink id={id}>{shownName(game, node)}</NodeLink> : null;
}

const places = (length: number) => Array.from({ length }, (_, at) => at);

function Slots({ row: { slots, positions }, length }: { row: FlowRow; length: number }) {
  return (
    <span className="source-slots">
      <span className="aloud">
        {slotsAloud(
          [...slots.values()].map(({ symbol }) => symbol),
          positions,
        )}
      </span>
      {places(length).map((at) => (
        <SlotBox key={at} slot={slots.get(at)} />
      ))}
    </span>
  );
}

function SlotBox({ slot }: { slot: Slot | undefined }) {
  const look =
    slot === undefined
      ? 'source-slot'
      : slot.wrong
        ? 'source-slot source-slot-wrong'
        : 'source-slot source-slot-full';
  return (
    <span className={look} aria-hidden="true">
      {slot?.symbol}
    </span>
  );
}

function Empty({ length }: { length: number }) {
  return (
    <span className="source-slots" aria-hidden="true">
      {places(length).map((at) => (
        <SlotBox key={at} slot={undefined} />
      ))}
    </span>
  );
}

function Gaps({ at, length }: { at: readonly number[]; length: number }) {
  return (
    <span className="source-slots">
      <span className="aloud">{positionsSaid(at.map((each) => each + 1))}</span>
      {places(length).map((each) => (
        <span
          key={each}
          className={at.includes(each) ? 'source-slot source-slot-gap' : 'source-slot'}
          aria-hidden="true"
        >
          {at.includes(each) ? '?' : ''}
        </span>
      ))}
    </span>
  );
}

/** Words and long codes: what is given, then where. */
function Given({ row: { slots, positions } }: { row: FlowRow }) {
  const entries = [...slots];
  return (
    <span className="source-given">
      {entries.map(([at, { symbol, wrong }]) => (
        <span key={at} className={wrong ? 'source-word source-word-wrong' : 'source-word'}>
          {symbol}{' '}
        </span>
      ))}
      {positions !== undefined && <span className="quiet">{positionsSaid(positions)}</span>}
    </span>
  );
}
