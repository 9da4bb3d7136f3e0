/** Very many arrows: straight at first, found by a worker, and known from then on. */
import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { matRects } from '../../../../app/flow/geometry.ts';
import { elbow } from '../../../../app/flow/links/elbow.ts';
import type { GameLink } from '../../../../src/game/model.ts';
import { layOut } from '../../../../src/map/lay-out.ts';
import { plainView } from '../../../../src/map/layout.ts';
import { sendRoutes } from '../../../../src/map/route/sent.ts';
import { routes } from '../../../../src/map/route.ts';
import { gameOf } from '../../open-game.ts';

/** Puzzles in rows, each with a loose clue that is needed for it. */
function many(count: number) {
  const nodes = Array.from({ length: count }, (_, i) => [
    { id: `p${i}`, kind: 'puzzle', name: `Puzzle ${i}` } as const,
    { id: `c${i}`, kind: 'clue', name: `Clue ${i}` } as const,
  ]).flat();
  const links = Array.from(
    { length: count },
    (_, i): GameLink => ({ id: `l${i}`, from: `c${i}`, to: `p${i}` }),
  );
  const positions = new Map(
    nodes.map(({ id, kind }, i) => [id, { x: kind === 'clue' ? 600 : 0, y: 60 * Math.floor(i / 2) }]),
  );
  return { ...gameOf(nodes, links), positions };
}

/** Workers that answer when they are told to. */
const asked: { readonly answer: () => void }[] = [];

class Answering {
  onmessage: ((event: { readonly data: unknown }) => void) | undefined;

  postMessage({ layout, links }: { layout: Parameters<typeof routes>[0]; links: readonly GameLink[] }) {
    asked.push({
      answer: () => this.onmessage?.({ data: structuredClone(sendRoutes(routes(layout, links))) }),
    });
  }
}

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

test('arrows run straight until a worker has found their ways', async () => {
  vi.stubGlobal('Worker', Answering);
  const { useRoutes } = await import('../../../../app/flow/links/useRoutes.ts');
  const game = many(420);
  const layout = layOut(game, plainView);
  const { result, rerender } = renderHook(({ at }) => useRoutes(at, game.links), {
    initialProps: { at: layout },
  });
  const rects = matRects(layout);
  const [from, to] = [rects.get('c7'), rects.get('p7')];
  expect(result.current.size).toBe(420);
  expect(from && to && elbow(from, to)).toEqual(result.current.get('l7'));
  expect(asked).toHaveLength(1);

  act(() => asked[0]?.answer());
  const found = result.current;
  expect(found).toEqual(routes(layout, game.links.values()));

  // What a small change leaves as it was is not asked for again.
  const positions = new Map(game.positions).set('c3', { x: 640, y: 200 });
  rerender({ at: layOut({ ...game, positions }, plainView, layout) });
  expect(asked).toHaveLength(1);
  expect(result.current.get('l300')).toBe(found.get('l300'));
  expect(result.current.get('l3')).not.toEqual(found.get('l3'));
});

test('of fewer arrows the page finds the ways itself', async () => {
  vi.stubGlobal('Worker', Answering);
  const { useRoutes } = await import('../../../../app/flow/links/useRoutes.ts');
  const game = many(30);
  const layout = layOut(game, plainView);
  const before = asked.length;
  const { result } = renderHook(() => useRoutes(layout, game.links));
  expect(result.current).toEqual(routes(layout, game.links.values()));
  expect(asked).toHaveLength(before);
});
