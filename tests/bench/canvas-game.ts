/** A map of 300 nodes in 25 trays with 350 arrows, one of the trays a full box: 12 things, 3 locks, 20 arrows. Seeded. */
import { FORMAT, VERSION } from '../../src/game/schema.ts';
import type { NodeDraft } from '../game-of.ts';
import { seededRandom } from '../random-game.ts';

const TRAYS = 25;
const COLUMNS = 7;
const COLUMN = 620;
const ROW = 620;
const PUZZLES = 30;
const NODES = 300;
const LINKS = 350;

/** In the middle of the map: the box that is dragged as a whole. */
const FULL_BOX = 'tray-12';
export const FULL_BOX_NAME = 'Full box';
/** A thing in another tray, with links of its own. */
export const ONE_THING_NAME = 'Paper 3-2';

/** As a file. */
export function canvasGame(seed = 1): string {
  const random = seededRandom(seed);
  const draw = (below: number) => Math.floor(random() * below);
  const nodes: NodeDraft[] = [];
  const papers: string[] = [];
  const locks: string[] = [];
  const at = (index: number, shift: number) => ({
    x: (index % COLUMNS) * COLUMN + shift,
    y: Math.floor(index / COLUMNS) * ROW,
  });
  for (let tray = 0; tray < TRAYS; tray++) {
    const id = `tray-${tray}`;
    const full = id === FULL_BOX;
    const kind = tray % 2 === 0 ? 'container' : 'place';
    nodes.push({ id, kind, name: full ? FULL_BOX_NAME : `Tray ${tray}`, at: at(tray, 0) });
    const plates = full ? 3 : kind === 'container' ? 1 : 0;
    for (let lock = 0; lock < plates; lock++) {
      locks.push(`lock-${tray}-${lock}`);
      nodes.push({
        id: `lock-${tray}-${lock}`,
        kind: 'fastener',
        on: id,
        type: 'number',
        code: String(100 + tray),
      });
    }
    const things = full ? 12 : 8;
    for (let thing = 0; thing < things; thing++) {
      papers.push(`paper-${tray}-${thing}`);
      nodes.push({ id: `paper-${tray}-${thing}`, kind: 'clue', name: `Paper ${tray}-${thing}`, in: id });
    }
  }
  const puzzles = Array.from({ length: PUZZLES }, (_, index) => `puzzle-${index}`);
  puzzles.forEach((id, index) => {
    nodes.push({ id, kind: 'puzzle', name: `Puzzle ${index}`, answer: '472', at: at(index, 330) });
  });
  for (let extra = 0; nodes.length < NODES - 1; extra++) {
    papers.push(`extra-${extra}`);
    nodes.push({
      id: `extra-${extra}`,
      kind: 'clue',
      name: `Extra ${extra}`,
      in: `tray-${(extra * 2 + 1) % TRAYS}`,
    });
  }
  nodes.push({ id: 'prize', kind: 'prize', name: 'Prize', in: 'tray-24' });

  const links = new Set<string>();
  const touches = (link: string) => link.includes('-12-');
  const inFull = [...papers, ...locks].filter((id) => id.includes('-12-'));
  for (let i = 0; links.size < 20; i++) {
    const end = inFull[i % inFull.length] ?? '';
    const puzzle = puzzles[draw(PUZZLES)] ?? '';
    links.add(end.startsWith('lock') ? `${puzzle}>${end}` : `${end}>${puzzle}`);
  }
  links.add('paper-3-2>puzzle-4');
  while (links.size < LINKS) {
    const toLock = draw(5) === 0;
    const puzzle = puzzles[draw(PUZZLES)] ?? '';
    const link = toLock
      ? `${puzzle}>${locks[draw(locks.length)]}`
      : `${papers[draw(papers.length)]}>${puzzle}`;
    if (!touches(link)) links.add(link);
  }
  return JSON.stringify({
    format: FORMAT,
    version: VERSION,
    id: 'benchcanvas',
    title: 'Canvas',
    nodes: nodes.map((node) => ({ ...node, name: node['name'] ?? node.id })),
    links: [...links].map((text) => ({ id: text, from: text.split('>')[0], to: text.split('>')[1] })),
  });
}
