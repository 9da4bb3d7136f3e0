/**
 * A printed page as data: what is drawn, in points (1/72 inch) from the upper left corner of the paper, painted in order.
 * Preview, print, SVG and PNG are made from it and from nothing else. Marks say what they stand for, so that a page
 * can be checked without the code that laid it out.
 */
import type { LinkId, NodeId } from '../game/model.ts';
import type { SignName } from './signs.ts';

/** What a colour is for; colour.ts says which it is on a page in colour and on a grey one. */
export type Ink =
  | 'ink'
  /** Second text, lines of links. */
  | 'second'
  /** Hair lines; never text. */
  | 'hair'
  | 'paper'
  /** Locks only; text on metalSoft is ink. */
  | 'metal'
  | 'metalSoft'
  /** Inside of a box, and of a box in a box: each a little darker. */
  | 'shade'
  | 'deepShade'
  /** What stops the game: nothing else. */
  | 'stop'
  | 'stopSoft';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

interface About {
  /** The node that it stands for or belongs to. */
  readonly of?: NodeId;
}

export type TextRole =
  | 'title'
  /** Verdict, date, page of pages, legend, captions, headings of lists, table texts. */
  | 'plain'
  | 'name'
  | 'code'
  | 'minutes'
  /** 'any 2 of 3', 'red herring', 'continued'. */
  | 'note'
  /** A link that is told in words and not drawn, at the end that `of` names. */
  | 'reference'
  /** Number of a step, in its circle. */
  | 'step'
  | 'rescue';

export interface TextMark extends About {
  readonly mark: 'text';
  readonly role: TextRole;
  /** Never broken by who draws it. */
  readonly text: string;
  /** Where the text begins, or its middle, or its end, by `align`; y is the base line. */
  readonly x: number;
  readonly y: number;
  readonly align: 'start' | 'middle' | 'end';
  /** As src/type measures it, spacing included. */
  readonly width: number;
  readonly size: number;
  readonly weight: 'regular' | 'strong';
  readonly family: 'words' | 'codes';
  readonly italic?: boolean;
  /** Added after each user-perceived character. */
  readonly spacing?: number;
  readonly ink: Ink;
  /** For a reference: what is told here. */
  readonly links?: readonly LinkId[];
}

export type LineRole =
  /** 'This is needed for that.' */
  | 'link'
  /** Wall of a tray or bar, tape corner. */
  | 'wall'
  /** Bar that joins several locks of one box. */
  | 'hasp'
  /** Anything that rules or decorates. */
  | 'rule';

export interface LineMark extends About {
  readonly mark: 'line';
  readonly role: LineRole;
  readonly points: readonly Spot[];
  /** Thickness. */
  readonly width: number;
  readonly ink: Ink;
  readonly dash?: readonly number[];
  /** Radius of its corners. */
  readonly rounded?: number;
  /** An open arrowhead at the last point. */
  readonly arrow?: boolean;
  /** A light line under it, wider by this on each side, so that it passes over others. */
  readonly casing?: number;
  /** For a link: which, all that share this line. */
  readonly links?: readonly LinkId[];
}

export type AreaRole =
  | 'place'
  | 'container'
  | 'puzzle'
  /** What shares one caption: 'on the tables', 'in hand from the start', 'given by the teacher'. */
  | 'group'
  /** Plate of a lock. */
  | 'plate'
  /** Circle of a step's number. */
  | 'step'
  /** Empty circle of a step that is never reached. */
  | 'unreached'
  /** Box to be ticked. */
  | 'tick'
  | 'plain';

/** A filled or outlined shape: a polygon, its corners rounded. A circle is a square whose corners are rounded by half its side. */
export interface AreaMark extends About {
  readonly mark: 'area';
  readonly role: AreaRole;
  /** Of a place: a step opens it. */
  readonly hidden?: boolean;
  readonly corners: readonly Spot[];
  readonly rounded?: number;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  /** Thickness of the stroke, drawn half inside and half outside. */
  readonly width?: number;
  readonly dash?: readonly number[];
}

/** A line drawing in a square. */
export interface SignMark extends About {
  readonly mark: 'sign';
  readonly sign: SignName;
  /** Upper left corner of the square. */
  readonly x: number;
  readonly y: number;
  /** Side of the square. */
  readonly size: number;
  readonly ink: Ink;
}

export type Mark = TextMark | LineMark | AreaMark | SignMark;

export interface Drawing {
  /** Of the paper. */
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}
