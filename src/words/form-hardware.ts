/** What stands on the form about the lock itself: its wheels, its marks, what a try takes. */
import { count, list } from './numbers.ts';

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
  marks: 'Marks on the dial, from 0',
  trySeconds: 'Seconds that one try takes',
  forFun: 'There for the joy of opening',
  forFunHint: 'It is not called a bottleneck.',
  forFunSaid: 'for the joy of opening',
};

export const WRONG_HARDWARE = {
  wheels: 'Write how many wheels it has, from 1 to 12.',
  emptyWheel: 'A wheel shows at least one thing.',
  marks: 'Write how many marks the dial has, from 2 to 1000.',
  seconds: 'Write the seconds of one try: 2 or 1.5.',
};

export interface HardwareSaid {
  readonly wheels: number | undefined;
  readonly alphabet: 'digits' | 'letters' | 'own' | undefined;
  readonly marks: number | undefined;
  readonly trySeconds: number | undefined;
  readonly forFun: boolean;
}

/** In a few words: 'three wheels, 0 to 9', '60 marks', 'a try takes 4 s'. Empty when nothing is said. */
export function hardwareSaid({ wheels, alphabet, marks, trySeconds, forFun }: HardwareSaid): string {
  const parts: string[] = [];
  if (wheels !== undefined) parts.push(count(wheels, 'wheel'));
  if (alphabet !== undefined) {
    parts.push(alphabet === 'own' ? 'symbols of its own' : alphabet === 'digits' ? '0 to 9' : 'A to Z');
  }
  if (marks !== undefined) parts.push(count(marks, 'mark'));
  if (trySeconds !== undefined) parts.push(`${trySeconds} s a try`);
  if (forFun) parts.push(HARDWARE.forFunSaid);
  return list(parts);
}
