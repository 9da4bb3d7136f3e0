import { describe, expect, it } from 'vitest';
import { addKit } from '../../src/kit/add-kit.ts';
import {
  addItem,
  addPlace,
  bought,
  changeItem,
  changePlace,
  KitEditError,
  removeItem,
  removePlace,
  setCount,
} from '../../src/kit/edits.ts';
import { emptyKit } from '../../src/kit/model.ts';
import { kitOf, lockItem } from './cupboards.ts';

const kit = kitOf(lockItem('constructor', 'number', 2), lockItem('__proto__', 'key', 1, { toBuy: 3 }));
const shelf = { id: 'shelf', name: 'Shelf' };

describe('changes to a kit', () => {
  it('never change the kit that was there, and what they do not touch stays the same object', () => {
    const frozen = Object.freeze({ ...kit, items: Object.freeze([...kit.items]) });
    const next = setCount(frozen, 'constructor', 5);
    expect(next.items.map(({ count }) => count)).toEqual([5, 1]);
    expect(next.items[1]).toBe(kit.items[1]);
    expect(removeItem(frozen, 'constructor').items).toEqual([kit.items[1]]);
  });

  it('that change nothing give back the very kit', () => {
    expect(setCount(kit, 'constructor', 2)).toBe(kit);
    expect(setCount(kit, 'nobody', 2)).toBe(kit);
    expect(removeItem(kit, 'nobody')).toBe(kit);
    expect(removePlace(kit, 'nobody')).toBe(kit);
    expect(bought(kit, 'constructor')).toBe(kit);
    expect(changeItem(kit, lockItem('constructor', 'number', 2))).toBe(kit);
  });

  it('keep counts whole and within bounds', () => {
    expect(setCount(kit, 'constructor', -3).items[0]?.count).toBe(0);
    expect(setCount(kit, 'constructor', 1e9).items[0]?.count).toBe(1000);
    expect(setCount(kit, 'constructor', 2.4)).toBe(kit);
    expect(setCount(kit, 'constructor', Number.NaN)).toBe(kit);
  });

  it('bring what was bought into the cupboard', () => {
    expect(bought(kit, '__proto__').items[1]).toEqual(lockItem('__proto__', 'key', 4));
  });

  it('refuse what no form can ask for', () => {
    expect(() => addItem(kit, lockItem('constructor', 'key', 1))).toThrow(KitEditError);
    expect(() => addItem(kit, lockItem('', 'key', 1))).toThrow(KitEditError);
    expect(() => changeItem(kit, lockItem('constructor', 'key', 0.5))).toThrow(KitEditError);
    const roomy = addPlace(kit, shelf);
    expect(() => addPlace(roomy, shelf)).toThrow(KitEditError);
    expect(changePlace(roomy, { ...shelf, zone: 'Corner' }).places).toEqual([{ ...shelf, zone: 'Corner' }]);
    expect(removePlace(roomy, 'shelf')).toEqual({ ...kit, places: [] });
  });
});

describe('a kit from a file beside what is there', () => {
  it('is added once, and never over something else', () => {
    let made = 0;
    const ids = () => `new${++made}`;
    const other = {
      ...kitOf(lockItem('constructor', 'word', 1), lockItem('more', 'dial', 1)),
      places: [shelf],
    };
    const both = addKit(kit, other, ids);
    expect(both.items.map(({ id }) => id)).toEqual(['constructor', '__proto__', 'new1', 'more']);
    expect(addKit(both, kit, ids)).toEqual(both);
    expect(addKit(emptyKit, kit, ids)).toEqual(kit);
  });
});
