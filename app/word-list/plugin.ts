import type { Plugin } from 'vite';
import { gradedWords } from '../../src/fasteners/word-list/make.ts';
import { pack } from '../../src/fasteners/word-list/packed.ts';
import { publishedWords, ratings, wordListLicence } from '../command/word-list.ts';

const NAME = 'virtual:word-list';
/** By Rollup's convention no other plugin touches a name that begins so. */
const RESOLVED = `\0${NAME}`;

/** Makes the word list when the page is built, so that the page holds no word that is kept away; its licence goes with it. */
export const wordList: Plugin = {
  name: 'word-list',
  resolveId: (id) => (id === NAME ? RESOLVED : undefined),
  load(id) {
    if (id !== RESOLVED) return undefined;
    return `export default ${JSON.stringify(pack(gradedWords(publishedWords(), ratings())))};`;
  },
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'word-list-licence.txt', source: wordListLicence() });
  },
};
