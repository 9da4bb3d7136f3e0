import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { NOTHING_SIMULATED, useSimulated } from '../../../app/engine/simulation.ts';
import Inspector from '../../../app/inspect/Inspector.tsx';
import { useView } from '../../../app/store/view.ts';
import { criticalChain } from '../../../src/engine/critical-chain.ts';
import { compile } from '../../../src/engine/network.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { clockOf } from '../../../src/engine/simulation/clock.ts';
import type { StepCosts } from '../../../src/engine/simulation/costs.ts';
import type { Figures } from '../../../src/engine/simulation/figures.ts';
import { costsLesson, decidesEnd, doneBy, waitingBeside } from '../../../src/words/simulated-step.ts';
import { openGame, theGame } from '../open-game.ts';

beforeEach(() => {
  openGame();
  useSimulated.setState(NOTHING_SIMULATED);
});
afterEach(cleanup);

/** The open game with steps that take always the same, so that every run is alike; costs as they follow by hand. */
function figuresOf(costs?: (index: (id: string) => number, size: number) => StepCosts): Figures {
  const same = (minutes: number) => ({ low: minutes, likely: minutes, high: minutes });
  const nodes = new Map(
    [...theGame().nodes].map(([id, node]) => [
      id,
      id === 'sill' ? { ...node, minutes: same(2) } : id === 'sum' ? { ...node, minutes: same(5) } : node,
    ]),
  );
  const game = { ...theGame(), nodes };
  const network = compile(game);
  const clock = clockOf(game, network);
  const simulated = simulate(clock, undefined, 20);
  if (!simulated) throw new Error('cannot be won');
  return {
    clock,
    simulated,
    coarse: true,
    chain: criticalChain(network),
    costs: costs?.((id) => network.index.get(id) ?? -1, network.size),
    whole: undefined,
    byHints: undefined,
    byChoosing: undefined,
  };
}

const openForm = (id: string) => {
  useView.getState().select([id]);
  render(<Inspector />);
};
const heading = () => screen.queryByRole('heading', { name: 'In simulated lessons' });

test('nothing is said before there are figures, or of what is no step', () => {
  openForm('sum');
  expect(heading()).toBeNull();
  act(() => useSimulated.setState({ figures: figuresOf() }));
  expect(heading()).toBeTruthy();
  act(() => useView.getState().select(['note']));
  expect(heading()).toBeNull();
});

test('when teams are done with a step, and who waits beside it', () => {
  useSimulated.setState({ figures: figuresOf() });
  openForm('sum');
  // Two minutes of searching, then five of thinking by 3 of the 6 pupils.
  expect(
    screen.getByText('Half of the teams are done with it within 7 min, nine in ten within 7 min.'),
  ).toBeTruthy();
  expect(
    screen.getByText('Waiting while it is worked or queued for: 15 min, over all pupils of a team.'),
  ).toBeTruthy();
});

test('what it costs stands until there is newer, and says so', () => {
  const withCosts = figuresOf((index, size) => {
    const minutes = new Float64Array(size);
    minutes[index('sum')] = 5;
    return { minutes, decides: new Float64Array(size).fill(1) };
  });
  useSimulated.setState({ figures: withCosts, complete: withCosts });
  openForm('sum');
  expect(screen.getByText('It costs the lesson 5 min.')).toBeTruthy();
  expect(screen.getByText('It decides the end in all lessons.')).toBeTruthy();
  expect(screen.queryByText(/before the last change/)).toBeNull();
  act(() => useSimulated.setState({ figures: figuresOf() }));
  expect(screen.getByText('It costs the lesson 5 min.')).toBeTruthy();
  expect(screen.getByText(/before the last change/)).toBeTruthy();
});

test('sentences at their edges', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(doneBy({ p10: 1, median: 2, p90: never })).toBe(
    'Half of the teams are done with it within 2 min; some never do it.',
  );
  expect(doneBy({ p10: 1, median: never, p90: never })).toMatch(/^Most teams never/);
  expect(doneBy({ p10: never, median: never, p90: never })).toMatch(/^Hardly any team/);
  expect(costsLesson(-0.2)).toBe('It costs the lesson no time.');
  expect(decidesEnd(0.42)).toBe('It decides the end in about 4 lessons in 10.');
  expect(waitingBeside(0)).toBe('Nobody waits while it is worked or queued for.');
});
