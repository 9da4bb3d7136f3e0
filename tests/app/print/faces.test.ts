import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FACES } from '../../../app/print/faces.ts';
import { FAMILIES } from '../../../src/sheets/svg.ts';

const BASE = readFileSync('app/shell/base.css', 'utf8').replace(/\s+/g, ' ');

test('the upright faces of a picture are those of the screen, for the same signs', () => {
  const rules = [...BASE.matchAll(/@font-face \{(.*?)\}/g)].map(([, rule = '']) => ({
    family: /font-family: "(.*?)"/.exec(rule)?.[1],
    range: /unicode-range: (.*?);/.exec(rule)?.[1],
    style: /font-style: (.*?);/.exec(rule)?.[1],
    weight: /font-weight: (.*?);/.exec(rule)?.[1],
  }));
  const faces = FACES.filter(({ italic }) => !italic).map(({ family, range }) => ({
    family: FAMILIES[family],
    range,
    style: 'normal',
    weight: '200 800',
  }));
  expect(rules).toEqual(faces);
});
