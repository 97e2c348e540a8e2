import { english, type Language, noteName } from '@becket/core';
import type { frontTerminations, Job, Section } from '@becket/journal';
import { checkSections, describeSections, readJob, type TaskContext, takeBackEntry } from '@becket/tasks';
import { keysBetween } from './runs.ts';

/** A section as it is being typed. */
export interface SectionForm {
  readonly name: string;
  readonly firstNote: string;
  readonly lastNote: string;
  readonly bridge: string;
  readonly frontTermination: (typeof frontTerminations)[number];
}

export function formOfSection(section: Section): SectionForm {
  return {
    name: section.section,
    firstNote: noteName(section.firstKey),
    lastNote: noteName(section.lastKey),
    bridge: section.bridge === 'unknown' ? '' : section.bridge,
    frontTermination: section.frontTermination,
  };
}

/** What a typed section says. Throws: SyntaxError or RangeError in one sentence. */
export function readSectionForm(form: SectionForm, language: Language = english) {
  const { say } = language;
  const section = form.name.trim();
  if (section === '')
    throw new SyntaxError(
      say(
        'Cannot keep this section: a name is needed, none was found. Call it what you call it, such as bass.',
      ),
    );
  return {
    section,
    ...keysBetween(form.firstNote, form.lastNote, language),
    bridge: form.bridge.trim() || 'unknown',
    frontTermination: form.frontTermination,
  };
}

/**
 * Keeps a section; with `before` it stands in place of that one, even under another name.
 * Throws: RangeError when it overlaps another or leaves the compass, or when something is noted under a name that it would
 * lose; nothing is changed then.
 */
export async function keepSection(
  context: TaskContext,
  job: string,
  {
    state,
    form,
    before,
    reason,
  }: { state: Job; form: SectionForm; before: Section | undefined; reason: string | undefined },
  language: Language = english,
): Promise<Job> {
  const section = { ...readSectionForm(form, language), ...(reason ? { reason } : {}) };
  const isRenamed = before !== undefined && before.section !== section.section;
  if (!isRenamed) return describeSections(context, job, [section]);
  requireNothingUnder(state, before.section, language);
  // The new name is tried against all the others first, so that a section that does not fit costs nothing.
  checkSections(
    { ...state, sections: state.sections.filter((one) => one.section !== before.section) },
    [section],
    language,
  );
  await takeSectionOut(context, job, before, {
    reason,
    otherwise: language.say('renamed to {section}', { section: section.section }),
  });
  return describeSections(context, job, [section]);
}

/** What is noted of a section says so by its name: under another one nobody would find it again. */
function requireNothingUnder(state: Job, section: string, { say }: Language): void {
  const placed = [
    ...state.observations,
    ...state.readings,
    ...state.absences,
    ...state.findings,
    ...state.photos,
    ...state.samples,
    ...state.damages,
  ].filter(({ place }) => place.section === section);
  const parts = [...state.softParts, ...state.plateParts].filter((one) => one.section === section);
  const count = placed.length + parts.length;
  if (count === 0) return;
  throw new RangeError(
    say(
      "Cannot rename the section '{section}' or take it out: {count, plural, one {# thing is} other {# things are}} noted under that name and would lose {count, plural, one {its} other {their}} place. Keep the name, or take back first what is noted of it under Seen, in the survey and with the photos.",
      { section, count },
    ),
  );
}

/**
 * Takes a section out, with every earlier description of that name: otherwise the one before would stand again.
 * Throws: RangeError when something is noted under its name; nothing is changed then.
 */
export async function takeSectionOut(
  context: TaskContext,
  job: string,
  section: Section,
  said: { readonly reason?: string | undefined; readonly otherwise: string },
): Promise<Job> {
  requireNothingUnder(await readJob(context, job), section.section, context.language ?? english);
  let standing: Section | undefined = section;
  let state: Job | undefined;
  while (standing !== undefined) {
    state = await takeBackEntry(context, job, standing.entry, said);
    standing = state.sections.find((one) => one.section === section.section);
  }
  return state!;
}
