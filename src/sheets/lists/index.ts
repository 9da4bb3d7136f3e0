/** The lists behind the map. Adding one means adding a file and a line here. */
import type { Drawing } from '../drawing.ts';
import type { SheetName } from '../sheet.ts';
import { cautionsPage } from './cautions-page.ts';
import { codesPage } from './codes-page.ts';
import { contentsPage } from './contents-page.ts';
import { hiddenPage } from './hidden-page.ts';
import { orderPage } from './order-page.ts';
import { type ListContent, type ListFrame, listPages } from './page.ts';

export type ListName = Exclude<SheetName, 'map'>;

const LISTS: Readonly<Record<ListName, (frame: ListFrame) => ListContent>> = {
  cautions: cautionsPage,
  codes: codesPage,
  contents: contentsPage,
  hidden: hiddenPage,
  order: orderPage,
};

/** The pages of one list, without their feet. */
export function listOf(name: ListName, frame: ListFrame): Drawing[] {
  return listPages(LISTS[name](frame), frame);
}
