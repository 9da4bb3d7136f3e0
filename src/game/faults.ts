/** Whether a node, a link or a head may stand in a document, by the schema's own shapes: what guards every edit. */
import * as z from 'zod/mini';
import { isJson, isObject } from './json.ts';
import type { GameHead, GameLink, GameNode } from './model.ts';
import { fileLink, fileNode, gameHead } from './schema.ts';

/** The value with its type, or the field that may not be as it is ('' when the whole is wrong). */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly field: string };

/** Fields of the file that are no part of the head. */
const NOT_HEAD = ['format', 'version', 'id', 'revision', 'basedOn', 'nodes', 'links'];

function wrong(field: string): { readonly ok: false; readonly field: string } {
  return { ok: false, field };
}

/** 0 ≤ low ≤ likely ≤ high; the schema sees to the 0. */
export function inOrder(estimate: {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}): boolean {
  return estimate.low <= estimate.likely && estimate.likely <= estimate.high;
}

function check<S extends z.ZodMiniType>(shape: S, value: unknown): Checked<z.output<S>> {
  if (!isObject(value)) return wrong('');
  const foreign = Object.entries(value).find(([key, item]) => key === '__proto__' || !isJson(item));
  if (foreign) return wrong(foreign[0]);
  const parsed = z.safeParse(shape, value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : wrong(String(parsed.error.issues[0]?.path[0] ?? ''));
}

/** A node as it stands in memory: without a position. */
export function checkNode(value: unknown): Checked<GameNode> {
  if (isObject(value) && Object.hasOwn(value, 'at')) return wrong('at');
  const checked = check(fileNode, value);
  if (checked.ok && checked.value.minutes && !inOrder(checked.value.minutes)) return wrong('minutes');
  return checked;
}

export function checkLink(value: unknown): Checked<GameLink> {
  return check(fileLink, value);
}

export function checkHead(value: unknown): Checked<GameHead> {
  const reserved = isObject(value) ? NOT_HEAD.find((key) => Object.hasOwn(value, key)) : undefined;
  return reserved === undefined ? check(gameHead, value) : wrong(reserved);
}
