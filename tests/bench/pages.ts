/**
 * Prints and measures many random games: npm run pages -- [--games 1000] [--from 1] [--workers 2] [--seconds 300] [--minutes 600] [--all]
 * Game 0 is one of three thousand things. No game is begun after so many minutes. One process for each core; a game that takes longer than so many seconds is given up and counted as a fault.
 * Exit code 1 when any page is at fault.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { pageGame } from '../random-page-game.ts';
import { veryLargeGame } from '../sheets/page-checks/hard-games.ts';
import { checkGame, faultLines, optionsOf } from '../sheets/page-checks/print.ts';
import { type Printed, pageTable } from './page-table.ts';

const gameOf = (seed: number) => (seed === 0 ? veryLargeGame() : pageGame(seed));

function printGame(seed: number): Printed {
  const game = gameOf(seed);
  const options = optionsOf(seed);
  const start = process.cpuUsage();
  const sizes = { seed, nodes: game.nodes.size, paper: `${options.paper} ${options.orientation}` };
  try {
    const { faults, ...counts } = checkGame(game, options);
    const kinds = faults.map(({ kind }) => kind);
    return {
      ...sizes,
      ...counts,
      kinds,
      lines: faultLines(faults),
      seconds: secondsSince(start),
    };
  } catch (error) {
    return failed(sizes, 'error', error instanceof Error ? (error.stack ?? error.message) : String(error));
  }
}

/** Of the processor: a busy machine is no slower by it. */
function secondsSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

function failed(sizes: Pick<Printed, 'seed' | 'nodes' | 'paper'>, kind: string, line: string): Printed {
  return {
    ...sizes,
    pages: 0,
    smallest: Number.NaN,
    names: Number.NaN,
    crossings: 0,
    drawn: 0,
    told: 0,
    kinds: [kind],
    lines: [line],
    seconds: 0,
  };
}

/** In a process of its own: a seed comes in, what came of it goes out. */
function serve() {
  process.on('message', (seed: number) => process.send?.(printGame(seed)));
}

async function run() {
  const { values } = parseArgs({
    options: {
      games: { type: 'string', default: '1000' },
      from: { type: 'string', default: '1' },
      workers: { type: 'string', default: String(availableParallelism()) },
      seconds: { type: 'string', default: '300' },
      minutes: { type: 'string', default: '600' },
      all: { type: 'boolean', default: false },
    },
  });
  const first = Number(values.from);
  const last = first + Number(values.games) - 1;
  const limit = Number(values.seconds) * 1000;
  const end = Date.now() + Number(values.minutes) * 60_000;
  const results: Printed[] = [];
  let next = first;

  const work = () =>
    new Promise<void>((done) => {
      let child: ChildProcess | undefined;
      let timer: NodeJS.Timeout | undefined;
      const take = () => {
        if (next > last || Date.now() > end) {
          child?.kill();
          done();
          return;
        }
        const seed = next++;
        child ??= start();
        timer = setTimeout(() => {
          child?.kill('SIGKILL');
          child = undefined;
          const sizes = { seed, nodes: gameOf(seed).nodes.size, paper: '' };
          results.push(failed(sizes, 'too slow', `not printed within ${values.seconds} s`));
          take();
        }, limit);
        child.send(seed);
      };
      const start = () => {
        const started = fork(fileURLToPath(import.meta.url), ['serve'], { execArgv: ['--import', 'tsx'] });
        started.on('message', (result: Printed) => {
          clearTimeout(timer);
          results.push(result);
          if (results.length % 100 === 0) console.error(`${results.length} games`);
          take();
        });
        return started;
      };
      take();
    });

  await Promise.all(Array.from({ length: Number(values.workers) }, work));
  for (const line of pageTable(results, values.all)) console.log(line);
  process.exitCode = results.some(({ kinds }) => kinds.length > 0) ? 1 : 0;
}

if (process.argv[2] === 'serve') serve();
else await run();
