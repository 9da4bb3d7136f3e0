/** The form of the lesson: title, what the game is about, for whom, how long, and what pupils learn. */
import { lessonOf } from '../../src/game/defaults.ts';
import type { Objective } from '../../src/game/model.ts';
import { LESSON } from '../../src/words/screen.ts';
import { WRONG } from '../../src/words/screen-form.ts';
import type { Reading } from '../inspect/draft.ts';
import { parseMinutes } from '../inspect/minutes.ts';
import { parseCount } from '../inspect/numbers.ts';
import { readText, TextField } from '../inspect/TextField.tsx';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { Dialog } from './Dialog.tsx';
import { Sign } from './signs.tsx';
import { writeTitle } from './Title.tsx';
import './lesson-form.css';

type Figure = 'pupils' | 'teams' | 'minutes' | 'hints';

function writeHead(field: string, value: unknown): void {
  useGame.getState().apply([{ type: 'setHead', fields: { [field]: value } }], field);
}

function writeLesson(field: string, value: unknown): void {
  useGame.getState().apply([{ type: 'setHead', fields: { lesson: { [field]: value } } }], `lesson ${field}`);
}

function readFrom(least: number) {
  return (raw: string): Reading<number | undefined> => {
    if (raw.trim() === '') return { value: undefined };
    const value = parseCount(raw, least);
    if (value !== undefined) return { value };
    return { wrong: least > 0 ? WRONG.fromOne : WRONG.wholeNumber };
  };
}

export function readLessonMinutes(raw: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const value = parseMinutes(raw);
  return value === undefined || value === 0 ? { wrong: WRONG.lessonMinutes } : { value };
}

const FIGURES: readonly {
  readonly field: Figure;
  readonly label: string;
  readonly read: (raw: string) => Reading<number | undefined>;
}[] = [
  { field: 'pupils', label: LESSON.pupils, read: readFrom(1) },
  { field: 'teams', label: LESSON.teams, read: readFrom(1) },
  { field: 'minutes', label: LESSON.minutes, read: readLessonMinutes },
  { field: 'hints', label: LESSON.hints, read: readFrom(0) },
];

export default function LessonForm({ onClose }: { onClose: () => void }) {
  const game = useGame((state) => state.game);
  const readOnly = useGame((state) => state.readOnly);
  const { title, summary, lesson } = game.head;
  const usual = lessonOf({ ...game, head: {} });

  return (
    <Dialog title={LESSON.title} close={LESSON.done} onClose={onClose}>
      <fieldset className="lesson-form" disabled={readOnly}>
        <TextField
          field="title"
          label={LESSON.gameTitle}
          shown={title ?? ''}
          read={readText}
          write={writeTitle}
        />
        <TextField
          field="summary"
          label={LESSON.summary}
          shown={summary ?? ''}
          read={readText}
          write={(text) => writeHead('summary', text)}
          lines={3}
        />
        <div className="lesson-form-figures">
          <TextField
            field="lesson ages"
            label={LESSON.ages}
            shown={lesson?.ages ?? ''}
            read={readText}
            write={(ages) => writeLesson('ages', ages)}
            placeholder={LESSON.agesHint}
          />
          {FIGURES.map(({ field, label, read }) => (
            <TextField
              key={field}
              field={`lesson ${field}`}
              label={label}
              shown={lesson?.[field] === undefined ? '' : String(lesson[field])}
              read={read}
              write={(value) => writeLesson(field, value)}
              placeholder={String(usual[field])}
              numeric
            />
          ))}
        </div>
        <Objectives />
      </fieldset>
    </Dialog>
  );
}

function Objectives() {
  const objectives = useGame((state) => state.game.head.objectives) ?? [];
  const write = (next: readonly Objective[], tag?: string) =>
    useGame
      .getState()
      .apply([{ type: 'setHead', fields: { objectives: next.length > 0 ? next : undefined } }], tag);
  const change = (id: string, changed: (old: Objective) => Objective, tag: string) =>
    write(
      objectives.map((old) => (old.id === id ? changed(old) : old)),
      tag,
    );

  return (
    <section aria-label={LESSON.objectives}>
      <h3 className="label">{LESSON.objectives}</h3>
      <ul className="lesson-form-objectives">
        {objectives.map(({ id, text, code }, i) => (
          <li key={id}>
            <TextField
              field={`objective ${id}`}
              label={LESSON.objective(i + 1)}
              labelAloud
              shown={text}
              read={(raw) => ({ value: raw })}
              write={(next) => change(id, (old) => ({ ...old, text: next }), `objective ${id}`)}
              lines={2}
            />
            <TextField
              field={`objective code ${id}`}
              label={LESSON.objectiveCode(i + 1)}
              labelAloud
              shown={code ?? ''}
              read={readText}
              write={(next) => change(id, (old) => withCode(old, next), `objective code ${id}`)}
              placeholder={LESSON.codeHint}
            />
            <button
              type="button"
              className="button"
              aria-label={LESSON.removeObjective(i + 1)}
              title={LESSON.removeObjective(i + 1)}
              onClick={() => write(objectives.filter((old) => old.id !== id))}
            >
              <Sign name="cross" />
            </button>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button"
        onClick={() => write([...objectives, { id: freshId(), text: '' }])}
      >
        {LESSON.addObjective}
      </button>
    </section>
  );
}

function withCode({ code: _, ...rest }: Objective, code: string | undefined): Objective {
  return code === undefined ? rest : { ...rest, code };
}
