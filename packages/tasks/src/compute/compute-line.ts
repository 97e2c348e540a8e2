import type { ComputeKind } from './compute-kind.ts';
import { computeKinds } from './compute-kinds.ts';

/** Why a line could not be answered. docs/reference/compute.md lists the same. */
export type ComputeErrorCode =
  | 'not-json'
  | 'not-an-object'
  | 'unknown-kind'
  | 'bad-request'
  | 'not-possible'
  | 'fault';

export const computeErrorMeanings: Readonly<Record<ComputeErrorCode, string>> = {
  'not-json': 'the line is not one JSON value',
  'not-an-object': 'the line is JSON, but not an object with a kind',
  'unknown-kind': 'there is no such kind',
  'bad-request': 'a key is missing, or its value is of the wrong kind or out of range',
  'not-possible': 'the request is well formed, but no such string can be computed',
  fault: 'a fault of the program',
};

/** One line's answer as JSON text, and whether it is an error. */
export interface ComputeAnswer {
  readonly text: string;
  readonly isError: boolean;
}

/** The answers to several lines, in their order, and how many are errors. */
export interface ComputeBatch {
  readonly texts: string[];
  readonly errors: number;
}

const kindByName = new Map(computeKinds.map((kind) => [kind.kind, kind]));

/**
 * Answers one line of JSON.
 *
 * A line that cannot be answered gets `{"error":{"code","message"}}`; nothing is thrown. An `id` in the request comes back with the
 * answer or the error. Keys that the kind does not know are not used, and are named in `unused_keys`, so that a misspelt
 * option does not pass for a default.
 */
export function computeLine(line: string): ComputeAnswer {
  let request: unknown;
  try {
    request = JSON.parse(line);
  } catch {
    return failed(
      'not-json',
      `Cannot read the line as JSON: found ${quoted(line)}. Write one JSON object a line.`,
    );
  }
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    return failed(
      'not-an-object',
      `Cannot answer as an object with a "kind" is needed: found ${quoted(line)}.`,
    );
  }
  const { id, ...rest } = request as Record<string, unknown>;
  const kind = kindByName.get(rest.kind as string);
  if (kind === undefined) {
    const known = [...kindByName.keys()].join(', ');
    const found = 'kind' in rest ? `found ${quoted(JSON.stringify(rest.kind))}` : 'found no kind';
    return failed('unknown-kind', `Cannot answer as the kind must be one of ${known}: ${found}.`, id);
  }
  return answerOf(kind, rest, id);
}

/** Answers many lines; lines of nothing but spaces are passed over. */
export function computeBatch(lines: readonly string[]): ComputeBatch {
  const texts: string[] = [];
  let errors = 0;
  for (const line of lines) {
    if (line.trim() === '') continue;
    const { text, isError } = computeLine(line);
    texts.push(text);
    if (isError) errors += 1;
  }
  return { texts, errors };
}

function answerOf(kind: ComputeKind, request: Record<string, unknown>, id: unknown): ComputeAnswer {
  const parsed = kind.request.safeParse(request);
  if (!parsed.success) {
    const problems = parsed.error.issues
      .slice(0, 3)
      .map(({ path, message }) => `${path.length === 0 ? 'the request' : path.join('.')}: ${message}`);
    return failed('bad-request', `Cannot compute '${kind.kind}': ${problems.join('; ')}.`, id);
  }
  try {
    const answer = kind.compute(parsed.data as never) as Record<string, unknown>;
    const notFinite = firstNotFinite(answer);
    if (notFinite !== undefined) {
      return failed(
        'not-possible',
        `Cannot compute '${kind.kind}' as ${notFinite} would not be a finite number.`,
        id,
      );
    }
    const unused = unusedKeys(request, parsed.data);
    return {
      text: JSON.stringify({
        ...(id !== undefined && { id }),
        ...answer,
        ...(unused.length > 0 && { unused_keys: unused }),
      }),
      isError: false,
    };
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError || error instanceof SyntaxError) {
      // What core refuses is a RangeError; the other two would be ours.
      const code = error instanceof RangeError && error.constructor === RangeError ? 'not-possible' : 'fault';
      return failed(code, `${error.message}.`, id);
    }
    return failed('fault', error instanceof Error ? error.message : String(error), id);
  }
}

function failed(code: ComputeErrorCode, message: string, id?: unknown): ComputeAnswer {
  return {
    text: JSON.stringify({ ...(id !== undefined && { id }), error: { code, message } }),
    isError: true,
  };
}

function quoted(text: string): string {
  const shortest = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  return `'${shortest}'`;
}

/** Key of the first figure that JSON could not write. */
function firstNotFinite(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = firstNotFinite(inner, path === '' ? key : `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Keys that were sent and not understood, with their place: the schemas leave them out of what they parse. */
function unusedKeys(sent: unknown, parsed: unknown, path = ''): string[] {
  if (typeof sent !== 'object' || sent === null || typeof parsed !== 'object' || parsed === null) return [];
  const known = parsed as Record<string, unknown>;
  return Object.entries(sent).flatMap(([key, value]) => {
    const place = path === '' ? key : `${path}.${key}`;
    return key in known ? unusedKeys(value, known[key], place) : [place];
  });
}
