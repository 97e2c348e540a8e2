import { importRequestSchema, limits } from '@becket/contract';
import { importRoute } from '@becket/contract/routes';
import { firstProblem } from '@becket/journal';
import { bringInReadings, readTable } from '@becket/tasks';
import { Refused } from '../answer-error.ts';
import { atMost } from '../guards/size.ts';
import { type RouteParts, taskContext } from '../server-parts.ts';

/** Room for the mapping and the changes beside the file itself. */
const besideTheFile = 2_000_000;

export function importRoutes(parts: RouteParts): void {
  const { app, news } = parts;
  app.use(
    '/jobs/:job/imports',
    atMost(limits.tableBytes + besideTheFile, {
      what: 'this table',
      instead: 'Export only the sheet with the readings, and try again; nothing was brought in.',
    }),
  );
  app.openapi(importRoute, async (c) => {
    const { job } = c.req.valid('param');
    const { file, request } = c.req.valid('form');
    if (!(file instanceof File)) {
      throw new Refused(
        'request-not-understood',
        "Cannot bring in this table: the form's part 'file' must be a file with a name, a text was found. Attach the CSV file itself.",
      );
    }
    const asked = importRequestSchema.safeParse(parsedJson(request));
    if (!asked.success) {
      throw new Refused(
        'request-not-understood',
        `Cannot bring in this table as the form's part 'request' does not fit: ${firstProblem(asked.error)}. /openapi.json says what is needed.`,
      );
    }
    const { mapping, changes, by, device } = asked.data;
    const table = readTable(new Uint8Array(await file.arrayBuffer()), file.name);
    const { plan } = await bringInReadings(taskContext(parts, { by, device }), job, {
      table,
      mapping,
      changes,
    });
    news.announce(job);
    return c.json(
      {
        counts: plan.counts,
        questions: plan.questions.map((question) => ({ ...question })),
        notices: [...table.notices],
      },
      201,
    );
  });
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Refused(
      'request-not-understood',
      `Cannot bring in this table: the form's part 'request' must be JSON, and is not (${(error as Error).message}). Correct it and send it again.`,
    );
  }
}
