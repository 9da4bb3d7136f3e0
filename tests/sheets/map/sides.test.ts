/** The printed page is the map that one knows: what stands left of the spine on the screen stands left of it on paper. */
import { expect, test } from 'vitest';
import { assess } from '../../../src/findings/assess.ts';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { arrange, sidesOf } from '../../../src/map/arrange.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView, type Side } from '../../../src/map/layout.ts';
import { contentOf } from '../../../src/sheets/map/content-of.ts';
import { frameOf } from '../../../src/sheets/map/draw-map.ts';
import { planMap } from '../../../src/sheets/map/plan/plan-map.ts';
import type { MapPlan } from '../../../src/sheets/map/plan.ts';
import { type Orientation, type PaperName, paperOf } from '../../../src/sheets/paper.ts';
import { gameOf as exampleOf, SLUGS } from '../../games/example.ts';
import { numbersOf } from '../../map/games.ts';
import { seededRandom } from '../../random-game.ts';
import { pageGame } from '../../random-page-game.ts';
import { ALL_ON } from '../all-on.ts';

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];
const ORIENTATIONS = ['portrait', 'landscape'] as const;

function planOf(game: Game, paper: PaperName, orientation: Orientation): MapPlan {
  const options = { ...ALL_ON, paper, orientation };
  const content = contentOf(assess(game), options);
  const planning = planMap(content, frameOf(content, options, paperOf(paper, orientation)));
  for (;;) {
    const { done, value } = planning.next();
    if (done) return value;
  }
}

/** Of what stands by itself on the map and on the page too. */
function sidesOnPage(plan: MapPlan): Map<NodeId, Side> {
  const trays = plan.pages.flatMap(({ parts }) => parts.flatMap((part) => part.trays));
  return new Map(
    trays.flatMap(({ tray: { rows }, side }) => (rows[0]?.row === 'head' ? [[rows[0].id, side]] : [])),
  );
}

function sidesOnScreen(game: Game): Map<NodeId, Side> {
  const { slots } = layOut(game, plainView);
  const onMat = [...slots].filter(([, slot]) => slot.parent === undefined);
  const spine = onMat.find(([, slot]) => slot.kind === 'puzzle')?.[1].x ?? 0;
  const sides = onMat.flatMap(([id, slot]): [NodeId, Side][] =>
    slot.kind === 'puzzle' ? [] : [[id, slot.x < spine ? 'left' : 'right']],
  );
  return new Map(sides);
}

function compared(a: ReadonlyMap<NodeId, Side>, b: ReadonlyMap<NodeId, Side>) {
  const both = [...a].filter(([id]) => b.has(id));
  return { all: both.length, same: both.filter(([id, side]) => b.get(id) === side).length };
}

test.each(SLUGS)('%s: every tray is on the side where the file has it, on any paper', (slug) => {
  const game = exampleOf(slug);
  const screen = sidesOnScreen(game);
  for (const paper of PAPERS) {
    for (const orientation of ORIENTATIONS) {
      const { all, same } = compared(screen, sidesOnPage(planOf(game, paper, orientation)));
      expect(all).toBeGreaterThan(1);
      expect(same).toBe(all);
    }
  }
});

test('of random games far the most trays are, upright or lying', () => {
  const sums = { portrait: { all: 0, same: 0 }, landscape: { all: 0, same: 0 } };
  const games = Array.from({ length: 40 }, (_, i) => pageGame(i + 1)).filter(({ nodes }) => nodes.size < 45);
  for (const game of games) {
    const screen = sidesOnScreen({ ...game, positions: arrange(game, numbersOf(game)) });
    for (const orientation of ORIENTATIONS) {
      const { all, same } = compared(screen, sidesOnPage(planOf(game, 'A4', orientation)));
      sums[orientation].all += all;
      sums[orientation].same += same;
    }
  }
  expect(sums.portrait.same).toBeGreaterThan(0.85 * sums.portrait.all);
  expect(sums.landscape.same).toBeGreaterThan(0.8 * sums.landscape.all);
});

test('the sides are those of a map arranged from scratch, wherever its things stand now', () => {
  for (let seed = 1; seed <= 6; seed++) {
    const game = pageGame(seed);
    const { left, right } = sidesOf(game, numbersOf(game));
    const screen = sidesOnScreen({ ...game, positions: arrange(game, numbersOf(game)) });
    for (const id of left) expect(screen.get(id)).toBe('left');
    for (const id of right) expect(screen.get(id)).toBe('right');
    expect(left.length + right.length).toBe(screen.size);
  }
});

test('a page starts from the document alone: positions change nothing on it', () => {
  for (const seed of [4, 9, 12]) {
    const game = pageGame(seed);
    const random = seededRandom(seed);
    const at = () => ({ x: Math.round(2000 * random()), y: Math.round(2000 * random()) });
    const scrambled = { ...game, positions: new Map([...game.nodes.keys()].map((id) => [id, at()])) };
    expect(planOf(scrambled, 'A4', 'portrait')).toEqual(planOf(game, 'A4', 'portrait'));
  }
});
