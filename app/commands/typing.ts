const FIELDS = 'input, textarea, select, [contenteditable="true"]';

/** Whether keys and pasted text belong to the field that has the focus. A box to tick takes no text. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return false;
  const field = target.closest(FIELDS);
  return field !== null && !(field instanceof HTMLInputElement && ['checkbox', 'radio'].includes(field.type));
}
