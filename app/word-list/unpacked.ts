import packed from 'virtual:word-list';
import { unpack } from '../../src/fasteners/word-list/packed.ts';

export const WORD_LIST = unpack(packed);
