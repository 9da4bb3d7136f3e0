/** How safe the kit is. */
import { KIT_STORED } from '../../src/words/screen-kit.ts';
import { useKit } from './kit-state.ts';

export function StoredState() {
  const { ready, stored, storage } = useKit();
  if (!ready) return <p className="kit-stored" role="status" />;
  const isAtRisk = storage !== 'kept';
  return (
    <p className={isAtRisk ? 'kit-stored kit-at-risk' : 'kit-stored'} role="status">
      {isAtRisk || stored ? KIT_STORED[storage] : KIT_STORED.storing}
    </p>
  );
}
