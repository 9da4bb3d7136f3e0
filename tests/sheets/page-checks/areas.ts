/** Faults of trays, bars and what lies in them. */
import { grown, holds, meet } from './boxes.ts';
import type { Fault } from './fault.ts';
import { type Page, type PaintedArea, spotText } from './page.ts';
import { called, type Used } from './used.ts';

/** Whether the game says that the one node belongs into the tray. A group holds what lies in nothing. */
function belongsIn(used: Used, id: string | undefined, tray: PaintedArea): boolean {
  if (tray.mark.role === 'group') return id === undefined || used.isLoose(id);
  return id !== undefined && tray.mark.of !== undefined && used.chain(id).includes(tray.mark.of);
}

const labelOf = (used: Used, { mark }: PaintedArea) =>
  mark.role === 'group' ? 'a group' : called(used, mark.of);

/** Two trays or bars share paper, and neither lies in the other, in the game and on the page. */
function overlaps(page: Page, used: Used): Fault[] {
  const { trays } = page;
  return trays.flatMap((a, i) =>
    trays.slice(i + 1).flatMap((b): Fault[] => {
      if (!meet(a.box, b.box, 0.3) || (a.mark.of !== undefined && a.mark.of === b.mark.of)) return [];
      const nested =
        (holds(a.box, b.box, 0.6) && belongsIn(used, b.mark.of, a) && b.mark.role !== 'group') ||
        (holds(b.box, a.box, 0.6) && belongsIn(used, a.mark.of, b) && a.mark.role !== 'group');
      if (nested) return [];
      const what = `${labelOf(used, a)} and ${labelOf(used, b)} ${spotText(b.box)}`;
      return [{ kind: 'overlap', page: page.number, what }];
    }),
  );
}

/** Plates, boxes to tick and numbers on trays and bars that they do not belong to. */
function strangers(page: Page, used: Used): Fault[] {
  const small = [
    ...page.areas.filter(({ mark }) => mark.role === 'plate' || mark.role === 'tick' || mark.role === 'step'),
    ...page.signs,
  ];
  return small.flatMap(({ mark, box }) =>
    page.trays
      .filter((tray) => meet(tray.box, box, 0.5) && !belongsIn(used, mark.of, tray))
      .map(
        (tray): Fault => ({
          kind: 'overlap',
          page: page.number,
          what: `${mark.mark === 'sign' ? mark.sign : mark.role} of ${called(used, mark.of)} on ${labelOf(used, tray)} ${spotText(box)}`,
        }),
      ),
  );
}

/** A text is in a tray as a whole or not at all, and only in trays that it belongs to. A number may sit on a wall, a lock's text on its plate. */
function textsOverWalls(page: Page, used: Used): Fault[] {
  return page.texts.flatMap(({ mark, box }) => {
    if (mark.role === 'step') return [];
    const core = { ...box, top: box.top + 0.05 * mark.size, bottom: box.bottom - 0.05 * mark.size };
    const onPlate = page.areas.some(
      (area) =>
        area.mark.role === 'plate' &&
        area.mark.fill !== undefined &&
        area.mark.of === mark.of &&
        holds(area.box, core, 0.3),
    );
    return page.trays
      .filter((tray) => meet(tray.box, core, 0.2))
      .flatMap((tray): Fault[] => {
        const belongs = mark.role !== 'rescue' && belongsIn(used, mark.of, tray);
        if (belongs && (onPlate || holds(tray.box, core, 0.2))) return [];
        return [
          {
            kind: belongs ? 'text over a wall' : 'overlap',
            page: page.number,
            what: `'${mark.text}' (${mark.role} of ${called(used, mark.of)}) and ${labelOf(used, tray)} ${spotText(box)}`,
          },
        ];
      });
  });
}

/** What a node is told by stands in the node's own tray or bar, or in its holder's. */
function rowsOutside(page: Page, used: Used): Fault[] {
  return page.texts.flatMap(({ mark, box }): Fault[] => {
    const { of, role } = mark;
    if (of === undefined || role === 'rescue' || role === 'step' || !used.nodes.has(of)) return [];
    const owns = page.trays.some((tray) => tray.mark.of === of);
    const owner = owns ? of : used.chain(of)[1];
    if (owner === undefined && used.nodes.get(of)?.kind !== 'puzzle') return [];
    const within = page.trays.some(
      (tray) => tray.mark.of === owner && holds(grown(tray.box, 0.2), box, 0.05 * mark.size),
    );
    const onPlate = page.areas.some(
      (area) => area.mark.role === 'plate' && area.mark.of === of && holds(area.box, box, 0.1 * mark.size),
    );
    if (within || onPlate) return [];
    const what = `'${mark.text}' of ${called(used, of)} is not in ${called(used, owner)} ${spotText(box)}`;
    return [{ kind: 'row outside its tray', page: page.number, what }];
  });
}

export function areaFaults(page: Page, used: Used): Fault[] {
  return [
    ...overlaps(page, used),
    ...strangers(page, used),
    ...textsOverWalls(page, used),
    ...rowsOutside(page, used),
  ];
}
