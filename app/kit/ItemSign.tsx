/** What an item is, as the map draws it: locks by their sign, all else in miniature. */
import type { Kind } from '../../src/game/model.ts';
import type { KitItem, What } from '../../src/kit/model.ts';
import { LockSign } from '../flow/shapes/LockSign.tsx';
import { KindShape } from '../shell/KindShape.tsx';

const KINDS: Readonly<Record<Exclude<What, 'lock'>, Kind>> = {
  box: 'container',
  hasp: 'fastener',
  tool: 'tool',
};

interface ItemSignProps {
  readonly what: What;
  /** Of a lock. */
  readonly type?: string | undefined;
}

export function ItemSign({ what, type }: ItemSignProps) {
  return what === 'lock' ? <LockSign type={type} /> : <KindShape kind={KINDS[what]} />;
}

/** In a field of its own, at the beginning of a line. */
export function LineSign({ what, type }: ItemSignProps) {
  return (
    <span className={`kit-item-sign kit-item-${what}`}>
      <ItemSign what={what} type={type} />
    </span>
  );
}

export function typeOf(item: KitItem): string | undefined {
  return item.what === 'lock' ? item.type : undefined;
}
