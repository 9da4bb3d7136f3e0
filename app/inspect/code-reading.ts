/** Codes as a teacher types them, for a draft: the stored form, or a sentence that says what is wrong and where. */
import type { FastenerType, Hardware } from '../../src/fasteners/index.ts';
import { codeTroubleText } from '../../src/words/lock-codes.ts';
import type { Reading } from './draft.ts';

/** Nothing typed takes the code away. */
export function codeReading(
  type: FastenerType,
  hardware?: Hardware,
): (raw: string) => Reading<string | undefined> {
  return (raw) => {
    const reading = type.read(raw, hardware);
    if (!reading.ok) return { wrong: codeTroubleText(reading.trouble) };
    return { value: reading.code === '' ? undefined : reading.code };
  };
}
