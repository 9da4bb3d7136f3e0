/**
 * The same pages by a general layered graph layout: Eclipse Layout Kernel, algorithm 'layered' (elkjs; Schulze, Spönemann and von Hanxleden,
 * 'Drawing layered graphs with port constraints', J. Visual Languages and Computing 25(2), 2014), after Sugiyama, Tagawa and Toda 1981.
 * Trays are compound nodes, what lies in them and puzzles are nodes, every link is an edge, routed at right angles. The result is scaled
 * to fit the paper and measured by the checks of the printed page.
 */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { ElkExtendedEdge, ElkNode } from 'elkjs/lib/elk-api.js';
import { parentInUse } from '../../src/engine/left-out.ts';
import type { Assessment } from '../../src/findings/assess.ts';
import type { Game, GameNode, NodeId } from '../../src/game/model.ts';
import type { Drawing, Mark, Spot } from '../../src/sheets/drawing.ts';
import { paperOf } from '../../src/sheets/paper.ts';
import { type TextStyle, textWidth, wrap } from '../../src/type/text.ts';

/** Type size before scaling. */
const SIZE = 10;
const LINE = 13;
const STYLE: TextStyle = { size: SIZE, weight: 'regular', family: 'words' };
const WIDEST = 130;

type Direction = 'RIGHT' | 'DOWN';

function linesOf(node: GameNode): readonly string[] {
  const name = wrap(node.name, WIDEST, STYLE);
  if (node.kind === 'fastener') return [node.code ?? node.type ?? ''];
  return node.kind === 'puzzle' && node.answer !== undefined ? [...name, node.answer] : name;
}

const isCompound = ({ kind }: GameNode) => kind === 'place' || kind === 'container';

function graphOf({ game, network }: Assessment, direction: Direction): ElkNode {
  const used = network.ids.flatMap((id) => game.nodes.get(id) ?? []);
  const heldBy = (holder: NodeId | undefined) => used.filter(({ id }) => parentInUse(game, id) === holder);
  const elkOf = (node: GameNode): ElkNode => {
    const lines = linesOf(node);
    const width = Math.max(...lines.map((line) => textWidth(line, STYLE))) + 10;
    const height = lines.length * LINE + 6;
    if (!isCompound(node)) return { id: node.id, width, height };
    return {
      id: node.id,
      children: heldBy(node.id).map(elkOf),
      width,
      height: height + 8,
      layoutOptions: {
        'elk.padding': `[top=${height + 4},left=8,bottom=8,right=8]`,
        'elk.nodeSize.constraints': 'MINIMUM_SIZE',
        'elk.nodeSize.minimum': `(${width},${height + 8})`,
      },
    };
  };
  return {
    id: 'page',
    layoutOptions: {
      'elk.algorithm': 'layered',
      'elk.direction': direction,
      'elk.hierarchyHandling': 'INCLUDE_CHILDREN',
      'elk.edgeRouting': 'ORTHOGONAL',
      'elk.json.shapeCoords': 'ROOT',
      'elk.json.edgeCoords': 'ROOT',
      'elk.randomSeed': '1',
    },
    children: heldBy(undefined).map(elkOf),
    edges: [...game.links.values()]
      .filter(({ from, to }) => network.index.has(from) && network.index.has(to))
      .map(({ id, from, to }) => ({ id, sources: [from], targets: [to] })),
  };
}

/** In a process that is ended after so many seconds: some graphs take very long, and some options never return. Undefined then. */
function laidOut(graph: ElkNode, seconds: number): Promise<ElkNode | undefined> {
  const program = fileURLToPath(new URL('./layered-process.ts', import.meta.url));
  return new Promise((done) => {
    const child = spawn(process.execPath, ['--import', 'tsx', program], {
      stdio: ['pipe', 'pipe', 'ignore'],
      timeout: seconds * 1000,
      killSignal: 'SIGKILL',
    });
    let text = '';
    child.stdout.on('data', (part: Buffer) => {
      text += part.toString('utf8');
    });
    child.on('close', (code) => {
      const result: ElkNode | undefined = code === 0 ? JSON.parse(text) : undefined;
      done(result);
    });
    child.stdin.end(JSON.stringify(graph));
  });
}

function everyNode(node: ElkNode): ElkNode[] {
  return [node, ...(node.children ?? []).flatMap(everyNode)];
}

function everyEdge(node: ElkNode): ElkExtendedEdge[] {
  return everyNode(node).flatMap(({ edges = [] }) => edges);
}

function rectangle(x: number, y: number, width: number, height: number): Spot[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** Scaled into the margins of the paper, never enlarged above the largest type that a page has. */
function drawingOf(layout: ElkNode, game: Game, orientation: 'portrait' | 'landscape'): Drawing {
  const paper = paperOf('A4', orientation);
  const { margin } = paper;
  const scale = Math.min(
    (paper.width - 2 * margin) / (layout.width ?? 1),
    (paper.height - 2 * margin) / (layout.height ?? 1),
    11 / SIZE,
  );
  const at = ({ x, y }: Spot): Spot => ({ x: margin + x * scale, y: margin + y * scale });
  const marks: Mark[] = [];
  for (const { id, x = 0, y = 0, width = 0, height = 0 } of everyNode(layout)) {
    const node = game.nodes.get(id);
    if (!node) continue;
    const { x: left, y: top } = at({ x, y });
    if (node.kind === 'place' || node.kind === 'container' || node.kind === 'puzzle') {
      const corners = rectangle(left, top, width * scale, height * scale);
      marks.push({ mark: 'area', role: node.kind, of: id, corners, stroke: 'ink', width: 0.5 });
    }
    for (const [i, text] of linesOf(node).entries()) {
      marks.push({
        ...STYLE,
        mark: 'text',
        role: 'name',
        of: id,
        text,
        x: left + 5 * scale,
        y: top + (3 + i * LINE + 10) * scale,
        align: 'start',
        width: textWidth(text, STYLE) * scale,
        size: SIZE * scale,
        ink: 'ink',
      });
    }
  }
  for (const { id, sections = [] } of everyEdge(layout)) {
    for (const { startPoint, bendPoints = [], endPoint } of sections) {
      const points = [startPoint, ...bendPoints, endPoint].map(at);
      marks.push({ mark: 'line', role: 'link', links: [id], points, width: 0.75, ink: 'ink', arrow: true });
    }
  }
  return { width: paper.width, height: paper.height, marks };
}

export interface LayeredPage {
  readonly drawing: Drawing;
  readonly textSize: number;
}

/** The one with the largest text: left to right or top to bottom, on A4 upright or lying. Undefined when none was found in time. */
export async function layeredPage(assessment: Assessment, seconds = 60): Promise<LayeredPage | undefined> {
  let best: LayeredPage | undefined;
  for (const direction of ['RIGHT', 'DOWN'] as const) {
    const layout = await laidOut(graphOf(assessment, direction), seconds);
    if (!layout) continue;
    for (const orientation of ['portrait', 'landscape'] as const) {
      const drawing = drawingOf(layout, assessment.game, orientation);
      const sizes = drawing.marks.flatMap((mark) => (mark.mark === 'text' ? [mark.size] : []));
      const textSize = Math.min(...sizes);
      if (!best || textSize > best.textSize) best = { drawing, textSize };
    }
  }
  return best;
}
