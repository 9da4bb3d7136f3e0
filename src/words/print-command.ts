/** What leads to the print preview; the words of the preview itself are loaded with it. */

export const PRINT_COMMAND = 'Print';

/** In the place of everything, where the browser's own menu prints the page and no preview is open. */
export const PRINT_HINT =
  'The pages of the game are printed from within Latchmap: press Print at the top of the page, and Print once more.';

export const MAP_PICTURES = {
  line: 'The map alone, as it is printed, to show or to mail.',
  svg: 'Map as SVG',
  png: 'Map as PNG',
  making: 'The picture is being made.',
};
