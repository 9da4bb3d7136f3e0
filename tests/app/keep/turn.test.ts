/** Whose turn it is to edit a game, with the browser's locks played by a few lines. */
import { afterEach, expect, test, vi } from 'vitest';
import { takeTurn } from '../../../app/keep/turn.ts';

type Request = (
  name: string,
  options: LockOptions,
  run: (lock: object | null) => unknown,
) => Promise<unknown>;

function withLocks(request: Request): void {
  vi.stubGlobal('navigator', { locks: { request } });
}

afterEach(() => vi.unstubAllGlobals());

const never = () => expect.fail('it was not to be told later');

test('a page that may not use locks edits', async () => {
  withLocks(() => Promise.reject(new DOMException('not here', 'SecurityError')));
  const turn = await takeTurn('g', never);
  expect(turn.mine).toBe(true);
  turn.letGo();
});

test('what another window has stays there, also when waiting for it fails', async () => {
  withLocks(async (_name, { ifAvailable }, run) => {
    if (!ifAvailable) throw new DOMException('no more', 'InvalidStateError');
    return run(null);
  });
  const turn = await takeTurn('g', never);
  expect(turn.mine).toBe(false);
  turn.letGo();
});

test('a lock that is free is held until it is let go', async () => {
  let free = false;
  withLocks(async (_name, _options, run) => {
    await run({});
    free = true;
  });
  const turn = await takeTurn('g', never);
  expect(turn.mine).toBe(true);
  expect(free).toBe(false);
  turn.letGo();
  await vi.waitFor(() => expect(free).toBe(true));
});
