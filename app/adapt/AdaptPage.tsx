/** A colleague's game against my kit and my room, as one list to go down. It takes the whole page, as the print preview does. */
import { useEffect, useId, useMemo, useRef } from 'react';
import { type Assessment, assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import { type Line, type LineKey, type Plan, planOf } from '../../src/kit/adapt/plan.ts';
import { ADAPT, haveSentence, progressSentence } from '../../src/words/adapt.ts';
import { titleOf } from '../../src/words/keep.ts';
import { isMac, isPressed } from '../commands/keyboard.ts';
import { useFitting } from '../kit/fitting.ts';
import { startKit } from '../kit/keeping.ts';
import { useKit } from '../kit/kit-state.ts';
import { openKit } from '../kit/open.ts';
import { inOrderOfPlay } from '../kit/order.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { Sign } from '../shell/signs.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { beginAdapting, followHistory, useAdapting } from './adapting.ts';
import { closeAdapt } from './open.ts';
import { RenameLine } from './RenameLine.tsx';
import { RereadLine } from './RereadLine.tsx';
import { ShortLines } from './ShortLines.tsx';
import { SpareLine } from './SpareLine.tsx';
import { useSpares } from './spares.ts';
import '../shell/full-page.css';
import './adapt.css';

function onKeys(event: React.KeyboardEvent): void {
  // In a field of text the browser takes back what was typed there.
  if (event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement) return;
  const { undo, redo } = useGame.getState();
  const pressed = (keys: string) => isPressed(keys, event.nativeEvent, isMac());
  if (pressed('Mod+Z')) undo();
  else if (pressed('Mod+Shift+Z') || pressed('Mod+Y')) redo();
  else return;
  event.preventDefault();
}

function UndoButtons() {
  const { past, future } = useGame((state) => state.history);
  const { undo, redo } = useGame.getState();
  return (
    <>
      <button type="button" className="button" disabled={past.length === 0} onClick={undo}>
        <Sign name="undo" />
        {ADAPT.undo}
      </button>
      <button type="button" className="button" disabled={future.length === 0} onClick={redo}>
        <Sign name="redo" />
        {ADAPT.redo}
      </button>
    </>
  );
}

export default function AdaptPage() {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useGame((state) => state.game.head.title);
  const open = useGame((state) => state.provenance.id);
  const { original, id: about, busy } = useAdapting();
  const ready = useKit((state) => state.ready);

  useEffect(() => {
    void startKit();
    const element = dialog.current;
    if (!element?.open) element?.showModal();
    return () => element?.close();
  }, []);
  useEffect(() => {
    if (open !== about && !busy) void beginAdapting();
  }, [open, about, busy]);

  return (
    <dialog
      ref={dialog}
      className="full-page adapt"
      aria-labelledby={id}
      onCancel={(event) => event.target === event.currentTarget && closeAdapt()}
      onKeyDown={onKeys}
    >
      <div className="adapt-sheet">
        <header className="full-page-head adapt-head">
          <h2 id={id}>{ADAPT.title(titleOf(title))}</h2>
          <UndoButtons />
          <button type="button" className="button" onClick={closeAdapt}>
            {ADAPT.close}
          </button>
        </header>
        {ready && original && (about === open || busy) && <List original={original} />}
      </div>
    </dialog>
  );
}

interface Planned {
  readonly plan: Plan;
  readonly assessment: Assessment;
  readonly came: Assessment;
  readonly spares: ReturnType<typeof useSpares>;
}

function usePlan(original: Game): Planned {
  const current = useAssessment();
  const kit = useKit(({ owned }) => owned.kit);
  const kept = useAdapting((state) => state.kept);
  const fitting = useFitting();
  const isAsItCame = original.nodes === current.game.nodes && original.links === current.game.links;
  const own = useMemo(() => (isAsItCame ? undefined : assess(original)), [isAsItCame, original]);
  const came = own ?? current;
  const spares = useSpares(came, current);
  const plan = useMemo(() => {
    const listed = planOf({
      original: came,
      current,
      kit,
      choices: { kept },
      fitting: kit.items.length === 0 ? undefined : fitting,
      spares: spares === 'failed' ? undefined : spares,
    });
    const short = listed.lines.filter((line) => line.sort === 'short');
    const others = listed.lines.filter((line) => line.sort !== 'short');
    return {
      ...listed,
      lines: [...inOrderOfPlay(came, short, ({ shortage }) => shortage.node), ...others],
    };
  }, [came, current, kit, kept, fitting, spares]);
  return { plan, assessment: current, came, spares };
}

const sectionOf = (sorts: readonly Line['sort'][], { lines }: Plan) =>
  lines.filter(({ sort }) => sorts.includes(sort));

/** What is changed on the line moves on to the next that is open, so that a keyboard goes down the list as a hand does. */
function useGoingDown(list: React.RefObject<HTMLElement | null>, lines: readonly Line[]): void {
  const before = useRef<ReadonlyMap<LineKey, Line['state']>>(new Map());
  useEffect(() => {
    const settled = lines.find(({ key, state }) => state !== 'open' && before.current.get(key) === 'open');
    before.current = new Map(lines.map(({ key, state }) => [key, state]));
    const isLost = document.activeElement === null || !list.current?.contains(document.activeElement);
    if (!settled || !isLost) return;
    const rows = Array.from(list.current?.querySelectorAll<HTMLElement>('[data-line]') ?? []);
    const place = rows.findIndex((row) => row.dataset['line'] === settled.key);
    const next = rows.slice(place + 1).find((row) => row.dataset['state'] === 'open') ?? rows[place];
    next?.querySelector<HTMLElement>('input, textarea, button')?.focus();
  }, [lines, list]);
}

function List({ original }: { original: Game }) {
  const { plan, assessment, came, spares: tried } = usePlan(original);
  const kit = useKit(({ owned }) => owned.kit);
  const fitting = useFitting();
  const isCopy = useAdapting((state) => state.isCopy);
  const list = useRef<HTMLDivElement>(null);
  useGoingDown(list, plan.lines);
  useEffect(() => followHistory(assessment.game), [assessment.game]);
  const { game } = assessment;
  const have = haveSentence(game, plan, kit.items.length === 0 ? undefined : fitting, kit.places.length > 0);
  const main = plan.lines.find(({ state, sort }) => state === 'open' && sort !== 'spare')?.key;
  const names = sectionOf(['place', 'thing'], plan);
  const texts = sectionOf(['reread'], plan);
  const spares = sectionOf(['spare'], plan);
  return (
    <div ref={list} className="adapt-list">
      <div className="adapt-top">
        <p className="adapt-progress" role="status">
          {progressSentence(plan, assessment.canBeWon, {
            kit: kit.items.length > 0,
            room: kit.places.length > 0,
          })}
        </p>
        {have && (
          <p>
            <SentenceText sentence={have} />
          </p>
        )}
        <p className="quiet">{isCopy ? ADAPT.copied(titleOf(original.head.title)) : ADAPT.untouched}</p>
      </div>
      <Section title={ADAPT.sections.short}>
        {kit.items.length === 0 ? (
          <Missing words={ADAPT.emptyKit} act={ADAPT.fillKit} onAct={() => openKit('have')} />
        ) : (
          <ShortLines plan={plan} assessment={assessment} main={main} />
        )}
      </Section>
      <Section title={ADAPT.sections.rename}>
        {kit.places.length === 0 && (
          <Missing words={ADAPT.emptyRoom} act={ADAPT.fillRoom} onAct={() => openKit('room')} />
        )}
        {names.length === 0 && kit.places.length > 0 && <p className="quiet">{ADAPT.nothingToRename}</p>}
        <ul>
          {names.map((line) =>
            line.sort === 'place' || line.sort === 'thing' ? (
              <RenameLine key={line.key} line={line} plan={plan} game={game} main={line.key === main} />
            ) : null,
          )}
        </ul>
      </Section>
      <Section title={ADAPT.sections.reread}>
        {texts.length === 0 && <p className="quiet">{ADAPT.nothingToRead}</p>}
        <ul>
          {texts.map((line) =>
            line.sort === 'reread' ? (
              <RereadLine
                key={line.key}
                line={line}
                plan={plan}
                game={game}
                original={came.game}
                main={line.key === main}
              />
            ) : null,
          )}
        </ul>
      </Section>
      <Section title={ADAPT.sections.spare}>
        <p className="quiet">
          {tried === undefined || tried === 'failed'
            ? ADAPT.spares[tried ?? 'working']
            : spares.length === 0
              ? ADAPT.nothingToSpare
              : ADAPT.spareHint}
        </p>
        <ul>
          {spares.map((line) =>
            line.sort === 'spare' ? <SpareLine key={line.key} line={line} game={game} /> : null,
          )}
        </ul>
      </Section>
    </div>
  );
}

function Section({ title, children }: { title: string; children: React.ReactNode }) {
  const id = useId();
  return (
    <section className="adapt-section" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      {children}
    </section>
  );
}

interface MissingProps {
  readonly words: string;
  readonly act: string;
  readonly onAct: () => void;
}

function Missing({ words, act, onAct }: MissingProps) {
  return (
    <div className="adapt-missing">
      <p>{words}</p>
      <button type="button" className="button" onClick={onAct}>
        {act}
      </button>
    </div>
  );
}
