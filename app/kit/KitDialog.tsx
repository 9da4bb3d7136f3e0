/** My kit: what I have, my room, and how the open game stands against both. It takes the whole page, as the print preview does. */
import { useEffect, useId, useRef } from 'react';
import { KIT } from '../../src/words/screen-kit.ts';
import { isMac, isPressed } from '../commands/keyboard.ts';
import { Sign } from '../shell/signs.tsx';
import { FilesMenu } from './FilesMenu.tsx';
import { FileTarget } from './FileTarget.tsx';
import { ForGame } from './ForGame.tsx';
import { Have } from './Have.tsx';
import { KitNewsLine } from './KitNewsLine.tsx';
import { startKit } from './keeping.ts';
import { useKit } from './kit-state.ts';
import { closeKit, KIT_PAGES, type KitPage, useKitShown } from './open.ts';
import { Room } from './Room.tsx';
import { StoredState } from './StoredState.tsx';
import { Tabs } from './Tabs.tsx';
import '../shell/full-page.css';
import './kit.css';

const PAGES: Readonly<Record<KitPage, React.ComponentType>> = { game: ForGame, have: Have, room: Room };

/** In a field of text the browser takes back what was typed there. */
function isInText(target: EventTarget): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && !['checkbox', 'radio'].includes(target.type))
  );
}

/** On the whole page: what had the focus may be gone with what was undone. */
function listenToKeys(): () => void {
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.defaultPrevented || (event.target && isInText(event.target))) return;
    const { undo, redo } = useKit.getState();
    const pressed = (keys: string) => isPressed(keys, event, isMac());
    if (pressed('Mod+Z')) undo();
    else if (pressed('Mod+Shift+Z') || pressed('Mod+Y')) redo();
    else return;
    event.preventDefault();
  };
  window.addEventListener('keydown', onKeyDown);
  return () => window.removeEventListener('keydown', onKeyDown);
}

function UndoButtons() {
  const past = useKit((state) => state.past.length);
  const future = useKit((state) => state.future.length);
  const { undo, redo } = useKit.getState();
  return (
    <>
      <button type="button" className="button" disabled={past === 0} onClick={undo}>
        <Sign name="undo" />
        {KIT.undo}
      </button>
      <button type="button" className="button" disabled={future === 0} onClick={redo}>
        <Sign name="redo" />
        {KIT.redo}
      </button>
    </>
  );
}

export default function KitDialog() {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const ready = useKit((state) => state.ready);
  const empty = useKit(({ owned }) => owned.kit.items.length === 0);
  const chosen = useKitShown((state) => state.page);
  const page = chosen ?? (empty ? 'have' : 'game');

  useEffect(() => {
    void startKit();
    const element = dialog.current;
    if (!element?.open) element?.showModal();
    const stopKeys = listenToKeys();
    return () => {
      stopKeys();
      element?.close();
      useKit.getState().leaveGame();
    };
  }, []);
  // What is there when it opens says where it opens; the first tap does not lead away.
  useEffect(() => {
    if (ready && chosen === undefined) useKitShown.setState({ page });
  }, [ready, chosen, page]);

  const Shown = PAGES[page];
  return (
    <dialog
      ref={dialog}
      className="full-page"
      aria-labelledby={id}
      onCancel={(event) => event.target === event.currentTarget && closeKit()}
      onBlur={() => useKit.getState().settle()}
    >
      <FileTarget>
        <header className="full-page-head">
          <h2 id={id}>{KIT.title}</h2>
          <Tabs
            pages={KIT_PAGES}
            shown={page}
            label={KIT.pages}
            names={KIT.page}
            choose={(next) => useKitShown.setState({ page: next })}
          />
          <StoredState />
          <UndoButtons />
          <FilesMenu />
          <button type="button" className="button" onClick={closeKit}>
            {KIT.close}
          </button>
        </header>
        <KitNewsLine />
        <div className="kit-page" role="tabpanel" aria-label={KIT.page[page]} aria-busy={!ready}>
          {ready && <Shown />}
        </div>
      </FileTarget>
    </dialog>
  );
}
