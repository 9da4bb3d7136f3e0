/** Keys to commands. While typing in a field only those that say so, and never past an open dialog or menu. */
import { COMMAND_LIST, situation } from './registry.ts';
import { isTyping } from './typing.ts';

const IN_FRONT = 'dialog[open], [role="menu"], [role="dialog"], [role="listbox"]';

export const isMac = () => /mac|iphone|ipad/i.test(navigator.platform);

/** Whether the keys pressed are those of a shortcut such as 'Mod+Shift+Z'. With Alt the place of the key counts, for there the layout types another sign. */
export function isPressed(shortcut: string, event: KeyboardEvent, mac: boolean): boolean {
  const parts = shortcut.split('+');
  const key = parts.at(-1) ?? '';
  const wants = (part: string) => parts.slice(0, -1).includes(part);
  const mod = mac ? event.metaKey : event.ctrlKey;
  const other = mac ? event.ctrlKey : event.metaKey;
  if (other || mod !== wants('Mod') || event.altKey !== wants('Alt')) return false;
  // A sign such as ? is typed with Shift on some keyboards and without on others.
  const sign = key.length === 1 && !/[A-Z]/.test(key);
  if (!sign && event.shiftKey !== wants('Shift')) return false;
  if (wants('Alt') && /^[A-Z]$/.test(key)) return event.code === `Key${key}`;
  return event.key === key || event.key.toUpperCase() === key;
}

/** Listens on the whole page. Returns what undoes it. */
export function listenToKeys(): () => void {
  const mac = isMac();
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.defaultPrevented) return;
    const typing = isTyping(event.target);
    if (event.target instanceof Element && event.target.closest(IN_FRONT)) return;
    if (document.querySelector('dialog[open]')) return;
    const now = situation();
    const command = COMMAND_LIST.find(
      (each) =>
        !each.byEvent && (!typing || each.whileTyping) && each.keys.some((key) => isPressed(key, event, mac)),
    );
    if (!command) return;
    // Even when it does not apply now: Mod+S must not open the browser's own dialog.
    if (command.when(now)) command.run();
    else if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
  };
  window.addEventListener('keydown', onKeyDown);
  return () => window.removeEventListener('keydown', onKeyDown);
}
