/** Every command, in the order in which the list of keys shows them. */

import { ADAPT_COMMAND } from '../../src/words/adapt-command.ts';
import { KIT_COMMAND } from '../../src/words/kit-command.ts';
import { liftQuestion } from '../../src/words/lift-question.ts';
import { PRINT_COMMAND } from '../../src/words/print-command.ts';
import { COMMANDS } from '../../src/words/screen-commands.ts';
import { openAdapt } from '../adapt/open.ts';
import { beginGame, openFile, saveToFile } from '../keep/index.ts';
import { openKit } from '../kit/open.ts';
import { openPrint } from '../print/open.ts';
import { useGame } from '../store/game.ts';
import { useTidying } from '../store/tidying.ts';
import { useView } from '../store/view.ts';
import { canvas } from './canvas.ts';
import { copySelection, cutSelection, pasteHere } from './clipboard.ts';
import type { Command, Situation } from './command.ts';
import { useKeyList } from './key-list.ts';
import {
  duplicateSelection,
  leaveOutSelection,
  pinSelection,
  removeSelection,
  selectAll,
  selectionLeftOut,
  selectionPinned,
  standing,
  tidyOrStop,
} from './selection.ts';

const game = () => useGame.getState();
const view = () => useView.getState();

const selected = (now: Situation) => now.view.nodes.size > 0;
const anything = (now: Situation) => selected(now) || now.view.links.size > 0;
const editable = (now: Situation) => !now.game.readOnly;
const filled = (now: Situation) => now.game.game.nodes.size > 0;
const always = () => true;

/** The one thing selected, when it is one. */
const single = (now: Situation) => (now.view.nodes.size === 1 ? [...now.view.nodes][0] : undefined);

const REGISTRY = {
  undo: {
    label: () => COMMANDS.undo,
    keys: ['Mod+Z'],
    when: (now) => editable(now) && now.game.history.past.length > 0,
    run: () => game().undo(),
  },
  redo: {
    label: () => COMMANDS.redo,
    keys: ['Mod+Shift+Z', 'Mod+Y'],
    when: (now) => editable(now) && now.game.history.future.length > 0,
    run: () => game().redo(),
  },
  cut: {
    label: () => COMMANDS.cut,
    keys: ['Mod+X'],
    byEvent: true,
    when: (now) => editable(now) && selected(now),
    run: cutSelection,
  },
  copy: { label: () => COMMANDS.copy, keys: ['Mod+C'], byEvent: true, when: selected, run: copySelection },
  paste: { label: () => COMMANDS.paste, keys: ['Mod+V'], byEvent: true, when: editable, run: pasteHere },
  duplicate: {
    label: () => COMMANDS.duplicate,
    keys: ['Mod+D'],
    when: (now) => editable(now) && selected(now),
    run: duplicateSelection,
  },
  delete: {
    label: () => COMMANDS.delete,
    keys: ['Delete', 'Backspace'],
    when: (now) => editable(now) && anything(now),
    run: removeSelection,
  },
  selectAll: { label: () => COMMANDS.selectAll, keys: ['Mod+A'], when: filled, run: selectAll },
  lift: {
    label: (now) => {
      if (now.view.lifted !== undefined) return COMMANDS.putBack;
      return liftQuestion(now.game.game.nodes.get(single(now) ?? '')?.kind ?? 'clue');
    },
    keys: ['Alt+L'],
    when: (now) => now.view.lifted !== undefined || single(now) !== undefined,
    run: () => view().lift(view().lifted === undefined ? [...view().nodes][0] : undefined),
  },
  leaveOut: {
    label: (now) => (selectionLeftOut(now) ? COMMANDS.useAgain : COMMANDS.leaveOut),
    keys: ['Alt+N'],
    when: (now) => editable(now) && selected(now),
    run: leaveOutSelection,
  },
  pin: {
    label: (now) => (selectionPinned(now) ? COMMANDS.unpin : COMMANDS.pin),
    keys: ['Alt+P'],
    when: (now) => editable(now) && standing(now).length > 0,
    run: pinSelection,
  },
  tidy: {
    label: (now) => {
      if (now.tidying.work === 'asked') return COMMANDS.stopTidying;
      return now.view.nodes.size > 1 ? COMMANDS.tidySelection : COMMANDS.tidy;
    },
    keys: ['Alt+T'],
    when: (now) => editable(now) && filled(now),
    run: () => void tidyOrStop(),
  },
  heat: {
    label: () => COMMANDS.heat,
    keys: ['Alt+M'],
    when: filled,
    run: () => view().setHeat(!view().heat),
  },
  play: {
    label: (now) => (now.view.play ? COMMANDS.closePlay : COMMANDS.play),
    keys: ['Alt+R'],
    when: (now) => filled(now) || now.view.play,
    run: () => view().setPlay(!view().play),
  },
  fit: {
    label: () => COMMANDS.fit,
    keys: ['Home'],
    when: () => canvas() !== undefined,
    run: () => canvas()?.fit(),
  },
  zoomIn: {
    label: () => COMMANDS.zoomIn,
    keys: ['Alt+ArrowUp'],
    when: () => canvas() !== undefined,
    run: () => canvas()?.zoomIn(),
  },
  zoomOut: {
    label: () => COMMANDS.zoomOut,
    keys: ['Alt+ArrowDown'],
    when: () => canvas() !== undefined,
    run: () => canvas()?.zoomOut(),
  },
  save: { label: () => COMMANDS.save, keys: ['Mod+S'], when: always, run: () => void saveToFile() },
  open: { label: () => COMMANDS.open, keys: ['Mod+O'], when: always, run: openFile },
  print: {
    label: () => PRINT_COMMAND,
    keys: ['Mod+P'],
    whileTyping: true,
    when: filled,
    run: openPrint,
  },
  adapt: { label: () => ADAPT_COMMAND, keys: ['Alt+A'], when: filled, run: openAdapt },
  kit: { label: () => KIT_COMMAND, keys: ['Alt+K'], when: always, run: () => openKit() },
  fresh: { label: () => COMMANDS.fresh, keys: [], when: always, run: () => void beginGame() },
  escape: {
    label: () => COMMANDS.escape,
    keys: ['Escape'],
    when: (now) => now.tidying.work === 'asked' || now.view.lifted !== undefined || anything(now),
    run: () => {
      const { work, stop } = useTidying.getState();
      if (work === 'asked') stop?.();
      else if (view().lifted === undefined) view().select([]);
      else view().lift(undefined);
    },
  },
  keys: {
    label: () => COMMANDS.keys,
    keys: ['?'],
    when: always,
    run: () => useKeyList.setState({ open: true }),
  },
} satisfies Record<string, Omit<Command, 'name'>>;

export type CommandName = keyof typeof REGISTRY;

const byName = new Map<CommandName, Command>();
for (const name of Object.keys(REGISTRY).filter(isCommandName)) byName.set(name, { ...REGISTRY[name], name });

function isCommandName(name: string): name is CommandName {
  return Object.hasOwn(REGISTRY, name);
}

export const COMMAND_LIST: readonly Command[] = [...byName.values()];

export function command(name: CommandName): Command {
  return { ...REGISTRY[name], name };
}

export function situation(): Situation {
  return { game: game(), view: view(), tidying: useTidying.getState() };
}
