/** Fixtures that one classroom has and another has not: a text that speaks of them may not fit the room. Common practice, no source. */
const FIXTURES: ReadonlySet<string> = new Set([
  'aquarium',
  'blackboard',
  'bookcase',
  'bookshelf',
  'carpet',
  'cloakroom',
  'cupboard',
  'curtain',
  'fireplace',
  'flipchart',
  'globe',
  'locker',
  'noticeboard',
  'peg',
  'piano',
  'pinboard',
  'printer',
  'projector',
  'radiator',
  'rug',
  'sill',
  'sink',
  'sofa',
  'trolley',
  'whiteboard',
  'windowsill',
]);

/** Fixtures among plain words (wording.ts) that the room is not said to have. */
export function missingFixtures(words: ReadonlySet<string>, room: ReadonlySet<string>): readonly string[] {
  return [...words].filter((word) => FIXTURES.has(word) && !room.has(word));
}
