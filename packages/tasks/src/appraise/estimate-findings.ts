import { english, type Language } from '@becket/core';
import { type Job, surveyThings } from '@becket/journal';
import { placeInWords } from '@becket/papers';

/** Work that a line of the survey asks for, or would ask for if something comes to light. */
export interface WorkFromFinding {
  /** Stays the same while the line of the survey does. */
  readonly id: string;
  readonly what: string;
  /** Set where it is only done if this is found. */
  readonly ifFound: string | undefined;
  readonly because: string;
}

/**
 * Work that the survey leads to: firm for what was seen and is to be mended; conditional for what could not be seen and for
 * earlier repairs of which nobody can tell whether they hold. What stops the job is no line of an estimate.
 */
export function workFromFindings({ findings }: Job, language: Language = english): WorkFromFinding[] {
  const { say } = language;
  const ids = new Set<string>();
  const idOf = (kind: string, thing: string, place: string): string => {
    const base = `${kind}-${thing}-${slug(place)}`;
    let id = base;
    for (let count = 2; ids.has(id); count += 1) id = `${base}-${count}`;
    ids.add(id);
    return id;
  };
  return findings.flatMap(({ thing, place, answer }): WorkFromFinding[] => {
    const label = say(surveyThings[thing].label);
    const where = placeInWords(place, language);
    // The id stays the same in every language.
    const at = placeInWords(place, english);
    if (answer.is === 'could not be seen')
      return [
        {
          id: idOf('if-found', thing, at),
          what: say('Mend: {thing} ({place})', { thing: label, place: where }),
          ifFound: say('{thing} ({place}): damage that could not be seen at the visit', {
            thing: label,
            place: where,
          }),
          because: answer.note ?? say('it could not be seen at the visit'),
        },
      ];
    if (answer.is !== 'seen') return [];
    if (answer.repair === 'cannot tell')
      return [
        {
          id: idOf('if-found', thing, at),
          what: say('Mend anew: {thing} ({place})', { thing: label, place: where }),
          ifFound: say('the earlier repair does not hold: {what}', { what: answer.what }),
          because: say('nobody could tell at the visit whether the earlier repair holds'),
        },
      ];
    if (answer.whatToDo === 'nothing' || answer.whatToDo === 'stops the job') return [];
    return [
      {
        id: idOf('mend', thing, at),
        what: say('Mend: {thing} ({place}): {what}', { thing: label, place: where, what: answer.what }).slice(
          0,
          300,
        ),
        ifFound: undefined,
        because: say('seen at the visit ({gravity}); {when}', {
          gravity: say(answer.gravity),
          when: say(answer.whatToDo),
        }),
      },
    ];
  });
}

const slug = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9#]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
