import { english, type Language, message } from '@becket/core';
import {
  findingGravities,
  findingRemedies,
  repairStates,
  type SurveyPart,
  type SurveyThing,
  surveyParts,
  surveyThings,
} from '@becket/journal';
import { recordFindings, takeBackEntry } from '@becket/tasks';
import { useEffect, useRef, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { PhotoThumb } from '../../photos/photo-thumb.tsx';
import { TakePhoto } from '../../photos/take-photo.tsx';
import { SectionField } from '../../piano/section-field.tsx';
import { EarlierSurveys } from './earlier-surveys.tsx';
import { ReasonHere } from './reason-here.tsx';
import {
  type Finding,
  type FindingForm,
  findingOf,
  findingPlaceWords,
  formOfFinding,
  linesOf,
  newFindingForm,
  nextOpenPart,
  photoPlaceOf,
  shortFinding,
  surveyPartNames,
  surveyProgress,
  thingsOf,
} from './survey-state.ts';

/** What is open in the survey: a new line of a thing, or one that is corrected. */
interface Open {
  readonly thing: SurveyThing;
  readonly line: Finding | undefined;
}

const shortAnswers = [
  ['sound', message('Sound')],
  ['could not be seen', message('Not to be seen')],
  ['does not apply', message('Not on this piano')],
] as const;

/** The survey of the structure, one part of the piano at a time, answered with a thumb. */
export function SurveyPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [part, setPart] = useState<SurveyPart>('bridges');
  const [open, setOpen] = useState<Open>();
  const [reason, setReason] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  const whole = surveyProgress(job);
  const next = nextOpenPart(job, part);
  const own = surveyProgress(job, part);

  const show = (wanted: SurveyPart) => {
    setPart(wanted);
    setOpen(undefined);
    head.current?.scrollIntoView({ block: 'start' });
    head.current?.focus({ preventScroll: true });
  };

  return (
    <section aria-labelledby="survey">
      <h2 id="survey">{say('Survey')}</h2>
      <p data-survey-progress>
        {sayNodes('{answered} of {of} things are answered. {hint}', {
          answered: whole.answered,
          of: whole.of,
          hint: (
            <span className="faint">
              {say('“Not to be seen” is an honest answer: it stays on the list of unknowns.')}
            </span>
          ),
        })}
      </p>
      <nav className="survey-parts" aria-label={say('Parts of the piano')}>
        {surveyPartNames.map((one) => {
          const { answered, of } = surveyProgress(job, one);
          return (
            <button
              key={one}
              type="button"
              className={one === part ? 'button strong' : 'button'}
              aria-pressed={one === part}
              onClick={() => show(one)}
            >
              <span>{say(surveyParts[one])}</span>
              <span aria-hidden="true">{answered === of ? '✓' : `${answered}/${of}`}</span>
              <span className="unseen">{`, ${say('{answered} of {of} answered', { answered, of })}`}</span>
            </button>
          );
        })}
      </nav>
      <EarlierSurveys />
      <ReasonHere reason={reason} onChange={setReason} />
      <h3 ref={head} tabIndex={-1} className="survey-head">
        {sentenceCase(say(surveyParts[part]))}
      </h3>
      {part === 'plate' && (
        <p className="notice">
          {say(
            'The plate carries the whole pull, some 18 tonnes-force on a grand. A crack in it is judged by the maker’s data and a specialist, not here. Tune nothing up before that.',
          )}
        </p>
      )}
      {part === 'ribs' && (
        <p className="faint">
          {say(
            'From beneath, with a light held flat to the board. Have a vertical held by a second person before it is tilted.',
          )}
        </p>
      )}
      <ul className="survey-things">
        {thingsOf(part).map((thing) => (
          <li key={thing} className="survey-thing">
            <Thing thing={thing} open={open} setOpen={setOpen} reason={reason} />
          </li>
        ))}
      </ul>
      <div className="button-row survey-on">
        {own.answered === own.of && next !== undefined && next !== part && (
          <button type="button" className="button strong wide" onClick={() => show(next)}>
            {say('Go on: {part}', { part: say(surveyParts[next]) })}
          </button>
        )}
        {whole.answered === whole.of && (
          <p role="status">
            {sayNodes('Everything of the survey is answered. {findings} {link}', {
              findings: findingsWords(job.findings, language),
              link: (
                <a href={`#/job/${encodeURIComponent(desk.id)}/appraise/decision`}>
                  {say('Go to the decision.')}
                </a>
              ),
            })}
          </p>
        )}
      </div>
    </section>
  );
}

function Thing({
  thing,
  open,
  setOpen,
  reason,
}: {
  thing: SurveyThing;
  open: Open | undefined;
  setOpen: (open: Open | undefined) => void;
  reason: string;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const lines = linesOf(job, thing);
  const short = lines.find(({ answer }) => answer.is !== 'seen');
  const seen = lines.filter(({ answer }) => answer.is === 'seen');
  const earlier = job.findings.filter((one) => one.thing === thing && one.copiedFrom !== undefined);
  const label = say(surveyThings[thing].label);

  const answer = (is: (typeof shortAnswers)[number][0]) =>
    desk.run((context, id) => {
      // The tap before may be kept and not drawn yet: what corrects a slip takes the place of it.
      const stands = linesOf(desk.now()?.job ?? job, thing).find((line) => line.answer.is !== 'seen');
      return recordFindings(context, id, [shortFinding(thing, is, stands, reason)]);
    });

  return (
    <>
      <h4 className="survey-label">{label}</h4>
      {earlier.map((one) => (
        <p key={one.entry} className="faint">
          {say('Earlier survey, {day}: {line}', {
            day: language.day(one.copiedFrom!),
            line: lineWords(one, unit, language),
          })}
        </p>
      ))}
      {seen.map((line) => (
        <div key={line.entry} className="survey-line" data-gravity={gravityOf(line)}>
          <p>{lineWords(line, unit, language)}</p>
          {(line.photos ?? []).map((digest) => {
            const photo = job.photos.find((one) => one.digest === digest);
            return photo && <PhotoThumb key={digest} job={desk.id} photo={photo} isBare />;
          })}
          <div className="button-row">
            <button
              type="button"
              className="button quiet"
              aria-label={say('Change: {label}, {line}', {
                label,
                line: lineWords(line, unit, language),
              })}
              onClick={() => setOpen({ thing, line })}
            >
              {say('Change')}
            </button>
            <button
              type="button"
              className="button quiet"
              aria-label={say('Take back: {label}, {line}', {
                label,
                line: lineWords(line, unit, language),
              })}
              onClick={once(() =>
                desk.run((context, id) =>
                  takeBackEntry(context, id, line.entry, {
                    reason,
                    otherwise: say('taken back in the survey'),
                  }),
                ),
              )}
            >
              {say('Take back')}
            </button>
          </div>
        </div>
      ))}
      {open?.thing === thing ? (
        <FindingSheet
          key={open.line?.entry ?? 'new'}
          thing={thing}
          line={open.line}
          reason={reason}
          onDone={() => setOpen(undefined)}
        />
      ) : (
        <fieldset className="survey-answers" aria-label={label}>
          <button
            type="button"
            className={seen.length > 0 ? 'button' : 'button strong'}
            onClick={() => setOpen({ thing, line: undefined })}
          >
            {seen.length > 0 ? say('Something more') : say('Something seen')}
          </button>
          {seen.length === 0 &&
            shortAnswers.map(([is, words]) => (
              <button
                key={is}
                type="button"
                className="button"
                aria-pressed={short?.answer.is === is}
                data-chosen={short?.answer.is === is || undefined}
                onClick={once(() => answer(is))}
              >
                {short?.answer.is === is ? `✓ ${say(words)}` : say(words)}
              </button>
            ))}
        </fieldset>
      )}
    </>
  );
}

/** One finding: what, where, how grave, what to do; a photo beside it. */
function FindingSheet({
  thing,
  line,
  reason,
  onDone,
}: {
  thing: SurveyThing;
  line: Finding | undefined;
  reason: string;
  onDone: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const { unit } = useSettings();
  const [selected] = useSelectedKey();
  const [form, setForm] = useState<FindingForm>(() =>
    line === undefined
      ? newFindingForm({ section: record.notes.find(({ key }) => key === selected)?.section?.section })
      : formOfFinding(line, unit, language),
  );
  const [problem, setProblem] = useState<string>();
  const what = useRef<HTMLTextAreaElement>(null);
  const take = (change: Partial<FindingForm>) => setForm((now) => ({ ...now, ...change }));
  const replaced = line ?? linesOf(job, thing).find(({ answer }) => answer.is !== 'seen');

  useEffect(() => what.current?.focus(), []);
  // A tap on the plan while this is open says where it is. A photo that is kept meanwhile, or an entry from elsewhere, makes
  // the record anew as well, and says nothing of the kind.
  const pointedAt = useRef(selected);
  useEffect(() => {
    if (selected === pointedAt.current) return;
    pointedAt.current = selected;
    const note = record.notes.find(({ key }) => key === selected);
    if (note !== undefined)
      setForm((now) => ({ ...now, note: note.note, section: note.section?.section ?? now.section }));
  }, [selected, record]);

  async function submit(): Promise<void> {
    try {
      const finding = findingOf(thing, { ...form, reason }, unit, replaced?.entry, language);
      setProblem(undefined);
      await desk.runHere((context, id) => recordFindings(context, id, [finding]));
      onDone();
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  const words = (name: 'note' | 'point' | 'extent', label: string, hint: string) => (
    <TextField label={label} hint={hint} value={form[name]} onChange={(value) => take({ [name]: value })} />
  );

  return (
    <form
      className="finding-form"
      onSubmit={once(submit)}
      aria-label={say('Finding: {label}', { label: say(surveyThings[thing].label) })}
    >
      <Field label={say('What is seen')}>
        {(ids) => (
          <textarea
            {...ids}
            ref={what}
            className="input"
            rows={2}
            maxLength={1000}
            value={form.what}
            onChange={(event) => take({ what: event.target.value })}
          />
        )}
      </Field>
      <Choice
        label={say('How grave')}
        value={form.gravity}
        onChange={(gravity) => take({ gravity })}
        options={findingGravities.map((value) => ({ value, words: say(value) }))}
      />
      <Choice
        label={say('What to do')}
        value={form.whatToDo}
        onChange={(whatToDo) => take({ whatToDo })}
        options={findingRemedies.map((value) => ({ value, words: say(value) }))}
      />
      {thing === 'board-repairs' && (
        <Choice
          label={say('Does the repair hold')}
          value={form.repair}
          onChange={(repair) => take({ repair })}
          options={repairStates.map((value) => ({ value, words: say(value) }))}
        />
      )}
      <div className="fields">
        {job.sections.length > 0 && (
          <SectionField value={form.section} onChange={(section) => take({ section })} />
        )}
        {words('note', say('Near note'), say('such as F#3, or tap the plan'))}
        {words('point', say('Where exactly'), say('such as beside rib 4'))}
        {words(
          'extent',
          say('How long or wide ({unit})', { unit }),
          say('so that a later survey can tell whether it grew'),
        )}
      </div>
      <div className="finding-photos">
        {form.photos.map((digest) => {
          const photo = job.photos.find((one) => one.digest === digest);
          return photo && <PhotoThumb key={digest} job={desk.id} photo={photo} isBare />;
        })}
      </div>
      <TakePhoto
        place={() => photoPlaceOf(form)}
        shows={form.what.trim() || say(surveyThings[thing].label)}
        reason={reason}
        onKept={(digest) => setForm((now) => ({ ...now, photos: [...now.photos, digest] }))}
      />
      <Problem says={problem} />
      <div className="button-row">
        <button type="submit" className="button strong">
          {say('Keep the finding')}
        </button>
        <button type="button" className="button quiet" onClick={onDone}>
          {say('Leave it')}
        </button>
      </div>
    </form>
  );
}

function lineWords(line: Finding, unit: 'mm' | 'in', language: Language = english): string {
  const { say } = language;
  const { answer } = line;
  if (answer.is !== 'seen')
    return answer.note === undefined ? say(answer.is) : `${say(answer.is)}: ${answer.note}`;
  const place = findingPlaceWords(line, language);
  return [
    answer.what,
    place === '' ? undefined : place,
    answer.extent_m === undefined ? undefined : lengthText(answer.extent_m, unit, 'length', language),
    answer.repair === undefined
      ? undefined
      : say('the repair {repair, select, holds {holds} fails {fails} other {cannot be told}}', {
          repair: answer.repair,
        }),
    `${say(answer.gravity)}; ${answer.whatToDo === 'nothing' ? say('nothing to do') : say(answer.whatToDo)}`,
  ]
    .filter((word) => word !== undefined)
    .join(' · ');
}

const gravityOf = ({ answer }: Finding) => (answer.is === 'seen' ? answer.gravity : undefined);

function findingsWords(findings: readonly Finding[], { say }: Language = english): string {
  const seen = findings.filter(({ answer, copiedFrom }) => answer.is === 'seen' && copiedFrom === undefined);
  const stops = seen.filter(({ answer }) => answer.is === 'seen' && answer.whatToDo === 'stops the job');
  return say(
    '{seen, plural, one {# finding} other {# findings}}, {stops, plural, one {# that stops} other {# that stop}} the job.',
    { seen: seen.length, stops: stops.length },
  );
}

const sentenceCase = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
