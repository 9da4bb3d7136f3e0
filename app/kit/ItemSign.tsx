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

export function ItemSign({ item }: { item: KitItem }) {
  return item.what === 'lock' ? <LockSign type={item.type} /> : <KindShape kind={KINDS[item.what]} />;
}
