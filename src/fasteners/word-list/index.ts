export { offers, type Wanted } from './offers.ts';
export { type KnownLetters, spellable, spellableGraded, type Wheels } from './spellable.ts';
export { hasWordLock } from './wanted.ts';
export { GRADES, type Grade, type GradedWord, gradeOf, type WordList } from './word-list.ts';
