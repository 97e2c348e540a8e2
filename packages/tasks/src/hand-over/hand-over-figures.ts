import { english, type Language, metres, radians } from '@becket/core';
import {
  type Entry,
  foldHandOver,
  foldSettling,
  foldStringing,
  type Job,
  offsetOf,
  type Settling,
  type StandingReading,
  scaleDigest,
  strungDeviations,
  strungScale,
} from '@becket/journal';
import type { BearingSection, BearingSpread, FinalPitch, HandOverFigures } from '@becket/papers';
import { pinTorqueMap } from '../appraise/pin-torque-map.ts';
import { deviationInWords } from './deviation-words.ts';
import { stillOpen } from './still-open.ts';
import { wantedWires } from './wanted-wires.ts';
import { whatWasDone } from './what-was-done.ts';

/**
 * What the hand-over record prints. What was said at the hand-over is printed as it was said; before there is one, it is as
 * the job stands now.
 */
export function handOverFigures(
  job: Job,
  { entries, today }: { entries: readonly Entry[]; today: string },
  language: Language = english,
): HandOverFigures {
  const stringing = foldStringing(entries);
  const settling = foldSettling(entries);
  const handOver = foldHandOver(entries);
  const scale = strungScale(job);
  const wanted = wantedWires(job);
  const digest = scaleDigest(job, { notes: scale.notes.map(({ note }) => note) });
  return {
    handOver,
    scale,
    wanted,
    scaleDigest: digest,
    changedSince:
      handOver?.scaleDigest === undefined || handOver.scaleDigest === digest
        ? undefined
        : language.say(
            'The strings below are not those of the hand-over of {day}: a reading was added or changed since.',
            { day: language.day(handOver.on) },
          ),
    done: whatWasDone(job, { stringing, settling, scale }, language),
    deviations:
      handOver?.deviations ??
      strungDeviations(job, scale, wanted).map((deviation) => ({
        what: deviationInWords(deviation, language),
      })),
    stillOpen:
      handOver?.stillOpen ??
      stillOpen(job, { stringing, settling, scale, today }, language).map(({ sentence }) => sentence),
    torque: pinTorqueMap(job, { stage: 'as strung', language }).sections,
    bearing: bearingOf(job),
    pitch: finalPitch(job, settling),
    settling,
  };
}

function bearingOf({ sections, readings }: Job): BearingSection[] {
  return sections.map(({ section, firstKey, lastKey }) => {
    const own = readings.filter(
      ({ stage, place }) =>
        stage === 'as strung' &&
        (place.section === section ||
          (place.key !== undefined && firstKey <= place.key && place.key <= lastKey)),
    );
    const rises = own.filter(({ quantity }) => quantity === 'bearing-rise');
    const spans = [...new Set(rises.map(({ span_m }) => span_m))];
    return {
      section,
      angles: spreadOf(
        own.filter(({ quantity }) => quantity === 'bearing-angle'),
        radians,
      ),
      rises: spans.map((span_m) => ({
        ...spreadOf(
          rises.filter((one) => one.span_m === span_m),
          metres,
        )!,
        span: span_m === undefined ? undefined : metres(span_m),
      })),
    };
  });
}

function spreadOf<Value extends number>(
  readings: readonly StandingReading[],
  brand: (value: number) => Value,
): BearingSpread<Value> | undefined {
  const values = readings.map(({ value_si }) => value_si);
  if (values.length === 0) return undefined;
  return {
    read: values.length,
    mean: brand(values.reduce((sum, value) => sum + value, 0) / values.length),
    lowest: brand(Math.min(...values)),
    highest: brand(Math.max(...values)),
  };
}

function finalPitch({ sections, readings }: Job, { passes }: Settling): FinalPitch[] {
  return sections.map(({ section, firstKey, lastKey }) => {
    const left = [...passes].reverse().flatMap((pass) => {
      const after = offsetOf(pass.sections.find((one) => one.section === section)?.after);
      return after === undefined
        ? []
        : [{ offset_cents: after.offset as number, pass: pass.pass, on: pass.on }];
    })[0];
    const latest = new Map(
      readings
        .filter(
          ({ stage, quantity, place }) =>
            stage === 'as strung' &&
            quantity === 'pitch-offset' &&
            place.key !== undefined &&
            firstKey <= place.key &&
            place.key <= lastKey,
        )
        .map(({ place, value_si, at }) => [place.key!, { key: place.key!, offset_cents: value_si, at }]),
    );
    return { section, left, read: [...latest.values()].sort((a, b) => a.key - b.key) };
  });
}
