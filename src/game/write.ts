/** From a game to the text of its file: always the same text for the same game, so that two versions of a file can be compared line by line. */
import { byCodePoint } from './compare.ts';
import { type JsonObject, sameJson } from './json.ts';
import type { Game, GameDocument } from './model.ts';
import { FORMAT, VERSION } from './schema.ts';

/** What a person looks for first stands first; fields that are not named here follow, by code point. */
const ORDER = [
  'format',
  'version',
  'id',
  'revision',
  'basedOn',
  'title',
  'summary',
  'lesson',
  'objectives',
  'nodes',
  'links',
  'kind',
  'name',
  'in',
  'on',
  'from',
  'to',
  'type',
  'code',
  'answer',
  'need',
  'at',
];
const RANK = new Map(ORDER.map((key, rank) => [key, rank]));

function compareKeys([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number {
  const rankOf = (key: string) => RANK.get(key) ?? ORDER.length;
  return rankOf(a) - rankOf(b) || byCodePoint(a, b);
}

function ordered(fields: JsonObject): JsonObject {
  return Object.fromEntries(Object.entries(fields).sort(compareKeys));
}

function byId<T extends { readonly id: string }>(map: ReadonlyMap<string, T>): T[] {
  return [...map.values()].sort((a, b) => byCodePoint(a.id, b.id));
}

/** The same game with nodes and links in the order of its file: what rounds sums as it goes through them comes to the same for all copies. */
export function inFileOrder(game: Game): Game {
  const nodes = new Map(byId(game.nodes).map((node) => [node.id, node]));
  const links = new Map(byId(game.links).map((link) => [link.id, link]));
  return { ...game, nodes, links };
}

export function writeGame({ provenance, game }: GameDocument): string {
  const nodes = byId(game.nodes).map((node) => {
    const at = game.positions.get(node.id);
    return ordered(at ? { ...node, at } : { ...node });
  });
  const links = byId(game.links).map((link) => ordered({ ...link }));
  const file = ordered({ ...game.head, format: FORMAT, version: VERSION, ...provenance, nodes, links });
  return `${JSON.stringify(file, null, 2)}\n`;
}

function sameMap(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const [id, value] of a) if (!b.has(id) || !sameJson(value, b.get(id))) return false;
  return true;
}

/** Whether two games say the same, positions included. Where they come from stands outside the question. */
export function sameContent(a: Game, b: Game): boolean {
  return (
    sameJson(a.head, b.head) &&
    sameMap(a.nodes, b.nodes) &&
    sameMap(a.links, b.links) &&
    sameMap(a.positions, b.positions)
  );
}
