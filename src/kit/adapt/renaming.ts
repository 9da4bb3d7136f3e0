/**
 * A thing gets another name, and so does every text where the old one is quoted; but not a text from which an answer may be read (readings.ts), which is to be
 * read again by a person.
 *
 * Every renaming is seen from the game as it came: a text that nobody has touched since is made anew from the original with all renamings at once, so that
 * their order does not matter, two names can change places, and one is taken back without the others. In a text that was changed by hand, what is quoted there is changed.
 */
import type { Edit } from '../../game/edits/edit.ts';
import type { Game, NodeId } from '../../game/model.ts';
import { workedOutFrom } from './answers-from.ts';
import { type Swap, swapped } from './quoting.ts';
import { type Dependence, dependence } from './readings.ts';
import { allSpots, type Spot, setText, textAt } from './texts.ts';
import { normalisedName } from './wording.ts';

/** From the name in the original to another. */
export interface Renaming extends Swap {
  readonly id: NodeId;
}

/** A text before and after. */
export interface Rewording {
  readonly spot: Spot;
  readonly before: string;
  readonly after: string;
}

/** A text that quotes the old name and is left for a person to read. */
export interface Withheld extends Rewording {
  readonly why: Dependence;
}

export interface RenameEffect {
  readonly edits: readonly Edit[];
  readonly reworded: readonly Rewording[];
  readonly withheld: readonly Withheld[];
}

export interface Staying {
  /** Of one thing that keeps its name. */
  readonly others: readonly string[];
  /** Of two or more things, so that nobody can tell which of them a text speaks of. */
  readonly shared: readonly string[];
}

export interface Renamer {
  /** What the renaming changes beside the name itself. */
  readonly rename: (id: NodeId, to: string) => RenameEffect;
  /** Back to the name in the original. */
  readonly takeBack: (id: NodeId) => readonly Edit[];
  /** Of the original; its edit says what each renaming that has been made quotes there and may not change. */
  readonly withheldBy: (renaming: Renaming) => readonly Withheld[];
  /** The text of the original with all renamings that have been made. */
  readonly expected: (spot: Spot) => string;
  /** Names that these renamings leave as they are, since they are those of other things. */
  readonly staying: (renamings: readonly Renaming[]) => Staying;
  /** Made by now, by whatever way. */
  readonly made: readonly Renaming[];
}

/** @param own things that are renamed one by one: their names are not changed because another is quoted in them */
export function renamer(original: Game, current: Game, own: ReadonlySet<NodeId>): Renamer {
  const made: Renaming[] = [];
  for (const id of own) {
    const from = original.nodes.get(id)?.name;
    const to = current.nodes.get(id)?.name;
    if (from !== undefined && to !== undefined && from !== to) made.push({ id, from, to });
  }
  const spots = allSpots(current).filter(({ of, field }) => field !== 'name' || !own.has(of));
  const namesOf = (game: Game, ids: Iterable<NodeId>) =>
    Array.from(ids, (id) => game.nodes.get(id)?.name ?? '').filter((name) => name.trim() !== '');
  const names = namesOf(original, own);
  const times = new Map<string, number>();
  for (const name of names) {
    const plain = normalisedName(name);
    times.set(plain, (times.get(plain) ?? 0) + 1);
  }
  const isShared = (name: string) => (times.get(normalisedName(name)) ?? 0) > 1;
  const shared = names.filter(isShared);
  const staying = (renamings: readonly Renaming[]): Staying => {
    const going = new Set(renamings.map(({ id }) => id));
    const others = [...own].filter((id) => !going.has(id));
    return { shared, others: namesOf(original, others).filter((name) => !isShared(name)) };
  };
  const put = (text: string, renamings: readonly Renaming[]): string => {
    const { others, shared: both } = staying(renamings);
    return swapped(text, renamings, false, [...both, ...others]);
  };
  const whyWithheld = (spot: Spot, swap: Renaming): Dependence | undefined => {
    if (spot.of === null || (spot.field !== 'text' && spot.field !== 'otherWay')) return undefined;
    const { answers, tasks } = workedOutFrom(original, spot.of);
    const text = textAt(original, spot);
    return dependence(text, put(text, [swap]), answers, tasks);
  };
  const isQuoted = (spot: Spot, swap: Renaming) => {
    const text = textAt(original, spot);
    return put(text, [swap]) !== text;
  };
  const applies = (spot: Spot, swap: Renaming) =>
    isQuoted(spot, swap) && whyWithheld(spot, swap) === undefined;
  const withAll = (spot: Spot, renamings: readonly Renaming[]) =>
    swapped(
      textAt(original, spot),
      renamings.filter((one) => applies(spot, one)),
      false,
      [...shared, ...staying(renamings).others],
    );
  const expected = (spot: Spot) => withAll(spot, made);

  const withheldBy = (renaming: Renaming): Withheld[] =>
    spots.flatMap((spot) => {
      const before = textAt(original, spot);
      const why = isQuoted(spot, renaming) ? whyWithheld(spot, renaming) : undefined;
      return why ? [{ spot, before, after: put(before, [renaming]), why }] : [];
    });

  const rewordings = (id: NodeId, to: readonly Renaming[], back: Swap, loosely = false): Rewording[] => {
    const stay = [
      ...shared,
      ...namesOf(
        current,
        [...own].filter((one) => one !== id),
      ),
    ];
    return spots.flatMap((spot) => {
      const before = textAt(current, spot);
      const from = original.nodes.get(id)?.name ?? back.from;
      const isUntouched = before === expected(spot);
      // By hand a name may have been changed here and not there.
      const after = isUntouched
        ? withAll(spot, to)
        : swapped(before, [back, { from, to: back.to }], loosely, stay);
      if (after === before || whyWithheld(spot, { id, from, to: back.to })) return [];
      return [{ spot, before, after }];
    });
  };
  const editsOf = (id: NodeId, name: string, reworded: readonly Rewording[]): Edit[] => [
    { type: 'rename', id, name },
    ...reworded.map(({ spot, after }) => setText(spot, after)),
  ];
  const others = (id: NodeId) => made.filter((one) => one.id !== id);

  return {
    made,
    expected,
    staying,
    withheldBy,
    rename(id, typed) {
      const to = typed.trim();
      const now = current.nodes.get(id)?.name ?? '';
      const renaming = { id, from: original.nodes.get(id)?.name ?? now, to };
      const reworded = rewordings(id, [...others(id), renaming], { from: now, to });
      return { edits: editsOf(id, to, reworded), reworded, withheld: withheldBy(renaming) };
    },
    takeBack(id) {
      const now = current.nodes.get(id)?.name ?? '';
      const to = original.nodes.get(id)?.name ?? now;
      // A name of several words was changed in any case, and one word may stand in its place.
      const loosely = /[\s-]/u.test(to.trim());
      return editsOf(id, to, rewordings(id, others(id), { from: now, to }, loosely));
    },
  };
}
