import { describe, expect, it } from 'vitest';
import { kindOf, lockName, withArticle } from '../../src/words/kinds.ts';
import { count, list, minutes, minutesInWords, minutesOf } from '../../src/words/numbers.ts';

describe('minutes', () => {
  it.each([
    [0, '0 s'],
    [0.717, '43 s'],
    [0.99, '59 s'],
    [0.9999, '1 min'],
    [2.3333, '2.3 min'],
    [5.5, '5.5 min'],
    [9.94, '9.9 min'],
    [9.97, '10 min'],
    [21.4, '21 min'],
    [119.6, '120 min'],
  ])('%d read %s', (value, text) => {
    expect(minutes(value)).toBe(text);
  });

  it('are spelled out in running text', () => {
    expect(minutesInWords(0.5)).toBe('30 seconds');
    expect(minutesInWords(1)).toBe('1 minute');
    expect(minutesInWords(1.04)).toBe('1 minute');
    expect(minutesInWords(52)).toBe('52 minutes');
  });

  it('stand against the lesson', () => {
    expect(minutesOf(21.4, 40)).toBe('21 of 40 minutes');
    expect(minutesOf(0.5, 40)).toBe('30 s of 40 minutes');
    expect(minutesOf(0.5, 1)).toBe('30 s of 1 minute');
  });
});

describe('counts and lists', () => {
  it('follow the number', () => {
    expect(count(1, 'step')).toBe('1 step');
    expect(count(0, 'step')).toBe('0 steps');
    expect(count(2, 'box', 'boxes')).toBe('2 boxes');
  });

  it('are joined with and, or with or', () => {
    expect(list([])).toBe('');
    expect(list(['A'])).toBe('A');
    expect(list(['A', 'B'])).toBe('A and B');
    expect(list(['A', 'B', 'C'], 'or')).toBe('A, B or C');
  });
});

describe('kinds', () => {
  it('have plain names', () => {
    expect(kindOf({ id: 'a', kind: 'container', name: '' })).toBe('box');
    expect(kindOf({ id: 'a', kind: 'fastener', name: '', on: 'b', type: 'direction' })).toBe(
      'direction lock',
    );
  });

  it('call a lock of no known type a lock', () => {
    expect(lockName('magnet')).toBe('lock');
    expect(lockName(undefined)).toBe('lock');
    expect(lockName('constructor')).toBe('lock');
  });

  it('take the right article', () => {
    expect(withArticle('answer')).toBe('an answer');
    expect(withArticle('box')).toBe('a box');
  });
});
