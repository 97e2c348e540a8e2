import { type Job, type SurveyPart, surveyThings } from '@becket/journal';
import type { Plan, PlanPoint } from './plan-geometry.ts';

export type SeenFinding = Job['findings'][number] & { readonly answer: { readonly is: 'seen' } };

/** What the survey saw, drawn on the plan: nearest to its part of the piano, on the string nearest to its place. */
export interface FindingMark {
  readonly finding: SeenFinding;
  readonly at: PlanPoint;
}

/** How far along a string, from its front termination, each part is drawn; only the order of the parts is to scale. */
const along: Record<SurveyPart, number> = {
  'pin-block': -0.06,
  terminations: 0,
  'soft-parts': 0.12,
  action: 0.12,
  plate: 0.35,
  ribs: 0.6,
  soundboard: 0.7,
  bridges: 1,
};

/** Findings of today's survey that were seen; copies of earlier surveys are left out. */
export function seenFindings(job: Job): SeenFinding[] {
  return job.findings.filter(
    (finding): finding is SeenFinding => finding.answer.is === 'seen' && finding.copiedFrom === undefined,
  );
}

/** Marks of all findings; those at one place are drawn side by side. */
export function findingMarks(job: Job, plan: Plan): FindingMark[] {
  const lines = [...plan.lines].sort((a, b) => a.key - b.key);
  if (lines.length === 0) return [];
  const taken = new Map<string, number>();
  return seenFindings(job).map((finding) => {
    const { key, section } = finding.place;
    const own =
      key !== undefined
        ? lines.filter((line) => line.key === key)
        : section !== undefined
          ? lines.filter((line) => line.section === section)
          : lines;
    const line = middleOf(own.length === 0 ? lines : own);
    const { part } = surveyThings[finding.thing];
    const share = along[part];
    const before = taken.get(`${line.key}/${part}`) ?? 0;
    taken.set(`${line.key}/${part}`, before + 1);
    return {
      finding,
      at: {
        x: line.front.x + share * (line.back.x - line.front.x) + before * 0.05,
        y: Math.max(line.front.y - 0.02, line.front.y + share * (line.back.y - line.front.y)),
      },
    };
  });
}

const middleOf = <T>(list: readonly T[]): T => list[Math.floor(list.length / 2)]!;

/** Findings that belong to a note: its own, those of its section, and those of the whole piano last. */
export function findingsOfNote(job: Job, note: { key: number; section: string | undefined }): SeenFinding[] {
  const rank = ({ place }: SeenFinding) =>
    place.key === note.key ? 0 : place.key !== undefined ? 3 : place.section === undefined ? 2 : 1;
  return seenFindings(job)
    .filter(
      (finding) =>
        rank(finding) < 3 &&
        (finding.place.section === undefined ||
          finding.place.key === note.key ||
          finding.place.section === note.section),
    )
    .sort((a, b) => rank(a) - rank(b));
}
