/** Which colour each ink is, on a page in colour and on a grey one. */
import type { Ink } from './drawing.ts';

export type Colours = Readonly<Record<Ink, string>>;

/** Those of the screen, but for the paper: what is left white takes no ink. */
export const IN_COLOUR: Colours = {
  ink: '#17262b',
  second: '#4b5d63',
  hair: '#8a989c',
  paper: '#ffffff',
  metal: '#7c5f18',
  metalSoft: '#f3e7c6',
  shade: '#f4f7f6',
  deepShade: '#e6ebea',
  stop: '#a3262a',
  stopSoft: '#f8e1df',
};

/** Each as light as its colour, by relative luminance (WCAG 2.2), so that no contrast is lost. */
export const IN_GREY: Colours = {
  ink: '#242424',
  second: '#5a5a5a',
  hair: '#959595',
  paper: '#ffffff',
  metal: '#636363',
  metalSoft: '#e7e7e7',
  shade: '#f6f6f6',
  deepShade: '#eaeaea',
  stop: '#565656',
  stopSoft: '#e6e6e6',
};

export function coloursOf(colour: boolean): Colours {
  return colour ? IN_COLOUR : IN_GREY;
}
