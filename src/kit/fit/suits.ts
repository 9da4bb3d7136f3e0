/** Whether a thing of the cupboard can serve where a game needs one. What neither says stands in nobody's way. */
import { fastenerType } from '../../fasteners/index.ts';
import { writtenCode } from '../../game/codes.ts';
import type { Game, NodeOf } from '../../game/model.ts';
import { normalisedName } from '../adapt/wording.ts';
import type { ItemOf, KitItem } from '../model.ts';
import type { BoxNeed, LockNeed } from '../needs.ts';

/** Why a thing cannot serve. */
export type Unfit =
  /** It is another sort of thing, or another type of lock. */
  | 'type'
  /** The lock cannot be set to the code. */
  | 'code'
  /** The shackle is thicker than the hole. */
  | 'shackle'
  /** The shackle leaves less room than what it goes round is thick. */
  | 'clearance'
  /** The box takes fewer locks than hang on it. */
  | 'takes'
  /** The hasp has fewer holes than locks hang on the box. */
  | 'holes';

/** What a lock goes through: a box, or the hasp on it. */
export type Through = ItemOf<'box'> | ItemOf<'hasp'> | undefined;

/** The symbols that a lock has to be set to; undefined where the game does not say yet, or where it takes no code. */
export function symbolsFor(
  game: Game,
  { node, type }: Pick<LockNeed, 'node' | 'type'>,
): readonly string[] | undefined {
  const code = writtenCode(game, node.id);
  const rules = fastenerType(type);
  return code && rules.opensWith === 'code' ? rules.symbols(code.typed) : undefined;
}

export function lockUnfit(
  type: string,
  symbols: readonly string[] | undefined,
  item: KitItem,
  through: Through,
): Unfit | undefined {
  if (item.what !== 'lock' || item.type !== type) return 'type';
  if (
    symbols &&
    fastenerType(type)
      .misfits(symbols, item)
      .some(({ assumed }) => !assumed)
  )
    return 'code';
  return through && holeUnfit(item, through);
}

/** Whether a padlock goes through the hole. */
export function holeUnfit(item: ItemOf<'lock'>, through: NonNullable<Through>): Unfit | undefined {
  if (isAbove(item.shackleMm, through.holeMm)) return 'shackle';
  return through.what === 'box' && isAbove(through.roundMm, item.clearanceMm) ? 'clearance' : undefined;
}

export function boxUnfit({ locks }: Pick<BoxNeed, 'locks'>, item: KitItem): Unfit | undefined {
  if (item.what !== 'box') return 'type';
  const { takes } = item;
  if (takes === undefined || takes === 'hasp' || locks === 0) return undefined;
  return takes === 'lock' && locks === 1 ? undefined : 'takes';
}

export function haspUnfit(locks: number, item: KitItem): Unfit | undefined {
  if (item.what !== 'hasp') return 'type';
  return item.holes < locks ? 'holes' : undefined;
}

/** A tool is known by its name. */
export function toolUnfit({ name }: Pick<NodeOf<'tool'>, 'name'>, item: KitItem): Unfit | undefined {
  return item.what === 'tool' && sameWords(name, item.label) ? undefined : 'type';
}

/** The same name, whatever its case, accents, signs and articles, and with or without the s of a plain plural. */
export function sameWords(a: string, b: string): boolean {
  return nameForm(a) === nameForm(b);
}

function nameForm(name: string): string {
  const words = normalisedName(name);
  return words === '' ? plainWords(name) : words.replace(/(?<=\p{L}{3})(?<!s)s(?=\s|$)/gu, '');
}

/** Compatible forms, lower case, single spaces. */
export function plainWords(text: string): string {
  return text.normalize('NFKC').toLowerCase().trim().replace(/\s+/gu, ' ');
}

function isAbove(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && a > b;
}
