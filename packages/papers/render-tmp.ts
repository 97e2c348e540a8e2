import { writeFileSync } from 'node:fs';
import { asFoundRecordPaper, bassStringOrderPaper } from './src/index.ts';
import { fontsOnNode, renderPdf } from './src/render/index.ts';
import { wholeCompassJob } from './src/testing/whole-compass-job.ts';

const fonts = await fontsOnNode();
for (const make of [asFoundRecordPaper, bassStringOrderPaper])
  for (const size of ['A4', 'Letter', 'A4'] as const) {
    const t0 = performance.now();
    const tree = make(wholeCompassJob(), {
      at: '2026-03-10T12:00:00.000Z',
      firstUnit: size === 'A4' ? 'mm' : 'in',
      address: 'https://becket.example/#/job/01SMALL/record',
    });
    const t1 = performance.now();
    const pdf = await renderPdf(tree, { size, fonts, madeAt: new Date(0) });
    console.log(make.name, size, (t1 - t0).toFixed(0), (performance.now() - t1).toFixed(0), pdf.length);
    writeFileSync(`/tmp/pp/long-${make.name}-${size}.pdf`, pdf);
  }
