import { noteName } from '../units/index.ts';
import { type Language, sayKnown } from '../words/index.ts';
import { at, limitText, percentWithin } from './finding-words.ts';
import { mostBy, runsOf } from './neighbouring-notes.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import { beyondLimit, forInformation, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits, ShopLimit } from './shop-policy.ts';

/** Runs of notes whose break share is over the ceiling, or under the floor of their kind of string. */
export function breakShareFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const ceiling = limits.highestBreakShare;
  const floors = { plain: limits.lowestBreakSharePlain, wound: limits.lowestBreakShareWound } as const;
  const high = runsOf(notes, (note) => note.breakShare > ceiling.value).map((run) =>
    breakShareFinding(
      run,
      { worst: mostBy(run, (note) => note.breakShare), limit: ceiling, side: 'over' },
      language,
    ),
  );
  const low = (['plain', 'wound'] as const).flatMap((kind) =>
    runsOf(notes, (note) => note.note.string.kind === kind && note.breakShare < floors[kind].value).map(
      (run) =>
        breakShareFinding(
          run,
          { worst: mostBy(run, (note) => -note.breakShare), limit: floors[kind], side: 'under' },
          language,
        ),
    ),
  );
  return [...high, ...low];
}

function breakShareFinding(
  run: readonly NoteAnalysis[],
  { worst, limit, side }: { worst: NoteAnalysis; limit: ShopLimit; side: 'over' | 'under' },
  language: Language,
): ScaleFinding {
  const standardUncertainty = worst.standardUncertainties?.breakShare;
  return beyondLimit(
    {
      rule: side === 'over' ? 'break share over the ceiling' : 'break share under the floor',
      keys: run.map((note) => note.key),
      figure: worst.breakShare,
      standardUncertainty,
      limit,
      remark: sayKnown(worst.strengthRemark, language),
      sentence: language.say(
        'Break share is {side, select, over {over the ceiling} other {under the floor}} {where}: {share}{notes, plural, =1 {} other {{side, select, over {, highest} other {, lowest}} at {worst}}} by {table} ({limit}).',
        {
          side,
          where: at(run, language),
          share: percentWithin(worst.breakShare, standardUncertainty, language),
          notes: run.length,
          worst: noteName(worst.key),
          table: sayKnown(worst.strengthTable, language),
          limit: limitText(limit, language),
        },
      ),
    },
    language,
  );
}

/** Runs of notes whose break share is an extension of the strength table. */
export function outsideTableFindings(notes: readonly NoteAnalysis[], language: Language): ScaleFinding[] {
  return runsOf(notes, (note) => !note.isWithinStrengthTable).map((run) => {
    const [first] = run as [NoteAnalysis, ...NoteAnalysis[]];
    return forInformation({
      rule: 'outside the strength table',
      keys: run.map((note) => note.key),
      figure: first.breakShare,
      unit: '1',
      remark: sayKnown(first.strengthRemark, language),
      sentence: language.say(
        'The wire {where} lies outside the sizes of {table}: its break share is an extension of that table and not a figure from it.',
        { where: at(run, language), table: sayKnown(first.strengthTable, language) },
      ),
    });
  });
}
