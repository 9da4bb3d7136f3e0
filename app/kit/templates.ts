/** What most cupboards hold, to be tapped: an item that says no more than is plain from its name. */

import { sameJson } from '../../src/game/json.ts';
import { sameWords } from '../../src/kit/fit/suits.ts';
import type { KitItem } from '../../src/kit/model.ts';
import { TEMPLATE_NAMES } from '../../src/words/screen-kit.ts';

const DIGITS = '0123456789';
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const alike = (wheel: string, wheels: number): string[] => Array<string>(wheels).fill(wheel);

/** What a wheel of such a lock shows as a rule; undefined where there is no such rule. */
export function usualWheel(type: string): string | undefined {
  if (type === 'number') return DIGITS;
  return type === 'word' ? LETTERS : undefined;
}

export interface Template {
  readonly name: keyof typeof TEMPLATE_NAMES;
  /** With nothing in place of an id. */
  readonly item: KitItem;
}

const NEW = { id: '', label: '', count: 1 };

export const TEMPLATES: readonly Template[] = [
  { name: 'number3', item: { ...NEW, what: 'lock', type: 'number', wheels: alike(DIGITS, 3) } },
  { name: 'number4', item: { ...NEW, what: 'lock', type: 'number', wheels: alike(DIGITS, 4) } },
  { name: 'word4', item: { ...NEW, what: 'lock', type: 'word', wheels: alike(LETTERS, 4) } },
  { name: 'word5', item: { ...NEW, what: 'lock', type: 'word', wheels: alike(LETTERS, 5) } },
  { name: 'direction', item: { ...NEW, what: 'lock', type: 'direction' } },
  { name: 'dial', item: { ...NEW, what: 'lock', type: 'dial' } },
  { name: 'picture', item: { ...NEW, what: 'lock', type: 'picture' } },
  { name: 'key', item: { ...NEW, what: 'lock', type: 'key' } },
  { name: 'typed', item: { ...NEW, what: 'lock', type: 'typed' } },
  { name: 'box', item: { ...NEW, what: 'box' } },
  { name: 'hasp', item: { ...NEW, what: 'hasp', holes: 6 } },
  { name: 'uvLamp', item: { ...NEW, what: 'tool', label: TEMPLATE_NAMES.uvLamp, batteries: true } },
  { name: 'torch', item: { ...NEW, what: 'tool', label: TEMPLATE_NAMES.torch, batteries: true } },
  { name: 'magnifier', item: { ...NEW, what: 'tool', label: TEMPLATE_NAMES.magnifier } },
  { name: 'mirror', item: { ...NEW, what: 'tool', label: TEMPLATE_NAMES.mirror } },
];

export const PLATE_GROUPS = ['code', 'key', 'box', 'tool'] as const;

/** Under which heading its plate stands. */
export function groupOf(item: KitItem): (typeof PLATE_GROUPS)[number] {
  if (item.what === 'lock') return item.type === 'key' ? 'key' : 'code';
  return item.what === 'tool' ? 'tool' : 'box';
}

/** How many of its kind are there, whatever else is said of them. */
export function countOf(items: readonly KitItem[], { item }: Template): number {
  return items.reduce((sum, one) => (isOfKind(one, item) ? sum + one.count : sum), 0);
}

function isOfKind(one: KitItem, kind: KitItem): boolean {
  if (one.what === 'lock' && kind.what === 'lock') {
    return one.type === kind.type && (kind.wheels === undefined || one.wheels?.length === kind.wheels.length);
  }
  return one.what === kind.what && (kind.what !== 'tool' || sameWords(one.label, kind.label));
}

/** What it is, whatever it is called by the program and however many there are. */
function sort({ id: _, count: __, toBuy: ___, ...rest }: KitItem): unknown {
  return rest;
}

/** An item of which nothing was said beyond the template. */
export function isPlain(item: KitItem, template: Template): boolean {
  return sameJson(sort(item), sort(template.item));
}

export function itemFrom({ item }: Template, id: string): KitItem {
  return { ...item, id };
}
