/** Changes to the open kit, as the pages ask for them. */
import { addItem, changeItem, setCount } from '../../src/kit/edits.ts';
import type { ItemId, Kit, KitItem } from '../../src/kit/model.ts';
import { kitItem } from '../../src/kit/schema.ts';
import { freshId } from '../store/ids.ts';
import { useKit } from './kit-state.ts';
import { isPlain, itemFrom, type Template } from './templates.ts';

export function changeKit(change: (kit: Kit) => Kit, tag?: string): void {
  const { owned } = useKit.getState();
  const kit = change(owned.kit);
  if (kit !== owned.kit) useKit.getState().change({ ...owned, kit }, tag);
}

/** One more of it. */
export function tap(template: Template): void {
  changeKit((kit) => {
    const there = kit.items.find((item) => isPlain(item, template));
    return there ? setCount(kit, there.id, there.count + 1) : addItem(kit, itemFrom(template, freshId()));
  });
}

export function writeCount(id: ItemId, count: number, tag?: string): void {
  changeKit((kit) => setCount(kit, id, count), tag);
}

/** Sets a field, or with undefined takes it away. Typing in one field is one undo. */
export function writeField(item: KitItem, field: string, value: unknown): void {
  const fields = new Map(Object.entries(item));
  if (value === undefined) fields.delete(field);
  else fields.set(field, value);
  const next = kitItem.parse(Object.fromEntries(fields));
  changeKit((kit) => changeItem(kit, next), `${field} ${item.id}`);
}
