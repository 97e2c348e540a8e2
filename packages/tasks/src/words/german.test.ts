import { english, type Language, millimetres } from '@becket/core';
import { type Job, stripCheck } from '@becket/journal';
import { beforeAll, describe, expect, it } from 'vitest';
import { decisionAdvice } from '../appraise/decision-advice.ts';
import { draftEstimate } from '../appraise/estimate.ts';
import { pinChoice } from '../appraise/pin-choice.ts';
import { readJob, type TaskContext } from '../context.ts';
import { appraiseDemoJob } from '../demo/invented-appraisal.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { readTable } from '../import/read-table.ts';
import { bringInJob } from '../job-file/bring-in-job.ts';
import { languageFor } from '../language-for.ts';
import { itemWords, quantityWords } from '../order/item-words.ts';
import { suppliesOf } from '../order/supplies.ts';
import { recordReadings } from '../record-reading.ts';
import { proposeScale } from '../scale/scale-commands.ts';
import { memoryContext } from '../testing/memory-context.ts';

let german: Language;
let context: TaskContext;
let job: Job;
beforeAll(async () => {
  german = await languageFor('de-DE');
  context = { ...memoryContext(), language: german };
  const { id } = await openDemoJob(context);
  await appraiseDemoJob(context, id);
  job = await readJob(context, id);
});

/** Says nothing of a message and only what was put into it: what is left of a sentence never went through `say`. */
const silent: Language = {
  ...english,
  say: (text: string, values = {}) =>
    Object.entries(values)
      .filter(([name]) => !text.includes(`{${name}, select`))
      .map(([, value]) => String(value))
      .join(' '),
};

/** Everything a person typed into this job, in which words may stand that nobody says. */
const typedWords = ({ sections, findings, title, customer }: Job): Set<string> =>
  new Set(
    [
      title,
      customer ?? '',
      ...sections.map(({ section }) => section),
      ...findings.flatMap(({ place, answer }) => [
        place.point ?? '',
        answer.is === 'seen' ? answer.what : 'note' in answer ? (answer.note ?? '') : '',
      ]),
    ].flatMap((text) => text.match(/\p{L}+/gu) ?? []),
  );

/** Words of these texts that are neither typed by a person nor a note, a unit or a listed size. */
function leaksIn(texts: readonly (string | undefined)[], typed: ReadonlySet<string>): string[] {
  const words = texts.flatMap((text) => text?.match(/(?<![\p{L}\d])\p{L}{2,}(?![\d\p{L}])/gu) ?? []);
  return [...new Set(words)].filter((word) => !typed.has(word) && !/^(mm|kg|in|lbf|US)$/.test(word));
}

describe('what the tasks say of the demo job', () => {
  it('goes through the language: decision, estimate, supplies and strip check', () => {
    const typed = typedWords(job);
    const advice = decisionAdvice(job, undefined, silent);
    const choice = pinChoice(job, { language: silent });
    const rates = {
      currency: 'EUR',
      pricesIncludeTax: true,
      labourTax_basisPoints: 1900,
      materialsTax_basisPoints: 1900,
    };
    const draft = draftEstimate(job, { rates, language: silent });
    const supplies = suppliesOf(job, undefined, silent);
    const check = stripCheck(job, silent);
    expect(advice.reasons.length).toBeGreaterThan(3);
    expect(draft.notPriced.length).toBeGreaterThan(10);
    expect(supplies.lines.length).toBeGreaterThan(10);
    expect(check.gaps.length).toBeGreaterThan(10);
    expect({
      advice: leaksIn(
        [
          ...advice.reasons.flatMap(({ sentence, figure, condition, deferTo, source }) => [
            sentence,
            figure,
            condition,
            deferTo,
            source,
          ]),
          ...advice.unknown.flatMap(({ what, wouldSettle, figure }) => [what, wouldSettle, figure]),
          ...advice.cautions,
          advice.source,
        ],
        typed,
      ),
      pins: leaksIn(
        [
          choice.lawSentence,
          ...choice.cautions,
          ...choice.groups.flatMap(({ adviceRestsOn, advice: own }) => [adviceRestsOn, own?.sentence]),
          ...choice.suggested.flatMap(({ because, name }) => [because, name]),
        ],
        typed,
      ),
      draft: leaksIn(
        [
          ...draft.notPriced.flatMap(({ what, ifFound, amount }) => [
            what,
            ifFound,
            amount.by === 'quantity' ? amount.unit : undefined,
          ]),
          ...draft.because.values(),
          ...draft.assumed,
        ],
        typed,
      ),
      supplies: leaksIn(
        [
          supplies.scale,
          supplies.scaleProblem,
          ...supplies.notCounted,
          ...supplies.lines.flatMap(({ what, because, assumed, extra }) => [
            what,
            because,
            ...assumed,
            ...extra.map(({ name }) => name),
          ]),
        ],
        typed,
      ),
      check: leaksIn(
        check.gaps.flatMap(({ sentence, what }) => [sentence, what]),
        typed,
      ),
    }).toEqual({ advice: [], pins: [], draft: [], supplies: [], check: [] });
  });
});

describe('leaksIn()', () => {
  it('finds what did not go through a language', () => {
    const { reasons } = decisionAdvice(job, undefined, english);
    const words = leaksIn(
      reasons.map(({ sentence }) => sentence),
      typedWords(job),
    );
    expect(words).toContain('Cracks');
    expect(words).not.toContain('mm');
  });
});

describe('typical sentences in German', () => {
  it('advise and price', () => {
    const advice = decisionAdvice(job, undefined, german);
    expect(advice.cautions[0]).toContain('Gussplatte und Tragwerk sind Sache einer Fachkraft');
    expect(advice.unknown.map(({ what }) => what).join(' ')).toMatch(/nicht|keine?/);
    const rates = {
      currency: 'EUR',
      pricesIncludeTax: true,
      labourTax_basisPoints: 1900,
      materialsTax_basisPoints: 1900,
    };
    const { notPriced } = draftEstimate(job, { rates, language: german });
    expect(notPriced.find(({ id }) => id === 'stringing')?.what).toBe('Neue Saiten aufziehen');
    // The id of a line is the same in every language: hours are learned under it.
    expect(notPriced.map(({ id }) => id)).toEqual(
      draftEstimate(job, { rates }).notPriced.map(({ id }) => id),
    );
  });

  it('name an item of the stock, which is one item in every language', () => {
    const wire = { kind: 'wire', diameter_m: millimetres(0.975) } as const;
    expect(itemWords(wire, german)).toMatch(/^Blanker Draht 0,975 mm \(0,0384 in/);
    const felt = { kind: 'other', name: 'Felt, 4.0 mm, red', unit: 'mm' } as const;
    expect(itemWords(felt, german)).toBe('Filz, 4.0 mm, red');
    expect(quantityWords(1520, 'g', german)).toBe('1,52 kg');
    expect(suppliesOf(job, undefined, german).lines.map(({ id }) => id)).toEqual(
      suppliesOf(job).lines.map(({ id }) => id),
    );
  });

  it('refuse, and leave everything as it was', async () => {
    const before = (await context.store.entries(job.id)).entries.length;
    const wrong = { quantity: 'wire-diameter', place: { key: 40 }, value: 104, unit: 'mm' } as const;
    await expect(recordReadings(context, job.id, [wrong])).rejects.toThrow(
      /Nicht eingetragen \(Drahtdurchmesser\): .* gefunden wurde 104 mm\. Einheit und Komma prüfen\./,
    );
    await expect(proposeScale(context, job.id, { name: ' ', notes: [] } as never)).rejects.toThrow(
      'Ein Name ist nötig',
    );
    await expect(
      bringInJob(context, { bytes: new TextEncoder().encode(''), fileName: 'leer.zip' }),
    ).rejects.toThrow('„leer.zip“ lässt sich nicht einlesen');
    expect(() => readTable(new Uint8Array(), 'leer.csv', german)).toThrow(
      'leer.csv ist nicht lesbar: Eine Tabelle ist nötig, die Datei ist leer.',
    );
    expect((await context.store.entries(job.id)).entries).toHaveLength(before);
  });
});
