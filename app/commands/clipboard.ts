/**
 * Copy, cut and paste: through the system's clipboard as text where the browser allows it, and through memory always,
 * so that copying works within the page even where it does not.
 */
import { copyOf, type Fragment, pasteEdits } from '../../src/game/edits/copies.ts';
import { isHolder, type NodeId } from '../../src/game/model.ts';
import { inView, lastPointer } from '../flow/viewport.ts';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { useView } from '../store/view.ts';
import { fragmentText, readFragment } from './fragment-text.ts';
import { removeSelection } from './selection.ts';
import { isTyping } from './typing.ts';

let remembered: { readonly fragment: Fragment; readonly text: string } | undefined;

function remember(): string | undefined {
  const { game } = useGame.getState();
  const fragment = copyOf(game, useView.getState().nodes);
  if (fragment.nodes.length === 0) return undefined;
  remembered = { fragment, text: fragmentText(game, fragment) };
  return remembered.text;
}

export function copySelection(): void {
  const text = remember();
  if (text !== undefined) navigator.clipboard?.writeText(text).catch(onlyInMemory);
}

export function cutSelection(): void {
  copySelection();
  removeSelection();
}

export function pasteHere(): void {
  const read = navigator.clipboard?.readText() ?? Promise.reject(new Error('no clipboard'));
  read.then(paste, () => paste(''));
}

/** Where the browser keeps the clipboard to itself, what was copied is still in memory. */
function onlyInMemory(): void {
  return;
}

/** Into the selected holder, else beside what is in view; what lies in memory when the text holds nothing that can be pasted. */
export function paste(text: string): boolean {
  const fragment =
    text === remembered?.text ? remembered.fragment : (readFragment(text) ?? remembered?.fragment);
  if (!fragment) return false;
  const { game, apply } = useGame.getState();
  const view = useView.getState();
  const copies = pasteEdits(game, fragment, selectedHolder(), spot(), freshId);
  if (!copies.ok) {
    useGame.getState().refuse(copies.refusal);
    return false;
  }
  if (!apply(copies.edits)) return false;
  view.select(copies.ids);
  return true;
}

/** Where the pointer is over the map, else a little inside of what is in view. */
function spot(): { readonly x: number; readonly y: number } {
  const { x, y, width, height } = inView();
  return lastPointer() ?? { x: Math.round(x + width / 3), y: Math.round(y + height / 3) };
}

function selectedHolder(): NodeId | null {
  const { game } = useGame.getState();
  const { nodes } = useView.getState();
  const [id] = nodes;
  const node = id === undefined || nodes.size > 1 ? undefined : game.nodes.get(id);
  return node && isHolder(node) ? node.id : null;
}

/** Answers the browser's own copy, cut and paste, which need no permission. Returns what undoes it. */
export function listenToClipboard(): () => void {
  const onCopy = (event: ClipboardEvent) => {
    if (isTyping(event.target) || hasTextSelected()) return;
    const text = remember();
    if (text === undefined) return;
    event.clipboardData?.setData('text/plain', text);
    event.preventDefault();
    if (event.type === 'cut') removeSelection();
  };
  const onPaste = (event: ClipboardEvent) => {
    if (isTyping(event.target)) return;
    if (paste(event.clipboardData?.getData('text/plain') ?? '')) event.preventDefault();
  };
  document.addEventListener('copy', onCopy);
  document.addEventListener('cut', onCopy);
  document.addEventListener('paste', onPaste);
  return () => {
    document.removeEventListener('copy', onCopy);
    document.removeEventListener('cut', onCopy);
    document.removeEventListener('paste', onPaste);
  };
}

/** Words marked with the mouse, in the panel for instance, are copied as words. */
function hasTextSelected(): boolean {
  return document.getSelection()?.isCollapsed === false;
}
