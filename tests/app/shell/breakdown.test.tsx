import { render, screen } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { Breakdown } from '../../../app/shell/Breakdown.tsx';

function Failing(): never {
  throw new Error('a part of the page failed');
}

test('a page that fails says so and gives the open game out', () => {
  const silent = vi.spyOn(console, 'error').mockImplementation(() => {});
  render(
    <Breakdown>
      <Failing />
    </Breakdown>,
  );
  silent.mockRestore();
  expect(screen.getByRole('heading', { name: 'The page has stopped.' })).toBeDefined();
  expect(screen.getByRole('button', { name: 'Save to a file' })).toBeDefined();
});
