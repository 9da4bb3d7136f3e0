/** How the open game stands against my kit, in words. */
import type { Fitting } from '../kit/fit/index.ts';
import { type ItemId, type KitItem, WHATS, type What } from '../kit/model.ts';
import { count, list } from './numbers.ts';
import { itemTitle } from './screen-kit.ts';

export const FOR_GAME = {
  teams: 'Teams',
  fewerTeams: 'One team fewer',
  moreTeams: 'One team more',
  noGame: 'The open game is empty: it needs nothing from my kit yet.',
  short: 'What is short',
  working: 'Working out what can be done about it.',
  failed: 'What can be done about it could not be worked out.',
  /** In place of “It can be won.” where something is short. */
  withEverything: 'With everything there it can be won.',
  onList: 'What is missing is on the list to buy. Short until marked as bought.',
  /** Of a hiding place of the game. */
  offLimits: (place: string) => `${place} is off limits in my room.`,
  noRemedy: 'Nothing that is here can stand in for it.',
  choose: 'Choose',
  chooseFor: (title: string) => `Choose for ${title}`,
  /** Over the field of one copy. */
  copy: (copy: number, copies: number, teams: number) => {
    if (copies === 1) return teams === 1 ? 'The one that is used' : 'One for all teams';
    return copies === teams ? `Team ${copy}` : `Number ${copy} of ${copies}`;
  },
  asItComes: (now: string | undefined) => (now === undefined ? 'any that fits' : `any that fits: now ${now}`),
  gone: 'no longer in my kit',
};

export const PARTS_OF_KIT: Readonly<Record<What, { readonly title: string; readonly uncounted: string }>> = {
  lock: { title: 'Locks', uncounted: '' },
  hasp: { title: 'Hasps', uncounted: 'My kit says nothing of hasps, so they are not counted.' },
  box: { title: 'Boxes', uncounted: 'My kit says nothing of boxes, so they are not counted.' },
  tool: {
    title: 'Lamps and tools',
    uncounted: 'My kit says nothing of lamps and tools, so they are not counted.',
  },
};

const NOUNS: Readonly<Record<What, readonly [one: string, many: string]>> = {
  lock: ['lock', 'locks'],
  hasp: ['hasp', 'hasps'],
  box: ['box', 'boxes'],
  tool: ['lamp or tool', 'lamps or tools'],
};

function sum(short: ReadonlyMap<string, number>): number {
  return [...short.values()].reduce((total, missing) => total + missing, 0);
}

/** "2 locks and 1 hasp short for 4 teams." */
export function standing({ missing, boxes, hasps, tools, teams, assigned }: Fitting): string {
  const forTeams = `for ${count(teams, 'team')}`;
  if (missing === 0) {
    if (assigned.size + boxes.assigned.size + tools.assigned.size === 0)
      return 'This game needs nothing from my kit.';
    return `Nothing is short ${forTeams}.`;
  }
  const other = { hasp: sum(hasps.short), box: sum(boxes.short), tool: sum(tools.short) };
  const counts: Readonly<Record<What, number>> = {
    lock: missing - other.hasp - other.box - other.tool,
    ...other,
  };
  const parts = WHATS.filter((what) => counts[what] > 0).map((what) => count(counts[what], ...NOUNS[what]));
  return `${list(parts)} short ${forTeams}.`;
}

/** What the copies of one thing get, alike counted: "3 × red, 1 short". */
export function givenText(given: readonly (ItemId | null)[], items: readonly KitItem[]): string {
  const counts = new Map<ItemId, number>();
  for (const id of given) if (id !== null) counts.set(id, (counts.get(id) ?? 0) + 1);
  const short = given.filter((id) => id === null).length;
  const parts = Array.from(counts, ([id, n]) => {
    const item = items.find((one) => one.id === id);
    const title = item ? itemTitle(item) : FOR_GAME.gone;
    return given.length === 1 ? title : `${n} × ${title}`;
  });
  if (short > 0) parts.push(`${short} short`);
  return parts.join(', ');
}
