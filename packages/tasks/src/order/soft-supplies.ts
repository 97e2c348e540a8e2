import type { Job, StockItem } from '@becket/journal';
import type { OrderString } from './order-strings.ts';
import { lineOf, type SupplyLine, type SupplySource } from './supply-line.ts';
import type { WireCut } from './wire-cuts.ts';

const parts = ['stringing braid', 'felt', 'punchings', 'pin bushings'] as const;
type SoftPart = Job['softParts'][number];

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
export function softSupplies(job: Job, counted: Counted): SupplyLine[] {
  const lines = parts.flatMap((part) => {
    const own = job.sections.map(({ section }) => ({
      section,
      said: job.softParts.find((one) => one.part === part && one.section === section),
    }));
    return [
      ...own.flatMap(({ section, said }) =>
        said === undefined ? [] : lineFor(part, section, said, counted),
      ),
      ...unsaid(
        part,
        own.filter(({ said }) => said === undefined).map(({ section }) => section),
      ),
    ];
  });
  return [...together(lines), ...bridgePins(job, counted)];
}

/** Sections of which nobody has said anything about a part: one line for all of them. */
function unsaid(part: SoftPart['part'], sections: readonly string[]): SupplyLine[] {
  if (sections.length === 0) return [];
  const names = sections.map((section) => `'${section}'`).join(', ');
  return [
    {
      ...unknownLine(
        `${part} not said`,
        `${capitalised(part)}, ${sections.length === 1 ? 'section' : 'sections'} ${names}`,
      ),
      because: 'nobody has said what was found',
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
  part: SoftPart['part'],
  section: string,
  said: SoftPart,
  { strings, wires, share }: Counted,
): SupplyLine[] {
  const unknown = (why: string): SupplyLine[] => [
    {
      ...unknownLine(`${part} of ${section}`, `${capitalised(part)}, section '${section}'`),
      because: why,
      from: [{ key: undefined, string: undefined, entries: [said.entry] }],
    },
  ];
  const { answer } = said;
  if (answer.is === 'none' || answer.is === 'does not apply') return [];
  if (answer.is !== 'known') return unknown('somebody looked and could not tell');
  const size = [answer.thickness_m, answer.width_m]
    .filter((value) => value !== undefined)
    .map((value) => `${(value * 1000).toFixed(1)} mm`)
    .join(' × ');
  const name = [capitalised(part), size, answer.colour].filter(Boolean).join(', ');
  const counted = (item: StockItem, needed: number, because: string): SupplyLine[] => {
    const spare = Math.ceil(share * needed - 1e-9);
    return [
      {
        ...lineOf(item, 'felts and bushings'),
        needed,
        extra: spare === 0 ? [] : [{ name: `spare ${Math.round(100 * share)} %`, quantity: spare }],
        total: needed + spare,
        because,
        assumed: [],
        from: [{ key: undefined, string: undefined, entries: [said.entry] }],
      },
    ];
  };
  if (part === 'pin bushings') {
    const own = strings.filter((string) => string.section === section).length;
    return counted({ kind: 'other', name, unit: 'piece' }, own, `one a pin of '${section}'`);
  }
  if (part === 'punchings') {
    const own = wires.filter((wire) => wire.strings[0]?.section === section).length;
    return unknown(
      `${name} was found, but not how many; one a hitch pin would be ${own}. Count them before the strip.`,
    );
  }
  if (answer.length_m === undefined) return unknown(`${name} was found, but not how long it is`);
  return counted(
    { kind: 'other', name, unit: 'mm' },
    Math.ceil(answer.length_m * 1000 - 1e-6),
    `length as found in '${section}'`,
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
function bridgePins(job: Job, { strings, share }: Counted): SupplyLine[] {
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
      ...lineOf({ kind: 'other', name: 'Bridge pins', unit: 'piece' }, 'felts and bushings'),
      needed,
      extra: spare === 0 ? [] : [{ name: `spare ${Math.round(100 * share)} %`, quantity: spare }],
      total: needed + spare,
      because:
        'two a string where the survey found them loose; measure their diameter and length before ordering',
      assumed: [],
      from: own.map(({ key, string }): SupplySource => ({ key, string, entries })),
    },
  ];
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
