/** The cautions, in the order in which they are told. Adding one means adding a file and a line here; the compiler then asks for its words. */
import { isLeftOut } from '../engine/left-out.ts';
import { byCodePoint } from '../game/compare.ts';
import { type Game, type GameNode, KINDS, type Kind, type NodeId } from '../game/model.ts';
import { buttonCells } from './button-cells.ts';
import type { Caution } from './caution.ts';
import { egress } from './egress.ts';
import { food } from './food.ts';
import { hiding } from './hiding.ts';
import { lightsOff } from './lights-off.ts';
import { magnets } from './magnets.ts';
import { uvLight } from './uv-light.ts';

export type { Source } from './caution.ts';

const ALL = [egress, hiding, lightsOff, uvLight, buttonCells, magnets, food] as const;

export type CautionId = (typeof ALL)[number]['id'];
/** What the document's `hazards` can say of any thing. */
export type Hazard = Extract<(typeof ALL)[number], { readonly stated: true }>['id'];

export const CAUTIONS: readonly (Caution & { readonly id: CautionId })[] = ALL;

export const HAZARDS: readonly Hazard[] = ALL.flatMap((caution) => (caution.stated ? [caution.id] : []));

/** Why a caution belongs to a thing: the teacher says so, the words of the game suggest it, or all of that kind have it. */
export type Cause = 'stated' | 'suggested' | 'kind';

export interface CautionOfThing {
  readonly id: CautionId;
  readonly cause: Cause;
}

/** Those of one thing, whether it is used today or not. What is stated counts before what is suggested, and that before the kind. */
export function cautionsOf(node: GameNode): CautionOfThing[] {
  return CAUTIONS.flatMap((caution) => {
    const cause = causeOf(caution, node);
    return cause === undefined ? [] : [{ id: caution.id, cause }];
  });
}

function causeOf({ id, stated, kinds, suggested }: Caution, node: GameNode): Cause | undefined {
  if (stated && node.hazards?.includes(id)) return 'stated';
  if (suggested?.(node)) return 'suggested';
  return kinds.includes(node.kind) ? 'kind' : undefined;
}

/** Those of this thing more than of any other of its kind. */
export function ownCautions(game: Game, id: NodeId): CautionId[] {
  const node = game.nodes.get(id);
  return node ? cautionsOf(node).flatMap((caution) => (caution.cause === 'kind' ? [] : [caution.id])) : [];
}

export interface CautionOfGame {
  readonly id: CautionId;
  /** Things used today of which it is stated, or suggested by their words; by name, then id. */
  readonly things: readonly NodeId[];
  /** Kinds of which every thing has it, and of which some are used today. */
  readonly kinds: readonly Kind[];
}

/** All cautions of what is used today, each once, with what they concern. */
export function cautionsFor(game: Game): CautionOfGame[] {
  const used = [...game.nodes.values()]
    .filter(({ id }) => !isLeftOut(game, id))
    .sort((a, b) => byCodePoint(a.name, b.name) || byCodePoint(a.id, b.id));
  return CAUTIONS.flatMap((caution) => {
    const causes = used.map((node) => ({ node, cause: causeOf(caution, node) }));
    const things = causes.filter(({ cause }) => cause === 'stated' || cause === 'suggested');
    const kinds = KINDS.filter(
      (kind) => caution.kinds.includes(kind) && used.some((node) => node.kind === kind),
    );
    if (things.length === 0 && kinds.length === 0) return [];
    return [{ id: caution.id, things: things.map(({ node }) => node.id), kinds }];
  });
}
