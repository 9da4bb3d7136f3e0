/** Keeps the scripts of workers that are started again and again at hand, so that they start without a connection too. */
import { ahead } from './ahead.ts';
import { held } from './helper.ts';

async function hold(address: string): Promise<boolean> {
  try {
    const response = await fetch(address);
    if (!response.ok) return false;
    const script = new Blob([await response.text()], { type: 'text/javascript' });
    held.set(address, URL.createObjectURL(script));
    return true;
  } catch {
    // Until it can be had, its address is as good.
    return false;
  }
}

/** Has a worker's script fetched ahead. Only the build makes one file of it. */
export function holdScript(address: string): void {
  if (import.meta.env.PROD) ahead(() => hold(address));
}
