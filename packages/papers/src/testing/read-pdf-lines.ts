import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A straight stroke as it lies on the page, in points from the lower left corner. */
export interface PlacedLine {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly weight: number;
}

type Matrix = readonly [number, number, number, number, number, number];

/** Path data of the reader: an operator, then its coordinates. */
const pathOperators = { moveTo: 0, lineTo: 1, curveTo: 2, quadraticTo: 3, close: 4 } as const;

const stroking: readonly number[] = [OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.eoFillStroke];

/**
 * The straight strokes of each page of a PDF, read from its drawing operators by a library that has no part in writing it,
 * with every transformation on the way applied.
 */
export async function readPdfLines(bytes: Uint8Array): Promise<PlacedLine[][]> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: PlacedLine[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
    const lines: PlacedLine[] = [];
    let state: { matrix: Matrix; weight: number } = { matrix: [1, 0, 0, 1, 0, 0], weight: 1 };
    const saved: (typeof state)[] = [];
    fnArray.forEach((operator, index) => {
      const args = argsArray[index] as unknown[];
      if (operator === OPS.save) saved.push(state);
      else if (operator === OPS.restore) state = saved.pop() ?? state;
      else if (operator === OPS.transform)
        state = { ...state, matrix: times(state.matrix, args as unknown as Matrix) };
      else if (operator === OPS.setLineWidth) state = { ...state, weight: args[0] as number };
      else if (operator === OPS.constructPath) {
        const [painted, [data]] = args as [number, [ArrayLike<number> | null]];
        if (data !== null && stroking.includes(painted))
          lines.push(...strokes(data, state.matrix, state.weight));
      }
    });
    pages.push(lines);
  }
  await document.destroy();
  return pages;
}

function strokes(data: ArrayLike<number>, matrix: Matrix, weight: number): PlacedLine[] {
  const lines: PlacedLine[] = [];
  let at: readonly [number, number] = [0, 0];
  for (let index = 0; index < data.length; ) {
    const operator = data[index]!;
    const point = (): readonly [number, number] => [data[index + 1]!, data[index + 2]!];
    if (operator === pathOperators.moveTo || operator === pathOperators.lineTo) {
      const next = point();
      if (operator === pathOperators.lineTo)
        lines.push({
          from: moved(matrix, at),
          to: moved(matrix, next),
          weight: weight * Math.hypot(matrix[0], matrix[1]),
        });
      at = next;
      index += 3;
    } else index += operator === pathOperators.curveTo ? 7 : operator === pathOperators.quadraticTo ? 5 : 1;
  }
  return lines;
}

const moved = ([a, b, c, d, e, f]: Matrix, [x, y]: readonly [number, number]): [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
];

/** The second is applied to what is drawn first. */
const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];
