import { english, type Language, message, sayKnown } from '@becket/core';
import type { Job, StockItem } from '@becket/journal';
import type { OrderString } from './order-strings.ts';
import { lineOf, type SupplyLine, type SupplySource } from './supply-line.ts';
import type { WireCut } from './wire-cuts.ts';

const parts = ['stringing braid', 'felt', 'punchings', 'pin bushings'] as const;
type SoftPart = Job['softParts'][number];

/** As a stock keeps them: the same name in every language. */
const partNames = {
  'stringing braid': message('Stringing braid'),
  felt: message('Felt'),
  punchings: message('Punchings'),
  'pin bushings': message('Pin bushings'),
} as const satisfies Record<(typeof parts)[number], string>;

interface Counted {
  readonly strings: readonly OrderString[];
  readonly wires: readonly WireCut[];
  readonly share: number;
}

/**
 * Felts, braid, punchings, bushings and bridge pins, from the soft parts of the record, the sections and the survey.
 *
 * Braid and felt are counted by their length as found; bushings one a string of the section. What was found to be *none* or
 * not to apply is no line; what is unknown or was not said is a line without a quantity.
 */
export function softSupplies(job: Job, counted: Counted, language: Language = english): SupplyLine[] {
  const lines = parts.flatMap((part) => {
    const own = job.sections.map(({ section }) => ({
      section,
      said: job.softParts.find((one) => one.part === part && one.section === section),
    }));
    return [
      ...own.flatMap(({ section, said }) =>
        said === undefined ? [] : lineFor(part, { section, said, counted }, language),
      ),
      ...unsaid(
        part,
        own.filter(({ said }) => said === undefined).map(({ section }) => section),
        language,
      ),
    ];
  });
  return [...together(lines), ...bridgePins(job, counted, language)];
}

/** Sections of which nobody has said anything about a part: one line for all of them. */
function unsaid(part: (typeof parts)[number], sections: readonly string[], { say }: Language): SupplyLine[] {
  if (sections.length === 0) return [];
  const names = sections.map((section) => say("'{section}'", { section })).join(', ');
  return [
    {
      ...unknownLine(
        `${part} not said`,
        say('{part}, {count, plural, one {section} other {sections}} {names}', {
          part: say(partNames[part]),
          count: sections.length,
          names,
        }),
      ),
      because: say('nobody has said what was found'),
      from: [],
    },
  ];
}

const unknownLine = (id: string, what: string) => ({
  id,
  group: 'felts and bushings' as const,
  what,
  item: undefined,
  unit: 'piece' as const,
  needed: undefined,
  extra: [],
  total: undefined,
  assumed: [],
});

function lineFor(
  part: (typeof parts)[number],
  {
    section,
    said,
    counted: { strings, wires, share },
  }: { readonly section: string; readonly said: SoftPart; readonly counted: Counted },
  language: Language,
): SupplyLine[] {
  const { say, fixed } = language;
  const unknown = (why: string): SupplyLine[] => [
    {
      ...unknownLine(
        `${part} of ${section}`,
        say("{part}, section '{section}'", { part: say(partNames[part]), section }),
      ),
      because: why,
      from: [{ key: undefined, string: undefined, entries: [said.entry] }],
    },
  ];
  const { answer } = said;
  if (answer.is === 'none' || answer.is === 'does not apply') return [];
  if (answer.is !== 'known') return unknown(say('somebody looked and could not tell'));
  const sizeIn = (written: Language['fixed']) =>
    [answer.thickness_m, answer.width_m]
      .filter((value) => value !== undefined)
      .map((value) => `${written(value * 1000, 1)} mm`)
      .join(' × ');
  const name = [partNames[part], sizeIn(english.fixed), answer.colour].filter(Boolean).join(', ');
  const words = [say(partNames[part]), sizeIn(fixed), answer.colour && sayKnown(answer.colour, language)]
    .filter(Boolean)
    .join(', ');
  const counted = (item: StockItem, needed: number, because: string): SupplyLine[] => {
    const spare = Math.ceil(share * needed - 1e-9);
    return [
      {
        ...lineOf(item, 'felts and bushings', language),
        what: words,
        needed,
        extra: spare === 0 ? [] : [{ name: spareWords(share, language), quantity: spare }],
        total: needed + spare,
        because,
        assumed: [],
        from: [{ key: undefined, string: undefined, entries: [said.entry] }],
      },
    ];
  };
  if (part === 'pin bushings') {
    const own = strings.filter((string) => string.section === section).length;
    return counted({ kind: 'other', name, unit: 'piece' }, own, say("one a pin of '{section}'", { section }));
  }
  if (part === 'punchings') {
    const own = wires.filter((wire) => wire.strings[0]?.section === section).length;
    return unknown(
      say(
        '{part} was found, but not how many; one a hitch pin would be {count}. Count them before the strip.',
        { part: words, count: own },
      ),
    );
  }
  if (answer.length_m === undefined)
    return unknown(say('{part} was found, but not how long it is', { part: words }));
  return counted(
    { kind: 'other', name, unit: 'mm' },
    Math.ceil(answer.length_m * 1000 - 1e-6),
    say("length as found in '{section}'", { section }),
  );
}

/** The same thing wanted in several sections is one line. */
function together(lines: readonly SupplyLine[]): SupplyLine[] {
  const byId = new Map<string, SupplyLine>();
  for (const line of lines) {
    const known = byId.get(line.id);
    if (known?.total === undefined || line.total === undefined) byId.set(line.id, line);
    else
      byId.set(line.id, {
        ...known,
        needed: (known.needed ?? 0) + (line.needed ?? 0),
        extra: known.extra.map((one, index) => ({
          ...one,
          quantity: one.quantity + (line.extra[index]?.quantity ?? 0),
        })),
        total: known.total + line.total,
        because: `${known.because}; ${line.because}`,
        from: [...known.from, ...line.from],
      });
  }
  return [...byId.values()];
}

/** Two a string of the place where the survey says that they are loose and have to be seen to. */
function bridgePins(job: Job, { strings, share }: Counted, language: Language): SupplyLine[] {
  const findings = job.findings.filter(
    ({ thing, answer }) => thing === 'bridge-pins' && answer.is === 'seen' && answer.whatToDo !== 'nothing',
  );
  if (findings.length === 0) return [];
  const own = strings.filter(({ key, section }) =>
    findings.some(
      ({ place }) =>
        (place.section === undefined || place.section === section) &&
        (place.key === undefined || place.key === key),
    ),
  );
  const needed = 2 * own.length;
  const spare = Math.ceil(share * needed - 1e-9);
  const entries = findings.map(({ entry }) => entry);
  return [
    {
      ...lineOf(
        { kind: 'other', name: message('Bridge pins'), unit: 'piece' },
        'felts and bushings',
        language,
      ),
      needed,
      extra: spare === 0 ? [] : [{ name: spareWords(share, language), quantity: spare }],
      total: needed + spare,
      because: language.say(
        'two a string where the survey found them loose; measure their diameter and length before ordering',
      ),
      assumed: [],
      from: own.map(({ key, string }): SupplySource => ({ key, string, entries })),
    },
  ];
}

const spareWords = (share: number, { say }: Language): string =>
  say('spare {percent} %', { percent: Math.round(100 * share) });
