import { inches, noteName } from '@becket/core';
import { pinFeels, pinRemedies } from '@becket/journal';
import {
  choosePinRemedy,
  logPinsDriven,
  type PinChoice,
  pinChoice,
  recordReadings,
  recordTestPin,
  setPinLimits,
} from '@becket/tasks';
import { useDeferredValue, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthText } from '../../parts/length-text.ts';
import { once } from '../../parts/once.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { PinRule } from './pin-rule.tsx';
import {
  lengthField,
  notesOn,
  pinDiameterOf,
  requiredNote,
  stringNumber,
  testPinOf,
  typedLength,
} from './pins-state.ts';
import { ReasonHere } from './reason-here.tsx';
import { torqueIn } from './torque-state.ts';

/** Which pins go in: as found, the rule, the limits, test pins, and what single pins need. */
export function PinsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const settled = useDeferredValue(job);
  const choice = useMemo(() => pinChoice(settled, { language }), [settled, language]);
  return (
    <section aria-labelledby="pins">
      <h2 id="pins">{say('Tuning pins')}</h2>
      <ul className="notice cautions">
        {choice.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <PinsAsFound choice={choice} unit={unit} />
      <PinRule choice={choice} />
      <Limits choice={choice} unit={unit} />
      <TestPins choice={choice} unit={unit} />
      <SinglePins choice={choice} unit={unit} />
      <Counts choice={choice} unit={unit} />
      <Driving choice={choice} unit={unit} />
    </section>
  );
}

interface PartProps {
  readonly choice: PinChoice;
  readonly unit: LengthUnit;
}

const strings = [
  { value: '1', words: '1' },
  { value: '2', words: '2' },
  { value: '3', words: '3' },
];

function PinsAsFound({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { fixed, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [reason, setReason] = useState('');
  const { scatter, groups, isMixed } = choice;
  const text = (length: number) => lengthText(length, unit, 'diameter', language);
  return (
    <section aria-labelledby="pins-found">
      <h3 id="pins-found">{say('As found, by micrometer')}</h3>
      <ReasonHere reason={reason} onChange={setReason} />
      <SmallForm
        label={say('Diameter of a pin')}
        fields={[
          { name: 'note', label: say('Note') },
          { name: 'string', label: say('[of a note] String'), options: strings },
          { name: 'value', label: say('Diameter ({unit})', { unit }), keys: 'decimal' },
        ]}
        start={{ note: noteName(job.piano?.firstKey ?? 1), string: '1', value: '' }}
        first="value"
        submit={say('Keep and go on')}
        isStrong
        onKeep={(values) => {
          const reading = pinDiameterOf(values, unit, reason, language);
          const kept = desk.runHere((context, id) => recordReadings(context, id, [reading]));
          return { next: { ...values, value: '', note: notesOn(job, values.note, 8, language) }, kept };
        }}
      />
      {scatter === undefined ? (
        <p className="faint">
          {say('No pin was measured yet. A few in every section show whether sizes are mixed.')}
        </p>
      ) : (
        <p>
          {say(
            '{count, plural, one {# pin} other {# pins}} measured: {smallest} to {largest}, middle {median}.',
            {
              count: scatter.count,
              smallest: text(scatter.smallest),
              largest: text(scatter.largest),
              median: text(scatter.median),
            },
          )}{' '}
          {isMixed && <strong>{say('Sizes are mixed: each keeps its own step.')}</strong>}
        </p>
      )}
      {groups.map((group) => (
        <section
          key={group.asFound}
          className="pin-group"
          aria-label={say('Pins found as {asFound}', { asFound: group.asFound })}
        >
          <h4>
            {sayNodes('Found as {size} {spread}', {
              size: group.asFound,
              spread: (
                <span className="faint">
                  {say('{pins} measured, {smallest} to {largest}', {
                    pins: group.pins.length,
                    smallest: text(group.smallest),
                    largest: text(group.largest),
                  })}
                </span>
              ),
            })}
          </h4>
          <p>{group.advice?.sentence ?? group.adviceRestsOn}</p>
          {group.advice !== undefined && <p className="faint">{group.adviceRestsOn}</p>}
          {group.doubtful > 0 && (
            <p className="question">
              {say('? {doubtful} of these lie between sizes: measure them again, away from the coil.', {
                doubtful: group.doubtful,
              })}
            </p>
          )}
          {group.candidates.length > 0 && (
            <TableFrame label={say('Sizes above {asFound}', { asFound: group.asFound })}>
              <table className="table">
                <thead>
                  <tr>
                    <th scope="col">{say('Size')}</th>
                    <th scope="col" className="number">
                      {say('Diameter')}
                    </th>
                    <th scope="col" className="number">
                      {say('Larger by')}
                    </th>
                    <th scope="col" className="number">
                      {say('Share below firm')}
                    </th>
                    <th scope="col">{say('What stands against it')}</th>
                  </tr>
                </thead>
                <tbody>
                  {group.candidates.map(
                    ({ label, diameter, larger, isAdvised, against, unknown, expected }) => (
                      <tr key={label} className={isAdvised ? 'is-advised' : undefined}>
                        <th scope="row" className="one-line">
                          {label}
                          {isAdvised && ` ◂ ${say('the rule')}`}
                        </th>
                        <td className="number">{text(diameter)}</td>
                        <td className="number">{text(larger)}</td>
                        <td className="number">
                          {expected === undefined ? (
                            <span className="faint">{say('no law yet')}</span>
                          ) : (
                            `${fixed(expected.shareBelowFirm * 100, 0)} %`
                          )}
                        </td>
                        <td>
                          {against.map((sentence) => (
                            <p key={sentence} className="warn">
                              ▲ {sentence}
                            </p>
                          ))}
                          {unknown.map((sentence) => (
                            <p key={sentence} className="faint">
                              ? {sentence}
                            </p>
                          ))}
                          {against.length + unknown.length === 0 && say('nothing known')}
                        </td>
                      </tr>
                    ),
                  )}
                </tbody>
              </table>
            </TableFrame>
          )}
        </section>
      ))}
    </section>
  );
}

function Limits({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { limits, lengths, lengthsNeed } = choice;
  const fields = [
    ['largest', say('Largest pin this block may take'), limits.largestDiameter],
    ['plateHole', say('Smallest hole in plate or bushing'), limits.plateHoleDiameter],
    ['holeDepth', say('Depth of the pin hole in the block'), limits.holeDepth],
    ['plate', say('Thickness of plate and bushing'), limits.plateThickness],
  ] as const;
  return (
    <section aria-labelledby="pin-limits">
      <h3 id="pin-limits">{say('Limits of block and plate')}</h3>
      <SmallForm
        key={limits.entry ?? 'none'}
        label={say('Limits of block and plate')}
        fields={fields.map(([name, label]) => ({
          name,
          label,
          hint: say('empty while not known'),
          keys: 'text' as const,
        }))}
        start={
          Object.fromEntries(
            fields.map(([name, , value]) => [name, lengthField(value, unit, language)]),
          ) as Record<(typeof fields)[number][0], string>
        }
        submit={say('Keep the limits')}
        onKeep={(values) => {
          const of = (name: (typeof fields)[number][0]) =>
            typedLength(values[name], unit, say('this limit'), language);
          const largestDiameter_m = of('largest');
          const plateHoleDiameter_m = of('plateHole');
          const holeDepth_m = of('holeDepth');
          const plateThickness_m = of('plate');
          const kept = desk.runHere((context, id) =>
            setPinLimits(context, id, {
              ...(largestDiameter_m === undefined ? {} : { largestDiameter_m }),
              ...(plateHoleDiameter_m === undefined ? {} : { plateHoleDiameter_m }),
              ...(holeDepth_m === undefined ? {} : { holeDepth_m }),
              ...(plateThickness_m === undefined ? {} : { plateThickness_m }),
            }),
          );
          return { next: values, kept };
        }}
      />
      {lengths === undefined ? (
        <p className="faint">
          {say('Which lengths fit is known once there is: {what}.', { what: lengthsNeed.join(', ') })}
        </p>
      ) : (
        <ul aria-label={say('Pin lengths')}>
          {lengths.map(({ label, fits, sentence }) => (
            <li key={label} className={fits ? undefined : 'faint'}>
              {fits ? '✓' : '▲'} {sentence}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function TestPins({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk } = useDesk();
  return (
    <section aria-labelledby="test-pins">
      <h3 id="test-pins">{say('Test pins')}</h3>
      <p className="faint">
        {say(
          'Drive a larger pin in the worst and in the best place, read its torque with no string on it, and do so before the set is bought.',
        )}
      </p>
      <SmallForm
        label={say('A test pin')}
        fields={[
          { name: 'note', label: say('Note') },
          { name: 'string', label: say('[of a note] String'), options: strings },
          { name: 'diameter', label: say('Diameter of the test pin ({unit})', { unit }), keys: 'decimal' },
          {
            name: 'length',
            label: say('Its length ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          { name: 'torque', label: say('Torque, no string'), keys: 'decimal' },
          {
            name: 'unit',
            label: say('Unit of the wrench'),
            options: [
              { value: 'in·lbf', words: 'in·lbf' },
              { value: 'N·m', words: 'N·m' },
            ],
          },
          {
            name: 'feel',
            label: say('The hand felt'),
            options: [
              { value: '', words: say('nothing to say') },
              ...pinFeels.map((value) => ({ value, words: say(value) })),
            ],
          },
          { name: 'remark', label: say('Remark'), hint: say('may stay empty') },
        ]}
        start={{
          note: '',
          string: '1',
          diameter: '',
          length: '',
          torque: '',
          unit: 'in·lbf',
          feel: '',
          remark: '',
        }}
        submit={say('Keep the test pin')}
        onKeep={(values) => {
          const pin = testPinOf(values, unit, language);
          const kept = desk.runHere((context, id) => recordTestPin(context, id, pin));
          return { next: { ...values, note: '', torque: '', feel: '', remark: '' }, kept };
        }}
      />
      <p>{choice.lawSentence}</p>
      {choice.testPins.length > 0 && (
        <ul aria-label={say('Test pins, kept')}>
          {choice.testPins.map(({ entry, name, diameter, torque, gripBefore, feel, leftOutBecause }) => (
            <li key={entry}>
              {sayNodes(
                '{pin}: {diameter} held {torque}{before, select, none {} other {, before {before}}}{feel, select, none {} other {; felt: {feel}}}',
                {
                  pin: <strong>{name}</strong>,
                  diameter: lengthText(diameter, unit, 'diameter', language),
                  torque: torqueIn(torque, unit, language),
                  before: gripBefore === undefined ? 'none' : torqueIn(gripBefore, unit, language),
                  feel: feel === undefined ? 'none' : say(feel),
                },
              )}
              {leftOutBecause !== undefined && <span className="question"> ? {leftOutBecause}</span>}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', { words: say('test pin {name}', { name }) })}
              />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function SinglePins({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const open = choice.suggested.filter(
    ({ key, string }) => !choice.remedies.some((one) => one.key === key && one.string === (string ?? 1)),
  );
  return (
    <section aria-labelledby="single-pins">
      <h3 id="single-pins">{say('Single pins that need something of their own')}</h3>
      {open.length > 0 && (
        <ul className="plain-list" aria-label={say('Suggested')}>
          {open.map(({ key, string, name, remedy, diameter, because }) => (
            <li key={name} className="survey-line" data-gravity="clear">
              <p>
                {sayNodes('{pin}: {remedy}{diameter, select, none {} other { of {diameter}}}', {
                  pin: <strong>{name}</strong>,
                  remedy: say(remedy),
                  diameter:
                    diameter === undefined ? 'none' : lengthText(diameter, unit, 'diameter', language),
                })}
                . {because}
              </p>
              <button
                type="button"
                className="button"
                aria-label={say('Choose {remedy} for {name}', { remedy: say(remedy), name })}
                onClick={once(() =>
                  desk.run((context, id) =>
                    choosePinRemedy(context, id, {
                      key,
                      string: string ?? 1,
                      remedy,
                      ...(diameter === undefined ? {} : { pinDiameter_m: diameter }),
                    }),
                  ),
                )}
              >
                {say('Choose it')}
              </button>
            </li>
          ))}
        </ul>
      )}
      {choice.remedies.length > 0 && (
        <ul aria-label={say('Chosen')}>
          {choice.remedies.map(({ entry, key, string, remedy, pinDiameter_m, note }) => (
            <li key={entry}>
              {sayNodes('{pin}: {remedy}{diameter, select, none {} other { of {diameter}}}', {
                pin: <strong>{say('{note} string {string}', { note: noteName(key), string })}</strong>,
                remedy: say(remedy),
                diameter:
                  pinDiameter_m === undefined
                    ? 'none'
                    : lengthText(pinDiameter_m, unit, 'diameter', language),
              })}
              {note !== undefined && `; ${note}`}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', {
                  words: say('{remedy} of {note} string {string}', {
                    remedy: say(remedy),
                    note: noteName(key),
                    string,
                  }),
                })}
              />
            </li>
          ))}
        </ul>
      )}
      <SmallForm
        label={say('A pin of its own')}
        fields={[
          { name: 'note', label: say('Note') },
          { name: 'string', label: say('[of a note] String'), options: strings },
          {
            name: 'remedy',
            label: say('It gets'),
            options: pinRemedies.map((value) => ({ value, words: say(value) })),
          },
          {
            name: 'diameter',
            label: say('Pin diameter ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          { name: 'remark', label: say('Remark'), hint: say('may stay empty') },
        ]}
        start={{ note: '', string: '1', remedy: 'larger pin', diameter: '', remark: '' }}
        submit={say('Choose it')}
        onKeep={(values) => {
          const diameter = typedLength(values.diameter, unit, say('the pin’s diameter'), language);
          const key = requiredNote(values.note, say('this'), language);
          const kept = desk.runHere((context, id) =>
            choosePinRemedy(context, id, {
              key,
              string: stringNumber(values.string, language),
              remedy: values.remedy as (typeof pinRemedies)[number],
              ...(diameter === undefined ? {} : { pinDiameter_m: diameter }),
              ...(values.remark.trim() === '' ? {} : { note: values.remark.trim() }),
            }),
          );
          return { next: { ...values, note: '', remark: '' }, kept };
        }}
      />
      {job.unisons.size === 0 && (
        <p className="faint">{say('Describe the stringing first: it says which pins there are.')}</p>
      )}
    </section>
  );
}

function Counts({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { say } = language;
  const { counts } = choice;
  return (
    <section aria-labelledby="pin-counts">
      <h3 id="pin-counts">{say('Pins to buy, without spares')}</h3>
      {counts.pins === 0 ? (
        <p className="faint">{say('Pins can be counted once the stringing is described.')}</p>
      ) : (
        <>
          <ul>
            {counts.bySize.map(({ label, diameter, pins, byRemedy, assumed }) => (
              <li key={label ?? 'no size yet'}>
                <strong>
                  {pins} × {label ?? say('no size yet')}
                </strong>
                {diameter !== undefined && `, ${lengthText(diameter, unit, 'diameter', language)}`}{' '}
                <span className="faint">
                  {[
                    byRemedy > 0 ? say('{pins} by a choice of their own', { pins: byRemedy }) : undefined,
                    assumed > 0
                      ? say('{pins} assumed to be as the nearest measured pin', { pins: assumed })
                      : undefined,
                  ]
                    .filter((word) => word !== undefined)
                    .join('; ')}
                </span>
              </li>
            ))}
          </ul>
          {counts.bushings + counts.plugs > 0 && (
            <p>
              {say('{bushings} bushings, {plugs} plugs.', { bushings: counts.bushings, plugs: counts.plugs })}
            </p>
          )}
          <p className="faint">
            {say('{measured} of {pins} pins were measured.', {
              measured: counts.measured,
              pins: counts.pins,
            })}
          </p>
        </>
      )}
    </section>
  );
}

function Driving({ choice, unit }: PartProps) {
  const language = useLanguage();
  const { localMoment, say, sayNodes } = language;
  const { desk } = useDesk();
  const { driving } = choice;
  const start =
    choice.counts.bySize.find(({ diameter }) => diameter !== undefined)?.diameter ?? inches(0.286);
  return (
    <section aria-labelledby="driving">
      <h3 id="driving">{say('Driven, in order')}</h3>
      <p className="faint">
        {say('{driven} of {pins} pins are driven.', { driven: driving.pinsDriven, pins: driving.pins })}
        {driving.left.length > 0 && driving.pinsDriven > 0 && (
          <>
            {' '}
            {say('Left: {notes}.', {
              notes: driving.left
                .map(({ firstKey, lastKey }) =>
                  firstKey === lastKey
                    ? noteName(firstKey)
                    : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) }),
                )
                .join(', '),
            })}
          </>
        )}
      </p>
      <SmallForm
        label={say('Pins driven')}
        fields={[
          { name: 'from', label: say('From note') },
          { name: 'to', label: say('to note') },
          { name: 'diameter', label: say('Pin diameter ({unit})', { unit }), keys: 'decimal' },
          {
            name: 'length',
            label: say('Pin length ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          { name: 'remark', label: say('Remark'), hint: say('may stay empty') },
        ]}
        start={{ from: '', to: '', diameter: lengthField(start, unit, language), length: '', remark: '' }}
        submit={say('Log them')}
        onKeep={(values) => {
          const firstKey = requiredNote(values.from, say('these pins'), language);
          const lastKey =
            values.to.trim() === '' ? firstKey : requiredNote(values.to, say('these pins'), language);
          const diameter = typedLength(values.diameter, unit, say('the pin’s diameter'), language);
          const length = typedLength(values.length, unit, say('the pin’s length'), language);
          if (diameter === undefined)
            throw new RangeError(
              say('Cannot log these pins: their diameter is needed, nothing was found. Type it.'),
            );
          const kept = desk.runHere((context, id) =>
            logPinsDriven(context, id, {
              firstKey,
              lastKey,
              pinDiameter_m: diameter,
              ...(length === undefined ? {} : { pinLength_m: length }),
              ...(values.remark.trim() === '' ? {} : { note: values.remark.trim() }),
            }),
          );
          return { next: { ...values, from: '', to: '', remark: '' }, kept };
        }}
      />
      {driving.lines.length > 0 && (
        <ol aria-label={say('Driving log')}>
          {driving.lines.map(({ entry, notes, pins, diameter, at, by, note }) => (
            <li key={entry}>
              {sayNodes('{notes}, {pins} pins, {diameter} {when}', {
                notes,
                pins,
                diameter: `${lengthText(diameter, unit, 'diameter', language)}${note === undefined ? '' : `; ${note}`}`,
                when: (
                  <span className="faint">
                    {localMoment(at)}, {by}
                  </span>
                ),
              })}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', { words: say('pins {notes}', { notes }) })}
              />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
