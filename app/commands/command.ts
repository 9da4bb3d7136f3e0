/** One thing that a person can tell the program to do. Menus, buttons, the keyboard and the list of keys all use it. */
import type { GameState } from '../store/game.ts';
import type { TidyingState } from '../store/tidying.ts';
import type { ViewState } from '../store/view.ts';

/** What a command looks at to tell whether it applies. */
export interface Situation {
  readonly game: GameState;
  readonly view: ViewState;
  readonly tidying: TidyingState;
}

export interface Command {
  readonly name: string;
  /** What it is called now: 'Not today' becomes 'Use it today'. */
  readonly label: (now: Situation) => string;
  /**
   * Keys that run it, such as 'Mod+Shift+Z' (Mod is Ctrl, on a Mac Cmd). No plain letter: such keys are pressed by accident,
   * by people who talk to the computer above all (WCAG 2.2, 2.1.4).
   */
  readonly keys: readonly string[];
  /** The browser tells of copying, cutting and pasting by events of its own; the keys are only shown. */
  readonly byEvent?: true;
  /** Its keys work in a field too: for what the browser would otherwise do there with the whole page. */
  readonly whileTyping?: true;
  readonly when: (now: Situation) => boolean;
  readonly run: () => void;
}
