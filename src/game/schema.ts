/**
 * The document, as a file holds it: one JSON object that names its format and version.
 * Types are inferred from here and the published JSON Schema is made from here; what a shape cannot say
 * (ends that exist, rings of holders, legal links, order of estimates) is judged by the reader (read.ts).
 * Every object is loose: a field that this version does not know is kept and written back.
 */
import * as z from 'zod/mini';

export const FORMAT = 'latchmap';
export const VERSION = 1;

const id = z.string().check(z.minLength(1));
const text = z.exactOptional(z.string());
/** For fields that a kind cannot have: a place lies in nothing, only a fastener is on something. */
const absent = z.exactOptional(z.never());
const count = z.int().check(z.nonnegative());
const positive = z.int().check(z.positive());
/** Nearly two years: whatever is above is a slip, and sums of far larger ones would be no numbers any more. */
export const MAX_MINUTES = 1_000_000;
const minutes = z.number().check(z.nonnegative(), z.lte(MAX_MINUTES));

/** `pinned`: stays where it is when the map is tidied. It stands with the position, so that pinning leaves the nodes the same objects. */
const point = z.looseObject({ x: z.number(), y: z.number(), pinned: z.exactOptional(z.boolean()) });

const estimate = z.looseObject({ low: minutes, likely: minutes, high: minutes });

/** What a node of any kind may carry. */
const common = {
  id,
  name: z.string(),
  at: z.exactOptional(point),
  minutes: z.exactOptional(estimate),
  hands: z.exactOptional(positive),
  need: z.exactOptional(z.union([z.literal('all'), positive])),
  atMinute: z.exactOptional(minutes),
  /** Checked or handed over by the teacher: when the work is done, it waits for a free adult. */
  checked: z.exactOptional(z.boolean()),
  /** Minutes of work on it after which the teacher gives a hint. */
  hintAfter: z.exactOptional(minutes),
  leftOut: z.exactOptional(z.boolean()),
  decoy: z.exactOptional(z.boolean()),
  /** What it asks of a pupil (src/game/abilities.ts), and what one does who cannot. Words that this version does not know are kept. */
  asks: z.exactOptional(z.array(z.string())),
  otherWay: text,
  /** What about it can hurt someone (src/cautions/). Words that this version does not know are kept. */
  hazards: z.exactOptional(z.array(z.string())),
  text,
  note: text,
};

/** What a lock is like, where that is known: it may be any that carries the code otherwise. */
const hardware = z.looseObject({
  /** The symbols of each wheel, from the first, each wheel written as a code of that type is. */
  wheels: z.exactOptional(z.array(z.string().check(z.minLength(1))).check(z.minLength(1))),
  /** Numbers on a dial, from 0. */
  marks: z.exactOptional(positive),
  /** What one try takes, in seconds. */
  trySeconds: z.exactOptional(z.number().check(z.positive(), z.lte(3600))),
});

/** So many of it for all teams together; without it every team has its own. */
const shared = z.exactOptional(positive);

const held = { in: z.exactOptional(id), on: absent };
const free = { in: absent, on: absent };

export const fileNode = z.discriminatedUnion('kind', [
  z.looseObject({
    ...common,
    kind: z.literal('place'),
    ...free,
    shared,
    /** Pupils may come upon it though nothing has led them there. */
    byChance: z.exactOptional(z.boolean()),
  }),
  z.looseObject({ ...common, kind: z.literal('container'), ...held, shared }),
  z.looseObject({
    ...common,
    kind: z.literal('fastener'),
    in: absent,
    on: id,
    type: text,
    code: text,
    hardware: z.exactOptional(hardware),
    /** There for the joy of opening, and no bottleneck. */
    forFun: z.exactOptional(z.boolean()),
  }),
  z.looseObject({ ...common, kind: z.literal('key'), ...held }),
  z.looseObject({ ...common, kind: z.literal('clue'), ...held, answer: text }),
  z.looseObject({ ...common, kind: z.literal('tool'), ...held, shared }),
  z.looseObject({ ...common, kind: z.literal('puzzle'), ...free, answer: text }),
  z.looseObject({ ...common, kind: z.literal('prize'), ...held }),
]);

export const fileLink = z.looseObject({
  id,
  from: id,
  to: id,
  at: z.exactOptional(z.array(positive).check(z.minLength(1))),
});

const lesson = z.looseObject({
  ages: text,
  pupils: z.exactOptional(count),
  teams: z.exactOptional(count),
  minutes: z.exactOptional(minutes),
  hints: z.exactOptional(count),
  adults: z.exactOptional(count),
  /** Minutes until a hint that is given ends the step, and that a check by the teacher takes. */
  hintMinutes: z.exactOptional(minutes),
  checkMinutes: z.exactOptional(minutes),
  /** Beside the minutes of play, and in no measure. */
  talkBefore: z.exactOptional(minutes),
  talkAfter: z.exactOptional(minutes),
  clearUp: z.exactOptional(minutes),
});

const objective = z.looseObject({ id, text: z.string(), code: text });

/** All of the file but what tells it from others and what it holds. */
const head = {
  title: text,
  summary: text,
  lesson: z.exactOptional(lesson),
  objectives: z.exactOptional(z.array(objective)),
};

const provenance = {
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  id: z.exactOptional(id),
  revision: z.exactOptional(count),
  basedOn: z.exactOptional(id),
};

export const gameFile = z.looseObject({
  ...provenance,
  ...head,
  nodes: z.array(fileNode),
  links: z.array(fileLink),
});

/** The file with its nodes and links unread, so that each of them is judged by itself and named when it is wrong. */
export const fileFrame = z.looseObject({
  ...provenance,
  ...head,
  nodes: z.array(z.unknown()),
  links: z.array(z.unknown()),
});

export const gameHead = z.looseObject(head);

export type GameFile = z.infer<typeof gameFile>;
export type FileNode = z.infer<typeof fileNode>;
