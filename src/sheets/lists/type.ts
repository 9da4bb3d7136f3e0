/** Sizes of type on the lists, in points. */
export const TEXT = { size: 10, leading: 13 } as const;
export const SMALL = { size: 8.5, leading: 11.5 } as const;
export const HEADING = { size: 12.5, leading: 16 } as const;
/** What is told under a name, and the teacher's notes. */
export const NOTE = { ...SMALL, ink: 'second', names: 'regular' } as const;
/** Of what is set on a lock. */
export const CODE = { size: 12, spacing: 2.4, leading: 19 } as const;
/** Side of a sign beside a line of text. */
export const SIGN = 11;
/** Kept for it before a name. */
export const SIGN_ROOM = 18;
/** Between the wall of a tray and what is in it. */
export const TRAY_PAD = 10;
