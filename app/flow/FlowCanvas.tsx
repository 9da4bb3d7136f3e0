/** The map of the game: trays, things, plates and arrows, as they lie in the room. Fills what it is put in. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type NodeChange, ReactFlow, ReactFlowProvider, SelectionMode } from 'reactflow';
import 'reactflow/dist/base.css';
import type { NodeId } from '../../src/game/model.ts';
import type { MapLayout } from '../../src/map/layout.ts';
import { registerCanvas } from '../commands/canvas.ts';
import { useGame } from '../store/game.ts';
import { currentLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import type { CardNode } from './card.ts';
import { LINKS_Z } from './cards.ts';
import { Fields } from './Fields.tsx';
import './flow.css';
import { useDrag } from './drag/held.ts';
import { follow, onNodeDrag, onNodeDragStart, onNodeDragStop } from './drag/nodeDrag.ts';
import { Ghost } from './Ghost.tsx';
import { bounds, matRects } from './geometry.ts';
import { HeatSwitch } from './HeatSwitch.tsx';
import { NAMES_READABLE, useLevel } from './levels.ts';
import { arrowsOf, clearings } from './links/arrows.ts';
import { LinkDots, useHover } from './links/LinkDots.tsx';
import { LinkLayer } from './links/LinkLayer.tsx';
import { MovingLinks } from './links/MovingLinks.tsx';
import { linkNear } from './links/near.ts';
import { Overview } from './Overview.tsx';
import { PointedRing } from './PointedRing.tsx';
import { PointerNote, RowMark } from './PointerNote.tsx';
import { SizeWatch } from './SizeWatch.tsx';
import { nodeTypes } from './shapes/index.ts';
import { useCards, useShownNodes } from './useCards.ts';
import { useKeys } from './useKeys.ts';
import { usePress } from './usePress.ts';
import { useScene } from './useScene.ts';
import { useSettling } from './useSettling.ts';
import { bringIntoView, fitTo, MAX_ZOOM, MIN_ZOOM, notePointer, useMounted } from './viewport.ts';
import { ZoomControls } from './ZoomControls.tsx';

const NO_EDGES: [] = [];
const SEVERAL = ['Shift', 'Meta', 'Control'];
const NO_PROMOTION = { hideAttribution: true };
/** How near the pointer has to come to an arrow, in screen pixels. */
const LINK_REACH = 6;

export function FlowCanvas() {
  return (
    <ReactFlowProvider>
      <Canvas />
    </ReactFlowProvider>
  );
}

function Canvas() {
  const scene = useScene();
  const { game, layout, looks, routes } = scene;
  const cards = useCards(scene);
  const nodes = useShownNodes(cards);
  const moving = useDrag((state) => state.held?.moving);
  const selectedLinks = useView((state) => state.links);
  const readOnly = useGame((state) => state.readOnly);
  const [hovered, setHovered] = useState<string>();
  const [overview, setOverview] = useState(false);
  const element = useMounted((state) => state.element);

  const routesNow = useRef(routes);
  routesNow.current = routes;

  const keys = useKeys();
  const press = usePress();

  const arrows = useMemo(
    () =>
      arrowsOf({
        game,
        routes,
        looks,
        selectedNodes: scene.selected,
        selectedLinks,
        hovered,
        stopping: scene.stopping,
        without: moving,
      }),
    [game, routes, looks, scene.selected, selectedLinks, hovered, scene.stopping, moving],
  );
  const heating = useView((state) => state.heat) && scene.heatEnd !== undefined;
  const level = useLevel((state) => state.level);
  const text = useMemo(() => clearings(layout, cards, level), [layout, cards, level]);

  const fit = useCallback(() => {
    const all = wholeOf(currentLayout());
    if (all) fitTo(all, { duration: 140 });
  }, []);

  useEffect(
    () =>
      registerCanvas({
        fit,
        zoomIn: () => void useMounted.getState().instance?.zoomIn(),
        zoomOut: () => void useMounted.getState().instance?.zoomOut(),
      }),
    [fit],
  );

  useSettling(layout, moving !== undefined, element);
  useFirstView(layout, element);
  useShown();

  const linkAt = useCallback((event: { clientX: number; clientY: number }) => {
    const { instance } = useMounted.getState();
    if (!instance) return undefined;
    const spot = instance.screenToFlowPosition({ x: event.clientX, y: event.clientY });
    return linkNear(routesNow.current, spot, LINK_REACH / instance.getZoom());
  }, []);

  const onPaneClick = useCallback(
    (event: React.MouseEvent) => {
      const link = linkAt(event);
      const view = useView.getState();
      view.lift(undefined);
      view.select([], link === undefined ? [] : [link]);
    },
    [linkAt],
  );

  const onNodeClick = useCallback(
    (event: React.MouseEvent, node: CardNode) => {
      const view = useView.getState();
      if (view.lifted !== undefined && view.lifted !== node.id) view.lift(undefined);
      const { slot } = node.data;
      if (slot.kind !== 'place' && slot.kind !== 'container') return;
      const link = linkAt(event);
      if (link !== undefined) view.select([], [link]);
      else if (slot.folded) view.setOpened(node.id, true);
    },
    [linkAt],
  );

  const onNodeMouseEnter = useCallback((_event: React.MouseEvent, node: CardNode) => {
    useHover.setState({ node: node.id });
  }, []);

  const onPointerMove = useCallback(
    (event: React.PointerEvent) => {
      press.onPointerMove(event);
      notePointer({ x: event.clientX, y: event.clientY });
      if (event.buttons !== 0) return;
      const onThing = event.target instanceof Element && event.target.closest(SOLID) !== null;
      setHovered(onThing ? undefined : linkAt(event));
      if (event.target instanceof Element && event.target.classList.contains('react-flow__pane')) {
        useHover.setState({ node: undefined });
      }
    },
    [press, linkAt],
  );

  const mount = useCallback((wrapper: HTMLDivElement | null) => {
    useMounted.setState({ element: wrapper ?? undefined });
  }, []);

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys belong to the things in it, which are focused one by one
    <div
      ref={mount}
      className={`flow${hovered === undefined ? '' : ' flow-on-link'}${heating ? ' flow-heating' : ''}`}
      onKeyDown={keys.onKeyDown}
      onFocus={keys.onFocus}
      onPointerDown={press.onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={press.onPointerUp}
      onPointerLeave={onPointerLeave}
      onPointerCancel={press.onPointerUp}
    >
      <ReactFlow<CardNode>
        nodes={nodes}
        edges={NO_EDGES}
        nodeTypes={nodeTypes}
        onInit={onInit}
        onNodesChange={onNodesChange}
        onNodeDragStart={onNodeDragStart}
        onNodeDrag={onNodeDrag}
        onNodeDragStop={onNodeDragStop}
        onPaneClick={onPaneClick}
        onNodeClick={onNodeClick}
        onNodeMouseEnter={onNodeMouseEnter}
        zIndexMode="manual"
        elevateNodesOnSelect={false}
        elevateEdgesOnSelect={false}
        selectionMode={SelectionMode.Full}
        multiSelectionKeyCode={SEVERAL}
        deleteKeyCode={null}
        nodesConnectable={false}
        nodesDraggable={!readOnly}
        edgesFocusable={false}
        disableKeyboardA11y
        nodeDragThreshold={4}
        paneClickDistance={4}
        panOnScroll
        zoomOnDoubleClick={false}
        minZoom={MIN_ZOOM}
        maxZoom={MAX_ZOOM}
        proOptions={NO_PROMOTION}
      >
        <Fields fields={layout.fields} />
        <LinkLayer arrows={arrows} text={text} zIndex={LINKS_Z} casings />
        <MovingLinks game={game} layout={layout} />
        <LinkDots layout={layout} />
        <PointedRing layout={layout} />
        <RowMark />
        <SizeWatch element={element} />
        {overview && <Overview />}
        <ZoomControls onFit={fit} overview={overview} onOverview={setOverview} />
      </ReactFlow>
      <HeatSwitch end={scene.heatEnd} />
      <PointerNote />
      <Ghost />
    </div>
  );
}

/** Things that an arrow passes beneath, so that the pointer means them and not the arrow. */
const SOLID =
  '.react-flow__node-thing, .react-flow__node-puzzle, .react-flow__node-fastener, .flow-dot, .flow-zoom, .flow-heat';

/** Everything on the mat. */
function wholeOf(layout: MapLayout) {
  return bounds([...matRects(layout).values(), ...layout.fields]);
}

function onPointerLeave() {
  notePointer(undefined);
}

function onNodesChange(changes: readonly NodeChange<CardNode>[]) {
  follow(changes);
  selectBy(changes);
}

function onInit(instance: NonNullable<ReturnType<typeof useMounted.getState>['instance']>) {
  useMounted.setState({ instance });
}

/** What the canvas says of selection goes into the view, which alone knows it. */
function selectBy(changes: readonly NodeChange<CardNode>[]) {
  const view = useView.getState();
  let next: Set<NodeId> | undefined;
  for (const change of changes) {
    if (change.type !== 'select' || view.nodes.has(change.id) === change.selected) continue;
    next ??= new Set(view.nodes);
    if (change.selected) next.add(change.id);
    else next.delete(change.id);
  }
  if (next) view.select(next);
}

/** A game that is opened is shown whole, but no smaller than its names can be read; then from its upper left. */
function useFirstView(layout: MapLayout, element: HTMLElement | undefined) {
  const id = useGame((state) => state.provenance.id);
  const shown = useRef<string>(undefined);
  const instance = useMounted((state) => state.instance);
  useEffect(() => {
    if (!instance || !element || shown.current === id) return;
    shown.current = id;
    const all = wholeOf(layout);
    if (all) fitTo(all, { least: NAMES_READABLE });
    // An empty game is shown at full size; that view stays, so that the first thing lies where it is let go.
    else void instance.setViewport({ x: 0, y: 0, zoom: 1 });
  }, [instance, element, id, layout]);
}

/** Answers requests to bring the selection into view. */
function useShown() {
  const shown = useView((state) => state.shown);
  useEffect(() => {
    if (shown === 0) return;
    const { nodes, links } = useView.getState();
    const { game } = useGame.getState();
    const ends = [...links].flatMap((id) => {
      const link = game.links.get(id);
      return link ? [link.from, link.to] : [];
    });
    const rects = matRects(currentLayout());
    const wanted = bounds([...nodes, ...ends].flatMap((id) => rects.get(id) ?? []));
    if (wanted) bringIntoView(wanted);
  }, [shown]);
}
