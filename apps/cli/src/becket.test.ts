import { execFile, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { paperFormats, paperNames } from '@becket/tasks';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';

const binary = resolve(import.meta.dirname, '../bin/becket.mjs');
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'becket-cli-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Ended {
  readonly status: number;
  readonly out: string;
  readonly talk: string;
}

/** Runs the real program with a store of its own. */
const becket = (...args: string[]): Promise<Ended> => becketWhere('C', ...args);

/** The same on a computer of that locale. */
function becketWhere(locale: string, ...args: string[]): Promise<Ended> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [binary, '--data', join(folder, 'data'), '--by', 'Ada', ...args],
      { maxBuffer: 1e8, env: { ...process.env, LC_ALL: locale } },
      (error, out, talk) => {
        done({ status: error === null ? 0 : Number(error.code), out, talk });
      },
    );
  });
}
// Each command is a process of its own; on a busy machine a dozen of them take their time.
vi.setConfig({ testTimeout: 300_000 });
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const json = ({ out }: Ended) => JSON.parse(out);

describe('becket', () => {
  it('does the main job: new, bring in, show, scale, strip check, seal, papers', async () => {
    const opened = await becket('--json', 'new', 'A small grand', '--form', 'grand', '--compass', 'A4-B4');
    expect(opened.status).toBe(0);
    const { job } = json(opened);

    const csv = file(
      'readings.csv',
      'Note;Section;Strings;Wire (mm);Wire 2;Length (mm)\nA4;tenor;3;0,98;0,981;400\nA#4;tenor;3;0,98;—;379\nB4;tenor;3;0,97;0,971;36\n',
    );
    const slipped = await becket('bring-in', job, csv, '--try');
    expect(slipped.status).toBe(0);
    expect(slipped.out).toContain('would be brought in');
    const unsaid = await becket('bring-in', job, csv, '--correct', '4:Length (mm)=360');
    expect(unsaid).toMatchObject({ status: 2, out: '' });
    expect(unsaid.talk).toContain('without a reason');
    const broughtIn = await becket(
      ...['--json', 'bring-in', job, csv, '--correct', '4:Length (mm)=360', '--reason', 'a digit is missing'],
    );
    expect(broughtIn.status).toBe(0);
    expect(json(broughtIn)).toMatchObject({ stored: true, counts: { readings: 8, notes: 3 } });

    const shown = json(await becket('--json', 'show', job));
    expect(shown.notes.map(({ note }: { note: string }) => note)).toEqual(['A4', 'A#4', 'B4']);
    expect(shown.notes[2].figures_si['speaking-length'].value).toBeCloseTo(0.36, 12);

    // T = π·ρ·(d·L·f)² with ρ = 7850, worked by hand for A4: π·7850·(0.0009805·0.4·440)² = 734.3 N.
    const scale = json(await becket('--json', 'scale', job));
    expect(scale.notes[0].tension_N).toBeCloseTo(734.3, 0);
    expect(scale.totalStrings).toBe(9);

    const check = await becket('--json', 'strip-check', job);
    expect(check.status).toBe(1);
    const gaps: string[] = json(check).openGaps.map(({ name }: { name: string }) => name);
    expect(gaps).toContain('loops/tenor');
    expect((await becket('strip-check', job, '--seal')).status).toBe(5);
    const accepted = await becket(
      'strip-check',
      job,
      ...gaps.flatMap((gap) => ['--accept', gap]),
      '--reason',
      'a test piano',
      '--seal',
    );
    expect(accepted).toMatchObject({ status: 0 });
    expect(accepted.out).toMatch(/Sealed on .* by Ada, digest [0-9a-f]{64}/);

    const to = join(folder, 'papers');
    const papers: string[] = json(await becket('--json', 'papers', job, '--size', 'Letter', '--to', to));
    const endings = paperNames.flatMap((name) => paperFormats.map((format) => `-${name}.${format}`));
    expect(papers).toHaveLength(endings.length);
    for (const ending of endings) expect(papers.filter((path) => path.endsWith(ending))).toHaveLength(1);
    for (const path of papers) {
      const start = readFileSync(path).subarray(0, 5).toString('latin1');
      expect(path.endsWith('.pdf') ? start === '%PDF-' : start.length === 5).toBe(true);
    }
  });

  it('names a bad cell by row and column, ends with status 3, and stores nothing', async () => {
    const { job } = json(
      await becket('--json', 'new', 'Another', '--form', 'vertical', '--compass', 'A0-A7'),
    );
    const csv = file('bad.csv', 'Note,Wire (mm),Length (mm)\nA4,0.98,0\nC8,.039,50\n');
    const ended = await becket('--json', 'bring-in', job, csv);
    expect(ended.status).toBe(3);
    expect(json(ended).error.code).toBe('import-has-problems');
    expect(ended.talk).toContain(
      "Row 2, column 'Length (mm)': a speaking length from 30 to 2600 mm is needed, '0' was found.",
    );
    expect(json(ended).error.details.problems).toHaveLength(2);
    expect(json(await becket('--json', 'show', job)).readings).toBe(0);
  });

  it('refuses a 50 MB CSV, a missing file, a missing job and an unknown command, each by its own status', async () => {
    const { job } = json(await becket('--json', 'new', 'Third', '--form', 'grand'));
    const large = file('large.csv', new Uint8Array(50_000_000).fill(65));
    expect(await becket('bring-in', job, large)).toMatchObject({ status: 3, out: '' });
    expect(await becket('bring-in', job, join(folder, 'not-there.csv'))).toMatchObject({ status: 4 });
    expect((await becket('show', '01ARYZ6S410000000000000000')).status).toBe(4);
    expect((await becket('restring')).status).toBe(2);
    expect((await becket('strip-check', job, '--accept', 'felts/bass')).status).toBe(2);
    expect((await becket('strip-check', job, '--accept', 'no/gap', '--reason', 'a test')).status).toBe(3);
  });

  it('reads Latin-1 and says so on stderr', async () => {
    const { job } = json(await becket('--json', 'new', 'Fourth', '--form', 'grand'));
    const csv = file(
      'latin1.csv',
      Uint8Array.from([...'Taste;Länge (mm)\nA4;400\n'].map((letter) => letter.charCodeAt(0))),
    );
    const ended = await becket('bring-in', job, csv);
    expect(ended.status).toBe(0);
    expect(ended.talk).toContain('Latin-1');
  });

  it('brings in the messy table of the invented grand, once its two wrong cells are put right', async () => {
    const grand = resolve(import.meta.dirname, '../../../examples/grand');
    const { job } = json(await becket('--json', 'new', 'An invented grand'));
    const described = await becket('--json', 'describe', job, join(grand, 'job.json'));
    expect(json(described)).toMatchObject({ sections: 4, notes: 88 });

    const bringIn = ['bring-in', job, join(grand, 'readings.csv'), '--mapping', join(grand, 'mapping.json')];
    const refused = await becket(...bringIn);
    expect(refused).toMatchObject({ status: 3, out: '' });
    expect(refused.talk).toContain("column 'Wire A (inch)'");
    expect(refused.talk).toMatch(/In question: Row 21, column 'Length \(mm\)'.* 470 mm\?/);
    const done = await becket('--json', ...bringIn, '--changes', join(grand, 'corrections.json'));
    expect(json(done)).toMatchObject({ stored: true, questions: [], counts: { notes: 88 } });
    // The same file again would double every reading.
    expect((await becket(...bringIn, '--changes', join(grand, 'corrections.json'))).status).toBe(3);

    const scale = json(await becket('--json', 'scale', job));
    expect(scale.notes).toHaveLength(79);
    expect(scale.notComputed.map(({ note }: { note: string }) => note)).toContain('G#2');
  });

  it('refuses a file of the wrong kind in one sentence', async () => {
    const { job } = json(await becket('--json', 'new', 'Fifth', '--form', 'grand'));
    const csv = file('good.csv', 'Note,Wire (mm)\nA4,0.98\n');
    const broken = file('broken.json', '{"columns": [');
    const odd = file('odd.json', '{"columns": [{"is": "colour"}]}');
    for (const [path, words] of [
      [broken, /broken\.json: JSON is needed/],
      [odd, /odd\.json as a mapping of columns: columns\.0/],
    ] as const) {
      const ended = await becket('bring-in', job, csv, '--mapping', path);
      expect(ended.status).toBe(3);
      expect(ended.talk).toMatch(words);
      expect(ended.talk.trim().split('\n')).toHaveLength(1);
    }
  });

  it('does not make a store in a mistyped folder', async () => {
    const mistyped = join(folder, 'dtaa');
    const ended = await becket('--data', mistyped, 'jobs');
    expect(ended).toMatchObject({ status: 4, out: '' });
    expect(existsSync(mistyped)).toBe(false);
  });

  it('serves an invented piano to this computer until it is told to stop', async () => {
    const data = join(folder, 'served');
    const server = spawn(process.execPath, [binary, '--data', data, 'serve', '--port', '0', '--demo']);
    try {
      const url = await new Promise<string>((found, failed) => {
        let out = '';
        server.stdout.on('data', (piece) => {
          out += piece;
          const address = /http:\S+/.exec(out)?.[0];
          if (address !== undefined) found(address);
        });
        server.on('exit', () => failed(new Error(`ended before it served: ${out}`)));
      });
      expect((await fetch(`${url}health`)).status).toBe(200);
      const jobs = (await (await fetch(`${url}jobs`)).json()) as unknown;
      expect(JSON.stringify(jobs)).toContain('invented grand');
      const ended = new Promise((done) => server.on('exit', done));
      server.kill('SIGTERM');
      expect(await ended).toBe(0);
    } finally {
      server.kill('SIGKILL');
    }
    expect((await becket('serve', '--port', 'many')).status).toBe(2);
    expect((await becket('serve', '--host', '0.0.0.0')).status).toBe(3);
  });

  it('talks the language of the computer, of --language before it, and English to programs', async () => {
    const { out: job } = await becketWhere('de_DE.UTF-8', 'demo');
    const shown = await becketWhere('de_DE.UTF-8', 'show', job.trim());
    expect(shown.out).toMatch(/nicht versiegelt.*klingende Länge/s);
    expect(shown.out).toMatch(/^A0 .*umsponnen .* \d,\d{3} /m);
    // The first line holds the title, which is the job's own.
    expect(shown.out.slice(shown.out.indexOf('\n'))).not.toMatch(/\d\.\d/);
    const papers = await becket(
      ...['papers', job.trim(), '--language', 'de-AT', '--paper', 'as-found-record', '--format', 'csv'],
      ...['--to', join(folder, 'papiere')],
    );
    expect(papers.out).toMatch(/-bestandsaufnahme\.csv\n$/);
    expect(papers.talk).toContain('wird erstellt');
    const unknown = '01ARYZ6S410000000000000000';
    const refused = await becketWhere('de_DE.UTF-8', 'show', unknown);
    expect(refused).toMatchObject({ status: 4, out: '' });
    expect(refused.talk).toMatch(/^Auftrag .* ist nicht zu finden/);
    const asked = await becketWhere('de_DE.UTF-8', 'show', unknown, '--language', 'en');
    expect(asked.talk).toMatch(/^Cannot find job/);
    const forPrograms = await becketWhere('de_DE.UTF-8', '--json', 'show', unknown);
    expect(json(forPrograms).error).toMatchObject({ code: 'job-not-found' });
    expect(json(forPrograms).error.message).toMatch(/^Cannot find job/);
  });
});
