/** Ticks, arrows and the like are drawn: the typefaces do not have them. Each takes the colour of the text beside it. */

const DRAWINGS = {
  tick: 'M3 8.5l3.4 3.4L13 4.6',
  cross: 'M4 4l8 8M12 4l-8 8',
  look: 'M8 2.5v7M8 13v.1',
  undo: 'M6 3L3 6l3 3M3 6h6a4 4 0 0 1 0 8H6',
  redo: 'M10 3l3 3-3 3M13 6H7a4 4 0 0 0 0 8h3',
  up: 'M8 13.5v-11M4 6.5l4-4 4 4',
  down: 'M8 2.5v11M4 9.5l4 4 4-4',
  left: 'M13.5 8h-11M6.5 4l-4 4 4 4',
  right: 'M2.5 8h11M9.5 4l4 4-4 4',
  turnRight: 'M3 11a5 5 0 1 1 10 0M10 8.5l3 3 3-3',
  turnLeft: 'M13 11a5 5 0 1 0-10 0M0 8.5l3 3 3-3',
  open: 'M4.5 6.5L8 10l3.5-3.5',
  close: 'M6.5 4.5L10 8l-3.5 3.5',
  pin: 'M5 2h6M6 2v4.2L4 9h8l-2-2.8V2M8 9v5',
  tidy: 'M6.2 2h3.6v12H6.2zM1.5 4h2.7v4.5H1.5zM11.8 7.5h2.7V12h-2.7z',
  keys: 'M1.5 4.5h13v7.5h-13zM4 7h.1M6.7 7h.1M9.3 7h.1M12 7h.1M5 9.7h6',
} as const;

export type SignName = keyof typeof DRAWINGS;

export function Sign({ name }: { name: SignName }) {
  return (
    <svg className="sign" viewBox="0 0 16 16" aria-hidden="true">
      <path d={DRAWINGS[name]} />
    </svg>
  );
}
