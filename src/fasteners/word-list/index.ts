export { offers, type Wanted } from './offers.ts';
export { type KnownLetters, spellable, spellableGraded, type Wheels } from './spellable.ts';
export { GRADES, type Grade, type GradedWord, gradeOf, type WordList } from './word-list.ts';
