/** The nodes that the canvas is given: the cards, and while something is dragged, those in the hand where the hand is. */
import { useMemo, useRef } from 'react';
import type { CardNode } from './card.ts';
import { type Cards, cardsOf, DRAGGED_Z, noCards, type Scene } from './cards.ts';
import { type Held, useDrag } from './drag/held.ts';
import { useLinking } from './links/linking.ts';

export function useCards(scene: Scene): Cards {
  const last = useRef(noCards);
  const { game, layout, looks, selected, lifted } = scene;
  return useMemo(() => {
    last.current = cardsOf({ game, layout, looks, selected, lifted }, last.current);
    return last.current;
  }, [game, layout, looks, selected, lifted]);
}

/** A tray that would take what is held, and what an arrow that is being drawn may lead to, carry a class of their own. */
export function useShownNodes(cards: Cards): CardNode[] {
  const held = useDrag((state) => state.held);
  const target = useDrag((state) => state.target);
  const linking = useLinking((state) => state.linking);
  const [from, legal, to] = [linking?.from, linking?.legal, linking?.to];
  const marked = useMemo(() => {
    if (target === undefined && !legal) return cards.list;
    return cards.list.map((card) => {
      if (card.id === target) return withClass(card, 'flow-target');
      if (!legal || card.id === from) return card;
      if (card.id === to) return withClass(card, 'flow-legal flow-target');
      return withClass(card, legal.has(card.id) ? 'flow-legal' : 'flow-illegal');
    });
  }, [cards, target, from, legal, to]);
  return useMemo(() => (held ? carried(marked, held) : [...marked]), [marked, held]);
}

function withClass(card: CardNode, name: string): CardNode {
  return { ...card, className: `${card.className ?? ''} ${name}` };
}

const raised = new WeakMap<CardNode, CardNode>();

/** Above everything else; the same object for as long as the card is, so that contents that are only carried along stay as they are. */
function raise(card: CardNode): CardNode {
  const known = raised.get(card);
  if (known) return known;
  const node = { ...card, zIndex: (card.zIndex ?? 0) + DRAGGED_Z };
  raised.set(card, node);
  return node;
}

function carried(cards: readonly CardNode[], { moving, positions }: Held): CardNode[] {
  return cards.map((card) => {
    if (!moving.has(card.id)) return card;
    const node = raise(card);
    const position = positions.get(card.id);
    return position ? { ...node, position, dragging: true } : node;
  });
}
