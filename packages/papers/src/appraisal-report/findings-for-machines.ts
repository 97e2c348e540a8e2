import { noteName } from '@becket/core';
import { type Job, surveyParts, surveyThings } from '@becket/journal';
import type { MachineTable } from '../page-tree.ts';

/** The survey one row a line, in journal order; *sound*, *could not be seen* and *does not apply* as their own answers. */
export function findingsForMachines({ findings }: Job): MachineTable {
  return {
    columns: [
      'part',
      'thing',
      'section',
      'key',
      'note',
      'string',
      'point',
      'answer',
      'what',
      'gravity',
      'what_to_do',
      'extent_m',
      'repair',
      'remark',
      'photos',
      'copied_from',
      'at',
      'by',
    ],
    rows: findings.map(({ thing, place, answer, photos = [], copiedFrom, at, by }) => {
      const { key, string, section, point } = place;
      const seen = answer.is === 'seen' ? answer : undefined;
      return [
        surveyParts[surveyThings[thing].part],
        surveyThings[thing].label,
        section,
        key === undefined ? undefined : String(key),
        key === undefined ? undefined : noteName(key),
        string === undefined ? undefined : String(string),
        point,
        answer.is,
        seen?.what,
        seen?.gravity,
        seen?.whatToDo,
        seen?.extent_m === undefined ? undefined : String(seen.extent_m),
        seen?.repair,
        'note' in answer ? answer.note : undefined,
        photos.length === 0 ? undefined : photos.join(' '),
        copiedFrom,
        at,
        by,
      ];
    }),
  };
}
