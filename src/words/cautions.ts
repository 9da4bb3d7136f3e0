/**
 * Usual cautions, common practice, no published source; a school's own rules come before them. Those about one kind of
 * thing are said only where the words of the game suggest that it is there.
 */
import type { Game } from '../game/model.ts';

const OWN_RULES = 'The school’s own rules and local codes come first.';

const HIDING =
  'Nobody has to climb, reach high or move anything heavy to find a thing. Nothing lies behind a locked or blocked door. Exits, and the ways to them, stay free.';

const PACKING =
  'Count keys and small parts out and in again. Keep the spare keys and these pages on you, so that every box can be opened at any time.';

const BY_WORD: readonly (readonly [RegExp, string])[] = [
  [
    /\bmagnet/iu,
    'Small magnets are dangerous when swallowed: only large or built-in ones, counted afterwards.',
  ],
  [
    /\b(?:batter(?:y|ies)|button cells?|coin cells?|torch(?:es)?|flashlights?|led lights?)\b/iu,
    'Button cells are dangerous when swallowed: only in things whose lid is screwed down.',
  ],
  [
    /\b(?:uv|ultra-?violet|black ?light)\b/iu,
    'A UV lamp is not looked into and not pointed at faces; a teacher holds or watches it.',
  ],
];

export function hidingCautions(): string {
  return `${HIDING} ${OWN_RULES}`;
}

/** With those that the names, texts and notes of what is used today suggest. */
export function packingCautions(game: Game): string {
  const texts: string[] = [];
  for (const node of game.nodes.values()) {
    if (node.leftOut !== true) texts.push(node.name, node.text ?? '', node.note ?? '');
  }
  const named = BY_WORD.filter(([word]) => texts.some((text) => word.test(text))).map(
    ([, caution]) => caution,
  );
  return [PACKING, ...named, OWN_RULES].join(' ');
}
