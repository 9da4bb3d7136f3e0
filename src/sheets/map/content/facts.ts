/** What the rows and bars of the map look up while they are measured and drawn. */
import { giversOf } from '../../../engine/handed-over.ts';
import { parentInUse } from '../../../engine/left-out.ts';
import { rowOf } from '../../../engine/rows.ts';
import type { Assessment } from '../../../findings/assess.ts';
import { expectedMinutes, isForFun, isStep, lessonOf } from '../../../game/defaults.ts';
import type { GameNode, NodeId } from '../../../game/model.ts';
import { captionOf, isGivenOut } from '../../../map/caption.ts';
import { directionCodes } from '../../../map/code.ts';
import type { Caption } from '../../../map/layout.ts';
import { noteText } from '../../../words/canvas.ts';
import { shortRescue } from '../../../words/lift.ts';
import { minutes } from '../../../words/numbers.ts';
import { sayer } from '../../../words/say.ts';
import { plain, type Sentence } from '../../../words/sentence.ts';
import { NOTES } from '../../../words/sheet-map.ts';
import { ownCopies } from '../../copies.ts';
import { type LockEntry, lockEntries } from '../../locks.ts';
import type { LayoutOptions } from '../../sheet.ts';
import type { RescueNote } from '../content.ts';
import { inHandAfter } from './in-hand.ts';

export interface Facts {
  readonly assessment: Assessment;
  readonly options: LayoutOptions;
  readonly teams: number;
  readonly locks: ReadonlyMap<NodeId, LockEntry>;
  /** Codes and answers that are moves, normalised. */
  readonly directionCodes: ReadonlySet<string>;
  /** Number of links at each node. */
  readonly degree: ReadonlyMap<NodeId, number>;
  readonly node: (id: NodeId) => GameNode | undefined;
  /** As it is spoken of: its name, or what it is when it has none. */
  readonly name: (id: NodeId) => string;
  /** What it lies in, and the name of that. */
  readonly holder: (id: NodeId) => NodeId | undefined;
  readonly holderName: (id: NodeId) => string | undefined;
  /** In the order of play; 0 when it has none. */
  readonly number: (id: NodeId) => number;
  readonly isReached: (id: NodeId) => boolean;
  /** It lies in nothing and a puzzle leads to it. */
  readonly isHandedOver: (id: NodeId) => boolean;
  /** How pupils come by what lies in nothing. */
  readonly caption: (id: NodeId) => Caption | undefined;
  /** Of a place: something has to be done before it can be searched. */
  readonly isOpened: (id: NodeId) => boolean;
  /** Number of the last step before it is in hand; 0 from the start, and for what never is. */
  readonly inHandAfter: (id: NodeId) => number;
  /** Of what is no step: the numbers of the steps that it is needed for, over others that are none. */
  readonly usedFor: (id: NodeId) => readonly number[];
  /** It takes time, so it has a number when it is reached. */
  readonly isStep: (id: NodeId) => boolean;
  /** 'any 2 of 3', '4 min', 'at minute 10', 'red herring', as far as they hold and the options say them. */
  readonly minutes: (id: NodeId) => string | undefined;
  readonly remarks: (id: NodeId) => readonly string[];
  /** What a rescue line says. */
  readonly rescue: (note: RescueNote) => Sentence;
}

export function factsOf(assessment: Assessment, options: LayoutOptions): Facts {
  const { game, network, measures } = assessment;
  const say = sayer(game);
  const names = new Map<NodeId, string>();
  const degree = new Map<NodeId, number>();
  for (const { from, to } of game.links.values()) {
    if (!network.index.has(from) || !network.index.has(to)) continue;
    for (const end of [from, to]) degree.set(end, (degree.get(end) ?? 0) + 1);
  }
  const name = (id: NodeId) => {
    const known = names.get(id);
    if (known !== undefined) return known;
    const made = plain(say.name(id));
    names.set(id, made);
    return made;
  };
  const rescues = new Map<string, Sentence>();
  const index = (id: NodeId) => network.index.get(id) ?? -1;
  const isHandedOver = (id: NodeId) => giversOf(network, index(id)).length > 0;
  return {
    assessment,
    options,
    teams: lessonOf(game).teams,
    locks: new Map(lockEntries(assessment).map((entry) => [entry.lock, entry])),
    directionCodes: directionCodes(game),
    degree,
    node: (id) => game.nodes.get(id),
    name,
    holder: (id) => parentInUse(game, id),
    holderName: (id) => {
      const holder = parentInUse(game, id);
      return holder === undefined ? undefined : name(holder);
    },
    number: (id) => measures.number[index(id)] ?? 0,
    isReached: (id) => measures.reached[index(id)] === 1,
    isHandedOver,
    caption: (id) => {
      const node = game.nodes.get(id);
      return node && captionOf(node, isHandedOver(id));
    },
    isOpened: (id) => rowOf(network.needs, index(id)).length > 0,
    inHandAfter: (id) => inHandAfter(assessment, index(id)),
    usedFor: (id) => stepsFrom(assessment, index(id)),
    isStep: (id) => {
      const node = game.nodes.get(id);
      return node !== undefined && isStep(node);
    },
    minutes: (id) => {
      const node = game.nodes.get(id);
      const isPlayed = node && isStep(node) && measures.reached[index(id)] === 1;
      return options.times && isPlayed ? minutes(expectedMinutes(node)) : undefined;
    },
    rescue: ({ key, steps }) => {
      const known = rescues.get(key);
      if (known) return known;
      const made = shortRescue(assessment, steps, options.codes);
      rescues.set(key, made);
      return made;
    },
    remarks: (id) => {
      const node = game.nodes.get(id);
      if (!node) return [];
      const at = index(id);
      const said: string[] = [];
      const of = at < 0 ? 0 : rowOf(network.needs, at).length;
      const need = network.k[at] ?? of;
      if (need !== of) said.push(noteText({ note: 'need', need, of }));
      if (node.atMinute !== undefined && node.atMinute > 0) {
        const isOut = isGivenOut(node, parentInUse(game, id) !== undefined, isHandedOver(id));
        said.push(isOut ? NOTES.atMinute(node.atMinute) : NOTES.fromMinute(node.atMinute));
      }
      const copies = ownCopies(game, id);
      if (copies !== undefined) said.push(noteText({ note: 'shared', copies }));
      if (node.checked === true) said.push(noteText({ note: 'checked' }));
      if (isForFun(node)) said.push(noteText({ note: 'forFun' }));
      if (node.decoy === true) said.push(noteText({ note: 'redHerring' }));
      return said;
    },
  };
}

/** Numbers of the next steps on all ways from a node, lowest first. Each node is looked at once. */
function stepsFrom({ network, measures }: Assessment, from: number): number[] {
  const numbers = new Set<number>();
  const seen = new Set([from]);
  for (const node of seen) {
    for (const out of rowOf(network.outs, node)) {
      const number = measures.number[out] ?? 0;
      if (number > 0) numbers.add(number);
      else seen.add(out);
    }
  }
  return [...numbers].sort((a, b) => a - b);
}
