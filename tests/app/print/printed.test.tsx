import { cleanup, fireEvent, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { copiesOf, printPages } from '../../../app/print/printed.ts';

afterEach(cleanup);

test('printing takes copies of the pages that are shown, and takes them away again', () => {
  render(
    <div>
      <figure className="page-shown">Codes</figure>
      <figure className="page-shown">Order</figure>
    </div>,
  );
  const stop = printPages(() => copiesOf(document.querySelectorAll('.page-shown'), [], true));
  const run = () => document.querySelector('body > .print-run');
  fireEvent(window, new Event('beforeprint'));
  expect(run()?.textContent).toBe('CodesOrder');
  fireEvent(window, new Event('beforeprint'));
  expect(document.querySelectorAll('.print-run')).toHaveLength(1);
  fireEvent(window, new Event('afterprint'));
  expect(run()).toBeNull();
  stop();
  fireEvent(window, new Event('beforeprint'));
  expect(run()).toBeNull();
});
