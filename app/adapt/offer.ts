/** Whether there is anything that a game could be adapted to. */
import { startKit } from '../kit/keeping.ts';
import { useKit } from '../kit/kit-state.ts';

export async function isKitKnown(): Promise<boolean> {
  await startKit();
  const { items, places } = useKit.getState().owned.kit;
  return items.length > 0 || places.length > 0;
}
