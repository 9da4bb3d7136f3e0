/** The map of the game: trays, things, plates and arrows, as they lie in the room. Fills what it is put in. */
import { useEffect, useMemo, useState } from 'react';
import { type NodeChange, ReactFlow, ReactFlowProvider, SelectionMode } from 'reactflow';
import 'reactflow/dist/base.css';
import { registerCanvas } from '../commands/canvas.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import type { CardNode } from './card.ts';
import { LINKS_Z, wordSizes } from './cards.ts';
import { Fields } from './Fields.tsx';
import './flow.css';
import { useDrag } from './drag/held.ts';
import { follow, onNodeDrag, onNodeDragStart, onNodeDragStop } from './drag/nodeDrag.ts';
import { Ghost } from './Ghost.tsx';
import { HeatSwitch } from './HeatSwitch.tsx';
import { foldedBelow, useLevel } from './levels.ts';
import { arrowsOf, clearings } from './links/arrows.ts';
import { LinkDots } from './links/LinkDots.tsx';
import { LinkLayer } from './links/LinkLayer.tsx';
import { MovingLinks } from './links/MovingLinks.tsx';
import { Overview } from './Overview.tsx';
import { PointedRing } from './PointedRing.tsx';
import { PointerNote, RowMark } from './PointerNote.tsx';
import {
  onNodeClick,
  onNodeDoubleClick,
  onPaneClick,
  onPointerLeave,
  selectBy,
  setDrawnRoutes,
  useHover,
} from './pointing.ts';
import { SizeWatch } from './SizeWatch.tsx';
import { nodeTypes } from './shapes/index.ts';
import { useCards, useShownNodes } from './useCards.ts';
import { fitAll, useFirstView, useShown } from './useInView.ts';
import { useKeepInView } from './useKeepInView.ts';
import { useKeys } from './useKeys.ts';
import { usePress } from './usePress.ts';
import { useScene } from './useScene.ts';
import { useSettling } from './useSettling.ts';
import { MAX_ZOOM, MIN_ZOOM, useMounted } from './viewport.ts';
import { ZoomControls } from './ZoomControls.tsx';

/** Of more things than these, only those in view are on the page: to put all there would hold it up for seconds. */
const ALL_ON_THE_PAGE = 1000;
const NO_EDGES: [] = [];
const SEVERAL = ['Shift', 'Meta', 'Control'];
const NO_PROMOTION = { hideAttribution: true };

/** @param children stand first along the lower edge */
export function FlowCanvas({ children }: { children?: React.ReactNode }) {
  return (
    <ReactFlowProvider>
      <Canvas foot={children} />
    </ReactFlowProvider>
  );
}

function Canvas({ foot }: { foot: React.ReactNode }) {
  const scene = useScene();
  const { game, layout, looks, routes } = scene;
  const cards = useCards(scene);
  const nodes = useShownNodes(cards);
  const moving = useDrag((state) => state.held?.moving);
  const selectedLinks = useView((state) => state.links);
  const readOnly = useGame((state) => state.readOnly);
  const hovered = useHover((state) => state.link);
  const [overview, setOverview] = useState(false);
  const element = useMounted((state) => state.element);

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
        chain: scene.chain?.next,
        without: moving,
      }),
    [game, routes, looks, scene.selected, selectedLinks, hovered, scene.stopping, scene.chain, moving],
  );
  const heating = useView((state) => state.heat) && scene.heat?.end !== undefined;
  const folded = useMemo(() => foldedBelow(wordSizes(cards)), [cards]);
  const level = useLevel((state) => state.level);
  const text = useMemo(() => clearings(layout, cards, level), [layout, cards, level]);

  useEffect(
    () =>
      registerCanvas({
        fit: fitAll,
        zoomIn: () => void useMounted.getState().instance?.zoomIn(),
        zoomOut: () => void useMounted.getState().instance?.zoomOut(),
      }),
    [],
  );

  useEffect(() => setDrawnRoutes(routes), [routes]);
  useSettling(layout, moving !== undefined, element);
  useFirstView(layout);
  useShown();
  useKeepInView(element, folded);

  return (
    <div
      ref={mount}
      className={`flow${hovered === undefined ? '' : ' flow-on-link'}${heating ? ' flow-heating' : ''}${scene.heat?.isOld ? ' flow-heat-old' : ''}`}
    >
      <ReactFlow<CardNode>
        nodes={nodes}
        edges={NO_EDGES}
        nodeTypes={nodeTypes}
        onInit={onInit}
        onKeyDown={keys.onKeyDown}
        onFocus={keys.onFocus}
        onPointerDown={press.onPointerDown}
        onPointerMove={press.onPointerMove}
        onPointerUp={press.onPointerUp}
        onPointerCancel={press.onPointerUp}
        onPointerLeave={onPointerLeave}
        onNodesChange={onNodesChange}
        onNodeDragStart={onNodeDragStart}
        onNodeDrag={onNodeDrag}
        onNodeDragStop={onNodeDragStop}
        onPaneClick={onPaneClick}
        onNodeClick={onNodeClick}
        onNodeDoubleClick={onNodeDoubleClick}
        onlyRenderVisibleElements={nodes.length > ALL_ON_THE_PAGE}
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
        <LinkLayer arrows={arrows} text={text} zIndex={LINKS_Z} casings margin={240} />
        <MovingLinks game={game} layout={layout} />
        <LinkDots layout={layout} />
        <PointedRing layout={layout} />
        <RowMark />
        <SizeWatch element={element} folded={folded} />
        {overview && <Overview />}
      </ReactFlow>
      <div className="flow-foot">
        {foot}
        <HeatSwitch shown={scene.heat} />
        <ZoomControls onFit={fitAll} overview={overview} onOverview={setOverview} />
      </div>
      <PointerNote />
      <Ghost />
    </div>
  );
}

function onNodesChange(changes: readonly NodeChange<CardNode>[]) {
  follow(changes);
  selectBy(changes);
}

function onInit(instance: NonNullable<ReturnType<typeof useMounted.getState>['instance']>) {
  useMounted.setState({ instance });
}

function mount(wrapper: HTMLDivElement | null) {
  useMounted.setState({ element: wrapper ?? undefined });
}
