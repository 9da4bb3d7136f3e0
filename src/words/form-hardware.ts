/** What stands on the form about the lock itself: its wheels, its dial, what a try takes. */
import { count } from './numbers.ts';

export const HARDWARE = {
  heading: 'This lock',
  wheels: 'Wheels',
  wheelsHint: 'Empty: as many as the code has.',
  onEachWheel: 'On each wheel',
  digits: '0 to 9',
  letters: 'A to Z',
  own: 'own',
  wheel: (number: number) => `Wheel ${number}`,
  picturesFirst: 'Set the code first: its pictures are where the wheels begin.',
  wheelHint: 'What can be set on it, in order.',
  pictureHint: 'The names of its pictures, with a space between them.',
  alike: 'All as wheel 1',
  marks: 'Numbers on the dial, from 0',
  trySeconds: 'Seconds that one try takes',
  onPaper: 'On paper:',
  setting: 'To set it:',
  forFun: 'There for the joy of opening',
  forFunHint: 'Ticked: not called a bottleneck.',
  forFunSaid: 'for the joy of opening',
};

export const WRONG_HARDWARE = {
  wheels: 'Write how many wheels it has, from 1 to 12.',
  emptyWheel: 'A wheel shows at least one thing.',
  marks: 'Write how many numbers the dial has, from 2 to 1000.',
  seconds: 'Write the seconds of one try: 2 or 1.5.',
};

export interface HardwareSaid {
  readonly wheels: number | undefined;
  readonly alphabet: 'digits' | 'letters' | 'own' | undefined;
  readonly marks: number | undefined;
  readonly trySeconds: number | undefined;
  readonly forFun: boolean;
}

const FILLED: Readonly<Record<NonNullable<HardwareSaid['alphabet']>, string>> = {
  digits: ', 0 to 9',
  letters: ', A to Z',
  own: ' with symbols of their own',
};

/** In a few words: '3 wheels, 0 to 9', '60 numbers, 4 s a try'. Empty when nothing is said. */
export function hardwareSaid({ wheels, alphabet, marks, trySeconds, forFun }: HardwareSaid): string {
  const parts: string[] = [];
  if (wheels !== undefined) parts.push(`${count(wheels, 'wheel')}${alphabet ? FILLED[alphabet] : ''}`);
  if (marks !== undefined) parts.push(count(marks, 'number'));
  if (trySeconds !== undefined) parts.push(`${trySeconds} s a try`);
  if (forFun) parts.push(HARDWARE.forFunSaid);
  return parts.join(', ');
}
