/** The nodes of the canvas from layout and analysis: one object for each, the same for as long as nothing in it changed. */
import { isLeftOut } from '../../src/engine/left-out.ts';
import { saidCode } from '../../src/game/codes.ts';
import { type Game, type GameNode, isHolder, isPinned, type NodeId } from '../../src/game/model.ts';
import type { MapLayout, Slot } from '../../src/map/layout.ts';
import { same } from '../../src/map/same.ts';
import { holdsText, LOCK_STATES, spokenName, THING_ROLE } from '../../src/words/canvas.ts';
import { type Card, type CardNode, type Hasp, type Look, nodeTypeOf } from './card.ts';
import { foldedLook, insideOf } from './folded.ts';
import { matRects } from './geometry.ts';
import { growth, smallWords } from './small.ts';

/** Trays by depth, links above them (LINKS_Z), things, locks; what is dragged above all. */
export const LINKS_Z = 12;
const THINGS_Z = 20;
const LOCKS_Z = 21;
export const DRAGGED_Z = 1000;

const ROLE = { 'aria-roledescription': THING_ROLE };

const NO_LOOK: Look = {
  number: 0,
  state: undefined,
  culprit: false,
  pale: false,
  heat: undefined,
  inChain: false,
  moment: undefined,
};

export interface Scene {
  readonly game: Game;
  readonly layout: MapLayout;
  readonly looks: ReadonlyMap<NodeId, Look>;
  readonly selected: ReadonlySet<NodeId>;
  readonly lifted: NodeId | undefined;
}

export interface Cards {
  /** Parents before what lies in them; roots in the order of play, so that Tab goes the way of the game. */
  readonly list: readonly CardNode[];
  readonly byId: ReadonlyMap<NodeId, CardNode>;
  /** What they were made from. */
  readonly scene?: Scene;
}

export const noCards: Cards = { list: [], byId: new Map() };

export function cardsOf(scene: Scene, before: Cards): Cards {
  const byId = new Map<NodeId, CardNode>();
  const list: CardNode[] = [];
  let changed = false;
  const { scene: last } = before;
  const onlyLooks =
    last?.game === scene.game &&
    last.layout === scene.layout &&
    last.selected === scene.selected &&
    last.lifted === scene.lifted;
  for (const id of orderOf(scene)) {
    const node = scene.game.nodes.get(id);
    const slot = scene.layout.slots.get(id);
    if (!node || !slot) continue;
    const old = before.byId.get(id);
    // A folded box shows how what lies in it stands.
    const isSame = onlyLooks && old && !slot.folded && scene.looks.get(id) === old.data.look;
    const card = isSame ? old : cardNode(scene, node, slot, old);
    if (before.list[list.length] !== card) changed = true;
    list.push(card);
    byId.set(id, card);
  }
  return changed || list.length !== before.list.length ? { list, byId, scene } : before;
}

/** How large the words may be set on what lies in trays and hangs on boxes. */
export function wordSizes({ list }: Cards): readonly number[] {
  return list.flatMap(({ parentId, data: { slot, grow } }) =>
    parentId === undefined ? [] : [slot.lines.length > 0 ? grow.name : grow.code],
  );
}

function orderOf({ layout, looks }: Scene): readonly NodeId[] {
  const first = new Map<NodeId, number>();
  const children = new Map<NodeId | undefined, NodeId[]>();
  for (const [id, slot] of layout.slots) {
    const siblings = children.get(slot.parent);
    if (siblings) siblings.push(id);
    else children.set(slot.parent, [id]);
    const number = looks.get(id)?.number ?? 0;
    if (number === 0) continue;
    for (let at: NodeId | undefined = id; at !== undefined; at = layout.slots.get(at)?.parent) {
      first.set(at, Math.min(first.get(at) ?? number, number));
    }
  }
  const rects = matRects(layout);
  const rank = (id: NodeId) => first.get(id) ?? Number.POSITIVE_INFINITY;
  const height = (id: NodeId) => rects.get(id)?.y ?? 0;
  const order: NodeId[] = [];
  const visit = (parent: NodeId | undefined) => {
    const siblings = [...(children.get(parent) ?? [])];
    if (parent === undefined) {
      siblings.sort((a, b) => (rank(a) === rank(b) ? height(a) - height(b) : rank(a) < rank(b) ? -1 : 1));
    } else siblings.sort((a, b) => height(a) - height(b));
    for (const id of siblings) {
      order.push(id);
      visit(id);
    }
  };
  visit(undefined);
  return order;
}

function cardNode(scene: Scene, node: GameNode, slot: Slot, old: CardNode | undefined): CardNode {
  const { look, steps } = shownLook(scene, node.id, slot);
  const hasp = slot.kind === 'container' && !slot.folded ? haspOf(scene.layout, node.id, slot) : undefined;
  const locks = slot.locks?.map((id) => {
    const lock = scene.game.nodes.get(id);
    return lock?.kind === 'fastener' ? lock.type : undefined;
  });
  const small = smallWords(scene.game, scene.layout, node.id, slot, old?.data.small);
  const pinned = isPinned(scene.game, node.id);
  const grow = old && old.data.slot === slot ? old.data.grow : growth(slot);
  const fresh: Card = { node, slot, look, hasp, pinned, grow, small, locks, steps };
  const data = old && same(old.data, fresh) ? old.data : fresh;
  const selected = scene.selected.has(node.id);
  const className = classOf(scene, node, look);
  const ariaLabel = spoken(scene.game, node, slot, look, steps);
  if (
    old &&
    old.data === data &&
    old.selected === selected &&
    old.className === className &&
    old.ariaLabel === ariaLabel &&
    old.position.x === slot.x &&
    old.position.y === slot.y
  ) {
    return old;
  }
  return {
    id: node.id,
    type: nodeTypeOf(node),
    data,
    position: { x: slot.x, y: slot.y },
    width: slot.width,
    height: slot.height,
    measured: { width: slot.width, height: slot.height },
    zIndex: zIndexOf(slot),
    selected,
    className,
    ariaLabel,
    domAttributes: ROLE,
    ...(slot.parent !== undefined && { parentId: slot.parent }),
  };
}

function shownLook({ game, looks }: Scene, id: NodeId, slot: Slot): Pick<Card, 'look' | 'steps'> {
  const own = looks.get(id) ?? NO_LOOK;
  if (slot.kind !== 'container' || !slot.folded) return { look: own, steps: undefined };
  return foldedLook(
    own,
    insideOf(game)(id).map((inside) => looks.get(inside)),
  );
}

function zIndexOf(slot: Slot): number {
  if (slot.kind === 'fastener') return LOCKS_Z;
  if (isHolder(slot)) return Math.min(1 + slot.depth, LINKS_Z - 1);
  return THINGS_Z;
}

function classOf(scene: Scene, node: GameNode, look: Look): string {
  const names = [];
  if (isInside(scene.layout, node.id)) names.push('flow-inside');
  if (isLeftOut(scene.game, node.id)) names.push('flow-out');
  if (look.pale) names.push('flow-pale');
  if (look.inChain) names.push('flow-chain');
  if (look.moment) names.push(`flow-at-${look.moment.state}`);
  if (look.culprit) names.push('flow-culprit');
  if (look.state === 'cannotOpen' || look.state === 'wrongCode') names.push('flow-blocked');
  if (scene.lifted === node.id) names.push('flow-lifted');
  return names.join(' ');
}

/** Hidden when the map is drawn small: what lies in a place but boxes, and all that lies in boxes. */
function isInside(layout: MapLayout, id: NodeId): boolean {
  const slot = layout.slots.get(id);
  if (!slot || slot.parent === undefined) return false;
  const parent = layout.slots.get(slot.parent);
  if (slot.kind === 'fastener') return isInside(layout, slot.parent);
  if (slot.kind === 'container' && parent?.kind === 'place') return false;
  return true;
}

/** From the middle of the first plate to the middle of the last, on the line of the wall. */
function haspOf(layout: MapLayout, id: NodeId, slot: Slot): Hasp | undefined {
  const plates: Slot[] = [];
  for (const row of layout.rows.get(id) ?? []) {
    const plate = layout.slots.get(row);
    if (plate?.kind === 'fastener') plates.push(plate);
  }
  const first = plates[0];
  const last = plates.at(-1);
  if (!first || !last || first === last) return undefined;
  return {
    x: slot.wall === 'right' ? slot.width - 1 : 1,
    top: first.y + first.height / 2,
    bottom: last.y + last.height / 2,
  };
}

function spoken(
  game: Game,
  node: GameNode,
  slot: Slot,
  look: Look,
  steps: readonly number[] | undefined,
): string {
  const parent = slot.parent === undefined ? undefined : game.nodes.get(slot.parent)?.name;
  return spokenName(node, {
    number: look.number,
    steps,
    code: saidCode(game, node.id),
    parent,
    holds: slot.holds && slot.holds.length > 0 ? holdsText(slot.holds) : undefined,
    state: look.state && LOCK_STATES[look.state],
    time: look.heat?.text ?? look.moment?.text,
    inChain: look.inChain,
    pinned: isPinned(game, node.id),
  });
}
