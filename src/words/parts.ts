/** What is said when a part of the program cannot be had, or fails. */

export const PARTS = {
  lost: 'This part of Latchmap could not be loaded: the connection is gone. The game is safe. Try again when the connection is back.',
  broken: 'This part of Latchmap has stopped. The game is safe, and all else goes on.',
  again: 'Try again',
  /** In place of the lines that would name what is wrong with a file. */
  lostProblems: 'What is wrong with it cannot be named while the connection is gone.',
};
