/** What the commands are called, on buttons, in menus and in the list of keys. */

export const COMMANDS = {
  undo: 'Undo',
  redo: 'Redo',
  cut: 'Cut',
  copy: 'Copy',
  paste: 'Paste',
  duplicate: 'Duplicate',
  delete: 'Remove',
  selectAll: 'Select everything',
  putBack: 'Put it back',
  leaveOut: 'Not today',
  useAgain: 'Use it today',
  pin: 'Pin it here',
  unpin: 'Unpin',
  tidy: 'Tidy up',
  tidySelection: 'Tidy up the selection',
  stopTidying: 'Stop tidying',
  heat: 'Where the time goes',
  play: 'Play it through',
  closePlay: 'Close the play-through',
  fit: 'The whole map in view',
  zoomIn: 'Larger',
  zoomOut: 'Smaller',
  save: 'Save to a file',
  open: 'Open a file',
  fresh: 'New game',
  escape: 'Select nothing; put back what is lifted',
  keys: 'Shortcuts',
} as const;

/** What is said of tidying, in the head. */
export const TIDYING = {
  already: 'Everything already stands where it would be put.',
  asked: (things: number) => `Working out where ${things.toLocaleString('en')} things go.`,
  opening: (things: number) =>
    `The game came without an arrangement. Working out where its ${things.toLocaleString('en')} things go.`,
};

export const KEYS = {
  title: 'Commands and keys',
  hint: 'Press a command, or its keys. Keys do nothing while you type in a field.',
  close: 'Close',
  /** Further keys that the map answers by itself. */
  onMap: [
    { keys: 'Tab', what: 'From thing to thing on the map' },
    { keys: 'Enter', what: 'Select a thing and open its form; once more, type its name' },
    { keys: 'Shift + Enter', what: 'Select one more, or one less' },
    { keys: 'Arrow keys', what: 'Move what is selected; with Shift farther' },
  ],
  or: 'or',
};

const KEY_WORDS = new Map([
  ['Mod', 'Ctrl'],
  ['ArrowUp', 'Up'],
  ['ArrowDown', 'Down'],
  ['Escape', 'Esc'],
]);

/** 'Mod+Shift+Z' as 'Ctrl + Shift + Z', on a Mac with its own names. */
export function keyName(shortcut: string, mac: boolean): string {
  return shortcut
    .split('+')
    .map((key) => {
      if (mac && key === 'Mod') return 'Cmd';
      if (mac && key === 'Alt') return 'Option';
      return KEY_WORDS.get(key) ?? key;
    })
    .join(' + ');
}
