import { analyseScale, metres, noteName, stringTension } from '@becket/core';
import { asProposedNote, foldJob, type Job, scaleDigest, scaleNotesOf } from '@becket/journal';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { BulletList, PageTree, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/pdf.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { smallJob } from '../testing/small-job.ts';
import { wholeCompassJob } from '../testing/whole-compass-job.ts';
import { scaleComparisonPaper } from './scale-comparison-paper.ts';

const stand = { entry: '01HF7YATFSGGGGGGGGGGGGGGG0', step: 9000, at: '2026-03-09T10:00:00Z', by: 'Ada' };

/** The whole compass with every plain wire from A4 to C5 two sizes of 25 µm thinner. */
function withProposal({ isChosen = false } = {}): Job {
  const found = wholeCompassJob();
  const notes = scaleNotesOf(found, 'as found').notes.map(({ key, string }) =>
    string.kind === 'plain' && key >= 49 && key <= 52
      ? { ...asProposedNote(key, string, 'by hand'), gauge_m: string.diameter - 5e-5 }
      : asProposedNote(key, string, 'as found'),
  );
  const job: Job = {
    ...found,
    proposals: [
      { ...stand, kind: 'scale-proposed', v: 1, name: 'lighter middle', notes, madeFrom: 'a'.repeat(64) },
    ],
  };
  if (!isChosen) return job;
  const digest = scaleDigest(job, scaleNotesOf(job, stand.entry));
  return {
    ...job,
    chosenScale: {
      ...stand,
      kind: 'scale-chosen',
      v: 1,
      scale: stand.entry,
      reason: 'the middle was too loud',
      digest,
    },
  };
}

const tree = scaleComparisonPaper(withProposal({ isChosen: true }), testOptions);
const tableOf = (paper: PageTree, title: RegExp): Table =>
  paper.blocks.find((block): block is Table => block.is === 'table' && title.test(block.title ?? ''))!;

describe('scaleComparisonPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(tree, null, 1)).toMatchFileSnapshot(
      '../saved-trees/scale-comparison-chosen.json',
    );
    const open = scaleComparisonPaper(withProposal(), { ...testOptions, firstUnit: 'in' });
    await expect(JSON.stringify(open, null, 1)).toMatchFileSnapshot(
      '../saved-trees/scale-comparison-open.json',
    );
  });

  it('lists the notes that change and no other, with tensions by the law of the string', () => {
    const changes = tableOf(tree, /another size/);
    const cells = changes.rows.flatMap((row) => ('cells' in row ? [row.cells] : []));
    expect(cells.map(([note]) => note)).toEqual([49, 50, 51, 52].map(noteName));
    // T = π·ρ·(d·L·f)²: the figure that is printed, from the string itself and not from the analysis.
    const { string, frequency } = scaleNotesOf(withProposal(), stand.entry).notes.find(
      ({ key }) => key === 49,
    )!;
    if (string.kind !== 'plain') throw new Error('A4 is plain');
    const { diameter, speakingLength } = string;
    const [before, after] = [5e-5, 0].map((more) =>
      stringTension({ diameter: metres(diameter + more), speakingLength, frequency }).toFixed(0),
    );
    expect(cells[0]!.slice(4, 6)).toEqual([before, after]);
  });

  it('adds up loads to the sum of the strings', () => {
    const job = withProposal();
    const loads = tableOf(tree, /plate and bridges/).rows.find((row) => 'tone' in row && row.tone === 'sum')!;
    const of = (which: string) =>
      analyseScale(scaleNotesOf(job, which).notes, { uncertainties: 'left out' }).notes.reduce(
        (sum, { tension, note }) => sum + note.strings * tension,
        0,
      );
    expect('cells' in loads && loads.cells.slice(1, 3)).toEqual(
      // 1 lbf = 4.4482216 N. Source: NIST SP 811 (2008), appendix B.
      ['as found', stand.entry].map(
        (which) => `${(of(which) / 1000).toFixed(1)} kN (${Math.round(of(which) / 4.4482216)} lbf)`,
      ),
    );
  });

  it('tells the owner in words what the figures say, and what was chosen and why', () => {
    const words = tree.blocks.find((block): block is BulletList => block.is === 'list')!.items.join(' ');
    expect(words).toMatch(/4 notes get another size of wire than before, of 88 that can be compared/);
    expect(words).toMatch(/less than before/);
    expect(JSON.stringify(tree)).toContain('because “the middle was too loud”');
  });

  it('judges both scales by the table that the proposal was planned with, and names it', () => {
    const job = withProposal();
    const named = {
      ...job,
      proposals: job.proposals.map((one) => ({ ...one, strengthTable: 'EN 10270-1 SM minimum' })),
    };
    const paper = JSON.stringify(scaleComparisonPaper(named, testOptions));
    expect(paper).toContain('Break load by the table EN 10270-1 SM minimum');
    expect(paper).not.toContain('A228');
  });

  it('prints what spoke against it when it was computed, and no empty box where nothing did', () => {
    const against = (saidAgainst: string[]) =>
      JSON.stringify(
        scaleComparisonPaper(
          { ...withProposal(), proposals: withProposal().proposals.map((one) => ({ ...one, saidAgainst })) },
          testOptions,
        ),
      );
    expect(against(['Its load would rise by 2.0 %.'])).toMatch(/What spoke against.*rise by 2\.0 %/);
    expect(against([])).not.toContain('What spoke against');
  });

  it('says what was proved of it, never less than what is left open, and that nothing was of one made by hand', () => {
    const proof = (mostBetter: number | undefined) =>
      JSON.stringify(
        scaleComparisonPaper(
          { ...withProposal(), proposals: withProposal().proposals.map((one) => ({ ...one, mostBetter })) },
          testOptions,
        ),
      );
    expect(proof(0)).toContain('Proved: by the weights and limits');
    expect(proof(0.0231)).toContain('a better one could lower its sum by 2.4 % at most');
    expect(proof(undefined)).toContain('none: it was made or changed by hand');
    expect(proof(undefined)).not.toContain('proved:');
  });

  it('warns where the chosen scale is no longer what was chosen', () => {
    const job = withProposal({ isChosen: true });
    const moved = { ...job, chosenScale: { ...job.chosenScale!, digest: 'c'.repeat(64) } };
    expect(JSON.stringify(scaleComparisonPaper(moved, testOptions))).toContain(
      'has changed since it was chosen',
    );
  });

  it('says so where there is nothing to compare', () => {
    const none = scaleComparisonPaper(smallJob(), testOptions);
    expect(JSON.stringify(none)).toContain('No other scale than the one that was found has been proposed');
    expect(none.machineTable.rows).toEqual([]);
    const unread = foldJob([
      {
        id: stand.entry,
        job: '01HF7YATFSGGGGGGGGGGGGGGG1',
        step: 1,
        at: stand.at,
        by: 'Ada',
        device: 'bench',
        fact: { kind: 'job-opened', v: 1, title: 'new' },
      },
    ]);
    expect(JSON.stringify(scaleComparisonPaper(unread, testOptions))).toContain('not described yet');
  });

  it.each(['A4', 'Letter'] as const)(
    'can be set on %s and read back, the first page by itself',
    async (size) => {
      const madeAt = new Date(testOptions.at);
      const { pages } = await readPdf(await renderPdf(tree, { size, madeAt, fonts: await fontsOnNode() }));
      expect(pages[0]!.words).toContain(withoutSpaces('In plain words'));
      expect(pages[0]!.words).toContain(withoutSpaces('When to leave a scale alone'));
      expect(pages[0]!.words).not.toContain(withoutSpaces('String by string'));
      const rest = pages.map(({ words }) => words).join('');
      for (const text of [
        'How hard does each string pull?',
        'Plain wire it takes',
        'Notes that get another size',
      ])
        expect(rest).toContain(withoutSpaces(text));
    },
  );
});

describe('the scale comparison as CSV', () => {
  it('reads back one line a note, with both tensions and whether it changes', () => {
    const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(tree), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(88);
    expect(data.filter(({ is_changed }) => is_changed === 'yes').map(({ key }) => key)).toEqual([
      '49',
      '50',
      '51',
      '52',
    ]);
    expect(Number(data[48]!.after_wire_m)).toBeCloseTo(Number(data[48]!.before_wire_m) - 5e-5, 9);
  });
});
