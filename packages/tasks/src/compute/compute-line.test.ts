import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import checks from '../../../../checks/checks.json' with { type: 'json' };
import oracle from '../../../../oracles/stepped-modes/values.json' with { type: 'json' };
import { computeKinds } from './compute-kinds.ts';
import { computeBatch, computeLine } from './compute-line.ts';

/** The answer to a request, which must be no error. */
function answerTo(request: unknown): Record<string, never> & { [key: string]: unknown } {
  const { text, isError } = computeLine(JSON.stringify(request));
  expect(isError, text).toBe(false);
  return JSON.parse(text);
}

function errorOf(line: string): { code: string; message: string } {
  const { text, isError } = computeLine(line);
  expect(isError, text).toBe(true);
  return JSON.parse(text).error;
}

const inputsOf = (check: { inputs: unknown }) => check.inputs as Record<string, number>;
const checksOf = (prefix: string) => checks.filter((check) => check.id.startsWith(prefix));

describe.each(computeKinds.map((kind) => [kind.kind, kind] as const))('kind %s', (name, kind) => {
  it('answers its own example with every key its schema promises, and no other', () => {
    expect(kind.example.kind).toBe(name);
    const answer = answerTo(kind.example);
    expect(kind.answer.strict().safeParse(answer).error?.issues ?? []).toEqual([]);
  });

  it('names a required key that is missing', () => {
    const required = Object.entries(kind.request.shape)
      .filter(([key, schema]) => key !== 'kind' && !schema.safeParse(undefined).success)
      .map(([key]) => key);
    expect(required.length).toBeGreaterThan(0);
    for (const key of required) {
      const { [key]: _, ...rest } = kind.example;
      const { code, message } = errorOf(JSON.stringify(rest));
      expect(code).toBe('bad-request');
      expect(message).toContain(`${key}: `);
    }
  });
});

describe('published values through a line', () => {
  // Source: D. Gilmore, pianotech mailing list, 19 February 2004.
  it.each(checksOf('downbearing-'))('$id', (check) => {
    const { tension_any, angle_deg } = inputsOf(check);
    const { force_N } = answerTo({
      kind: 'downbearing_angle',
      tension_N: tension_any,
      deflection_rad: (angle_deg! * Math.PI) / 180,
    });
    expect(Math.abs((force_N as unknown as number) / (check.expected as number) - 1)).toBeLessThan(1e-4);
  });

  // Source: the law of the partials (derived).
  it.each(checksOf('octave-'))('$id', (check) => {
    const { B_lower, B_upper, a, b } = inputsOf(check);
    const { stretch_cents, upper_first_partial_Hz } = answerTo({
      kind: 'octave',
      lower_first_partial_Hz: 220,
      B_lower,
      B_upper,
      p_lower: a,
      q_upper: b,
    }) as unknown as Record<string, number>;
    expect(Math.abs(1200 + stretch_cents! - (check.expected as number))).toBeLessThan(1e-3);
    expect(
      Math.abs(1200 * Math.log2(upper_first_partial_Hz! / 220) - (check.expected as number)),
    ).toBeLessThan(1e-3);
  });

  // Source: matching matrix in high-precision arithmetic, oracles/stepped-modes.
  it.each(oracle.values)('modes: $name, $ends', ({ segments, tension_N, ends, frequencies_Hz }) => {
    const { frequencies_Hz: found } = answerTo({
      kind: 'modes',
      segments: segments.map(([length_m, mu_kg_per_m, EI_N_m2]) => ({ length_m, mu_kg_per_m, EI_N_m2 })),
      tension_N,
      ends,
    }) as unknown as { frequencies_Hz: number[] };
    found.forEach((frequency, index) => {
      expect(Math.abs(frequency / frequencies_Hz[index]! - 1)).toBeLessThan(1e-10);
    });
  });

  // Source: sine series and Hermite elements (derived), for a string whose flexible first mode is at 900 N.
  it('wound: the bare-ended string of the published partials', () => {
    const request = {
      kind: 'wound',
      speaking_length_m: 1.3,
      core_diameter_m: 0.0011,
      layers: [{ wire_diameter_m: 0.00075, start_m: 0.02, end_m: 0.012 }],
      f0_Hz: 60,
    };
    const at60 = answerTo(request) as unknown as Record<string, number>;
    const f0_Hz = 60 * Math.sqrt(900 / at60.tension_flexible_exact_N!);
    const answer = answerTo({ ...request, f0_Hz }) as unknown as { partials_Hz: number[] };
    for (const check of checksOf('wound-bare-')) {
      const partial = Number(check.id.split('-')[2]);
      expect(Math.abs(answer.partials_Hz[partial - 1]! / (check.expected as number) - 1)).toBeLessThan(2e-5);
    }
  });
});

describe('kind plain', () => {
  const request = { kind: 'plain', speaking_length_m: 0.5, diameter_m: 0.001, f0_Hz: 300 };

  it('follows the equations it documents, defaults or not', () => {
    fc.assert(
      fc.property(
        fc.record({
          L: fc.double({ min: 0.04, max: 2, noNaN: true }),
          d: fc.double({ min: 7e-4, max: 1.6e-3, noNaN: true }),
          f: fc.double({ min: 25, max: 4500, noNaN: true }),
          rho: fc.double({ min: 7700, max: 7900, noNaN: true }),
          E: fc.double({ min: 190e9, max: 210e9, noNaN: true }),
          total: fc.double({ min: 0.1, max: 3, noNaN: true }),
          alpha: fc.double({ min: 1e-6, max: 2e-5, noNaN: true }),
          A: fc.double({ min: 1800, max: 2400, noNaN: true }),
          m: fc.double({ min: 0.1, max: 0.2, noNaN: true }),
        }),
        ({ L, d, f, rho, E, total, alpha, A, m }) => {
          const answer = answerTo({
            kind: 'plain',
            speaking_length_m: L,
            diameter_m: d,
            f0_Hz: f,
            rho_steel_kg_per_m3: rho,
            E_steel_Pa: E,
            total_wire_length_m: total,
            alpha_per_K: alpha,
            sut_A_MPa_mm_m: A,
            sut_m: m,
          }) as unknown as Record<string, number>;
          const area = (Math.PI * d ** 2) / 4;
          const T = 4 * rho * area * (L * f) ** 2;
          const expected: Record<string, number> = {
            linear_density_kg_per_m: rho * area,
            tension_N: T,
            stress_Pa: T / area,
            ultimate_strength_Pa: (A * 1e6) / (d * 1000) ** m,
            break_load_N: ((A * 1e6) / (d * 1000) ** m) * area,
            percent_break: (100 * T) / (((A * 1e6) / (d * 1000) ** m) * area),
            inharmonicity_B: (Math.PI ** 2 * E * ((Math.PI * d ** 4) / 64)) / (T * L ** 2),
            elongation_m: (T * total) / (E * area),
            pitch_cents_per_K: (-600 / Math.LN2) * ((E * area * alpha) / T),
          };
          for (const [key, value] of Object.entries(expected)) expect(answer[key]! / value).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('stretches the speaking length when no total length is given', () => {
    expect(answerTo(request).elongation_m).toBe(
      answerTo({ ...request, total_wire_length_m: 0.5 }).elongation_m,
    );
  });

  it('names the strength table, and says when the wire lies outside it', () => {
    expect(answerTo(request)).toMatchObject({
      strength_table: 'ASTM A228 minimum',
      strength_within_table: true,
    });
    expect(answerTo({ ...request, diameter_m: 0.02 }).strength_within_table).toBe(false);
  });

  it('refuses half a strength law', () => {
    expect(errorOf(JSON.stringify({ ...request, sut_m: 0.145 }))).toEqual({
      code: 'not-possible',
      message:
        'Cannot use a strength law as both sut_A_MPa_mm_m and sut_m are needed: found only one of them.',
    });
  });
});

describe('kind wound', () => {
  const request = {
    kind: 'wound',
    speaking_length_m: 1.3,
    core_diameter_m: 0.0011,
    layers: [{ wire_diameter_m: 0.00075, start_m: 0, end_m: 0 }],
    f0_Hz: 59,
  };

  it('has one tension, and one B, when the winding leaves nothing bare', () => {
    const answer = answerTo(request) as unknown as Record<string, number>;
    expect(answer.tension_flexible_exact_N! / answer.tension_uniform_full_N!).toBeCloseTo(1, 12);
    // A pinned uniform string sounds √(1 + B) higher, so the stiff tension is lower by 1 − B·(its own tension).
    expect(answer.tension_stiff_exact_N! / answer.tension_uniform_full_N!).toBeCloseTo(
      1 - answer.B_core_formula!,
      9,
    );
    for (const key of ['B_fit8_linear', 'B_fit16_linear', 'B_fit8_cents', 'B_fit16_cents']) {
      expect(answer[key]! / answer.B_core_formula!).toBeCloseTo(1, 6);
    }
    expect(answer.speaking_mass_kg).toBeCloseTo(answer.full_density_kg_per_m! * 1.3, 12);
  });

  it('takes the density of the winding under either name, not both', () => {
    const iron = answerTo({ ...request, rho_winding_kg_per_m3: 7860 });
    expect(answerTo({ ...request, rho_copper_kg_per_m3: 7860 })).toEqual(iron);
    expect(
      errorOf(JSON.stringify({ ...request, rho_copper_kg_per_m3: 7860, rho_winding_kg_per_m3: 7860 })).code,
    ).toBe('not-possible');
  });
});

describe('kind scale', () => {
  const wound = {
    key: 13,
    section: 'bass',
    bridge: 'bass bridge',
    strings: 2,
    f0_Hz: 55,
    speaking_length_m: 1.2,
    diameter_m: 0.0011,
    layers: [{ wire_diameter_m: 0.00095, start_m: 0.04, end_m: 0.03 }],
  };
  const plain = {
    key: 49,
    bridge: 'long bridge',
    strings: 3,
    f0_Hz: 440,
    speaking_length_m: 0.4,
    diameter_m: 0.001,
  };

  it('says of each note what the kinds for one string say, and adds up', () => {
    const answer = answerTo({ kind: 'scale', notes: [plain, wound] }) as unknown as {
      total_N: number;
      total_strings: number;
      bridges: unknown;
      notes: { tension_N: number; B: number; percent_break: number }[];
    };
    const { key: _, section: __, bridge: ___, strings: ____, diameter_m, ...rest } = wound;
    const alone = answerTo({ kind: 'wound', core_diameter_m: diameter_m, ...rest }) as unknown as Record<
      string,
      number
    >;
    const { key: _1, bridge: _2, strings: _3, ...plainString } = plain;
    const other = answerTo({ kind: 'plain', ...plainString }) as unknown as Record<string, number>;
    expect(answer.notes[0]!.tension_N / alone.tension_flexible_exact_N!).toBeCloseTo(1, 9);
    expect(answer.notes[0]!.B / alone.B_fit8_linear!).toBeCloseTo(1, 9);
    expect(answer.notes[0]!.percent_break / alone.core_percent_break!).toBeCloseTo(1, 9);
    expect(answer.notes[1]!.tension_N / other.tension_N!).toBeCloseTo(1, 12);
    expect(answer.notes[1]!.B / other.inharmonicity_B!).toBeCloseTo(1, 12);
    expect(answer.total_N).toBeCloseTo(2 * alone.tension_flexible_exact_N! + 3 * other.tension_N!, 6);
    expect(answer.total_strings).toBe(5);
    expect(answer.bridges).toMatchObject([
      { name: 'bass bridge', strings: 2 },
      { name: 'long bridge', strings: 3 },
    ]);
  });

  it('leaves the bare ends out of B when the core formula is asked for', () => {
    const b = (wound_strings: string): number =>
      (answerTo({ kind: 'scale', notes: [wound], wound_strings }) as unknown as { notes: { B: number }[] })
        .notes[0]!.B;
    expect(b('exact modes')).toBeGreaterThan(1.04 * b('core formula'));
  });

  it('refuses a key that occurs twice', () => {
    expect(errorOf(JSON.stringify({ kind: 'scale', notes: [plain, plain] })).message).toContain(
      'key 49 occurs more than once',
    );
  });
});

describe('computeLine()', () => {
  it.each([
    ['not-json', 'tension please'],
    ['not-json', '{"kind":"plain",'],
    ['not-an-object', '[1,2]'],
    ['not-an-object', 'null'],
    ['not-an-object', '42'],
    ['unknown-kind', '{}'],
    ['unknown-kind', '{"kind":"constructor"}'],
    ['unknown-kind', '{"kind":{"a":1}}'],
    ['bad-request', '{"kind":"plain","speaking_length_m":"0.5","diameter_m":0.001,"f0_Hz":300}'],
    ['bad-request', '{"kind":"plain","speaking_length_m":0.5,"diameter_m":-0.001,"f0_Hz":300}'],
    ['bad-request', '{"kind":"plain","speaking_length_m":0.5,"diameter_m":0.001,"f0_Hz":1e999}'],
    ['bad-request', '{"kind":"modes","segments":[],"tension_N":900,"ends":"pinned"}'],
    [
      'bad-request',
      '{"kind":"modes","segments":[{"length_m":1,"mu_kg_per_m":0.01,"EI_N_m2":0}],"tension_N":9,"ends":"free"}',
    ],
    [
      'bad-request',
      '{"kind":"octave","lower_first_partial_Hz":220,"B_lower":0,"B_upper":0,"p_lower":1.5,"q_upper":1}',
    ],
    ['not-possible', '{"kind":"plain","speaking_length_m":1e200,"diameter_m":0.001,"f0_Hz":300}'],
    ['not-possible', '{"kind":"downbearing_angle","tension_N":700,"deflection_rad":3}'],
    [
      'not-possible',
      '{"kind":"wound","speaking_length_m":1,"core_diameter_m":0.001,"layers":[{"wire_diameter_m":0.001,"start_m":0.6,"end_m":0.6}],"f0_Hz":50}',
    ],
  ])('answers %s to %s', (code, line) => {
    const error = errorOf(line);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(/^Cannot .+\.$/);
  });

  it('gives the id of the request back, with answers and with errors', () => {
    const pin = { kind: 'pin_torque', tension_N: 700, pin_diameter_m: 0.007, wire_diameter_m: 0.001 };
    expect(answerTo({ ...pin, id: 'C4 left' }).id).toBe('C4 left');
    expect(JSON.parse(computeLine('{"kind":"nothing","id":[7]}').text).id).toEqual([7]);
  });

  it('names the keys it did not use, at any depth, so that a misspelt option does not pass for a default', () => {
    const answer = answerTo({
      kind: 'modes',
      segments: [{ length_m: 1, mu_kg_per_m: 0.01, EI_N_m2: 0.01, EI: 3 }],
      tension_N: 900,
      ends: 'pinned',
      tention_N: 5,
    });
    expect(answer.unused_keys).toEqual(['segments.0.EI', 'tention_N']);
  });

  it('answers anything at all with one line of JSON', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (line) => {
        const { text } = computeLine(line);
        expect(text).not.toContain('\n');
        expect(() => JSON.parse(text)).not.toThrow();
      }),
    );
  });

  it('answers any request of the right shape with figures or with a sentence, never with a fault', () => {
    const any = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constant('modes'),
          segments: fc.array(fc.record({ length_m: any, mu_kg_per_m: any, EI_N_m2: any }), { maxLength: 4 }),
          tension_N: any,
          ends: fc.constantFrom('pinned', 'clamped'),
        }),
        (request) => {
          const { text, isError } = computeLine(JSON.stringify(request));
          const answer = JSON.parse(text);
          if (isError) expect(answer.error.code).not.toBe('fault');
          else {
            expect(answer.frequencies_Hz).toHaveLength(16);
            expect(answer.frequencies_Hz).toEqual(
              answer.frequencies_Hz.toSorted((a: number, b: number) => a - b),
            );
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('computeBatch()', () => {
  it('keeps the order, goes on after a bad line, counts errors and passes over blank lines', () => {
    const pin = (tension: number) =>
      JSON.stringify({ kind: 'pin_torque', tension_N: tension, pin_diameter_m: 0.01, wire_diameter_m: 0.01 });
    const { texts, errors } = computeBatch([pin(100), 'oops', '  ', pin(200), '']);
    expect(errors).toBe(1);
    expect(texts.map((text) => JSON.parse(text).torque_N_m ?? JSON.parse(text).error.code)).toEqual([
      1,
      'not-json',
      2,
    ]);
  });
});
