/** The sizes of the map's shapes, in pixels at 100 %, for layout and drawing alike. */
import type { TextStyle } from '../type/text.ts';

/** Names of places, containers and puzzles. */
export const NAME: TextStyle = { size: 13.5, weight: 'strong', family: 'words' };
/** Names of things, and of locks on their plates. */
export const THING: TextStyle = { size: 13.5, weight: 'regular', family: 'words' };
/** Lines under a name. */
export const NOTE: TextStyle = { size: 12.5, weight: 'regular', family: 'words' };
/** Codes on plates and answers of puzzles. */
export const CODE: TextStyle & { readonly spacing: number } = {
  size: 14,
  weight: 'strong',
  family: 'codes',
  spacing: 2,
};
/** A direction: a drawn arrow and its letter. */
export const ARROW_WIDTH = 20;
/** The word 'gives' before a puzzle's answer, and the space after it. */
export const GIVES_WIDTH = 36;

/** Height of every line of text. */
export const LINE = 16;
/** A step number and the space after it; the circle itself is 20 wide. */
export const STEP_ROOM = 27;
/** A sign and the space after it; the sign itself is 14 wide. */
export const SIGN_ROOM = 22;

/** Between a tray's wall and the rows in it, left, right and below. */
export const TRAY_PAD = 18;
/** Between a tray's upper edge and its name. */
export const TRAY_TOP = 12;
/** Between what follows one another in a tray. */
export const ROW_GAP = 8;
/** Between a tray's wall and the box in it, on the side without locks. */
export const BOX_PAD = 12;
/** How far a plate stands outside the wall. */
export const OVERHANG = 44;
/** Between an overhanging plate and the wall of the tray around its box. */
export const OVERHANG_CLEAR = 10;

export const PLATE_HEIGHT = 32;
export const PLATE_MIN_WIDTH = 136;
/** Between plates of one wall; the bar of the hasp joins them. */
export const PLATE_GAP = 12;
/** Between a plate's edge and its step number, and after its text. */
export const PLATE_PAD = 6;
/** Kept free beside each plate for its state ('cannot open'), with the space before it. */
export const STATE_ROOM = 92;

export const THING_HEIGHT = 28;
export const PUZZLE_WIDTH = 198;
export const PUZZLE_MIN_HEIGHT = 40;
/** Between links that enter or leave a puzzle on one side. */
export const PORT_GAP = 10;

/** Things, containers and places as wide as this, by what they stand in. */
export const FREE_THING_WIDTH = 208;
export const PLACE_WIDTH = 224;
export const FREE_CONTAINER_WIDTH = 248;
export const INNER_CONTAINER_WIDTH = 220;

/** A caption above what stands alone on the mat, and above the first in a field. */
export const CAPTION_HEIGHT = 24;
/** Around what stands in a field; its caption's height comes on top. */
export const FIELD_PAD = 16;
/** Between what stands one below the other once it has given way. */
export const ROOM_GAP = 24;
/** What stands no farther apart than this, one below the other, shares a field: it holds together when one of them shrinks by a row or two. */
export const FIELD_GAP = 72;
