/** Serves the build, prints the address and opens it. Where there is no browser to open, the address is enough. */
import { spawn } from 'node:child_process';
import { preview } from 'vite';

function opener(address: string): [command: string, ...args: string[]] {
  if (process.platform === 'darwin') return ['open', address];
  if (process.platform === 'win32') return ['cmd', '/c', 'start', '', address];
  return ['xdg-open', address];
}

const server = await preview({ logLevel: 'warn' });
const address = server.resolvedUrls?.local[0];
if (address === undefined) throw new Error('The preview server has no local address.');

console.log(`Latchmap is at ${address} (Ctrl+C ends it)`);
const [command, ...args] = opener(address);
spawn(command, args, { stdio: 'ignore', detached: true })
  .on('error', () => console.log('No browser was found to open it with.'))
  .unref();
