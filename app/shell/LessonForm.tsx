/** The form of the lesson: title, what the game is about, who plays and who is there, how the minutes are spent, and what pupils learn. */
import { useState } from 'react';
import { type LessonPlan, lessonOf } from '../../src/game/defaults.ts';
import type { Objective } from '../../src/game/model.ts';
import { LESSON, lessonSum, NO_ADULT, teamsOf, WRONG_LESSON } from '../../src/words/lesson.ts';
import { WRONG } from '../../src/words/screen-form.ts';
import type { Reading } from '../inspect/draft.ts';
import { readMinutes, typedMinutes } from '../inspect/minutes.ts';
import { parseCount } from '../inspect/numbers.ts';
import { readText, TextField } from '../inspect/TextField.tsx';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { Dialog } from './Dialog.tsx';
import { Sign } from './signs.tsx';
import { writeTitle } from './Title.tsx';
import '../inspect/fold.css';
import './lesson-form.css';

function writeHead(field: string, value: unknown): void {
  useGame.getState().apply([{ type: 'setHead', fields: { [field]: value } }], field);
}

function writeLesson(field: string, value: unknown): void {
  useGame.getState().apply([{ type: 'setHead', fields: { lesson: { [field]: value } } }], `lesson ${field}`);
}

type FigureReading = Reading<number | undefined>;

/** A whole number from 1. `none`: what is said of 0. */
function readFromOne(none: string) {
  return (raw: string): FigureReading => {
    if (raw.trim() === '') return { value: undefined };
    const value = parseCount(raw, 0);
    if (value === 0) return { wrong: none };
    return value === undefined ? { wrong: WRONG.fromOne } : { value };
  };
}

function readCount(raw: string): FigureReading {
  if (raw.trim() === '') return { value: undefined };
  const value = parseCount(raw, 0);
  return value === undefined ? { wrong: WRONG.wholeNumber } : { value };
}

export function readLessonMinutes(raw: string): FigureReading {
  const reading = readMinutes(raw, WRONG.lessonMinutes);
  return 'value' in reading && reading.value === 0 ? { wrong: WRONG_LESSON.minutes } : reading;
}

function readBesidePlay(raw: string): FigureReading {
  return readMinutes(raw, WRONG.minutes);
}

/** Minutes of a lesson stand without their unit, which the heading says. */
function typedLesson(minutes: number): string {
  return typedMinutes(minutes).replace(/ min$/, '');
}

/** Figures of the lesson; the ages are text. */
type FigureName = Exclude<keyof LessonPlan, 'ages'>;

interface FigureProps {
  readonly name: FigureName;
  readonly read: (raw: string) => FigureReading;
  readonly text?: (value: number) => string;
}

function Figure({ name, read, text = String }: FigureProps) {
  const game = useGame((state) => state.game);
  const said = game.head.lesson?.[name];
  const counted = text(lessonOf(game)[name]);
  // Unless what the game has is wrong itself, it is what stands meanwhile.
  const stands = 'value' in read(counted) ? ` ${LESSON.stands(counted)}` : '';
  return (
    <TextField
      field={`lesson ${name}`}
      label={LESSON[name]}
      shown={said === undefined ? '' : text(said)}
      read={(raw) => {
        const reading = read(raw);
        return 'wrong' in reading ? { wrong: `${reading.wrong}${stands}` } : reading;
      }}
      write={(value) => writeLesson(name, value)}
      placeholder={text(lessonOf({ ...game, head: {} })[name])}
      numeric
    />
  );
}

export default function LessonForm({ onClose }: { onClose: () => void }) {
  const game = useGame((state) => state.game);
  const readOnly = useGame((state) => state.readOnly);
  const { title, summary, lesson } = game.head;
  const plan = lessonOf(game);
  const [folded] = useState(lesson?.hintMinutes === undefined && lesson?.checkMinutes === undefined);

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
        <fieldset>
          <legend className="lesson-form-caption">{LESSON.who}</legend>
          <div className="lesson-form-figures">
            <TextField
              field="lesson ages"
              label={LESSON.ages}
              shown={lesson?.ages ?? ''}
              read={readText}
              write={(ages) => writeLesson('ages', ages)}
              placeholder={LESSON.agesHint}
            />
            <Figure name="pupils" read={readFromOne(WRONG_LESSON.pupils)} />
            <Figure name="teams" read={readFromOne(WRONG_LESSON.teams)} />
            <Figure name="adults" read={readCount} />
          </div>
          <p className={plan.teams > plan.pupils ? 'lesson-form-look' : 'hint'} role="status">
            {teamsOf(plan)}
          </p>
          {plan.adults === 0 && <p className="hint">{NO_ADULT}</p>}
        </fieldset>
        <fieldset>
          <legend className="lesson-form-caption">{LESSON.time}</legend>
          <div className="lesson-form-figures">
            <Figure name="talkBefore" read={readBesidePlay} text={typedLesson} />
            <Figure name="minutes" read={readLessonMinutes} text={typedLesson} />
            <Figure name="talkAfter" read={readBesidePlay} text={typedLesson} />
            <Figure name="clearUp" read={readBesidePlay} text={typedLesson} />
          </div>
          <p className="hint" role="status">
            {lessonSum(plan)}
          </p>
        </fieldset>
        <div className="lesson-form-short">
          <Figure name="hints" read={readCount} />
        </div>
        <details className="form-fold" open={!folded}>
          <summary>{LESSON.rarely}</summary>
          <div className="lesson-form-pair">
            <Figure name="hintMinutes" read={readBesidePlay} text={typedMinutes} />
            <Figure name="checkMinutes" read={readBesidePlay} text={typedMinutes} />
          </div>
        </details>
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
