import { english, type Language, noteName, parseNote } from '@becket/core';
import type { frontTerminations, Job, Section } from '@becket/journal';
import { checkSections, describeSections, type TaskContext, withdrawEntry } from '@becket/tasks';

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
    firstKey: parseNote(form.firstNote, undefined, language),
    lastKey: parseNote(form.lastNote, undefined, language),
    bridge: form.bridge.trim() || 'unknown',
    frontTermination: form.frontTermination,
  };
}

/**
 * Keeps a section; with `before` it stands in place of that one, even under another name.
 * Throws: RangeError when it overlaps another or leaves the compass; nothing is changed then.
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
  // The new name is tried against all the others first, so that a section that does not fit costs nothing.
  checkSections(
    { ...state, sections: state.sections.filter((one) => one.section !== before.section) },
    [section],
    language,
  );
  await takeSectionOut(
    context,
    job,
    before,
    reason ?? language.say('renamed to {section}', { section: section.section }),
  );
  return describeSections(context, job, [section]);
}

/** Takes a section out, with every earlier description of that name: otherwise the one before would stand again. */
export async function takeSectionOut(
  context: TaskContext,
  job: string,
  section: Section,
  reason: string,
): Promise<Job> {
  let standing: Section | undefined = section;
  let state: Job | undefined;
  while (standing !== undefined) {
    state = await withdrawEntry(context, job, standing.entry, reason);
    standing = state.sections.find((one) => one.section === section.section);
  }
  return state!;
}
