/**
 * What a teacher owns and what the room is like, as a file holds it: one JSON object that names its format and version. It is kept
 * beside the games and used by all of them, never in a game's file. Every object is loose: a field that this version does not know is kept
 * and written back. What a shape cannot say (two things of one id) is judged by the reader (read.ts).
 */
import * as z from 'zod/mini';

export const KIT_FORMAT = 'latchmap-kit';
export const KIT_VERSION = 1;

/** More than any school has of one thing: whatever is above is a slip. */
export const MAX_COUNT = 1000;
/** In millimetres; more than any padlock has. */
export const MAX_MM = 1000;

const id = z.string().check(z.minLength(1));
const text = z.exactOptional(z.string());
const count = z.int().check(z.nonnegative(), z.lte(MAX_COUNT));
const positive = z.int().check(z.positive(), z.lte(MAX_COUNT));
const millimetres = z.exactOptional(z.number().check(z.positive(), z.lte(MAX_MM)));

/** What anything in the cupboard may carry. */
const common = {
  id,
  /** What it is found by: what is written or painted on it. */
  label: z.string(),
  /** How many there are that are alike in all that is said here. 0: there is none, and that is known. */
  count,
  /** So many are on the list to buy; they are not there yet. */
  toBuy: z.exactOptional(positive),
  note: text,
};

export const kitItem = z.discriminatedUnion('what', [
  z.looseObject({
    ...common,
    what: z.literal('lock'),
    /** As a fastener's `type` in a game; one that this version does not know is kept. */
    type: id,
    /** The symbols of each wheel, and the numbers on a dial, as in a game's `hardware`. Not said: it carries any code of its type. */
    wheels: z.exactOptional(z.array(z.string().check(z.minLength(1))).check(z.minLength(1))),
    marks: z.exactOptional(positive),
    /** How thick the shackle is. */
    shackleMm: millimetres,
    /** The room within the shackle. */
    clearanceMm: millimetres,
    /** Locks of one group are opened by one another's keys. */
    keyedAlike: z.exactOptional(id),
    /** How many keys belong to each lock. */
    keys: z.exactOptional(positive),
  }),
  z.looseObject({
    ...common,
    what: z.literal('box'),
    /** What keeps it shut: nothing but its lid, one lock, or a hasp that several locks hang on. Not said: anything. */
    takes: z.exactOptional(z.enum(['nothing', 'lock', 'hasp'])),
    /** How wide the hole is that the shackle goes through. */
    holeMm: millimetres,
    /** How thick that is which the shackle goes round. */
    roundMm: millimetres,
  }),
  z.looseObject({
    ...common,
    what: z.literal('hasp'),
    /** How many locks it takes. */
    holes: positive,
    holeMm: millimetres,
  }),
  z.looseObject({
    ...common,
    what: z.literal('tool'),
    /** Whether it needs any. */
    batteries: z.exactOptional(z.boolean()),
    /** As a node's `hazards` in a game. */
    hazards: z.exactOptional(z.array(z.string())),
  }),
]);

export const roomPlace = z.looseObject({
  id,
  name: z.string(),
  /** The part of the room, or the room, that it belongs to. */
  zone: text,
  /** Where it comes on a walk that sets the room up; the smallest first. */
  order: z.exactOptional(z.number().check(z.gte(-1_000_000), z.lte(1_000_000))),
  /** Nothing is ever hidden there. */
  offLimits: z.exactOptional(z.boolean()),
  note: text,
});

const provenance = { format: z.literal(KIT_FORMAT), version: z.literal(KIT_VERSION) };

export const kitFile = z.looseObject({
  ...provenance,
  items: z.array(kitItem),
  places: z.array(roomPlace),
});

/** The file with its items and places unread, so that each of them is judged by itself and named when it is wrong. */
export const kitFrame = z.looseObject({
  ...provenance,
  items: z.exactOptional(z.array(z.unknown())),
  places: z.exactOptional(z.array(z.unknown())),
});

export type KitFile = z.infer<typeof kitFile>;
