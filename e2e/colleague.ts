/** A colleague's game and one's own cupboard and room, invented here. */

/** Two hiding places, a tin with a word lock whose word is read from a list, a chest with a key lock; names quoted in texts. */
export const COLLEAGUES_GAME = {
  format: 'latchmap',
  version: 1,
  id: 'colleague1',
  revision: 7,
  title: 'The lost stamp',
  lesson: { pupils: 24, teams: 4 },
  nodes: [
    { id: 'shelf', kind: 'place', name: 'Book shelf', at: { x: 0, y: 0 } },
    {
      id: 'sill',
      kind: 'place',
      name: 'Window sill',
      note: 'Under the blue cushion.',
      at: { x: 0, y: 260 },
    },
    {
      id: 'letter',
      kind: 'clue',
      name: 'Letter',
      in: 'shelf',
      text: 'The list lies on the window sill. What you find there opens the green tin.',
    },
    { id: 'list', kind: 'clue', name: 'Bird list', in: 'sill', text: 'Wren\nIbis\nNuthatch' },
    {
      id: 'birds',
      kind: 'puzzle',
      name: 'First birds',
      answer: 'WIN',
      text: 'Read the birds from top to bottom, and of each only where it begins.',
      at: { x: 360, y: 120 },
    },
    { id: 'tin', kind: 'container', name: 'Green tin', at: { x: 700, y: 0 } },
    { id: 'word', kind: 'fastener', name: 'Green tin lock', on: 'tin', type: 'word', code: 'WIN' },
    {
      id: 'tag',
      kind: 'key',
      name: 'Red tag',
      in: 'tin',
      note: 'Hang it up in the green tin, and do not forget it on the window sill.',
    },
    { id: 'chest', kind: 'container', name: 'Chest', at: { x: 700, y: 260 } },
    { id: 'padlock', kind: 'fastener', name: 'Red tag', on: 'chest', type: 'key' },
    { id: 'stamp', kind: 'prize', name: 'Stamp', in: 'chest' },
  ],
  links: [
    { id: 'l1', from: 'letter', to: 'sill' },
    { id: 'l2', from: 'list', to: 'birds' },
    { id: 'l3', from: 'birds', to: 'word' },
    { id: 'l4', from: 'tag', to: 'padlock' },
  ],
};

/** No word lock; a tin of another colour; a room without a window sill, and one place that is off limits. */
export const MY_CUPBOARD = {
  format: 'latchmap-kit',
  version: 1,
  items: [
    {
      id: 'number',
      what: 'lock',
      type: 'number',
      label: 'black',
      wheels: ['0123456789', '0123456789', '0123456789'],
      count: 4,
    },
    { id: 'key', what: 'lock', type: 'key', label: 'red', count: 4 },
    { id: 'tins', what: 'box', label: 'Blue tin', takes: 'lock', count: 4 },
    { id: 'chests', what: 'box', label: 'Chest', takes: 'lock', count: 4 },
  ],
  places: [
    { id: 'a', name: 'Book shelf', order: 1 },
    { id: 'b', name: "Teacher's desk", order: 2, offLimits: true },
    { id: 'c', name: 'Reading bench', order: 3 },
  ],
};
