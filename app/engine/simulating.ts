/**
 * Asks how lessons with the open game go, anew after each edit that counts for it. A newer question ends the older one. A worker answers;
 * where a browser, or a school's rules for it, refuse workers, the page does, from fewer runs.
 */
import { type Clock, clockOf } from '../../src/engine/simulation/clock.ts';
import { isLateFinding } from '../../src/findings/timed/index.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import type { Game } from '../../src/game/model.ts';
import { startHelper } from '../parts/helper.ts';
import { inSlices } from '../parts/in-slices.ts';
import { currentAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { type FiguresAnswer, figuresOf, ON_THE_PAGE } from './figures.ts';
import { sameClock } from './same-clock.ts';
import { NOTHING_SIMULATED, useSimulated } from './simulation.ts';
import script from './simulation.worker.ts?worker&url';

export interface SimulationQuestion {
  readonly ticket: number;
  readonly clock: Clock;
  /** The game with everything used; undefined where nothing is left out today. */
  readonly whole: Clock | undefined;
}

export interface SimulationAnswer {
  readonly ticket: number;
  /** Undefined: it cannot be worked out. */
  readonly answer: FiguresAnswer | undefined;
}

/** Of the page, which also has frames to draw. */
const SLICE = 5;

/** What a later edit has not taken away. */
function stillThere(findings: readonly TimedFinding[], { nodes }: Game): readonly TimedFinding[] {
  return findings.filter((finding) => finding.nodes.every((id) => nodes.has(id)));
}

type Asked = Pick<SimulationQuestion, 'clock' | 'whole'>;

function isSame(a: Asked, b: Asked): boolean {
  if (!sameClock(a.clock, b.clock)) return false;
  return a.whole && b.whole ? sameClock(a.whole, b.whole) : a.whole === b.whole;
}

/** Starts asking; called once. */
export function startSimulating(): void {
  let helper = startHelper<SimulationQuestion | undefined, SimulationAnswer>(script);
  let ticket = 0;
  let asked: Asked | undefined;
  /** Of the game last asked about. */
  let id: string | undefined;
  let stopPage = (): void => undefined;

  const hear = (answer: FiguresAnswer | undefined) => {
    if (!asked) return;
    if (!answer) return useSimulated.setState({ ...NOTHING_SIMULATED, failed: true });
    const figures = { clock: asked.clock, ...answer.figures };
    const known = useSimulated.getState();
    // What rests on the costs stands until there are new ones, as these do.
    const late = figures.costs ? [] : known.findings.filter(isLateFinding);
    useSimulated.setState({
      figures,
      complete: figures.costs ? figures : known.complete,
      isOld: false,
      failed: false,
      findings: [...answer.findings, ...late],
    });
  };
  const put = ({ clock, whole }: Asked) => {
    stopPage();
    if (helper) return helper.put({ ticket, clock, whole });
    const own = ticket;
    stopPage = inSlices(figuresOf(clock, ON_THE_PAGE, whole), {
      hear: (answer) => own === ticket && hear(answer),
      fail: () => own === ticket && hear(undefined),
      length: SLICE,
    });
  };
  const end = () => {
    if (!asked) return;
    ticket += 1;
    asked = undefined;
    stopPage();
    helper?.put(undefined);
    useSimulated.setState(NOTHING_SIMULATED);
  };
  const consider = () => {
    const { game, network, canBeWon, context } = currentAssessment();
    const { provenance } = useGame.getState();
    if (!canBeWon || provenance.id !== id) end();
    id = provenance.id;
    if (!canBeWon) return;
    const all = context.whole();
    const next: Asked = {
      clock: clockOf(game, network),
      whole: all && clockOf(all.game, all.network),
    };
    if (asked && isSame(asked, next)) return;
    ticket += 1;
    asked = next;
    const { figures, findings } = useSimulated.getState();
    if (figures) useSimulated.setState({ isOld: true, findings: stillThere(findings, game) });
    put(next);
  };

  if (helper) {
    helper.hear = (told) => {
      if (told.ticket === ticket) hear(told.answer);
    };
    helper.lost = () => {
      helper = undefined;
      if (asked) put(asked);
    };
  }
  useGame.subscribe((now, before) => {
    const { nodes, links, head } = before.game;
    if (now.game.nodes !== nodes || now.game.links !== links || now.game.head !== head) consider();
    else if (now.provenance.id !== before.provenance.id) consider();
  });
  consider();
}
