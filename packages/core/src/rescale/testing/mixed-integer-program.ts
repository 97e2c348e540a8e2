import loadHighs, { type Highs } from 'highs';

/*
 * The choice of one candidate a note, written as a mixed-integer linear program and solved by HiGHS: another formulation in
 * another program, to hold against the dynamic programming of this folder. Used in tests and in the benchmark only.
 *
 * Solver: HiGHS (J. A. J. Hall, Q. Huangfu and others), npm highs 1.15.
 */

/** What one candidate of a note brings along. */
export interface ProgramCandidate {
  /** What choosing it costs by itself. */
  readonly cost: number;
  /** Candidates of one size make one run. */
  readonly size: number;
  /** What it adds to each limited sum. */
  readonly adds?: readonly number[] | undefined;
}

export interface ScheduleProgram {
  /** [note][candidate]. */
  readonly notes: readonly (readonly ProgramCandidate[])[];
  /** What candidate `b` of note i after candidate `a` of note i − 1 costs; Infinity where it is forbidden. */
  readonly pairCost: (note: number, a: number, b: number) => number;
  /** What three in a row cost; `note` is the middle one. */
  readonly bendCost: (note: number, a: number, b: number, c: number) => number;
  /** Fewest notes in a row that a size serves. */
  readonly minimumRun: (size: number) => number;
  /** Upper limit of each sum over `adds`. */
  readonly mostOf?: readonly number[] | undefined;
  /** Tied strings: how many strings a note has in its plan, whether a section begins there, what one tie costs. */
  readonly ties?:
    | {
        readonly strings: readonly number[];
        readonly begins: readonly boolean[];
        readonly cost: number;
        readonly isLooped: (note: number, candidate: number) => boolean;
      }
    | undefined;
}

export type ProgramAnswer =
  | { readonly status: 'optimal'; readonly objective: number; readonly choices: readonly number[] }
  | { readonly status: 'infeasible' };

/** Costs are small against the tolerances of a solver; the program is written in thousandths of thousandths. */
const COST_SCALE = 1e6;

let highs: Promise<Highs> | undefined;

/** Loads the solver once. */
export const loadedSolver = (): Promise<Highs> => {
  highs ??= loadHighs();
  return highs;
};

/**
 * The program as text.
 *
 *     y_i_a ∈ {0, 1}  candidate a at note i;  one each note
 *     z_i_a_b ≥ 0     a at i − 1 and b at i;      Σ_b z = y_{i−1}_a,  Σ_a z = y_i_b
 *     w_i_a_b_c ≥ 0   a, b, c at i − 1, i, i + 1; Σ_c w = z_i_a_b,    Σ_a w = z_{i+1}_b_c
 *
 * A product of choices is 1 exactly where all its choices are, so the squares of the bends become constants before w: exact,
 * not approximate. A run of a size begins with a pair of another size before it, and the pairs that began one within the
 * last r notes are no more than the size's share of this note: the tightest linear way to say "at least r in a row"
 * (D. Rajan and S. Takriti, IBM Research Report RC23628, 2005; from memory).
 */
export function programText(program: ScheduleProgram): string {
  const { notes, pairCost, bendCost, minimumRun, mostOf = [], ties } = program;
  const costs: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  const generals: string[] = [];
  const y = (note: number, a: number): string => `y_${note}_${a}`;
  const z = (note: number, a: number, b: number): string => `z_${note}_${a}_${b}`;
  const w = (note: number, a: number, b: number, c: number): string => `w_${note}_${a}_${b}_${c}`;
  const cost = (value: number, name: string): void => {
    if (value !== 0)
      costs.push(`${value < 0 ? '-' : '+'} ${Math.abs(value * COST_SCALE).toPrecision(17)} ${name}`);
  };
  const sum = (names: readonly string[]): string => (names.length === 0 ? `0 ${y(0, 0)}` : names.join(' + '));
  const row = (left: string): void => {
    rows.push(` r${rows.length}: ${left}`);
  };

  notes.forEach((candidates, note) => {
    candidates.forEach((candidate, a) => {
      binaries.push(y(note, a));
      cost(candidate.cost, y(note, a));
    });
    row(`${sum(candidates.map((_, a) => y(note, a)))} = 1`);
  });

  const isAllowed = (note: number, a: number, b: number): boolean => Number.isFinite(pairCost(note, a, b));
  for (let note = 1; note < notes.length; note += 1) {
    const [before, here] = [notes[note - 1]!, notes[note]!];
    before.forEach((_, a) => {
      const after = here.flatMap((__, b) => (isAllowed(note, a, b) ? [z(note, a, b)] : []));
      row(`${sum(after)} - ${y(note - 1, a)} = 0`);
      here.forEach((__, b) => {
        if (isAllowed(note, a, b)) cost(pairCost(note, a, b), z(note, a, b));
      });
    });
    here.forEach((_, b) => {
      const from = before.flatMap((__, a) => (isAllowed(note, a, b) ? [z(note, a, b)] : []));
      row(`${sum(from)} - ${y(note, b)} = 0`);
    });
  }
  for (let note = 1; note + 1 < notes.length; note += 1) {
    const [before, here, after] = [notes[note - 1]!, notes[note]!, notes[note + 1]!];
    const into = new Map<string, string[]>();
    before.forEach((_, a) => {
      here.forEach((__, b) => {
        if (!isAllowed(note, a, b)) return;
        const out: string[] = [];
        after.forEach((___, c) => {
          if (!isAllowed(note + 1, b, c)) return;
          const name = w(note, a, b, c);
          out.push(name);
          into.set(z(note + 1, b, c), [...(into.get(z(note + 1, b, c)) ?? []), name]);
          cost(bendCost(note, a, b, c), name);
        });
        row(`${sum(out)} - ${z(note, a, b)} = 0`);
      });
    });
    here.forEach((_, b) => {
      after.forEach((__, c) => {
        if (isAllowed(note + 1, b, c))
          row(`${sum(into.get(z(note + 1, b, c)) ?? [])} - ${z(note + 1, b, c)} = 0`);
      });
    });
  }

  const sizes = [...new Set(notes.flatMap((candidates) => candidates.map(({ size }) => size)))];
  const ofSize = (note: number, size: number): string[] =>
    (notes[note] ?? []).flatMap((candidate, a) => (candidate.size === size ? [y(note, a)] : []));
  /** Pairs by which a run of the size begins at the note; at the first note, the choice itself. */
  const starts = (note: number, size: number): string[] =>
    note === 0
      ? ofSize(0, size)
      : notes[note]!.flatMap((candidate, b) =>
          candidate.size !== size
            ? []
            : notes[note - 1]!.flatMap((earlier, a) =>
                earlier.size !== size && isAllowed(note, a, b) ? [z(note, a, b)] : [],
              ),
        );
  for (const size of sizes) {
    const run = minimumRun(size);
    if (run <= 1) continue;
    for (let note = 0; note < notes.length; note += 1) {
      const recent: string[] = [];
      for (let from = Math.max(0, note - run + 1); from <= note; from += 1)
        recent.push(...starts(from, size));
      const here = ofSize(note, size)
        .map((name) => ` - ${name}`)
        .join('');
      if (recent.length > 0) row(`${sum(recent)}${here} <= 0`);
      const tooLate = note > notes.length - run ? starts(note, size) : [];
      if (tooLate.length > 0) row(`${sum(tooLate)} = 0`);
    }
  }

  mostOf.forEach((most, which) => {
    const terms = notes.flatMap((candidates, note) =>
      candidates.flatMap((candidate, a) => {
        const adds = candidate.adds?.[which] ?? 0;
        return adds === 0 ? [] : [`+ ${adds.toPrecision(17)} ${y(note, a)}`];
      }),
    );
    if (terms.length > 0) row(`${terms.join(' ')} <= ${most.toPrecision(17)}`);
  });

  if (ties !== undefined) writeTies();

  /*
   * q_i: whether the run that holds note i, within its section, has an odd count of strings so far. It starts anew (u = 0)
   * where the size changes or a section begins; a run that ends odd has one tied string.
   */
  function writeTies(): void {
    const { strings, begins, cost: tieCost, isLooped } = ties!;
    for (let note = 0; note <= notes.length; note += 1) {
      const looped = (notes[note] ?? []).flatMap((_, a) => (isLooped(note, a) ? [a] : []));
      const goesOn: string[] = [];
      if (note > 0 && note < notes.length && !begins[note]) {
        for (const b of looped) {
          notes[note - 1]!.forEach((candidate, a) => {
            if (isAllowed(note, a, b) && candidate.size === notes[note]![b]!.size) goesOn.push(z(note, a, b));
          });
        }
      }
      const on = goesOn.length === 0 ? '' : ` - ${goesOn.join(' - ')}`;
      if (note > 0) {
        // The run before has ended: t ≥ q_{i−1} − (goes on).
        row(`t_${note} - q_${note - 1}${goesOn.map((name) => ` + ${name}`).join('')} >= 0`);
        cost(tieCost, `t_${note}`);
        binaries.push(`t_${note}`);
        if (note === notes.length) continue;
        row(`u_${note} - q_${note - 1} <= 0`);
        row(`u_${note}${on} <= 0`);
        row(`u_${note} - q_${note - 1}${on} >= -1`);
        binaries.push(`u_${note}`);
      }
      const odd = looped.map((a) => ` - ${strings[note]!} ${y(note, a)}`).join('');
      row(`q_${note} + 2 m_${note}${note > 0 ? ` - u_${note}` : ''}${odd} = 0`);
      binaries.push(`q_${note}`);
      generals.push(`m_${note}`);
    }
  }

  return [
    'Minimize',
    ` sum: ${costs.length === 0 ? `0 ${y(0, 0)}` : costs.join('\n  ')}`,
    'Subject To',
    ...rows,
    'Binaries',
    ` ${binaries.join('\n ')}`,
    ...(generals.length > 0 ? ['Generals', ` ${generals.join('\n ')}`] : []),
    'End',
  ].join('\n');
}

/** The optimum of a program by HiGHS, its gap closed to the last digits that the solver keeps. */
export async function solvedProgram(program: ScheduleProgram): Promise<ProgramAnswer> {
  if (program.notes.some((candidates) => candidates.length === 0)) return { status: 'infeasible' };
  const solver = await loadedSolver();
  const answer = solver.solve(programText(program), {
    output_flag: false,
    // The programs are flat paths, many choices as good as each other: simplex goes round in them for long.
    solver: 'ipm',
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9,
    dual_feasibility_tolerance: 1e-9,
  });
  if (answer.Status === 'Infeasible') return { status: 'infeasible' };
  if (answer.Status !== 'Optimal') throw new Error(`HiGHS ended with ${answer.Status}`);
  const columns = answer.Columns as Record<string, { Primal: number }>;
  return {
    status: 'optimal',
    objective: answer.ObjectiveValue / COST_SCALE,
    choices: program.notes.map((candidates, note) =>
      candidates.findIndex((_, a) => columns[`y_${note}_${a}`]!.Primal > 0.5),
    ),
  };
}
