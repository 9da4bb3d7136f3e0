/** Routes that were found in another thread serve as if they had been found here. */
import { expect, test } from 'vitest';
import { arrange } from '../../src/map/arrange.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { plainView } from '../../src/map/layout.ts';
import { receiveRoutes, sendRoutes } from '../../src/map/route/sent.ts';
import { routes, unrouted } from '../../src/map/route.ts';
import { randomGame } from '../random-game.ts';
import { numbersOf } from './games.ts';

test('what is sent is known where it is received, and none has to be found again', () => {
  let lines = 0;
  for (let seed = 0; seed < 12; seed++) {
    const game = randomGame(seed, 40);
    const layout = layOut({ ...game, positions: arrange(game, numbersOf(game)) }, plainView);
    const found = routes(layout, game.links.values());
    const received = receiveRoutes(structuredClone(sendRoutes(found)) ?? expect.fail('nothing to send'));
    expect(received).toEqual(found);
    expect(routes(layout, game.links.values(), received)).toBe(received);
    expect(unrouted(layout, game.links.values())).toBe(found.size);
    expect(unrouted(layout, game.links.values(), received)).toBe(0);
    lines += found.size;
  }
  expect(lines).toBeGreaterThan(100);
});

test('routes that came from nowhere cannot be sent', () => {
  expect(sendRoutes(new Map())).toBeUndefined();
});
