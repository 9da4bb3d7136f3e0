/**
 * Texts that a person has to read again, since a program can only guess: an answer may be read off the words that a new name would change; a word of an old name, a
 * colour, or a fixture that the room has not, stands there in running text; an answer is the name of what is no longer there. Each with what it would read, where
 * that can be said, and never changed by itself.
 */
import { isLeftOut } from '../../engine/left-out.ts';
import { codeOf, normaliseCode, symbolsOf } from '../../game/codes.ts';
import type { Game, NodeId } from '../../game/model.ts';
import { recolouredText } from './colours.ts';
import { quotes, swapped, without } from './quoting.ts';
import type { Way } from './readings.ts';
import type { Renamer, Renaming, Staying } from './renaming.ts';
import { missingFixtures } from './room-words.ts';
import { type Spot, spotKey, spotsOf, textAt } from './texts.ts';
import { headWords, normalisedName, tellingWords, wordsOf } from './wording.ts';

export type RereadReason =
  /** Read in that way, the text gives the answer, and with the new name it would not. */
  | { readonly reason: 'reads'; readonly thing: NodeId; readonly way: Way; readonly answer: string }
  /** It speaks of letters, words or counting, and the name stands in it. */
  | { readonly reason: 'mayRead'; readonly thing: NodeId }
  /** The old name, or a word of it, stands there. */
  | { readonly reason: 'names'; readonly words: readonly string[] }
  | { readonly reason: 'colours'; readonly words: readonly string[] }
  /** Fixtures that the list of the room does not have. */
  | { readonly reason: 'fixtures'; readonly words: readonly string[] }
  /** What is worked out is the name of a thing that has another now. */
  | { readonly reason: 'answer'; readonly thing: NodeId; readonly answer: string };

export interface Passage {
  readonly spot: Spot;
  readonly text: string;
  /** What it would read; undefined where that is for a person to say. */
  readonly suggestion: string | undefined;
}

export interface Reread {
  readonly of: NodeId;
  readonly reasons: readonly RereadReason[];
  readonly passages: readonly Passage[];
}

/** One that has been made, or is still to be: the old name gives way. */
export interface Planned {
  readonly renaming: Renaming;
  /** What is said instead of the old colour; undefined where the name has no other colour than before. */
  readonly colour: { readonly from: string; readonly to: string } | undefined;
}

const SHORTEST = 3;

function answerReasons(game: Game, of: NodeId, planned: readonly Planned[]): RereadReason[] {
  const node = game.nodes.get(of);
  const answer = codeOf(game, of);
  if (answer === undefined || node?.kind === 'fastener' || symbolsOf(answer).length < SHORTEST) return [];
  const names = (name: string) =>
    [name, ...name.split(/[\s-]+/u)].some((words) => normaliseCode(words) === answer);
  return planned.flatMap(({ renaming: { id, from, to } }): RereadReason[] =>
    names(from) && !names(to) ? [{ reason: 'answer', thing: id, answer }] : [],
  );
}

interface Found {
  readonly reasons: readonly RereadReason[];
  readonly passage: Passage;
}

/**
 * @param game the original, or as it is now
 * @param room words of the places of the room; undefined where it is not known
 */
function look(
  game: Game,
  spot: Spot,
  planned: readonly Planned[],
  isDue: (renaming: Renaming) => boolean,
  withheld: (spot: Spot) => readonly RereadReason[],
  room: ReadonlySet<string> | undefined,
  { others, shared }: Staying,
): Found | undefined {
  const text = textAt(game, spot);
  if (text.trim() === '') return undefined;
  // Where a new name is the old one of another thing, nobody can tell which of them stands there.
  const taken = new Set(planned.map(({ renaming }) => normalisedName(renaming.to)));
  const swaps = planned
    .map(({ renaming }) => renaming)
    .filter(({ from }) => !taken.has(normalisedName(from)));
  const stays = withheld(spot);
  // What is quoted by its full name is changed with the name, unless an answer hangs on it.
  const staying = [...shared, ...others];
  const rest = swapped(text, swaps, false, staying);
  const left = wordsOf(without(rest, others));
  const bare = without(text, others);
  const quoted = swaps.filter((one) => isDue(one) && quotes(bare, one.from));
  const words = swaps.flatMap(({ from, to }) => {
    const now = tellingWords(to);
    return [...headWords(from)].filter(
      (word) => left.has(word) && !now.has(word) && room?.has(word) !== true,
    );
  });
  const colours = planned.flatMap(({ colour }) =>
    colour && recolouredText(rest, colour.from, colour.to) !== rest ? [colour.from] : [],
  );
  const fixtures = room ? missingFixtures(left, room).filter((word) => !words.includes(word)) : [];
  const reasons: RereadReason[] = [...stays];
  const named = new Set([...(stays.length > 0 ? [] : quoted.map(({ from }) => from.trim())), ...words]);
  if (named.size > 0) reasons.push({ reason: 'names', words: [...named] });
  if (colours.length > 0) reasons.push({ reason: 'colours', words: [...new Set(colours)] });
  if (fixtures.length > 0) reasons.push({ reason: 'fixtures', words: fixtures });
  if (reasons.length === 0) return undefined;
  const suggestion = planned.reduce(
    (after, { colour }) => (colour ? recolouredText(after, colour.from, colour.to) : after),
    swapped(text, swaps, true, staying),
  );
  // What the renaming itself will do is no suggestion of its own.
  const isOwn = suggestion !== text && (stays.length > 0 || quoted.length > 0 || suggestion !== rest);
  return { reasons, passage: { spot, text, suggestion: isOwn ? suggestion : undefined } };
}

export interface RereadInput {
  readonly game: Game;
  readonly planned: readonly Planned[];
  readonly renamer: Renamer;
  /** Names of the room in plain words. */
  readonly room: ReadonlySet<string> | undefined;
  /** Renamings that have been made, so that their old names are not to stand in this game any more. */
  readonly made: readonly Renaming[];
  /** Things whose own texts are read with their line. */
  readonly except: ReadonlySet<NodeId>;
}

/** In the order of the map of nodes. What is left out is not looked at. */
export function rereadsOf({ game, planned, renamer, room, made, except }: RereadInput): readonly Reread[] {
  const withheld = new Map<string, RereadReason[]>();
  for (const { renaming } of planned) {
    for (const { spot, before, why } of renamer.withheldBy(renaming)) {
      if (textAt(game, spot) !== before && !quotes(textAt(game, spot), renaming.from)) continue;
      const reason: RereadReason = why.sure
        ? { reason: 'reads', thing: renaming.id, way: why.way, answer: why.answer }
        : { reason: 'mayRead', thing: renaming.id };
      withheld.set(spotKey(spot), [...(withheld.get(spotKey(spot)) ?? []), reason]);
    }
  }
  const isMade = new Set(made.map(({ id }) => id));
  const staying = renamer.staying(planned.map(({ renaming }) => renaming));
  const rereads: Reread[] = [];
  for (const node of game.nodes.values()) {
    if (except.has(node.id) || isLeftOut(game, node.id)) continue;
    const found = spotsOf(node)
      .filter(({ field }) => field !== 'name')
      .flatMap(
        (spot) =>
          look(
            game,
            spot,
            planned,
            ({ id }) => isMade.has(id),
            (at) => withheld.get(spotKey(at)) ?? [],
            room,
            staying,
          ) ?? [],
      );
    const reasons = [...found.flatMap((one) => one.reasons), ...answerReasons(game, node.id, planned)];
    if (reasons.length === 0) continue;
    rereads.push({ of: node.id, reasons, passages: found.map(({ passage }) => passage) });
  }
  return rereads;
}
